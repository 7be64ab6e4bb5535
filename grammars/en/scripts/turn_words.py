#!/usr/bin/env python3
"""Writes turn-words.tsv: how much the words around a place speak for a dish that begins there, or one that goes on; and prints the
weights for src/split/border.def, move.def and both.def.

  turn_words.py TALK_UNITS > turn-words.tsv            (`make turn-words` does it; run it where the Makefile is)
  turn_words.py --test TALK_UNITS                      what both are worth on recordings left out

TALK_UNITS is the program that tests/tools/talk_units.c makes. What is learned from are the recordings with gold under tests/ (but not
those of tests/recordings/unseen) and the talks of tests/split/shares, but for brief-*: with these plain recordings are cut worse.

All are logistic regressions with an L2 penalty. The points, in hundredths of log odds, are the weights of runs of words ("near  now
the LEAD") that stand often enough. The weights are two more, of sentences with which a dish begins and of those with which one of the
dishes so far goes on; the words' sums are pieces of their evidence, each recording's from points that were learned without its set
(stacked generalization, Wolpert 1992), since a table knows the recordings that it was learned from. Needs scikit-learn (Debian package python3-sklearn). The same recordings give the same table.
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
from sklearn.feature_extraction import DictVectorizer
from sklearn.linear_model import LogisticRegression

sys.path.insert(0, "tests/split")
sys.path.insert(0, "tests/tools")
import deffile  # noqa: E402
import goldsets  # noqa: E402
import test_shares  # noqa: E402

# Sets whose cooks or writers are the same are left out together.
TOGETHER = {"recordings/flawless": "recordings", "recordings/second": "turns", "recordings/third": "turns",
            "recordings/fourth": "turns"}
TALK_FOLDS = 6
# As src/split/turnword.c looks them up.
NEAR, LATER, BEFORE, RUN = 7, 28, 8, 3
SEEN = 6  # times, at least
SMALLEST = 3  # hundredths: less is left out
TABLE = "grammars/en/turn-words.tsv"
WORDS_PENALTY, BORDER_WEIGHT = 0.1, 3.0
WORDS_COUNTS = {"corpus": 8.0, "recordings": 5.0}  # a sentence of these counts for so many of a talk
WORDS_GOLD = 2.0  # ... of other recordings with gold
# As src/split/evidence.c has it.
LEAST, MOST, NONE, UNIT = 4.0, 8.0, 2.0, 0.5
PENALTY = 40.0  # of the weights; a fifth of it for the words' sums
# How much a sentence counts: recordings with gold are what the program is for; the talks, and the recordings of the last sets, are
# many, and these are harder to follow than most.
COUNTS = {"corpus": 80.0, "recordings": 60.0}
COUNTS_GOLD, COUNTS_TALK = 5.0, 0.5
NEW, BACK = 1, 2


# What is learned from --------------------------------------------------------------------------------------------

def pairs(text):
    return {name: float(value) for name, value in (pair.split("=") for pair in text.split())}


class Talk:
    """A recording: for each sentence its time, evidence, units, whether a dish begins (NEW), goes on (BACK) or neither, and the
    dish's number, "-" for none; None, "?": no telling."""

    def __init__(self, name, group):
        self.name, self.group, self.times, self.evidence, self.units, self.labels = name, group, [], [], [], []
        self.dishes = []

    def add(self, line):
        time, evidence, units = line.rstrip("\n").split("\t")
        self.times.append(float(time))
        self.evidence.append(pairs(evidence))
        self.units.append(units.split())


def read_units(program, files):
    """Talks by the name of their file."""
    run = subprocess.run([program, *files], capture_output=True, text=True, check=True)
    talks = {}
    for line in run.stdout.splitlines():
        if line.startswith("# ") and "\t" not in line:
            talk = talks[line[2:]] = Talk(line[2:], files[line[2:]])
        else:
            talk.add(line)
    return talks


def label_talk(talk, captions):
    """By the caption that a sentence begins in: (start, end, label, text)."""
    seen, before, n = {}, None, 0
    for time in talk.times:
        while n + 1 < len(captions) and captions[n + 1][0] <= time + 0.05:
            n += 1
        label = captions[n][2]
        turns = label not in ("-", before)
        talk.labels.append((BACK if label in seen else NEW) if turns else 0)
        talk.dishes.append("-" if label == "-" else seen.setdefault(label, len(seen)))
        if turns:
            before = label


def place_of(talk, at):
    return max(0, sum(time <= at + 0.3 for time in talk.times) - 1)


def label_gold(talk, gold):
    """By the lines and steps of its dishes: a dish begins where the gold says so, and goes on where its next line stands after
    another dish's. Between the two nothing is known."""
    dishes = sorted(gold["dishes"], key=lambda dish: dish["start"])
    items = sorted((item["at"], n) for n, dish in enumerate(dishes) for item in dish["ingredients"] + dish["steps"])
    talk.labels = [0] * len(talk.times)
    seen, before, last = set(), None, -1.0
    for at, dish in items:
        if dish != before:
            begins = dish not in seen and last < dishes[dish]["start"] <= at
            place = place_of(talk, dishes[dish]["start"] if begins else at)
            for n, time in enumerate(talk.times):
                if last < time < at and n != place and not begins and talk.labels[n] == 0:
                    talk.labels[n] = None
            talk.labels[place] = BACK if dish in seen else NEW
            seen.add(dish)
            before = dish
        last = at


def dishes_of_gold(talk, gold):
    """The number of each sentence's dish, in the order in which they begin: of the sentences with its lines and steps and of those between
    two of them; "-" before the first dish and behind the last."""
    dishes = sorted(gold["dishes"], key=lambda dish: dish["start"])
    votes = [collections.Counter() for _ in talk.times]
    for n, dish in enumerate(dishes):
        for item in dish["ingredients"] + dish["steps"]:
            votes[place_of(talk, item["at"])][n] += 1
        start = place_of(talk, dish["start"])
        votes[start][n] += not votes[start]
    owners = [vote.most_common(1)[0][0] if vote else None for vote in votes]
    known = [n for n, owner in enumerate(owners) if owner is not None]
    for a, b in zip(known, known[1:]):
        if owners[a] == owners[b]:
            owners[a:b] = [owners[a]] * (b - a)
    outside = range(known[0], known[-1] + 1) if known else range(0)
    numbers = {}
    talk.dishes = [numbers.setdefault(owner, len(numbers)) if owner is not None else "?" if n in outside else "-"
                   for n, owner in enumerate(owners)]


def write_share(path, captions):
    with open(path, "w", encoding="utf-8") as file:
        for start, end, _, text in captions:
            file.write(f"{start:.3f}\t{end:.3f}\t{text}\n")


def list_talks(folder):
    """(golds, captions of labelled talks, groups), each by transcript; those of talks are written to the folder."""
    golds, shares, files = {}, {}, {}
    for name in goldsets.BORDERS_READ:
        for path in sorted(glob.glob(f"tests/{name}/*.gold.json")):
            with open(path, encoding="utf-8") as file:
                gold = json.load(file)
            transcript = os.path.join(os.path.dirname(path), gold["transcript"])
            files[transcript] = TOGETHER.get(name, name)
            golds[transcript] = gold
    for path in sorted(glob.glob("tests/split/shares/*.tsv")):
        if os.path.basename(path).startswith("brief"):
            continue
        captions, copy = test_shares.read(path), os.path.join(folder, os.path.basename(path))
        write_share(copy, captions)
        files[copy] = f"talks {zlib.crc32(os.path.basename(path).encode()) % TALK_FOLDS}"
        shares[copy] = captions
    return golds, shares, files


def read_moves(program, folder, talks):
    """What could have been done at each sentence, after what was: (sentence, dish or None for one that begins, evidence)."""
    labels = os.path.join(folder, "labels")
    with open(labels, "w", encoding="utf-8") as file:
        file.writelines(f"{dish}\n" for talk in talks.values() for dish in talk.dishes)
    run = subprocess.run([program, "--labels", labels, *talks], capture_output=True, text=True, check=True)
    for line in run.stdout.splitlines():
        if line.startswith("# ") and "\t" not in line:
            talk = talks[line[2:]]
            talk.moves = []
        else:
            n, dish, evidence = line.split("\t")
            talk.moves.append((int(n), None if dish == "new" else int(dish), pairs(evidence)))


def read_talks(program):
    with tempfile.TemporaryDirectory() as folder:
        golds, shares, files = list_talks(folder)
        talks = read_units(program, files)
        for name, talk in talks.items():
            if name in golds:
                label_gold(talk, golds[name])
                dishes_of_gold(talk, golds[name])
            else:
                label_talk(talk, shares[name])
        read_moves(program, folder, talks)
    return list(talks.values())


# Words -----------------------------------------------------------------------------------------------------------

def runs(place, units, most):
    return {(place, " ".join(units[i:i + n])) for n in range(1, most + 1) for i in range(len(units) - n + 1)}


def rows_at(units, at):
    """The rows that hold at a place among all units of a recording."""
    near, later, before = units[at:at + NEAR], units[at + NEAR:at + LATER], units[max(0, at - BEFORE):at]
    found = runs("near", near, RUN) | runs("later", later, 1) | runs("before", before, RUN)
    for n in range(1, RUN + 1):
        found |= {("first", " ".join(near[:n]))} if n <= len(near) else set()
        found |= {("last", " ".join(before[-n:]))} if n <= len(before) else set()
    return found


def rows_of(talk):
    units, rows = [], []
    starts = []
    for sentence in talk.units:
        starts.append(len(units))
        units += sentence
    for at in starts:
        rows.append(rows_at(units, at))
    return rows


class Sentences:
    """All sentences of all talks, side by side."""

    def __init__(self, talks, names):
        self.talks, self.names = talks, names
        self.group = numpy.array([talk.group for talk in talks for _ in talk.times])
        self.counts = numpy.array([1.0 if group.startswith("talks") else WORDS_COUNTS.get(group, WORDS_GOLD) for group in self.group])
        self.labels = numpy.array([-1 if label is None else label for talk in talks for label in talk.labels])
        self.evidence = numpy.array([[one.get(name, 0.0) for name in names] for talk in talks for one in talk.evidence])
        self.rows = [rows for talk in talks for rows in rows_of(talk)]
        self.sure = numpy.array([sure for talk in talks for sure in no_neighbours(talk.labels)])
        count = collections.Counter(row for rows, sure in zip(self.rows, self.sure) if sure for row in rows)
        self.columns = DictVectorizer().fit([{row: 1 for row in sorted(count) if count[row] >= SEEN}])
        self.table = self.columns.transform([{row: 1 for row in rows if count[row] >= SEEN} for rows in self.rows])
        self.models = {}

    def model(self, out, label):
        """The points of all rows, learned without some groups: (always, one for each column)."""
        key = (frozenset(out), label)
        if key not in self.models:
            some = self.sure & ~numpy.isin(self.group, sorted(out))
            wanted = self.labels[some] == label
            fit = LogisticRegression(C=WORDS_PENALTY, max_iter=300, solver="liblinear", random_state=0)
            fit.fit(self.table[some], wanted, sample_weight=numpy.where(wanted, BORDER_WEIGHT, 1.0) * self.counts[some])
            points = numpy.round(100 * fit.coef_[0])
            points[numpy.abs(points) < SMALLEST] = 0
            self.models[key] = round(100 * fit.intercept_[0]), points
        return self.models[key]

    def speak(self, out, label, some):
        always, points = self.model(out, label)
        sums = (always + self.table[some] @ points) / 100
        return numpy.maximum(numpy.minimum(sums + LEAST, MOST), -NONE) * UNIT

    def with_words(self, out):
        """The evidence with the words' sums in it, those of each group learned without it."""
        filled = self.evidence.copy()
        for group in sorted(set(self.group)):
            some = self.group == group
            for name, label in (("WORDS_NEW", NEW), ("WORDS_BACK", BACK)):
                filled[some, self.names.index(name)] = self.speak({group} | set(out), label, some)
        return filled


def no_neighbours(labels):
    """What stands right beside a border is as good a place for it, and is not learned as none."""
    return [label is not None and (label > 0 or not any(other for other in labels[max(0, n - 1):n + 2] if other))
            for n, label in enumerate(labels)]


# Weights ---------------------------------------------------------------------------------------------------------

class Moves:
    """Sentences with which a dish could begin (BACK: with which one of those that are left could go on), and whether it does."""

    def __init__(self, all_, names, products, label, out=()):
        filled, rows, self.wanted, self.group = all_.with_words(out), [], [], []
        pieces = {("AT", name): n for n, name in enumerate(all_.names)}
        pieces |= {("OF", name): len(all_.names) + n for n, name in enumerate(names)}
        one, other = ([pieces[row[n:n + 2]] for row in products] for n in (0, 2))
        before = 0
        for talk in all_.talks:
            seen, sure = set(), no_neighbours(talk.labels)
            for n, dish, evidence in talk.moves:
                here = talk.dishes[n]
                if dish is None:
                    wanted = here != "-" and here not in seen
                    seen.add(here)
                else:
                    wanted = here == dish
                if (dish is None) == (label == NEW) and (wanted or sure[n]):
                    row = numpy.concatenate([filled[before + n], [evidence.get(name, 0.0) for name in names]])
                    rows.append(numpy.concatenate([row, row[one] * row[other]]))
                    self.wanted.append(wanted)
                    self.group.append(talk.group)
            before += len(talk.times)
        self.evidence, self.wanted, self.group = numpy.array(rows), numpy.array(self.wanted), numpy.array(self.group)


def fit_weights(names, moves, some):
    """A weight for each name."""
    scale = moves.evidence[some].std(0)
    scale[scale < 0.05] = 1
    scale /= [5 ** 0.5 if name.startswith("WORDS_") else 1 for name in names]
    counts = [COUNTS_TALK if group.startswith("talks") else COUNTS.get(group, COUNTS_GOLD) for group in moves.group[some]]
    fit = LogisticRegression(C=1 / PENALTY, fit_intercept=False, max_iter=2000)
    fit.fit(moves.evidence[some] / scale, moves.wanted[some], sample_weight=counts)
    return fit.coef_[0] / scale


def loss(weights, moves, some):
    odds = moves.evidence[some] @ weights
    return numpy.log1p(numpy.exp(numpy.where(moves.wanted[some], -odds, odds))).sum()


def test(all_, names, products):
    """The losses of each group, in nats, by what was learned without it: of dishes that begin, and of those that go on."""
    total = numpy.zeros(2)
    for group in sorted(set(all_.group)):
        here = numpy.zeros(2)
        for n, label in enumerate((NEW, BACK)):
            moves = Moves(all_, names, products, label, {group})
            held = moves.group == group
            here[n] = loss(fit_weights(all_.names + names + list(map(shown, products)), moves, ~held), moves, held)
        total += here
        print(f"{group}\t{here[0]:.0f}\t{here[1]:.0f}")
    print(f"all\t{total[0]:.1f}\t{total[1]:.1f}")


def write_table(all_):
    models = [all_.model(set(), label) for label in (NEW, BACK)]
    print("# What the words around a place speak for, in hundredths of log odds: that a dish begins there, that one goes on; and,")
    print("# within a sentence, that nothing is cooked. Words in capitals are classes. Made by scripts/turn_words.py and talked_weights.py")
    print("# from the recordings of tests/. SPDX-License-Identifier: MIT")
    print("words\tplace\tbegins\treturns\ttalked")
    print(f"*\t*\t{models[0][0]}\t{models[1][0]}")
    names = all_.columns.feature_names_
    for n in sorted(range(len(names)), key=lambda n: names[n][::-1]):
        pair = [int(points[n]) for _, points in models]
        if any(pair):
            print(*names[n][::-1], *(number or "" for number in pair), sep="\t")
    with open(TABLE, encoding="utf-8") as file:  # what talked_weights.py has written
        print(*(line for line in file if line.split("\t")[1:2] == ["within"]), sep="", end="")


def shown(product):
    return f"{product[1]} * {product[3]}"


def print_weights(all_, names, products):
    both, all_names = [], all_.names + names + list(map(shown, products))
    for label in (NEW, BACK):
        moves = Moves(all_, names, products, label)
        both.append(fit_weights(all_names, moves, numpy.ones(len(moves.group), bool)))
    for name, new, back in zip(all_names, *both):
        print(f"{name:30} {new:6.2f} {back:6.2f}", file=sys.stderr)


def products_of(path):
    with open(path, encoding="utf-8") as file:
        return re.findall(r"^BOTH(?:_ITS)?\((AT|OF), (\w+), (AT|OF), (\w+),", file.read(), re.M)


def main():
    program = sys.argv[-1]
    names = deffile.names_of("src/split/border.def", "EVIDENCE")
    moves = deffile.names_of("src/split/move.def", "MOVE")
    products = products_of("src/split/both.def")
    all_ = Sentences(read_talks(program), names)
    if sys.argv[1] == "--test":
        test(all_, moves, products)
        return
    write_table(all_)
    print_weights(all_, moves, products)


if __name__ == "__main__":
    main()
