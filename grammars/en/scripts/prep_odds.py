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
import glob
import sys

from sklearn.feature_extraction import DictVectorizer
from sklearn.linear_model import LogisticRegression

sys.path.insert(0, "tests/tools")
import goldsets  # noqa: E402
import leftout  # noqa: E402
import loader  # noqa: E402
import units  # noqa: E402

TOGETHER = {"recordings": "corpus", "recordings/flawless": "corpus", "recordings/second": "corpus",
            "recordings/third": "corpus", "recordings/fourth": "corpus", "recordings/sixth": "recordings/fifth",
            "recordings/seventh": "recordings/fifth", "recordings/eighth": "recordings/fifth",
            "recordings/tenth": "recordings/ninth"}
SEEN, SEEN_NEAR = 4, 60  # times, at least; words before and behind it
PENALTY = 3.0
SMALLEST = 0.1
WORDS, FOODS, WEIGHTS = "grammars/en/prep-odds.tsv", "grammars/en/prep-foods.tsv", "src/build/prepodds.def"
AS_ONE = loader.load("tests/accuracy/as_one.py")
SCORE = AS_ONE.score



def head_of(path, first):
    with open(path, encoding="utf-8") as file:
        return [line for line in file if line.startswith(("#", first + "\t"))]


MARKS = head_of(FOODS, "done")[-1].rstrip("\n").split("\t")[2:]

# What is learned from --------------------------------------------------------------------------------------------


class Case:
    def __init__(self, line):
        self.line, self.done, given, *self.facts = line.split("\t")
        self.right = False
        self.facts += [f"{self.done}|{fact}" for fact in self.facts if fact == "any" or fact.removeprefix("of ") in MARKS]


def golds_of(name):
    return sorted(glob.glob(f"tests/{name}/*.gold.json"))


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
        paths = {SCORE.transcript_of(path, SCORE.load(path)): path for path in golds_of(name)}
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
    columns = DictVectorizer()
    table = columns.fit_transform([{fact: 1 for fact in case.facts if fact in kept} for case in cases])
    fit = LogisticRegression(C=1 / PENALTY, solver="liblinear", max_iter=300, random_state=0)
    fit.fit(table, [case.right for case in cases])
    weights = dict(zip(columns.feature_names_, fit.coef_[0]))
    weights["ALWAYS"] += fit.intercept_[0] + weights.pop("any", 0)
    return weights


def write_words(weights):
    rows = [(words, where, round(100 * weight)) for fact, weight in weights.items() if abs(weight) >= SMALLEST or fact[:5] == "done "
            for where, _, words in [fact.partition(" ")] if where in ("done", "near", "next", "food") and words and "|" not in fact]
    head = head_of(WORDS, "words")
    with open(WORDS, "w", encoding="utf-8") as file:
        file.writelines(head)
        file.writelines("\t".join(map(str, row)) + "\n" for row in sorted(rows))


def write_foods(weights):
    """A row a preparation, a column a sort of food."""
    head = head_of(FOODS, "done")
    rows = collections.defaultdict(dict)
    for fact, weight in weights.items():
        done, bar, of = fact.partition("|")
        if bar and abs(weight) >= SMALLEST:
            rows[done][of.removeprefix("of ")] = str(round(100 * weight))
    with open(FOODS, "w", encoding="utf-8") as file:
        file.writelines(head)
        for done, cells in sorted(rows.items()):
            file.write("\t".join([done, cells.get("any", ""), *(cells.get(mark, "") for mark in MARKS)]) + "\n")


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
    total = SCORE.Tally()
    with leftout.restored(WORDS, FOODS, WEIGHTS):
        for name in leftout.each_set(cases, TOGETHER, write, "build/prep-odds"):
            tally = SCORE.Tally()
            for path in golds_of(name):
                tally.merge(AS_ONE.one("build/prep-odds/dishtake", path)[1])
            total.merge(tally)
            print(f"{name:22} {tally.figures()['prep_f1']:.3f}", flush=True)
    figures = total.figures()
    print(f"{'all':22} {figures['prep_f1']:.3f}  precision {figures['prep_precision']:.3f}  recall {figures['prep_recall']:.3f}")


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
