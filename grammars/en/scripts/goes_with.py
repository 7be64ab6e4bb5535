#!/usr/bin/env python3
"""Writes goes-with.tsv: what goes with what in the dishes that people cook, learned from dishes.tsv beside this file.

  grammars/en/scripts/goes_with.py > grammars/en/goes-with.tsv

A row is a food, a part or a dish's word ("onion"), an action ("to simmer") or a vessel ("in skillet"), by the lexicon's values, with
twelve numbers, and a food's lead, in hundredths. The product of two rows is near the pointwise mutual information of the two (Church and Hanks 1990):
over 0 where they stand in one dish more often than by chance. The numbers are the first eigenvectors of the table of all pairs, as in
latent semantic analysis (Deerwester and others 1990); what a word has with itself, which no dish tells, is set to what the numbers
give. The lead is how often a dish that has the food is made of it first of all: it stands first there, or in the name. Needs NumPy (Debian package python3-numpy). The same dishes and lexicon give the same table.
SPDX-License-Identifier: MIT
"""
import collections
import pathlib

import numpy

GRAMMAR = pathlib.Path(__file__).resolve().parent.parent
SIZE = 12  # AFFINITY_SIZE in src/split/affinity.h
UNSURE = 1.0  # so many dishes are added to what is counted and to what chance would give
SEEN = 2  # dishes, at least
LEAD_UNSURE, LEAD_USUAL = 2.0, 0.12
ROUNDS = 12


def read_lexicon():
    """For each tag: the names of its entries -> their value."""
    names, tag = collections.defaultdict(dict), None
    for file in ("parts", "foods", "things", "actions"):
        for line in (GRAMMAR / f"{file}.lex").read_text(encoding="utf-8").splitlines():
            if line.startswith("@tag"):
                tag = line.split()[1]
            if not line or line[0] in "#@":
                continue
            cells = [cell.strip() for cell in line.split("\t")] + [""] * 3
            for name in [cells[0], *cells[3].split(" | ")]:
                if name:
                    names[tag].setdefault(name.lower(), cells[1] or cells[0])
    return names


def find(words, names):
    """The value of the longest ending of the words that is a name: "warm water", "water"."""
    while words:
        for name in (words, words + "s", words.removesuffix("s"), words.removesuffix("es")):
            if name in names:
                return names[name]
        words = words.partition(" ")[2]
    return None


def read_dish(cells, names):
    """What a dish has, as the table's rows are called."""
    title, foods, done = cells
    have = {find(food, names["FOOD"]) for food in foods.split(", ")}
    for what in done.split(", "):
        if what in names["ACTION"]:
            have.add("to " + names["ACTION"][what])
            continue
        have.add(find(what, names["PART"]))
        vessel = find(what, names["VESSEL"])
        have.add(vessel and "in " + vessel)
    have.add(find(title, names["DISH"]))
    return have - {None}


def information(dishes, words):
    """How much more often than by chance two words stand in one dish: logarithms."""
    place = {word: n for n, word in enumerate(words)}
    together = numpy.zeros((len(words), len(words)))
    for dish in dishes:
        there = [place[word] for word in dish if word in place]
        together[numpy.ix_(there, there)] += 1
    share = together.diagonal() / len(dishes)
    return numpy.log((together + UNSURE) / (numpy.outer(share, share) * len(dishes) + UNSURE))


def factors(table):
    """SIZE numbers a row, whose products are near the table, its diagonal aside."""
    numpy.fill_diagonal(table, 0)
    for _ in range(ROUNDS):
        values, vectors = numpy.linalg.eigh(table)
        first = numpy.argsort(-values)[:SIZE]
        rows = vectors[:, first] * numpy.sqrt(numpy.maximum(values[first], 0))
        numpy.fill_diagonal(table, (rows * rows).sum(1))
    largest = rows[numpy.abs(rows).argmax(0), range(SIZE)]
    return rows * numpy.sign(largest)


def leads(cells, names):
    """The foods of a dish that it is made of first of all."""
    title, foods, _ = cells
    words = title.lower().split()
    named = {find_exact(" ".join(words[a:b]), names) for a in range(len(words)) for b in range(a + 1, len(words) + 1)}
    return (named | {find(foods.split(", ")[0], names)}) - {None}


def find_exact(words, names):
    return next((names[name] for name in (words, words + "s", words.removesuffix("s")) if name in names), None)


def lead(first, count):
    """In hundredths: LEAD_UNSURE dishes more, of which as many are made of it as of a food on average."""
    return round(100 * (first + LEAD_UNSURE * LEAD_USUAL) / (count + LEAD_UNSURE))


def main():
    names = read_lexicon()
    lines = (pathlib.Path(__file__).parent / "dishes.tsv").read_text(encoding="utf-8").splitlines()
    rows = [line.split("\t") for line in lines if not line.startswith("#")]
    dishes = [read_dish(row, names) for row in rows]
    first = collections.Counter(food for row in rows for food in leads(row, names["FOOD"]) & read_dish(row, names))
    foods = set(names["FOOD"].values())
    count = collections.Counter(word for dish in dishes for word in dish)
    words = sorted(word for word in count if count[word] >= SEEN)
    print("# Made by scripts/goes_with.py. SPDX-License-Identifier: MIT\nword\tnumbers\tlead")
    for word, row in zip(words, factors(information(dishes, words))):
        print(word, " ".join(str(round(100 * number)) for number in row), lead(first[word], count[word]) if word in foods else "", sep="\t")


if __name__ == "__main__":
    main()
