#!/usr/bin/env python3
"""Writes prep-odds.tsv, prep-foods.tsv and the weights of src/build/prepodds.def: how likely a word tells what was done to a food.

  prep_odds.py PREP_UNITS PROGRAM           (`make prep-odds` does it; run it where the Makefile is, and build again after it)
  prep_odds.py --test PREP_UNITS PROGRAM    what they are worth on sets left out: F1 of preparations, all dishes of a recording as one

PREP_UNITS is the program that tests/tools/prep_units.c makes. What is learned from are the words that may tell a preparation, each with a
food that it may be told of, of the recordings with gold under tests/ (but not those of tests/recordings/thirteenth and unseen): one is
right where the gold's line of that food has the preparation. It is a logistic regression with an L2 penalty. Left out together are sets
whose writers are the same. --test writes the weights of each fold into the tree, builds with them in a folder of its own, and restores
them. Needs scikit-learn (Debian package python3-sklearn). The same recordings give the same weights.
SPDX-License-Identifier: MIT
"""
import collections
import sys

sys.path.insert(0, "tests/tools")
import goldsets  # noqa: E402
import leftout  # noqa: E402
import loader  # noqa: E402
import logodds  # noqa: E402
import units  # noqa: E402

SEEN, SEEN_NEAR = 4, 60  # times, at least; words before and behind it
PENALTY = 3.0
SMALLEST = 0.1
WORDS, FOODS, WEIGHTS = "grammars/en/prep-odds.tsv", "grammars/en/prep-foods.tsv", "src/build/prepodds.def"
AS_ONE = loader.load("tests/accuracy/as_one.py")
SCORE = AS_ONE.score

MARKS = logodds.head_of(FOODS, "done")[-1].rstrip("\n").split("\t")[2:]

# What is learned from --------------------------------------------------------------------------------------------


class Case:
    def __init__(self, line):
        self.line, self.done, _, *self.facts = line.split("\t")
        self.right = False
        self.facts += [f"{self.done}|{fact}" for fact in self.facts if fact == "any" or fact.removeprefix("of ") in MARKS]


def preps_of(path, program):
    """The gold's preparations of each of the program's lines, by its id."""
    gold = SCORE.load(path)
    transcript = SCORE.transcript_of(path, gold)
    output = AS_ONE.merged(SCORE.run(program, transcript)[0])
    golds, given = SCORE.dishes_of(AS_ONE.merged(gold), gold=True), SCORE.dishes_of(output)
    if not golds or not given:
        return {}
    SCORE.stretch(golds, SCORE.read_cues(transcript))
    ids = {id(line): entry["id"] for line, entry in zip(given[0]["lines"], output["dishes"][0]["ingredients"])}
    return {ids[id(b)]: a["prep"] for a, b in SCORE.pair_lines(golds[0]["lines"], given[0]["lines"])[0]}


def read_cases(program_of_units, program):
    """The cases of each set."""
    cases = {}
    for name in goldsets.READ:
        paths = {SCORE.transcript_of(path, SCORE.load(path)): path for path in goldsets.golds_of(name)}
        cases[name] = []
        for path, lines in units.lines_of(program_of_units, paths):
            wanted = preps_of(path, program)
            for case in map(Case, lines):
                case.right = any(SCORE.alike(case.done, prep) for prep in wanted.get(case.line, ()))
                cases[name].append(case)
    return cases


# Weights ---------------------------------------------------------------------------------------------------------

def fit_weights(cases):
    count = collections.Counter(fact for case in cases for fact in set(case.facts))
    kept = {fact for fact, times in count.items() if times >= (SEEN_NEAR if fact[:5] in ("near ", "next ") else SEEN)}
    rows = [{fact: 1 for fact in case.facts if fact in kept} for case in cases]
    weights, intercept = logodds.learned(rows, [case.right for case in cases], PENALTY)
    weights["ALWAYS"] += intercept + weights.pop("any", 0)
    return weights


def write_words(weights):
    rows = [(words, where, round(100 * weight)) for fact, weight in weights.items() if abs(weight) >= SMALLEST or fact[:5] == "done "
            for where, _, words in [fact.partition(" ")] if where in ("done", "near", "next", "food") and words and "|" not in fact]
    logodds.write_table(WORDS, "words", sorted(rows))


def write_foods(weights):
    """A row a preparation, a column a sort of food."""
    rows = collections.defaultdict(dict)
    for fact, weight in weights.items():
        done, bar, of = fact.partition("|")
        if bar and abs(weight) >= SMALLEST:
            rows[done][of.removeprefix("of ")] = str(round(100 * weight))
    logodds.write_table(FOODS, "done", [(done, cells.get("any", ""), *(cells.get(mark, "") for mark in MARKS))
                                     for done, cells in sorted(rows.items())])


def write_def(weights):
    with open(WEIGHTS, encoding="utf-8") as file:
        lines = file.readlines()
    first = max(n for n, line in enumerate(lines) if line.startswith("FOOD(")) + 1
    last = next(n for n, line in enumerate(lines) if line.startswith("#undef"))
    rows = []
    for fact, weight in sorted(weights.items()):
        kind, *values = fact.split(" ")
        if kind in ("ALWAYS", "KNOWN") or (kind.isupper() and abs(weight) >= SMALLEST and "|" not in fact):
            rows.append(f"{kind}({', '.join([*values, f'{weight:.2f}'])})\n")
    of_food = [f"SORT({fact.removeprefix('of ')}, {weight:.2f})\n" for fact, weight in sorted(weights.items())
               if fact.startswith("of ") and abs(weight) >= SMALLEST]
    with open(WEIGHTS, "w", encoding="utf-8") as file:
        file.writelines(lines[:first] + rows + of_food + lines[last:])


def write(cases):
    weights = fit_weights(cases)
    write_words(weights)
    write_foods(weights)
    write_def(weights)


# What they are worth ---------------------------------------------------------------------------------------------

def test(cases):
    with leftout.restored(WORDS, FOODS, WEIGHTS):
        for name, tally in leftout.each_tally(AS_ONE, cases, write, "build/prep-odds"):
            figures = tally.figures()
            print(f"{name:22} {figures['prep_f1']:.3f}  precision {figures['prep_precision']:.3f}  "
                  f"recall {figures['prep_recall']:.3f}", flush=True)


def main():
    cases = read_cases(*sys.argv[-2:])
    if sys.argv[1] == "--test":
        test(cases)
    else:
        write([case for name in goldsets.READ for case in cases[name]])


if __name__ == "__main__":
    if len(sys.argv) < 3:
        sys.exit(__doc__)
    main()
