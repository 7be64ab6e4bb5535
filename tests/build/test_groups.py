#!/usr/bin/env python3
"""Parts of a dish: which foods go into one, where it begins and where it ends.
SPDX-License-Identifier: MIT
"""
import json
import os
import subprocess
import unittest

ROOT = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..")
PROGRAM = os.path.join(os.environ.get("B", os.path.join(ROOT, "build")), "dishtake")
# (said, the parts of its foods in order; None: the dish itself)
CASES = (
    ("Roast lamb. A leg of lamb. And the gravy. Two spoons of flour, a cup of stock.", [None, "gravy", "gravy"]),
    ("Apple cake. So for the frosting, you want eight ounces of cream cheese.", ["frosting"]),
    ("Noodle bowls. First you make the sauce. Three spoons of soy sauce, one of honey.", ["sauce", "sauce"]),
    ("Noodle bowls. Pour the sauce over. Three spring onions.", [None]),
    ("Leek pie. We want pastry. Two cups of flour, half a cup of butter.", ["pastry", "pastry"]),
    ("Waffles. The syrup is a cup of sugar and half a cup of water.", ["syrup", "syrup"]),
    ("Waffles. A tub of the caramel. Two bananas.", [None, None]),
    ("Crumble cake. For the topping you want half a cup of oats. Four spoons of butter go in and we chill it while we make the batter. Two cups of "
     "flour, an egg.", ["topping", "topping", "batter", "batter"]),
    # what the dish is called is no part of it
    ("We're making gravy. So for the gravy. Two spoons of flour.", [None]),
    # dough is known by what is done to it, in a dish that has more in it
    ("Filled buns. Three cups of flour, a cup of water, a spoon of yeast. Knead it for ten minutes. Two onions, a cup of cheese and an egg.",
     ["dough", "dough", "dough", None, None, None]),
    ("Potato balls. A kilo of potatoes, two onions, an egg. Knead it for a minute. Two leeks, a cup of cheese and a tomato.", [None] * 6),
    ("Filled buns. Three cups of flour, a cup of water. Mix it to a soft dough. Two onions.", ["dough", "dough", None]),
    # a part is over when it waited, or the dish is cooked
    ("Skewers. For the marinade, two spoons of oil, a lemon. Leave it for an hour. Two peppers.", ["marinade", "marinade", None]),
    ("Skewers. For the sauce, a cup of yogurt, a lemon. Grill the skewers. Two peppers.", ["sauce", "sauce", None]),
)


def groups(said):
    run = subprocess.run([PROGRAM, "extract", "--as-one-dish", "-"], input=f"0:00 {said}\n", capture_output=True, text=True, check=False)
    return [line.get("group") for dish in json.loads(run.stdout)["dishes"] for line in dish["ingredients"]]


class Groups(unittest.TestCase):
    def test_cases(self):
        for said, wanted in CASES:
            with self.subTest(said):
                self.assertEqual(groups(said), wanted)

    def test_card_says_where_a_part_ends(self):
        said = "Skewers.\n0:03 For the marinade, two spoons of oil and a lemon.\n0:06 Stir that.\n0:09 Leave it for an hour.\n0:12 Thread two peppers."
        run = subprocess.run([PROGRAM, "card", "--as-one-dish", "-"], input=f"0:00 {said}\n", capture_output=True, text=True, check=False)
        method = run.stdout.partition("Method")[2]
        self.assertLess(method.index("For the marinade"), method.index("For the dish"))
        self.assertLess(method.index("For the dish"), method.index("Thread"))


if __name__ == "__main__":
    unittest.main()
