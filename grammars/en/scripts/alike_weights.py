#!/usr/bin/env python3
"""Writes the weights of src/split/alike.def: what speaks for it that two dishes that were found are one.

  alike_weights.py UNITE_UNITS          (`make alike-weights` does it; run it where the Makefile is, and build again after it)
  alike_weights.py --test UNITE_UNITS   what they are worth on sets left out

UNITE_UNITS is the program that tests/tools/unite_units.c makes. What is learned from are the recordings with gold under tests/ whose
dishes are known (goldsets.ALL) and the talks of tests/split/shares: two dishes that were found are one where most of what the
gold has in both is of one of its dishes. It is a logistic regression with an L2 penalty. A pair counts the more the more of the gold
stands in the smaller one, and one of a set that is plain for PLAIN of another. --test prints, for each set left out with those of the
same writers, which share of lines and steps goes to its dish and F1 of starts, without uniting and with it. Needs scikit-learn and
SciPy (Debian packages python3-sklearn, python3-scipy). The same recordings give the same weights.
SPDX-License-Identifier: MIT
"""
import collections
import glob
import json
import os
import sys
import tempfile

import numpy
from scipy.optimize import linear_sum_assignment
from sklearn.linear_model import LogisticRegression

sys.path.insert(0, "tests/tools")
import deffile  # noqa: E402
import goldsets  # noqa: E402
import turn_words  # noqa: E402
import units  # noqa: E402

WEIGHTS = "src/split/alike.def"
SHARES = "split/shares"  # talks of which each caption has its dish
BRIEF = "split/shares/brief"  # ... by whoever tries a tool out
# Plain recordings are what cooks film most; a pair of one counts for so many of recordings that are hard to follow. Of those the
# weights of borders have not seen `unseen`, where more is cut than in the others, as in recordings of tomorrow.
PLAIN_SETS = ("corpus", "recordings", "recordings/flawless", "recordings/fourteenth", "recordings/fifteenth", "recordings/plain", BRIEF)
PLAIN, UNSEEN, OTHER = 8.0, 2.0, 1.0
PENALTY = 20.0
SLACK = 0.3  # seconds: a line's time may be that of its caption
START_SLACK = 12.5


class Talk:
    """A recording: the stretches of the dishes that were found, and pairs of these."""

    def __init__(self, name, items, starts):
        """`items`: (when it is said, which dish it is of) of each line and step; `starts`: when the dishes begin."""
        self.name, self.items, self.starts, self.stretches, self.pairs = name, items, starts, [], {}

    def add(self, line):
        kind, *fields = line.split("\t")
        if kind == "pair":
            self.pairs[int(fields[0]), int(fields[1])] = {
                name: float(value) for name, value in (part.split("=") for part in fields[2].split())}
        elif kind != "talked":
            self.stretches.append((int(kind), float(fields[0]), float(fields[1])))

    def dish_at(self, at):
        return next((dish for dish, start, end in reversed(self.stretches) if start - SLACK <= at <= end + SLACK), None)

    def owners(self):
        """Of each dish (the dish of the gold, how many of its lines and steps stand there)."""
        votes = collections.defaultdict(collections.Counter)
        for at, dish in self.items:
            votes[self.dish_at(at)][dish] += 1
        return {dish: counts.most_common(1)[0] for dish, counts in votes.items() if dish is not None}

    def measure(self):
        """(lines and steps in their dish, all; starts that are right, found, wanted)"""
        numbers = sorted({dish for dish, _, _ in self.stretches})
        table = numpy.zeros((len(self.starts), len(numbers)))
        for at, dish in self.items:
            if (here := self.dish_at(at)) is not None:
                table[dish, numbers.index(here)] += 1
        hits = table[linear_sum_assignment(-table)].sum() if table.size else 0
        found = [min(start for dish, start, _ in self.stretches if dish == number) for number in numbers]
        wanted = self.starts
        near = numpy.array([[abs(a - b) <= START_SLACK for b in found] for a in wanted]).reshape(len(wanted), len(found))
        right = near[linear_sum_assignment(-near.astype(float))].sum() if near.size else 0
        return numpy.array([hits, len(self.items), right, len(found), len(wanted)])


def talk_of_gold(name, path):
    """(transcript, its Talk)"""
    with open(path, encoding="utf-8") as file:
        gold = json.load(file)
    items = [(item["at"], n) for n, dish in enumerate(gold["dishes"]) for item in dish["ingredients"] + dish["steps"]]
    return os.path.join(os.path.dirname(path), gold["transcript"]), Talk(name, items, [dish["start"] for dish in gold["dishes"]])


def talk_of_share(name, captions):
    numbers, starts = {}, []
    for start, _, label, _ in captions:
        if label != "-" and label not in numbers:
            numbers[label] = len(numbers)
            starts.append(start)
    return Talk(name, [(start, numbers[label]) for start, _, label, _ in captions if label != "-"], starts)


def list_talks(folder):
    """By transcript; those of labelled talks are written to the folder."""
    talks = dict(talk_of_gold(name, path) for name in goldsets.ALL for path in goldsets.golds_of(name))
    for path in sorted(glob.glob("tests/split/shares/*.tsv")):
        captions, copy = turn_words.test_shares.read(path), os.path.join(folder, os.path.basename(path))
        turn_words.write_share(copy, captions)
        talks[copy] = talk_of_share(BRIEF if os.path.basename(path).startswith("brief") else SHARES, captions)
    return talks


def read(program):
    with tempfile.TemporaryDirectory() as folder:
        talks = list_talks(folder)
        for talk, lines in units.lines_of(program, talks):
            for line in lines:
                talk.add(line)
    return list(talks.values())


def counts_for(name):
    return PLAIN if name in PLAIN_SETS else UNSEEN if name == "recordings/unseen" else OTHER


class Pairs:
    """All pairs of dishes that stand for one of the gold each: what speaks for them, whether they are one, how much they count."""

    def __init__(self, talks, names):
        rows, self.one, self.counts, self.group = [], [], [], []
        for talk in talks:
            owners = talk.owners()
            for (a, b), evidence in talk.pairs.items():
                if a in owners and b in owners:
                    rows.append([evidence.get(name, 0.0) for name in names])
                    self.one.append(owners[a][0] == owners[b][0])
                    self.counts.append(counts_for(talk.name) * (1 + min(owners[a][1], owners[b][1])) ** 0.5)
                    self.group.append(goldsets.SAME_COOKS.get(talk.name, talk.name))
        self.rows, self.one, self.counts, self.group = map(numpy.array, (rows, self.one, self.counts, self.group))

    def fit(self, some):
        """A weight for each name."""
        scale = self.rows[some].std(0)
        scale[scale < 0.05] = 1
        fit = LogisticRegression(C=1 / PENALTY, fit_intercept=False, max_iter=3000)
        fit.fit(self.rows[some] / scale, self.one[some], sample_weight=self.counts[some])
        return fit.coef_[0] / scale


# What they are worth ---------------------------------------------------------------------------------------------

def united(talk, names, weights):
    """The recording as src/split/unite.c leaves it: the surest pair first, and all between two groups on average alike."""
    score = {pair: sum(weights[n] * evidence.get(name, 0.0) for n, name in enumerate(names)) for pair, evidence in talk.pairs.items()}
    first = {dish: dish for dish, _, _ in talk.stretches}
    for pair in sorted((pair for pair in score if score[pair] > 0), key=lambda pair: -score[pair]):
        groups = {first[pair[0]], first[pair[1]]}
        if len(groups) == 2 and sum(score[other] for other in score if {first[other[0]], first[other[1]]} == groups) > 0:
            first = {dish: min(groups) if group in groups else group for dish, group in first.items()}
    copy = Talk(talk.name, talk.items, talk.starts)
    copy.stretches = [(first[dish], start, end) for dish, start, end in talk.stretches]
    return copy


def shown(talks):
    hits, items, right, found, wanted = sum(talk.measure() for talk in talks)
    return f"share {hits / items:.3f} F1 {2 * right / (found + wanted):.3f}"


def test(talks, names, pairs):
    for group in dict.fromkeys(pairs.group):
        weights = pairs.fit(pairs.group != group)
        held = [talk for talk in talks if goldsets.SAME_COOKS.get(talk.name, talk.name) == group]
        print(f"{group:24} {shown(held)}, united {shown([united(talk, names, weights) for talk in held])}")


def main():
    names = deffile.names_of(WEIGHTS, "ALIKE")
    talks = read(sys.argv[-1])
    pairs = Pairs(talks, names)
    if sys.argv[1] == "--test":
        test(talks, names, pairs)
        return
    weights = pairs.fit(numpy.ones(len(pairs.one), bool))
    deffile.fill(WEIGHTS, "ALIKE", dict(zip(names, zip(weights))), 18)


if __name__ == "__main__":
    main()
