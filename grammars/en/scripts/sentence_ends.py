#!/usr/bin/env python3
"""Writes sentence-ends.tsv: how much what stands before and behind a place speaks for a sentence's end there, learned from
punctuated captions whose punctuation was taken away.

  sentence_units TRANSCRIPT... | sentence_ends.py > sentence-ends.tsv    (`make sentence-ends` does it)
  sentence_units TRANSCRIPT... | sentence_ends.py --test                 what the points are worth on recordings left out

The points are the weights of a logistic regression, in hundredths of log odds: AdaGrad (Duchi, Hazan, Singer 2011), with an
L1 penalty that leaves out what says little. Commas count as a small part of an end, since a cut there costs little.
Chance is seeded: the same captions give the same table.
SPDX-License-Identifier: MIT
"""
import argparse
import collections
import math
import random
import sys

# As src/words/ending.c looks them up: T a unit's class, W its word, / the place.
SHAPES = ("T/", "/T", "TT/", "/TT", "T/T", "TT/T", "T/TT", "/TTT", "TT/TT", "/W", "T/W", "/WT", "/WW", "W/", "W/T")
LENGTHS = (1, 2, 3, 4, 6, 8, 11, 15, 20, 28)
# Words of these classes are many, and a recording's own: only their class is looked at.
CONTENT = frozenset("""FOOD ACTION DONE DOING STATE UNIT COUNTER CONTAINER VESSEL TOOL PART DISH ONES TEENS TENS HUNDRED
                       NUMBER PLACE SIZE MANNER TIME HEAT""".split())
WORD_SEEN, ROW_SEEN = 6, 4  # times, at least
COMMA = 0.3  # of an end
ROUNDS, RATE, PENALTY = 5, 0.15, 2e-5
FOLDS = 4
Unit = collections.namedtuple("Unit", "head tail tag words behind")


def read_units(lines):
    recordings = {}
    for line in lines:
        if line.startswith("# "):
            units = recordings.setdefault(line[2:].strip(), [])
        else:
            head, tail, tag, words, behind = line.rstrip("\n").split("\t")
            units.append(Unit(head, tail, tag, int(words), behind))
    return recordings


def vocabulary(recordings):
    seen = collections.Counter()
    for units in recordings:
        for unit in units:
            if unit.tag not in CONTENT:
                seen.update({unit.head, unit.tail})
    return {word for word, times in seen.items() if times >= WORD_SEEN and word.isascii() and not word[0].isupper()}


def row_of(units, i, shape, words):
    """What stands around the end of unit i, as (before, behind, words); None where a word is none of the vocabulary."""
    before, behind = shape.split("/")
    first = i + 1 - len(before)
    if first < 0 or i + 1 + len(behind) > len(units):
        return None
    cells = []
    for n, by in enumerate(before + behind):
        unit = units[first + n]
        word = unit.tail if n < len(before) else unit.head
        if by == "W" and word not in words:
            return None
        cells.append(unit.tag if by == "T" else word)
    return " ".join(cells[:len(before)]), " ".join(cells[len(before):]), ""


def rows_of(units, i, length, words):
    limit = next((n for n in LENGTHS if length <= n), LENGTHS[-1])
    rows = [row_of(units, i, shape, words) for shape in SHAPES]
    return [row for row in rows if row] + [("", "", str(limit))]


def places(units, words):
    length = 0
    for i, unit in enumerate(units[:-1]):
        length += unit.words
        yield rows_of(units, i, length, words), {"end": 1.0, "comma": COMMA, "-": 0.0}[unit.behind]
        if unit.behind == "end":
            length = 0


class Weights:
    """Weights by number; the penalty of rounds in which a row did not occur is taken when it next does."""

    def __init__(self, count):
        self.of, self.squares, self.last = [0.0] * count, [1e-6] * count, [0] * count
        self.bias, self.time = -2.0, 0

    def learn(self, rows, wanted):
        self.time += 1
        odds = self.bias + sum(self.of[row] for row in rows)
        error = 1 / (1 + math.exp(-max(-30.0, min(30.0, odds)))) - wanted
        if abs(error) < 0.01:
            return
        self.bias -= 0.01 * error
        for row in rows:
            self.squares[row] += error * error
            step = RATE / math.sqrt(self.squares[row])
            moved, shrunk = self.of[row] - step * error, PENALTY * (self.time - self.last[row]) * step
            self.of[row] = max(0.0, moved - shrunk) if moved > 0 else min(0.0, moved + shrunk)
            self.last[row] = self.time


def learn(recordings):
    """The points of each row (before, behind, words)."""
    words = vocabulary(recordings)
    seen = [place for units in recordings for place in places(units, words)]
    count = collections.Counter(row for rows, _ in seen for row in rows)
    number = {row: n for n, row in enumerate(row for row, times in count.items() if times >= ROW_SEEN)}
    seen = [([number[row] for row in rows if row in number], wanted) for rows, wanted in seen]
    weights, chance = Weights(len(number)), random.Random(1)
    for _ in range(ROUNDS):
        chance.shuffle(seen)
        for rows, wanted in seen:
            weights.learn(rows, wanted)
    points = {row: round(weights.of[n] * 100) for row, n in number.items()}
    points[("", "", "")] = round(weights.bias * 100)
    return {row: value for row, value in points.items() if abs(value) >= 5}


def write(points):
    print("# Where a sentence ends in captions without full stops: points, in hundredths of log odds, for what stands before a\n"
          "# place and behind it (classes in capitals, or words), and for up to so many words in the sentence so far.\n"
          "# Made by scripts/sentence_ends.py from the recordings of tests/ and samples/. SPDX-License-Identifier: MIT\n"
          "before\tbehind\twords\tpoints")
    order = sorted(points, key=lambda row: (len(row[0].split()), len(row[1].split()), int(row[2] or 0), row))
    for row in order:
        print(*row, points[row], sep="\t")


def cut(units, points, least):
    length = 0
    for i, unit in enumerate(units[:-1]):
        length += unit.words
        rows = rows_of(units, i, length, AllWords())
        ends = points.get(("", "", ""), 0) + sum(points.get(row, 0) for row in rows) > least
        yield ends, unit.behind
        if ends:
            length = 0


class AllWords:
    def __contains__(self, word):
        return True


def test(recordings):
    names, results = sorted(recordings), collections.defaultdict(collections.Counter)
    for fold in range(FOLDS):
        points = learn([recordings[name] for n, name in enumerate(names) if n % FOLDS != fold])
        for name in names[fold::FOLDS]:
            for least in (-100, -50, -25, 0, 50):
                results[least].update(cut(recordings[name], points, least))
    for least, count in results.items():
        given = sum(n for (ends, _), n in count.items() if ends)
        wanted = count[True, "end"] + count[False, "end"]
        print(f"over {least:4}: of {wanted} ends {count[True, 'end'] / wanted:.2f} found; of {given} cuts "
              f"{count[True, 'end'] / given:.2f} at ends, {count[True, 'comma'] / given:.2f} at commas")


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--test", action="store_true")
    options = parser.parse_args()
    recordings = read_units(sys.stdin)
    if options.test:
        test(recordings)
    else:
        write(learn(list(recordings.values())))


if __name__ == "__main__":
    main()
