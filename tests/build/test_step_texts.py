#!/usr/bin/env python3
"""Spoken sentences and the steps that must be written of them: step-texts.txt.
SPDX-License-Identifier: MIT
"""
import json
import os
import subprocess
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
PROGRAM = os.path.join(os.environ.get("B", "build"), "dishtake")


def cases(lines):
    """(known failure, words said, texts wanted) of each case."""
    found = []
    for line in lines:
        mark, words = line[:1], line[1:].strip()
        if mark in ("=", "!"):
            found.append((mark == "!", words, []))
        elif mark == "-":
            found[-1][2].append(words)
    return found


def written(said):
    run = subprocess.run([PROGRAM, "extract", "--as-one-dish", "-"], input=f"0:00 {said}\n", capture_output=True,
                         text=True, check=True)
    return [step["text"] for dish in json.loads(run.stdout)["dishes"] for step in dish["steps"]]


def main():
    failed = passed = 0
    with open(os.path.join(HERE, "step-texts.txt"), encoding="utf-8") as file:
        table = cases(file)
    for known, said, wanted in table:
        texts = written(said)
        passed += texts == wanted
        if (texts == wanted) == known:
            failed += 1
            print(f"{'passes now, unmark it' if known else 'wrong'}: {said}\n  wanted {wanted}\n  given  {texts}")
    print(f"test_step_texts: {passed} of {len(table)} sentences written as they should be")
    return 1 if failed or len(table) < 40 else 0


if __name__ == "__main__":
    sys.exit(main())
