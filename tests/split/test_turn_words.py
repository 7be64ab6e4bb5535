#!/usr/bin/env python3
"""The points of turn-words.tsv at each sentence of the samples, added up here anew, row by row, from what docs/split.md says of the
table: the same as the program has among its evidence.
SPDX-License-Identifier: MIT
"""
import csv
import glob
import os
import subprocess
import sys

TALK_UNITS = os.path.join(os.environ.get("B", "build"), "talk_units")
TABLE = "grammars/en/turn-words.tsv"
NEAR, LATER, BEFORE, RUN = 7, 28, 8, 3
LEAST, MOST, NONE, UNIT = 4.0, 8.0, 2.0, 0.5
CLOSE = 0.002  # as exact as it is printed


def read_table():
    with open(TABLE, encoding="utf-8") as file:
        rows = csv.DictReader((line for line in file if not line.startswith("#")), delimiter="\t", quoting=csv.QUOTE_NONE)
        return {(row["words"], row["place"]): (int(row["begins"] or 0), int(row["returns"] or 0)) for row in rows}


def windows(units, at):
    """Each window with its place, and whether its runs are those that start there, end there, or any."""
    near, later, before = units[at:at + NEAR], units[at + NEAR:at + LATER], units[max(0, at - BEFORE):at]
    for n in range(1, RUN + 1):
        for i in range(len(near) - n + 1):
            yield "near", near[i:i + n]
        for i in range(len(before) - n + 1):
            yield "before", before[i:i + n]
        if n <= len(near):
            yield "first", near[:n]
        if n <= len(before):
            yield "last", before[len(before) - n:]
    for unit in later:
        yield "later", [unit]


def speak(table, units, at):
    rows = [table[("*", "*")]] + [table.get((" ".join(run), place), (0, 0)) for place, run in windows(units, at)]
    return [UNIT * max(min(sum(column) / 100 + LEAST, MOST), -NONE) for column in zip(*rows)]


def main():
    table = read_table()
    files = sorted(glob.glob("samples/*.srt") + glob.glob("tests/corpus/*.vtt"))
    lines = subprocess.run([TALK_UNITS, *files], capture_output=True, text=True, check=True).stdout.split("\n# ")
    passed = failed = 0
    for talk in lines:
        sentences = [line.split("\t") for line in talk.split("\n")[1:] if line]
        units, starts = [], []
        for _, _, said in sentences:
            starts.append(len(units))
            units += said.split()
        for (time, evidence, _), at in zip(sentences, starts):
            given = dict(pair.split("=") for pair in evidence.split())
            for name, wanted in zip(("WORDS_NEW", "WORDS_BACK"), speak(table, units, at)):
                right = abs(float(given.get(name, 0)) - wanted) <= CLOSE
                passed, failed = passed + right, failed + (not right)
                if not right and failed < 10:
                    print(f"{talk.split()[0]} at {time}: {name} is {given.get(name, 0)}, not {wanted:.3f}")
    print(f"{passed} passed, {failed} failed")
    return failed > 0 or not passed


if __name__ == "__main__":
    sys.exit(main())
