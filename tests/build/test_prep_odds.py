#!/usr/bin/env python3
"""The weights by which words tell what was done to a food: that each can count, and what they make of utterances of which the rules
alone say otherwise.
SPDX-License-Identifier: MIT
"""
import json
import os
import re
import subprocess
import unittest

ROOT = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..")
PROGRAM = os.path.join(os.environ.get("B", os.path.join(ROOT, "build")), "dishtake")
WORDS = os.path.join(ROOT, "grammars", "en", "prep-odds.tsv")
FOODS = os.path.join(ROOT, "grammars", "en", "prep-foods.tsv")
WEIGHTS = os.path.join(ROOT, "src", "build", "prepodds.def")
# (said, preparations of its lines); by the rules alone each is otherwise
UTTERANCES = (
    ("Two turnips on the board, peeled, and a leek.", [["peeled"], []]),
    ("Half a bunch of dill, half a bunch of mint, everything chopped.", [["chopped"], ["chopped"]]),
    ("Three celery sticks, in little dice.", [["diced"]]),
)


def preps(said):
    run = subprocess.run([PROGRAM, "extract", "--as-one-dish", "-"], input=f"0:00 {said}\n", capture_output=True, text=True, check=False)
    return [line.get("prep", []) for dish in json.loads(run.stdout)["dishes"] for line in dish["ingredients"]]


def rows_of(path):
    with open(path, encoding="utf-8") as file:
        return [line.rstrip("\n").split("\t") for line in file if not line.startswith("#")]


class PrepOdds(unittest.TestCase):
    def test_words(self):
        head, *rows = rows_of(WORDS)
        self.assertEqual(head, ["words", "where", "odds"])
        self.assertEqual(len({tuple(row[:2]) for row in rows}), len(rows))
        for words, where, odds in rows:
            self.assertIn(where, ("done", "near", "next", "food"))
            self.assertTrue(int(odds) or where == "done", words)

    def test_foods(self):
        (done, some, *marks), *rows = rows_of(FOODS)
        self.assertEqual((done, some), ("done", "any"))
        with open(WEIGHTS, encoding="utf-8") as file:
            self.assertEqual(re.findall(r"^FOOD\((\w+)\)", file.read(), re.M), marks)
        self.assertEqual(len({row[0] for row in rows}), len(rows))
        for row in rows:
            self.assertEqual(len(row), len(marks) + 2, row[0])
            self.assertTrue(any(int(cell) for cell in row[1:] if cell), row[0])

    def test_weights(self):
        with open(WEIGHTS, encoding="utf-8") as file:
            rows = re.findall(r"^([A-Z]+)\((.*?)(?:, )?(-?\d+\.\d+)\)$", file.read(), re.M)
        self.assertGreater(len(rows), 100)
        self.assertEqual(len({row[:2] for row in rows}), len(rows))
        for kind, which, odds in rows:
            self.assertTrue(float(odds), (kind, which))
            self.assertLess(abs(float(odds)), 6, (kind, which))

    def test_utterances(self):
        for said, wanted in UTTERANCES:
            with self.subTest(said):
                self.assertEqual(preps(said), wanted)


if __name__ == "__main__":
    unittest.main()
