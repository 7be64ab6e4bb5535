#!/usr/bin/env python3
"""Writes the weights of src/split/name.def: what speaks for words that may be a dish's name.

  name_weights.py BUILD             (`make name-weights` does it; run it where the Makefile is, and build again after it)
  name_weights.py --test BUILD      what they are worth on sets left out: right titles by true borders, and by the program's

BUILD holds dishtake and name_units, which tests/tools/name_units.c makes. What is learned from are the dishes of the recordings with
gold under tests/ and of the talks of tests/split/shares, once with their true borders and once with the program's. Of all names
said of a dish one is chosen, or none: a conditional logistic regression with an L2 penalty. None is right where the title is that
would be made of what goes in. A dish of which nothing is right teaches nothing. Needs NumPy and SciPy (Debian package
python3-scipy). The same recordings give the same weights.
SPDX-License-Identifier: MIT
"""
import collections
import glob
import json
import os
import re
import subprocess
import sys
import tempfile
import zlib

import numpy
import scipy.optimize
import scipy.sparse

sys.path[:0] = ["tests/split", "tests/tools"]
import goldsets  # noqa: E402
import loader  # noqa: E402
import test_shares  # noqa: E402

TOGETHER = {"recordings/flawless": "recordings"}  # of the same cooks: left out together
TALK_FOLDS = 3
PENALTY = 20.0
# A dish with gold counts for so many of the talks of shares, whose lists of titles are short; one of the sets that were written to be
# hard to follow for fewer, since they have three times as many dishes as all others.
GOLD_COUNTS, HARD_COUNTS = 6.0, 2.0
HARD_SETS = {f"recordings/{name}" for name in ("ninth", "tenth", "eleventh", "twelfth", "thirteenth")}
LIKE = 0.8  # as tests/corpus/score has it
# "Black beans" is nearly black bean chilli; the whole name is to be chosen where it is said.
EXACTLY, NEARLY_COUNTS = 0.999, 0.4
WEIGHTS = "src/split/name.def"
NONE = "NONE=1"  # as name_units has it before a title that is made
KINDS = "DFXL"  # the columns of SAID, as name_units prints them
SCORE = loader.load("tests/corpus/score")

class Talk:
    """A transcript: the time of each caption, its true dishes (a number a caption, or None), and the titles of each dish."""

    def __init__(self, path, group, starts, labels, titles, pairs):
        self.path, self.group, self.starts, self.labels, self.titles, self.pairs = path, group, starts, labels, titles, pairs


def gold_labels(dishes, starts):
    """The dish of each caption, by the times of what is in them; between two of a dish's, and to its end, it is on."""
    votes = [collections.Counter() for _ in starts]
    for n, dish in enumerate(dishes):
        times = [item["at"] for key in ("ingredients", "temperatures", "durations", "steps") for item in dish.get(key) or []]
        for at in [dish["start"], *times, dish["end"] - 1]:
            votes[max(0, numpy.searchsorted(starts, at + 0.05, "right") - 1)][n] += 1
    labels = [vote.most_common(1)[0][0] if vote else None for vote in votes]
    known = [i for i, label in enumerate(labels) if label is not None]
    for before, after in zip(known, known[1:]):
        for i in range(before + 1, after):
            a, b = labels[before], labels[after]
            on_a, on_b = (dishes[n]["start"] - 0.1 <= starts[i] <= dishes[n]["end"] for n in (a, b))
            if on_a and (a == b or not on_b or i - before <= (after - before) // 2):
                labels[i] = a
            elif on_b:
                labels[i] = b
    return labels


def read_golds():
    for group in goldsets.READ:
        for path in sorted(glob.glob(f"tests/{group}/*.gold.json")):
            with open(path, encoding="utf-8") as file:
                gold = json.load(file)
            transcript = SCORE.transcript_of(path, gold)
            dishes = sorted(gold["dishes"], key=lambda dish: dish["start"])
            starts = [cue[0] for cue in SCORE.read_cues(transcript)]
            if not starts:
                continue
            yield Talk(transcript, TOGETHER.get(group, group), starts, gold_labels(dishes, starts),
                       [dish["titles"] for dish in dishes], lambda out, gold=gold: gold_pairs(gold, out))


def gold_pairs(gold, output):
    """(true dish, the program's dish by its place in the output) pairs, as the score pairs them."""
    given = SCORE.dishes_of(output)
    place = {dish["id"]: n for n, dish in enumerate(output["dishes"])}
    return [(i, place[given[j]["id"]]) for i, j in SCORE.pair_dishes(SCORE.dishes_of(gold, gold=True), given)]


def read_shares(folder):
    for path in sorted(glob.glob("tests/split/shares/*.tsv")):
        rows = test_shares.read(path)
        with open(path, encoding="utf-8") as file:
            heads = [line.rstrip("\n").split("\t") for line in file if line.startswith("#title")]
        names = {label: titles.split("|") for _, label, titles in heads}
        order = sorted(names)
        copy = os.path.join(folder, os.path.basename(path))
        with open(copy, "w", encoding="utf-8") as file:
            file.writelines(f"{start:.3f}\t{end:.3f}\t{text}\n" for start, end, _, text in rows)
        labels = [order.index(row[2]) if row[2] in names else None for row in rows]
        group = f"shares {zlib.crc32(os.path.basename(path).encode()) % TALK_FOLDS}"

        def pairs(output, rows=rows, labels=labels):
            shared = collections.Counter((label, dish) for row, label in zip(rows, labels) if label is not None
                                         for dish in [test_shares.dish_at(output["dishes"], row[0])] if dish is not None)
            return sorted(test_shares.pair(shared).items())
        yield Talk(copy, group, [row[0] for row in rows], labels, [names[label] for label in order], pairs)


def own_borders(talk, program):
    """The same talk with the program's borders: captions by the spans of the dishes found, with the titles of those they are."""
    run = subprocess.run([program, "extract", talk.path], capture_output=True, text=True, check=False)
    output = json.loads(run.stdout)
    labels = [test_shares.dish_at(output["dishes"], start) for start in talk.starts]
    titles = [None] * len(output["dishes"])
    for true, found in talk.pairs(output):
        titles[found] = talk.titles[true]
    return Talk(talk.path, talk.group, talk.starts, labels, titles, None)


class Dish:
    """A dish's possible names: words, what speaks for each (name -> count), whether each is right, and whether what is made is."""

    def __init__(self, group, titles):
        self.group, self.titles, self.words, self.counts, self.right, self.made = group, titles, [], [], [], 0.0

    def is_right(self, words):
        """1 for a title of the gold, less for one that is nearly it, 0 for any other."""
        likeness = max(SCORE.token_f1(SCORE.tokens(title), SCORE.tokens(words)) for title in self.titles)
        return 1.0 if likeness >= EXACTLY else NEARLY_COUNTS if likeness >= LIKE else 0.0

    def add(self, words, counts):
        if counts == NONE:
            self.made = self.is_right(words)
            return
        self.words.append(words)
        self.counts.append(dict((name, float(value)) for name, value in (item.rsplit("=", 1) for item in counts.split())))
        self.right.append(self.is_right(words))


def read_dishes(talks, units):
    with tempfile.NamedTemporaryFile("w", suffix=".tsv", encoding="utf-8") as file:
        for talk in talks:
            labels = (f"{at:.3f}:{'-' if n is None else n}" for at, n in zip(talk.starts, talk.labels))
            file.write(talk.path + "\t" + " ".join(labels) + "\n")
        file.flush()
        run = subprocess.run([units, file.name], capture_output=True, check=True)
    dishes = {(talk.path, n): Dish(talk.group, titles) for talk in talks for n, titles in enumerate(talk.titles) if titles}
    for line in run.stdout.decode("utf-8", "replace").splitlines():
        path, dish, words, counts = line.split("\t")
        if (path, int(dish)) in dishes:
            dishes[path, int(dish)].add(words, counts)
    return list(dishes.values())


def counts_for(dish):
    return 1.0 if dish.group.startswith("shares") else HARD_COUNTS if dish.group in HARD_SETS else GOLD_COUNTS


def teaches(dish):
    return dish.words and (any(dish.right) or dish.made)


def matrix(dishes, names):
    """A row a candidate, and one for none behind those of each dish; where each dish's rows begin."""
    rows, columns, values, begins, right = [], [], [], [0], []
    for dish in dishes:
        for counts in [*dish.counts, {"NONE": 1.0}]:
            for name, value in counts.items():
                if name in names:
                    rows.append(len(right))
                    columns.append(names[name])
                    values.append(value)
            right.append(0.0)
        right[begins[-1]:] = [float(r) for r in [*dish.right, dish.made]]
        begins.append(len(right))
    return scipy.sparse.csr_matrix((values, (rows, columns)), (len(right), len(names))), begins, numpy.array(right)


def fit(dishes, names):
    taught = [dish for dish in dishes if teaches(dish)]
    counts, begins, right = matrix(taught, names)
    turned, first = counts.T.tocsr(), begins[:-1]
    worth = numpy.array([counts_for(dish) for dish in taught])
    of = numpy.repeat(numpy.arange(len(first)), numpy.diff(begins))

    def loss(weights):
        scores = counts @ weights
        odds = numpy.exp(scores - numpy.maximum.reduceat(scores, first)[of])
        every, good = numpy.add.reduceat(odds, first), numpy.maximum(numpy.add.reduceat(odds * right, first), 1e-300)
        slope = turned @ ((odds / every[of] - odds * right / good[of]) * worth[of]) + PENALTY * weights
        return PENALTY * (weights @ weights) / 2 - (worth * numpy.log(good / every)).sum(), slope
    return scipy.optimize.minimize(loss, numpy.zeros(len(names)), jac=True, method="L-BFGS-B", options={"maxiter": 200}).x


def test(sets, names):
    both = [dish for dishes in sets for dish in dishes]
    for group in sorted({dish.group for dish in both}):
        weights = fit([dish for dish in both if dish.group != group], names)
        shown = []
        for dishes in sets:
            left_out = [dish for dish in dishes if dish.group == group and dish.words]
            counts, begins, _ = matrix(left_out, names)
            scores = counts @ weights
            best = [int(numpy.argmax(scores[a:b])) for a, b in zip(begins, begins[1:])]
            shown.append(sum([*dish.right, dish.made][n] > 0 for n, dish in zip(best, left_out)))
        print(f"{group:<20} {len([d for d in sets[0] if d.group == group])} dishes: {shown[0]} right, by our borders {shown[1]}")


def write(weights, names):
    with open(WEIGHTS, encoding="utf-8") as file:
        lines = file.readlines()
    for n, line in enumerate(lines):
        row = re.match(r'(SAID|TRAIT)\((\w+),[^"]*(".*)', line)
        if row:
            columns = [f"{kind}:{row[2]}" for kind in KINDS] if row[1] == "SAID" else [row[2]]
            said = ", ".join(f"{weights[names[c]] + 0.0 if c in names else 0.0:.2f}" for c in columns)
            lines[n] = f"{row[1]}({row[2]}, {said}, {row[3]}\n"
    with open(WEIGHTS, "w", encoding="utf-8") as file:
        file.writelines(lines)


def main():
    build = sys.argv[-1]
    with tempfile.TemporaryDirectory() as folder:
        talks = [*read_golds(), *read_shares(folder)]
        sets = [read_dishes(some, f"{build}/name_units")
                for some in (talks, [own_borders(talk, f"{build}/dishtake") for talk in talks])]
    every = sorted({name for dishes in sets for dish in dishes for counts in dish.counts for name in counts} | {"NONE"})
    names = {name: n for n, name in enumerate(every)}
    if "--test" in sys.argv:
        test(sets, names)
    else:
        write(fit([dish for dishes in sets for dish in dishes], names), names)


if __name__ == "__main__":
    main()
