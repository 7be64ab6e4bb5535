#!/usr/bin/env python3
"""How many captions of the talks in shares/ go to the dish they belong to, and how many dishes begin where they do.

    B=build tests/split/test_shares.py          the table; exit 1 where a share falls below its floor
SPDX-License-Identifier: MIT
"""
import collections
import glob
import json
import os
import subprocess
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
PROGRAM = os.path.join(os.environ.get("B", "build"), "dishtake")
SLACK = 12.0  # seconds that a dish may begin away from the caption that begins it, as tests/corpus/score has it
FLOORS = {"captions": 0.64, "starts": 0.74}


def seconds(clock):
    total = 0.0
    for part in clock.split(":"):
        total = 60 * total + float(part)
    return total


def read(path):
    """Captions (start, end, label, text) of a talk."""
    rows = []
    with open(path, encoding="utf-8") as file:
        for line in file:
            if not line.startswith("#"):
                clock, label, text = line.rstrip("\n").split("\t")
                start = max(seconds(clock), rows[-1][0] + 0.5 if rows else 0.0)
                rows.append((start, label, text))
    ends = [min(a[0] + 6, b[0]) for a, b in zip(rows, rows[1:])] + [rows[-1][0] + 4]
    return [(start, end, label, text) for (start, label, text), end in zip(rows, ends)]


def run(captions, *options):
    """Dishes, and what the program says beside them."""
    table = "".join(f"{start:.3f}\t{end:.3f}\t{text}\n" for start, end, _, text in captions)
    done = subprocess.run([PROGRAM, "extract", *options, "-"], input=table, capture_output=True, text=True, check=True)
    return json.loads(done.stdout)["dishes"], done.stderr


def extract(captions):
    return run(captions)[0]


def dish_at(dishes, at):
    spans = [(span["start"], n) for n, dish in enumerate(dishes) for span in dish["spans"]
             if span["start"] - 0.3 <= at <= span["end"] + 0.3]
    return max(spans)[1] if spans else None


def pair(shared):
    """One dish for each label, the pair with most captions first."""
    pairs = {}
    for (label, dish), _ in sorted(shared.items(), key=lambda item: (-item[1], item[0])):
        if label not in pairs and dish not in pairs.values():
            pairs[label] = dish
    return pairs


def score(captions, dishes):
    """Captions that went right, captions of dishes, dishes that begin right, dishes given, dishes there are."""
    owners = [(label, dish_at(dishes, (start + end) / 2)) for start, end, label, _ in captions if label != "-"]
    pairs = pair(collections.Counter(owner for owner in owners if owner[1] is not None))
    right = sum(dish is not None and pairs.get(label) == dish for label, dish in owners)
    begins = {}
    for start, end, label, _ in captions:
        begins.setdefault(label, (start, end))
    begins.pop("-", None)
    free, near = list(begins.values()), 0
    for dish in dishes:
        found = [b for b in free if b[0] - SLACK <= dish["start"] <= b[1] + SLACK]
        if found:
            free.remove(found[0])
            near += 1
    return right, len(owners), near, len(dishes), len(begins)


def main():
    total = [0] * 5
    paths = sorted(glob.glob(os.path.join(HERE, "shares", "*.tsv")))
    for path in paths:
        captions = read(path)
        counts = score(captions, extract(captions))
        total = [a + b for a, b in zip(total, counts)]
        print(f"{os.path.basename(path):32} {counts[0]:4} of {counts[1]:4} captions {counts[2]:3} of {counts[4]:3} starts"
              f" {counts[3]:3} dishes given")
    figures = {"captions": total[0] / total[1], "starts": 2 * total[2] / (total[3] + total[4])}
    low = [f"{name} is {figures[name]:.3f}, the floor is {least:g}" for name, least in FLOORS.items()
           if figures[name] < least]
    print(f"captions {figures['captions']:.3f}, F1 of starts {figures['starts']:.3f}", *low, sep="\n")
    print(f"{0 if low else 1} passed, {1 if low else 0} failed")
    return 1 if low or len(paths) < 30 else 0


if __name__ == "__main__":
    sys.exit(main())
