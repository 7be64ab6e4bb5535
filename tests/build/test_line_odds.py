#!/usr/bin/env python3
"""The weights by which foods that are spoken of are lines: that each can count, and what they make of dishes of which the rules alone say
otherwise.
SPDX-License-Identifier: MIT
"""
import json
import os
import re
import shutil
import subprocess
import tempfile
import unittest

ROOT = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..")
PROGRAM = os.path.join(os.environ.get("B", os.path.join(ROOT, "build")), "dishtake")
TABLE = os.path.join(ROOT, "grammars", "en", "line-odds.tsv")
WEIGHTS = os.path.join(ROOT, "src", "build", "lineodds.def")
STEW = ("We're making a leek stew today. Three leeks, sliced, and two carrots, diced, go in the pot with a tablespoon of oil. "
        "Fry them for ten minutes, then add a litre of stock and simmer it for half an hour. "
        "Don't hurry it, keep the lid on, and stir it now and again so that nothing sticks to the bottom. It smells lovely. ")
FOODS = ["leek", "carrot", "oil", "stock"]
# (said behind the stew, the foods that it has more)
UTTERANCES = (
    ("Then a spoon or two of the gravy goes over the top of it.", []),  # by the rules alone it has the gravy
    ("At the end two tablespoons of cream go in.", ["cream"]),
    ("Parsley on top.", ["parsley"]),
)
SHELF = ("Hello, we're back from the coast, and I said I'd answer a few of you while I go through this shelf. It has been two years, I think. "
         "That's six tins of beans, and I've had them since we moved. My brother sends me two kilos of rice every year, and I give it to the "
         "school. He's asked me what I'd do with it, and I don't know what I'd do with it. Somebody wants to know how I make my fish pie. "
         "It was four potatoes and a pint of milk, it's in the one we did at Easter, and I'm not going to do it for you now. That's a pound "
         "of flour, and it's three years old, so that goes to the hens. I'd have eight or nine people here on a Friday when we lived in the "
         "town, and I bought ten pounds of butter for that week. We'd be here till midnight. I'm going to be at my sister's for a month, so "
         "there'll be nothing from me till then, and I hope you're all well. It's been good to have you here. ")
# Log odds, in hundredths, that no other weights make up for.
SURE = 9000


def foods(said, *options):
    run = subprocess.run([PROGRAM, "extract", "--as-one-dish", *options, "-"], input=f"0:00 {said}\n", capture_output=True, text=True,
                         check=False)
    return [line["food"] for dish in json.loads(run.stdout)["dishes"] for line in dish["ingredients"]]


def with_weight(folder, food, odds):
    """A pack in which such a food is always a line of the recipe, or never one."""
    pack = shutil.copytree(os.path.dirname(TABLE), os.path.join(folder, "en"))
    shutil.copytree(os.path.join(os.path.dirname(TABLE), "..", "common"), os.path.join(folder, "common"))
    table = os.path.join(pack, os.path.basename(TABLE))
    with open(table, encoding="utf-8") as file:
        kept = [line for line in file if not line.startswith(f"{food}\tfood\t")]
    with open(table, "w", encoding="utf-8") as file:
        file.writelines([*kept, f"{food}\tfood\t{odds}\n"])
    return "--grammar", pack


class LineOdds(unittest.TestCase):
    def test_rows(self):
        with open(TABLE, encoding="utf-8") as file:
            head, *rows = [line.rstrip("\n").split("\t") for line in file if not line.startswith("#")]
        self.assertEqual(head, ["words", "where", "odds"])
        self.assertEqual(len({tuple(row[:2]) for row in rows}), len(rows))
        for words, where, odds in rows:
            self.assertIn(where, ("near", "next", "food", "rule"))
            self.assertTrue(int(odds), words)

    def test_weights(self):
        with open(WEIGHTS, encoding="utf-8") as file:
            rows = re.findall(r"^([A-Z]+)\((\w+), *(-?[\d.]+), *(-?[\d.]+), *(-?[\d.]+)", file.read(), re.M)
        self.assertGreater(len(rows), 100)
        self.assertEqual(len({row[:2] for row in rows}), len(rows))
        for kind, name, *odds in rows:
            self.assertTrue(any(map(float, odds)), (kind, name))
            self.assertLess(max(abs(float(weight)) for weight in odds), 5, (kind, name))

    def test_utterances(self):
        for said, more in UTTERANCES:
            with self.subTest(said):
                self.assertEqual(foods(STEW + said), FOODS + more)

    def test_only_talk(self):
        """Foods with amounts, in a recording in which nothing is cooked."""
        self.assertLess(len(foods(SHELF)), 2)

    def test_both_ways(self):
        """What the rules have is taken away, and what they leave open is added."""
        for food, odds, wanted in (("leek", -SURE, FOODS[1:]), ("barley", SURE, [*FOODS, "barley"])):
            with tempfile.TemporaryDirectory() as folder:
                self.assertEqual(foods(STEW + "There goes the barley.", *with_weight(folder, food, odds)), wanted)

    def test_short_recordings(self):
        """A few words are no recording of a dish: the rules alone judge them."""
        with tempfile.TemporaryDirectory() as folder:
            self.assertEqual(foods("Three leeks, sliced, and fry them.", *with_weight(folder, "leek", -SURE)), ["leek"])


if __name__ == "__main__":
    unittest.main()
