#!/usr/bin/env python3
"""Spoken sentences and the steps that must be written of them: step-texts.txt.
SPDX-License-Identifier: MIT
"""
import json
import os
import subprocess
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path.insert(0, os.path.join(HERE, "..", "tools"))
import known  # noqa: E402

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


def captions(said):
    return "\n".join(["0:00 " + caption if n == 0 else caption for n, caption in enumerate(said.split(" | "))]) + "\n"


def written(said):
    run = subprocess.run([PROGRAM, "extract", "--as-one-dish", "-"], input=captions(said), capture_output=True, text=True,
                         check=True)
    return [step["text"] for dish in json.loads(run.stdout)["dishes"] for step in dish["steps"]]


def main():
    with open(os.path.join(HERE, "step-texts.txt"), encoding="utf-8") as file:
        table = cases(file)
    texts = [written(said) for _, said, _ in table]
    return known.report("test_step_texts", ((fails, said, wanted, given, given == wanted)
                                            for (fails, said, wanted), given in zip(table, texts)), 40)


if __name__ == "__main__":
    sys.exit(main())
