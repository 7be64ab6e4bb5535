#!/usr/bin/env python3
"""Writes line-odds.tsv and the weights of src/build/lineodds.def: how likely a food that was spoken of is a line of the recipe.

  line_odds.py LINE_UNITS           (`make line-odds` does it; run it where the Makefile is, and build again after it)
  line_odds.py --test LINE_UNITS    what they are worth on sets left out: F1 of foods, all dishes of a recording as one

LINE_UNITS is the program that tests/tools/line_units.c makes. What is learned from are the foods that the rules of src/build found in the
recordings with gold under tests/ (but not those of tests/recordings/thirteenth and unseen), those too that they leave out: one is a line
where the gold has that food at that time, each line of the gold for one food. It is a logistic regression with an L2 penalty, in which
each fact has a weight of its own and one more for each way in which the rules have the food (with its amount, without one, not at all).
Left out together are sets whose writers are the same. --test writes the weights of each fold into the tree, builds with them in a folder
of its own, and restores them. Needs scikit-learn (Debian package python3-sklearn). The same recordings give the same weights.
SPDX-License-Identifier: MIT
"""
import collections
import glob
import re
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
WAYS = ("known", "bare", "asked")
SEEN, SEEN_WORD = 5, 8  # times, at least
PENALTY = 8.0
SMALLEST = 0.03
TABLE, WEIGHTS = "grammars/en/line-odds.tsv", "src/build/lineodds.def"
KINDS, WORDS = ("BEFORE", "BEHIND", "SCOPE", "SORT"), ("near", "next", "food", "rule")
AS_ONE = loader.load("tests/accuracy/as_one.py")
SCORE = AS_ONE.score

# What is learned from --------------------------------------------------------------------------------------------


class Food:
    def __init__(self, line):
        self.line, at, name, self.way, beside, *self.facts = line.split("\t")
        self.beside, self.right = beside == "1", False
        self.entry = SCORE.line_of({"food": name, "at": float(at)}, {})


def golds_of(name):
    return sorted(glob.glob(f"tests/{name}/*.gold.json"))


def lines_of_gold(path):
    gold = SCORE.load(path)
    dishes = SCORE.dishes_of(AS_ONE.merged(gold), gold=True)
    SCORE.stretch(dishes, SCORE.read_cues(SCORE.transcript_of(path, gold)))
    return [line for dish in dishes for line in dish["lines"]]


def mark_right(foods, wanted):
    """What the rules have comes before what they leave out."""
    def cost(line, other):
        like, away = SCORE.food_likeness(line, other), SCORE.apart(line, other)
        return (-like, away) if like and away <= SCORE.LINE_SLACK else None
    for ways in (WAYS[:2], WAYS[2:]):
        given = [food for food in foods if food.way in ways]
        pairs = SCORE.pair(wanted, [food.entry for food in given], cost)
        for _, n in pairs:
            given[n].right = True
        taken = {i for i, _ in pairs}
        wanted = [line for i, line in enumerate(wanted) if i not in taken and line["role"] != "serve-with"]


def read_foods(program):
    """The foods of each set; not what is served beside a dish, which no gold's lines are counted for."""
    foods = {}
    for name in goldsets.READ:
        paths = {SCORE.transcript_of(path, SCORE.load(path)): path for path in golds_of(name)}
        foods[name] = []
        for path, lines in units.lines_of(program, paths):
            here = [Food(line) for line in lines]
            mark_right(here, lines_of_gold(path))
            foods[name] += [food for food in here if not food.beside]
    return foods


# Weights ---------------------------------------------------------------------------------------------------------

def pairs_of(food):
    for fact in food.facts:
        yield fact, "all"
        if fact.partition(" ")[0] not in WORDS:
            yield fact, food.way


def fit_weights(foods):
    """(known, bare, asked) for each fact."""
    count = collections.Counter(pair for food in foods for pair in set(pairs_of(food)))
    kept = {(fact, way) for (fact, way), times in count.items() if times >= (SEEN_WORD if fact.partition(" ")[0] in WORDS else SEEN)}
    columns = DictVectorizer()
    table = columns.fit_transform([{pair: 1 for pair in pairs_of(food) if pair in kept} for food in foods])
    fit = LogisticRegression(C=1 / PENALTY, solver="liblinear", max_iter=300, random_state=0)
    fit.fit(table, [food.right for food in foods])
    found = dict(zip(columns.feature_names_, fit.coef_[0]))
    weights = {fact: [found.get((fact, "all"), 0) + found.get((fact, way), 0) for way in WAYS] for fact, _ in kept}
    weights["ALWAYS"] = [weight + fit.intercept_[0] for weight in weights["ALWAYS"]]
    return {fact: [0 if abs(weight) < SMALLEST else weight for weight in ways] for fact, ways in weights.items()}


def write_table(weights):
    with open(TABLE, encoding="utf-8") as file:
        head = [line for line in file if line.startswith(("#", "words\t"))]
    rows = []
    for fact, ways in weights.items():
        where, _, words = fact.partition(" ")
        if where in WORDS and words and round(100 * ways[0]):
            rows.append((words, where, round(100 * ways[0])))
    with open(TABLE, "w", encoding="utf-8") as file:
        file.writelines(head)
        file.writelines("\t".join(map(str, row)) + "\n" for row in sorted(rows))


def numbers(ways):
    return ", ".join(f"{weight + 0.0:5.2f}" for weight in ways)


def beside_rows(weights):
    """The rows of lineodds.def that have no condition: what was seen too rarely has none."""
    rows = []
    for fact, ways in weights.items():
        kind, _, name = fact.partition(" ")
        if kind in KINDS and any(ways):
            rows.append((KINDS.index(kind), f"{kind}({name}, {numbers(ways)})\n"))
    return [row for _, row in sorted(rows)]


def write_def(weights):
    with open(WEIGHTS, encoding="utf-8") as file:
        lines = [line for line in file if not line.startswith(tuple(f"{kind}(" for kind in KINDS))]

    def filled(match):
        name = match.group(1)
        return f"FACT({name + ',':14} {numbers(weights.get(name, (0, 0, 0)))},"
    lines = [re.sub(r"^FACT\((\w+),(?: *-?[\d.]+,){3}", filled, line) for line in lines]
    end = lines.index("#undef FACT\n")
    with open(WEIGHTS, "w", encoding="utf-8") as file:
        file.writelines(lines[:end] + beside_rows(weights) + lines[end:])


def write(foods):
    weights = fit_weights(foods)
    write_table(weights)
    write_def(weights)


# What they are worth ---------------------------------------------------------------------------------------------

def test(foods):
    total = SCORE.Tally()
    with leftout.restored(TABLE, WEIGHTS):
        for name in leftout.each_set(foods, TOGETHER, write, "build/line-odds"):
            tally = SCORE.Tally()
            for path in golds_of(name):
                tally.merge(AS_ONE.one("build/line-odds/dishtake", path)[1])
            total.merge(tally)
            show(name, tally)
    show("all", total)


def show(name, tally):
    figures = tally.figures()
    print(f"{name:22}", *(f"{figure.removesuffix('_f1')} {figures[figure]:.3f}" for figure in AS_ONE.FIGURES), flush=True)


def main():
    foods = read_foods(sys.argv[-1])
    if sys.argv[1] == "--test":
        test(foods)
    else:
        write([food for name in goldsets.READ for food in foods[name]])


if __name__ == "__main__":
    main()
