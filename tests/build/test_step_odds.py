#!/usr/bin/env python3
"""The weights by which verbs are steps: that each can count, and what they make of utterances of which the rules alone say otherwise.
SPDX-License-Identifier: MIT
"""
import json
import os
import re
import subprocess
import unittest

ROOT = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..")
PROGRAM = os.path.join(os.environ.get("B", os.path.join(ROOT, "build")), "dishtake")
TABLE = os.path.join(ROOT, "grammars", "en", "step-odds.tsv")
TAGS = os.path.join(ROOT, "src", "model", "tags.def")
WEIGHTS = os.path.join(ROOT, "src", "build", "told.def")
# (said, actions of it, what is no action of it); by the rules alone each is otherwise
UTTERANCES = (
    ("We are making stew. Beans soaked overnight, drained, into the pot.", ["soak", "drain", "add"], ["stew"]),
    ("We are making stew. Then drained and back in the pot.", ["drain", "return"], ["stew"]),
    ("Bread, toasted, and the beans on it.", ["toast"], []),
    ("We are making stew. And that gets drained and rinsed under the tap.", ["drain", "rinse"], ["stew"]),
)


def actions(said):
    run = subprocess.run([PROGRAM, "extract", "--as-one-dish", "-"], input=f"0:00 {said}\n", capture_output=True, text=True, check=False)
    return [action for dish in json.loads(run.stdout)["dishes"] for step in dish["steps"] for action in step["actions"]]


class StepOdds(unittest.TestCase):
    def test_rows(self):
        seen = set()
        with open(TAGS, encoding="utf-8") as file:
            tags = re.findall(r"^TAG\((\w+),", file.read(), re.M)
        with open(TABLE, encoding="utf-8") as file:
            rows = [line.rstrip("\n").split("\t") for line in file if not line.startswith("#")]
        self.assertEqual(rows.pop(0), ["words", "where", "ordered", "other"])
        for words, where, ordered, other in rows:
            self.assertTrue(where in ("says", "does", "near", "next") or where in tags, where)
            self.assertNotIn((words, where), seen)
            self.assertTrue(int(ordered or 0) or int(other or 0), words)
            seen.add((words, where))

    def test_weights(self):
        with open(WEIGHTS, encoding="utf-8") as file:
            rows = re.findall(r"^(TOLD|BEFORE|BEHIND|MARKED)\((\w+), *(-?[\d.]+), *(-?[\d.]+)", file.read(), re.M)
        self.assertEqual(len({row[:2] for row in rows}), len(rows))
        for kind, name, ordered, other in rows:
            self.assertTrue(float(ordered) or float(other), name)
            self.assertLess(max(abs(float(ordered)), abs(float(other))), 5, name)

    def test_utterances(self):
        for said, steps, others in UTTERANCES:
            with self.subTest(said):
                given = actions(said)
                self.assertEqual([action for action in given if action in steps], steps)
                self.assertFalse(set(others) & set(given))


if __name__ == "__main__":
    unittest.main()
