#!/usr/bin/env python3
"""Writes the rows of turn-words.tsv that hold "within" a sentence and the weights of src/split/talked.def: what speaks for it that in a
whole recording nothing is cooked.

  talked_weights.py UNITE_UNITS TALK_UNITS          (`make talked-weights` does it; run it where the Makefile is, and build again after it)
  talked_weights.py --test UNITE_UNITS TALK_UNITS   what they are worth on recordings left out, a tenth at a time

UNITE_UNITS and TALK_UNITS are the programs that tests/tools/unite_units.c and talk_units.c make. What is learned from are the recordings
with gold under tests/ (goldsets.ALL) in which dishes are found, whether the gold has any or none, and the talks of tests/split/shares, which
all have one and are short. Both are logistic regressions
with an L2 penalty: the points of runs of one and two words in what was taken for dishes, a sentence on average; and the weights,
one of which is that of the words' points, each tenth's learned from the others (stacked generalization, Wolpert 1992). Recordings without a dish are few, and
count for more. Needs scikit-learn (Debian package python3-sklearn). The same recordings give the same table and weights.
SPDX-License-Identifier: MIT
"""
import collections
import glob
import json
import os
import sys
import tempfile
import zlib

import numpy
from sklearn.feature_extraction import DictVectorizer
from sklearn.linear_model import LogisticRegression

sys.path.insert(0, "tests/tools")
import deffile  # noqa: E402
import goldsets  # noqa: E402
import turn_words  # noqa: E402
import units  # noqa: E402

TABLE, WEIGHTS = "grammars/en/turn-words.tsv", "src/split/talked.def"
FOLDS = 10
SEEN = 25  # recordings, at least
SMALLEST = 3  # hundredths: less is left out
POINT = 30.0  # of the average, so that the penalty is of use
WORDS_PENALTY, WORDS_TALK = 1000.0, 8.0  # a recording without a dish counts for so many
PENALTY, TALK = 20.0, 4.0
UNSURE = 5.0  # as src/split/talked.c has it
SLACK = 0.1  # seconds


class Talk:
    """A recording in which dishes were found: what speaks for it that it is only talk, how often each run of words stands in them."""

    def __init__(self, path, only_talk, lines):
        self.only_talk = only_talk
        *others, last = lines
        stretches = [line.split("\t")[1:] for line in others if not line.startswith("pair\t")]
        self.stretches = [(float(start) - SLACK, float(end) + SLACK) for start, end in stretches]
        self.evidence = {name: float(value) for name, value in (part.split("=") for part in last.split("\t")[1].split())}
        self.fold = zlib.crc32(os.path.basename(path).encode()) % FOLDS
        self.counts, self.sentences = collections.Counter(), 0

    def add(self, time, words):
        if any(start <= time <= end for start, end in self.stretches):
            self.sentences += 1
            self.counts.update(words)
            self.counts.update(" ".join(pair) for pair in zip(words, words[1:]))

    def averages(self, kept):
        return {run: POINT * times / (self.sentences + UNSURE) for run, times in self.counts.items() if run in kept}


def list_talks(folder):
    """Whether it is only talk, by transcript; talks of shares are written to the folder."""
    silent = {}
    for name in goldsets.ALL:
        for path in goldsets.golds_of(name):
            with open(path, encoding="utf-8") as file:
                gold = json.load(file)
            silent[os.path.join(os.path.dirname(path), gold["transcript"])] = not gold["dishes"]
    for path in sorted(glob.glob("tests/split/shares/*.tsv")):
        copy = os.path.join(folder, os.path.basename(path))
        turn_words.write_share(copy, turn_words.test_shares.read(path))
        silent[copy] = False
    return silent


def read(unite_units, talk_units):
    with tempfile.TemporaryDirectory() as folder:
        silent = list_talks(folder)
        paths = {path: path for path in silent}
        talks = {path: Talk(path, silent[path], lines) for path, lines in units.lines_of(unite_units, paths) if lines}
        for path, lines in units.lines_of(talk_units, paths):
            for line in lines if path in talks else ():
                time, _, words = line.split("\t")
                talks[path].add(float(time), words.split())
    return list(talks.values())


def fit(rows, wanted, penalty, talk, intercept):
    model = LogisticRegression(C=1 / penalty, max_iter=3000, solver="lbfgs", fit_intercept=intercept)
    return model.fit(rows, wanted, sample_weight=numpy.where(wanted, talk, 1.0))


class Words:
    """The points of all runs of words, learned from some recordings."""

    def __init__(self, talks):
        count = collections.Counter(run for talk in talks for run in talk.counts)
        self.kept = {run for run, times in count.items() if times >= SEEN}
        self.columns = DictVectorizer().fit([{run: 1 for run in sorted(self.kept)}])
        table = self.columns.transform([talk.averages(self.kept) for talk in talks])
        model = fit(table, numpy.array([talk.only_talk for talk in talks]), WORDS_PENALTY, WORDS_TALK, True)
        points = numpy.round(100 * POINT * model.coef_[0])
        self.points = {run: int(point) for run, point in zip(self.columns.feature_names_, points) if abs(point) >= SMALLEST}

    def of(self, talk):
        return sum(self.points.get(run, 0) * times for run, times in talk.counts.items()) / 100 / (talk.sentences + UNSURE)


class Weights:
    """A weight for each piece of evidence. `words`: those of each recording."""

    def __init__(self, names, talks, words):
        self.names = names
        rows = numpy.array([self.row(talk, one) for talk, one in zip(talks, words)])
        scale = rows.std(0)
        scale[scale < 1e-6] = 1
        model = fit(rows / scale, numpy.array([talk.only_talk for talk in talks]), PENALTY, TALK, False)
        self.weights = model.coef_[0] / scale

    def row(self, talk, words):
        return [words if name == "WORDS" else talk.evidence[name] for name in self.names]

    def score(self, talk, words):
        return float(numpy.dot(self.row(talk, words), self.weights))


def stacked(talks):
    """The words' points of each recording, learned from the other folds."""
    found = {}
    for fold in sorted({talk.fold for talk in talks}):
        words = Words([talk for talk in talks if talk.fold != fold])
        found.update({talk: words.of(talk) for talk in talks if talk.fold == fold})
    return [found[talk] for talk in talks]


def test(talks, names):
    right, lost = 0, 0
    for fold in sorted({talk.fold for talk in talks}):
        others = [talk for talk in talks if talk.fold != fold]
        words, weights = Words(others), Weights(names, others, stacked(others))
        for talk in (talk for talk in talks if talk.fold == fold):
            told = weights.score(talk, words.of(talk)) > 0
            right += told and talk.only_talk
            lost += told and not talk.only_talk
    silent = sum(talk.only_talk for talk in talks)
    print(f"{right} of {silent} recordings without a dish are seen to be talk, and {lost} of {len(talks) - silent} with dishes")


def write_words(words):
    with open(TABLE, encoding="utf-8") as file:
        lines = [line for line in file if line.split("\t")[1:2] != ["within"]]
    lines += [f"{run}\twithin\t\t\t{points}\n" for run, points in sorted(words.points.items())]
    with open(TABLE, "w", encoding="utf-8") as file:
        file.writelines(lines)


def main():
    talks, names = read(*sys.argv[-2:]), deffile.names_of(WEIGHTS, "TALKED")
    if sys.argv[1] == "--test":
        test(talks, names)
        return
    weights = Weights(names, talks, stacked(talks))
    deffile.fill(WEIGHTS, "TALKED", dict(zip(names, zip(weights.weights))), 12, 6)
    write_words(Words(talks))


if __name__ == "__main__":
    main()
