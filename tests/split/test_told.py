#!/usr/bin/env python3
"""How many dishes are told apart where the cook says how many there are: the short talks of shares/, each with its number.

    B=build tests/split/test_told.py            the figures; exit 1 where one falls below its floor
SPDX-License-Identifier: MIT
"""
import collections
import glob
import os
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path.insert(0, HERE)
import test_shares  # noqa: E402

# Of these talks: as many dishes as were told of; captions that go to their dish.
FLOORS = {"number": 0.85, "captions": 0.86}


def main():
    counts = collections.Counter()
    for path in sorted(glob.glob(os.path.join(HERE, "shares", "brief-*.tsv"))):
        captions = test_shares.read(path)
        wanted = len({label for _, _, label, _ in captions} - {"-"})
        dishes, notes = test_shares.run(captions, "--dishes", str(wanted))
        counts["talks"] += 1
        counts["number"] += len(dishes) == wanted
        if len(dishes) > wanted or ("were told of" in notes) != (len(dishes) != wanted):
            print(f"wrong: {os.path.basename(path)}: {len(dishes)} for {wanted}: {notes}")
            counts["wrong"] += 1
        hits, owned, *_ = test_shares.score(captions, dishes)
        counts["hits"] += hits
        counts["captions"] += owned
    figures = {"number": counts["number"] / counts["talks"], "captions": counts["hits"] / counts["captions"]}
    print("figure: " + ", ".join(f"{name} {figure:.3f}" for name, figure in figures.items()))
    failed = counts["wrong"] + sum(figures[name] < floor for name, floor in FLOORS.items())
    print(f"{2 - min(failed, 2)} passed, {min(failed, 2)} failed")
    return failed > 0


if __name__ == "__main__":
    sys.exit(main())
