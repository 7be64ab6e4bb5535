#!/usr/bin/env python3
"""A recording of many dishes: more of them than can be gone back to at once are all found.
SPDX-License-Identifier: MIT
"""
import json
import os
import subprocess
import tempfile

PROGRAM = os.path.join(os.environ.get("B", "build"), "dishtake")
DISHES = 150
FOODS = ("carrot", "leek", "potato", "pumpkin", "tomato", "lentil", "onion", "celery", "pea", "cabbage")


def talk():
    lines, second = [], 0
    for i in range(DISHES):
        food = FOODS[i % len(FOODS)]
        for said in (f"Okay, now we're making {food} soup.", f"Two pounds of {food} and a cup of cream go into the pot.",
                     "Add a teaspoon of salt and three cups of stock.", "Simmer it for twenty minutes and blend it.",
                     f"So that's the {food} soup, and it serves four."):
            lines.append(f"{second // 3600}:{second // 60 % 60:02}:{second % 60:02} {said}\n")
            second += 6
        second += 20
    return "".join(lines)


def main():
    with tempfile.NamedTemporaryFile("w", suffix=".txt") as file:
        file.write(talk())
        file.flush()
        out = subprocess.run([PROGRAM, "extract", "-q", file.name], capture_output=True, check=True).stdout
    found = len(json.loads(out)["dishes"])
    good = found == DISHES
    print(f"{'ok' if good else 'wrong'}: {found} of {DISHES} dishes")
    print(f"{int(good)} passed, {int(not good)} failed")
    return not good


if __name__ == "__main__":
    raise SystemExit(main())
