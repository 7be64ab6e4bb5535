#!/usr/bin/env python3
"""The weights by which verbs are steps: that each can count, and what they make of utterances of which the rules alone say otherwise.
SPDX-License-Identifier: MIT
"""
import json
import os
import re
import shutil
import subprocess
import sys
import tempfile
import unittest

ROOT = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..")
sys.path.insert(0, os.path.join(ROOT, "tests", "tools"))
import loader  # noqa: E402

TEXTS = loader.load(os.path.join(ROOT, "tests", "build", "test_step_texts.py"))
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


# Log odds, in hundredths, that no other weights make up for.
NEVER = -9000


def steps(said, *options):
    run = subprocess.run([PROGRAM, "extract", "--as-one-dish", *options, "-"], input=TEXTS.captions(said), capture_output=True,
                         text=True, check=False)
    return [step for dish in json.loads(run.stdout)["dishes"] for step in dish["steps"]]


def actions(said):
    return [action for step in steps(said) for action in step["actions"]]


def without(pack, action):
    """The pack in that folder, in which such an action is no step of a recipe."""
    shutil.copy(TABLE, pack)
    with open(os.path.join(pack, os.path.basename(TABLE)), encoding="utf-8") as file:
        kept = [line for line in file if not line.startswith(f"{action}\tdoes\t")]
    with open(os.path.join(pack, os.path.basename(TABLE)), "w", encoding="utf-8") as file:
        file.writelines([*kept, f"{action}\tdoes\t{NEVER}\t{NEVER}\n"])
    return "--grammar", pack


# (said, an action that is to be taken for no step, the text that stays)
TEXTS_KEPT = (
    ("Chop two leeks and fry them in butter until they are soft.", "chop", "Chop the leeks and fry them in butter until they are soft."),
    ("Peel four pears and lay them in a baking dish.", "lay", "Peel the pears and lay them in a baking dish."),
    ("One leek, sliced, and two carrots. Let those soften for ten minutes.", "slice", "Let the leek and carrots soften for 10 minutes."),
    ("Simmer the gravy, stirring all the time, and season it.", "stir", "Simmer the gravy, stirring all the time, and season it."),
)


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

    def test_texts_hang_on_rules(self):
        """A step that keeps one of its actions keeps its words, whichever of the others is taken for none."""
        with tempfile.TemporaryDirectory() as folder:
            pack = shutil.copytree(os.path.dirname(TABLE), os.path.join(folder, "en"))
            shutil.copytree(os.path.join(os.path.dirname(TABLE), "..", "common"), os.path.join(folder, "common"))
            for said, second, text in TEXTS_KEPT:
                with self.subTest(said):
                    given, = steps(said, *without(pack, second))
                    self.assertNotIn(second, given["actions"])
                    self.assertEqual(given["text"], text)


if __name__ == "__main__":
    unittest.main()
