#!/usr/bin/env python3
"""Spoken sentences and the lines that a card must have of them: card-lines.txt.
SPDX-License-Identifier: MIT
"""
import os
import subprocess
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path.insert(0, HERE)
sys.path.insert(0, os.path.join(HERE, "..", "tools"))
import known  # noqa: E402
import test_step_texts  # noqa: E402


def listed(said):
    """The lines of the card's list, without the headings of its parts."""
    run = subprocess.run([test_step_texts.PROGRAM, "card", "--as", "markdown", "--as-one-dish", "-"],
                         input=test_step_texts.captions(said), capture_output=True, text=True, check=True)
    lines = run.stdout.split("## Method")[0].splitlines()
    return [line[2:].replace("\\", "") for line in lines if line.startswith("- ")]


def main():
    with open(os.path.join(HERE, "card-lines.txt"), encoding="utf-8") as file:
        table = test_step_texts.cases(file)
    lines = [listed(said) for _, said, _ in table]
    return known.report("test_card_lines", ((fails, said, wanted, given, given == wanted)
                                            for (fails, said, wanted), given in zip(table, lines)), 9)


if __name__ == "__main__":
    sys.exit(main())
