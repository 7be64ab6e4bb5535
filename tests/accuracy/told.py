#!/usr/bin/env python3
"""What it is worth to say how many dishes there are: told.py PROGRAM GOLD...

Scores the recordings as tests/corpus/score does, without --dishes and with the gold's number of dishes. A recording without a dish is
read as it is both times. Prints ALL of both.
SPDX-License-Identifier: MIT
"""
import json
import os
import shlex
import stat
import subprocess
import sys
import tempfile

SCORE = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "corpus", "score")
TOLD = """#!{python}
import json, os, sys
numbers = json.load(open({numbers!r}, encoding="utf-8"))
told = [str(numbers[name]) for name in map(os.path.realpath, sys.argv[1:]) if numbers.get(name)]
os.execv({program!r}, [{program!r}, *sys.argv[1:], *(["--dishes", told[0]] if told else [])])
"""


def numbers_of(golds):
    """How many dishes there are, by transcript."""
    found = {}
    for path in golds:
        with open(path, encoding="utf-8") as file:
            gold = json.load(file)
        found[os.path.realpath(os.path.join(os.path.dirname(path), gold["transcript"]))] = len(gold["dishes"])
    return found


def all_of(program, golds):
    run = subprocess.run([sys.executable, SCORE, shlex.quote(program), *golds], capture_output=True, text=True, check=False)
    lines = [line for line in run.stdout.splitlines() if line.split()[:1] in (["boundary"], ["ALL"])]
    return lines[:2]


def main():
    program, *golds = sys.argv[1:]
    program = os.path.abspath(program)
    with tempfile.TemporaryDirectory() as folder:
        numbers, told = os.path.join(folder, "numbers.json"), os.path.join(folder, "told")
        with open(numbers, "w", encoding="utf-8") as file:
            json.dump(numbers_of(golds), file)
        with open(told, "w", encoding="utf-8") as file:
            file.write(TOLD.format(python=sys.executable, numbers=numbers, program=program))
        os.chmod(told, stat.S_IRWXU)
        head, nothing = all_of(program, golds)
        print(head, nothing, all_of(told, golds)[1], sep="\n")


if __name__ == "__main__":
    main()
