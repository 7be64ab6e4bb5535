#!/usr/bin/env python3
"""Dishes that are called what the cook says they make: dish-names.txt.
SPDX-License-Identifier: MIT
"""
import json
import os
import subprocess
import sys
import tempfile

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path.insert(0, os.path.join(HERE, "..", "tools"))
import known  # noqa: E402

PROGRAM = os.path.join(os.environ.get("B", "build"), "dishtake")
# Whatever the dish is, the same things go into it.
TALK = """0:00 Hello and welcome.
0:04 Today we're making {name}.
0:09 You'll need two cups of this one thing here and a pound of the other.
0:14 One onion, chopped, and two tablespoons of oil.
0:20 Put it in the bowl and mix it.
0:24 Cook it for ten minutes.
0:29 Add one teaspoon of salt and stir.
0:33 And that's our {name}.
"""


def read_names():
    """(name, whether it is known to fail) of each line."""
    with open(os.path.join(HERE, "dish-names.txt"), encoding="utf-8") as file:
        lines = [line.rstrip("\n") for line in file if line.strip() and not line.startswith("#")]
    return [(line.lstrip("! "), line.startswith("!")) for line in lines]


def titles(folder, names):
    """The titles of the dishes found for each name, by one run over all."""
    files = [os.path.join(folder, f"{n}.txt") for n in range(len(names))]
    for path, name in zip(files, names):
        with open(path, "w", encoding="utf-8") as file:
            file.write(TALK.format(name=name))
    run = subprocess.run([PROGRAM, "extract", *files], capture_output=True, text=True, check=True)
    return [[dish["title"] for dish in json.loads(line)["dishes"]] for line in run.stdout.splitlines()]


def main():
    table = read_names()
    with tempfile.TemporaryDirectory() as folder:
        found = titles(folder, [name for name, _ in table])
    return known.report("test_names", ((fails, name, name, given, len(given) == 1 and name.lower() in given[0].lower())
                                       for (name, fails), given in zip(table, found, strict=True)), 300)


if __name__ == "__main__":
    sys.exit(main())
