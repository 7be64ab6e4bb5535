#!/usr/bin/env python3
"""Scores recordings with all dishes of each taken as one, in the output and in the gold: what ingredient lines, steps, times and
temperatures are worth apart from borders.

  as_one.py [--verbose] PROGRAM GOLD.json...

Titles, yields, groups and problems say nothing then and are not shown. docs/accuracy.md.
SPDX-License-Identifier: MIT
"""
import os
import sys
from concurrent.futures import ThreadPoolExecutor

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path.insert(0, os.path.join(HERE, "..", "tools"))
from loader import load  # noqa: E402

score = load(os.path.join(HERE, "..", "corpus", "score"))
FIGURES = ("food_f1", "ingredient_line_f1", "prep_f1", "temperature_f1", "duration_f1", "step_f1")
LISTS = ("ingredients", "temperatures", "durations", "steps")


def merged(document):
    """The document with one dish, which has all that its dishes have."""
    dishes = document.get("dishes") or []
    if not dishes:
        return {"dishes": [], "problems": []}
    whole = {name: sorted((entry for dish in dishes for entry in dish.get(name) or []),
                          key=lambda entry: entry.get("at", entry.get("start", 0))) for name in LISTS}
    return {"dishes": [{**dishes[0], **whole, "start": min(dish["start"] for dish in dishes),
                        "end": max(dish["end"] for dish in dishes)}], "problems": []}


def one(program, path):
    gold = score.load(path)
    transcript = score.transcript_of(path, gold)
    output, why = score.run(program, transcript)
    if why:
        sys.exit(f"{path}: {why}")
    return path, *score.score_recording(merged(gold), merged(output), score.read_cues(transcript))


def main(arguments):
    verbose = "--verbose" in arguments
    program, *golds = [argument for argument in arguments if argument != "--verbose"]
    total = score.Tally()
    with ThreadPoolExecutor(os.cpu_count()) as pool:
        for path, tally, notes in pool.map(lambda path: one(program, path), golds):
            total.merge(tally)
            if verbose:
                print(f"== {os.path.basename(path).removesuffix('.gold.json')}", *notes, sep="\n   ")
    figures = total.figures()
    print(*(f"{name.removesuffix('_f1').replace('ingredient_', '')} {figures[name]:.3f}" for name in FIGURES))


if __name__ == "__main__":
    if len(sys.argv) < 3:
        sys.exit(__doc__)
    main(sys.argv[1:])
