#!/usr/bin/env python3
"""Writes line-odds.tsv and the weights of src/build/lineodds.def and talk.def: how likely a food that was spoken of is a line of the
recipe, and how likely a recording is only talk, in which nothing is cooked.

  line_odds.py LINE_UNITS           (`make line-odds` does it; run it where the Makefile is, and build again after it)
  line_odds.py --test LINE_UNITS    what they are worth on sets left out: F1 of foods, all dishes of a recording as one

LINE_UNITS is the program that tests/tools/line_units.c makes. What is learned from are the foods that the rules of src/build found in the
recordings with gold under tests/ (but not those of tests/recordings/thirteenth and unseen), those too that they leave out: one is a line
where the gold has that food at that time, each line of the gold for one food. It is a logistic regression with an L2 penalty, in which
each fact has a weight of its own and one more for each way in which the rules have the food (with its amount, without one, not at all).
How likely a recording is only talk is learned before that, from how many of its words have each tag; what the lines learn it as is
what the other seven eighths of the recordings say of it.
Left out together are sets whose writers are the same. --test writes the weights of each fold into the tree, builds with them in a folder
of its own, and restores them. Needs scikit-learn (Debian package python3-sklearn). The same recordings give the same weights.
SPDX-License-Identifier: MIT
"""
import collections
import re
import sys

from sklearn.feature_extraction import DictVectorizer
from sklearn.linear_model import LogisticRegression
from sklearn.preprocessing import StandardScaler

sys.path.insert(0, "tests/tools")
import deffile  # noqa: E402
import goldsets  # noqa: E402
import leftout  # noqa: E402
import loader  # noqa: E402
import logodds  # noqa: E402
import units  # noqa: E402

WAYS = ("known", "bare", "asked")
SEEN, SEEN_WORD = 5, 8  # times, at least
PENALTY = 8.0
SMALLEST = 0.03
TALK_PENALTY = 3.0
FOLDS, WORDS_LEAST, COOKING = 8, 150, -9.0
TALK = "src/build/talk.def"
TABLE, WEIGHTS = "grammars/en/line-odds.tsv", "src/build/lineodds.def"
KINDS, WORDS = ("BEFORE", "BEHIND", "SCOPE", "SORT"), ("near", "next", "food", "rule")
AS_ONE = loader.load("tests/accuracy/as_one.py")
SCORE = AS_ONE.score

# What is learned from --------------------------------------------------------------------------------------------


class Recording:
    """How many words in a hundred have each tag, and the foods that are spoken of."""
    def __init__(self, path, lines):
        (_, words, *tags), = (line.split("\t") for line in lines if line.startswith("T\t"))
        self.foods = [Food(line) for line in lines if not line.startswith("T\t")]
        self.words = int(words)
        self.tags = {tag: 100 * int(count) / self.words for tag, count in (cell.split(" ") for cell in tags)}
        self.talk = not SCORE.load(path).get("dishes")


class Food:
    def __init__(self, line):
        self.line, at, name, self.way, beside, *self.facts = line.split("\t")
        self.beside, self.right = beside == "1", False
        self.entry = SCORE.line_of({"food": name, "at": float(at)}, {})


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


def read_recordings(program):
    """The recordings of each set; without what is served beside a dish, which no gold's lines are counted for."""
    recordings = {}
    for name in goldsets.READ:
        paths = {SCORE.transcript_of(path, SCORE.load(path)): path for path in goldsets.golds_of(name)}
        recordings[name] = [Recording(path, lines) for path, lines in units.lines_of(program, paths)]
        for recording, path in zip(recordings[name], paths.values()):
            mark_right(recording.foods, lines_of_gold(path))
            recording.foods = [food for food in recording.foods if not food.beside]
    return recordings


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
    rows = [{pair: 1 for pair in pairs_of(food) if pair in kept} for food in foods]
    found, intercept = logodds.learned(rows, [food.right for food in foods], PENALTY)
    weights = {fact: [found.get((fact, "all"), 0) + found.get((fact, way), 0) for way in WAYS] for fact, _ in kept}
    weights["ALWAYS"] = [weight + intercept for weight in weights["ALWAYS"]]
    return {fact: [0 if abs(weight) < SMALLEST else weight for weight in ways] for fact, ways in weights.items()}


def write_table(weights):
    rows = []
    for fact, ways in weights.items():
        where, _, words = fact.partition(" ")
        if where in WORDS and words and round(100 * ways[0]):
            rows.append((words, where, round(100 * ways[0])))
    logodds.write_table(TABLE, "words", sorted(rows))


def beside_rows(weights):
    """The rows of lineodds.def that have no condition: what was seen too rarely has none."""
    rows = []
    for fact, ways in weights.items():
        kind, _, name = fact.partition(" ")
        if kind in KINDS and any(ways):
            rows.append((KINDS.index(kind), f"{kind}({name}, {deffile.numbers(ways)})\n"))
    return [row for _, row in sorted(rows)]


def write_def(weights):
    with open(WEIGHTS, encoding="utf-8") as file:
        lines = [deffile.filled(line, "FACT", weights, 14) for line in file if not line.startswith(tuple(f"{kind}(" for kind in KINDS))]
    end = lines.index("#undef FACT\n")
    with open(WEIGHTS, "w", encoding="utf-8") as file:
        file.writelines(lines[:end] + beside_rows(weights) + lines[end:])


def fit_talk(recordings):
    """(what always counts, of each tag)"""
    scale = StandardScaler()
    columns = DictVectorizer(sparse=False)
    table = scale.fit_transform(columns.fit_transform([recording.tags for recording in recordings]))
    fit = LogisticRegression(C=1 / TALK_PENALTY, solver="liblinear", max_iter=500, random_state=0)
    fit.fit(table, [recording.talk for recording in recordings])
    odds = fit.coef_[0] / scale.scale_
    return fit.intercept_[0] - sum(odds * scale.mean_), dict(zip(columns.feature_names_, odds))


def points_of_talk(recording, always, odds):
    if recording.words < WORDS_LEAST:
        return COOKING
    return always + sum(odds.get(tag, 0) * count for tag, count in recording.tags.items())


def learn_talk(recordings):
    """Gives their foods the facts that tell how likely its recording is only talk, learned of other recordings."""
    with open(WEIGHTS, encoding="utf-8") as file:
        least = {name: float(odds) for name, odds in re.findall(r"^FACT\((TALK_\d+),.* w\.talk > (-?\d+),", file.read(), re.M)}
    for fold in range(FOLDS):
        learned = fit_talk([recording for n, recording in enumerate(recordings) if n % FOLDS != fold])
        for recording in recordings[fold::FOLDS]:
            points = points_of_talk(recording, *learned)
            told = [name for name, odds in least.items() if points > odds]
            for food in recording.foods:
                food.facts = [fact for fact in food.facts if fact not in least] + told
    return fit_talk(recordings)


def write_talk(always, odds):
    with open(TALK, encoding="utf-8") as file:
        lines = [line for line in file if not line.startswith(("ALWAYS(", "TAGGED("))]
    rows = [f"ALWAYS({always:.2f})\n", *(f"TAGGED({tag}, {weight:.3f})\n" for tag, weight in sorted(odds.items()) if round(weight, 3))]
    end = lines.index("#undef ALWAYS\n")
    with open(TALK, "w", encoding="utf-8") as file:
        file.writelines(lines[:end] + rows + lines[end:])


def write(recordings):
    write_talk(*learn_talk(recordings))
    weights = fit_weights([food for recording in recordings for food in recording.foods])
    write_table(weights)
    write_def(weights)


# What they are worth ---------------------------------------------------------------------------------------------

def test(recordings):
    with leftout.restored(TABLE, WEIGHTS, TALK):
        for name, tally in leftout.each_tally(AS_ONE, recordings, write, "build/line-odds"):
            figures = tally.figures()
            print(f"{name:22}", *(f"{figure.removesuffix('_f1')} {figures[figure]:.3f}" for figure in AS_ONE.FIGURES), flush=True)


def main():
    recordings = read_recordings(sys.argv[-1])
    if sys.argv[1] == "--test":
        test(recordings)
    else:
        write([recording for name in goldsets.READ for recording in recordings[name]])


if __name__ == "__main__":
    main()
