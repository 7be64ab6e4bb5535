#!/usr/bin/env python3
"""How many dishes are told apart where the cook says how many there are: the short talks of shares/, each with its number.

    B=build tests/split/test_told.py            the figures; exit 1 where one falls below its floor
SPDX-License-Identifier: MIT
"""
import collections
import glob
import json
import os
import subprocess
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path.insert(0, HERE)
import test_shares  # noqa: E402

# Of these talks: as many dishes as were told of; captions that go to their dish.
FLOORS = {"number": 0.85, "captions": 0.86}


def extract(captions, dishes):
    table = "".join(f"{start:.3f}\t{end:.3f}\t{text}\n" for start, end, _, text in captions)
    run = subprocess.run([test_shares.PROGRAM, "extract", "--dishes", str(dishes), "-"], input=table, capture_output=True,
                         text=True, check=True)
    return json.loads(run.stdout)["dishes"], run.stderr


def main():
    counts = collections.Counter()
    for path in sorted(glob.glob(os.path.join(HERE, "shares", "brief-*.tsv"))):
        captions = test_shares.read(path)
        wanted = len({label for _, _, label, _ in captions} - {"-"})
        dishes, notes = extract(captions, wanted)
        counts["talks"] += 1
        counts["number"] += len(dishes) == wanted
        if len(dishes) > wanted or ("were told of" in notes) != (len(dishes) != wanted):
            print(f"wrong: {os.path.basename(path)}: {len(dishes)} for {wanted}: {notes}")
            counts["wrong"] += 1
        shared = collections.Counter((label, dish) for start, _, label, _ in captions if label != "-"
                                     for dish in [test_shares.dish_at(dishes, start)] if dish is not None)
        counts["hits"] += sum(shared[pair] for pair in test_shares.pair(shared).items())
        counts["captions"] += sum(label != "-" for _, _, label, _ in captions)
    figures = {"number": counts["number"] / counts["talks"], "captions": counts["hits"] / counts["captions"]}
    print("figure: " + ", ".join(f"{name} {figure:.3f}" for name, figure in figures.items()))
    failed = counts["wrong"] + sum(figures[name] < floor for name, floor in FLOORS.items())
    print(f"{2 - min(failed, 2)} passed, {min(failed, 2)} failed")
    return failed > 0


if __name__ == "__main__":
    sys.exit(main())
