#!/usr/bin/env python3
"""Checks the English lexicon: the files' format, words listed twice, counts, and how many of the foods, actions
and preparations that people wrote in gold files it knows; also the table of sounds, and the places of context-actions.

  check_lexicon.py [--lines FILE] [--missing]

--lines FILE is a table of ingredient lines labelled by people, with a column `food` or `food_full`; without it that
check is skipped, and says so. --missing prints what is not known. Format: docs/grammar.md.
SPDX-License-Identifier: MIT
"""
import argparse
import csv
import glob
import json
import os
import re
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
ROOT = os.path.dirname(os.path.dirname(HERE))
sys.dont_write_bytecode = True
sys.path.insert(0, os.path.join(ROOT, "grammars", "en", "scripts"))
import pronunciations  # noqa: E402

sys.path.insert(0, os.path.join(ROOT, "tests", "tools"))
import loader  # noqa: E402
from lexicon import PACK, fold, known_words, read_endings, read_lexicon  # noqa: E402

FILES = ("numbers", "units", "parts", "foods", "actions", "things")
NUMBERS = ("ONES", "TEENS", "TENS", "HUNDRED", "THOUSAND", "FRACTION", "DOZEN", "ORDINAL", "TIME", "LONG")
MEASURES = ("UNIT", "COUNTER", "CONTAINER")
YIELDS_ONLY = {"half pint"}  # "six half pints" of jam: how much it makes, and no measure of what goes in
BEFORE_FOOD = ("STATE", "SIZE", "DONE", "MANNER")
FORMS = re.compile(r"(none|noun(-last)?(:[^,:]+)?|verb(-last)?(:[^,:]+,[^,:]+,[^,:]+,[^,:]+)?|verb2(-last)?)$")
LEAST_FOODS, LEAST_ACTIONS, LEAST_DISHES = 1500, 300, 250
# Shares to reach. The gold files are our own, the labelled lines are other people's.
SOUNDS_BYTES = 400000
# Words that captions are known to put for others (common practice, no source), as said and as written.
MISHEARD = """flour flower, thyme time, leek leak, beet beat, beets beats, roux rue, stock stalk, zest test, sear sir,
    mince mints, knead need, whisk risk, pare pear, chilli chilly, lard large, feta fetter, currants currents,
    mussels muscles, clove close, cup cut, pinch finch, cumin human, pint point, knob nob, teaspoon tycoon, ghee gee,
    basil dazzle, turmeric tumor, cayenne cane, ounces announces, stir steer, broil boil, tahini teeny, bay bake"""
LEAST_MISHEARD, LEAST_FOOD_WORDS, FARTHEST = 0.9, 0.94, 0.5
LEAST_GOLD_FOODS, LEAST_GOLD_ACTIONS, LEAST_GOLD_PREPS, LEAST_LINE_FOODS = 0.97, 0.97, 0.95, 0.90


def names_of(path, macro):
    """The first arguments of a macro in a .def file."""
    with open(path, encoding="utf-8") as file:
        return set(re.findall(r'^%s\("?([\w ]+)' % macro, file.read(), re.MULTILINE))


# The checks ------------------------------------------------------------------------------------------------------

class Checks:
    def __init__(self, show):
        self.passed = self.failed = 0
        self.show = show

    def add(self, name, fine, details=()):
        self.passed, self.failed = self.passed + bool(fine), self.failed + (not fine)
        print("%s  %s" % ("ok  " if fine else "FAIL", name))
        for detail in details if (self.show or not fine) else ():
            print("      %s" % detail)

    def add_share(self, name, found, missing, least):
        whole = found + len(missing)
        share = found / whole if whole else 0.0
        title = "%s: %d of %d, %.3f (at least %.2f)" % (name, found, whole, share, least)
        self.add(title, share >= least, sorted(set(missing)))


def check_rows(checks, rows, problems):
    tags = names_of(os.path.join(ROOT, "src", "model", "tags.def"), "TAG")
    marks = names_of(os.path.join(ROOT, "src", "model", "marks.def"), "MARK")
    for row in rows:
        problems += ["%s: unknown tag %s" % (row.place, row.tag)] if row.tag not in tags else []
        problems += ["%s: unknown mark %s" % (row.place, mark) for mark in row.marks if mark not in marks]
        problems += ["%s: unknown forms %s" % (row.place, row.forms)] if not FORMS.match(row.forms) else []
        if row.tag in NUMBERS and not re.fullmatch(r"\d+(/\d+)?", row.value):
            problems.append("%s: the value %s is no number" % (row.place, row.value))
    checks.add("format of %d rows" % len(rows), not problems, problems)


def check_twice(checks, rows):
    seen, twice = {}, []
    for row in rows:
        for name in row.names:
            key = (row.tag, fold(name))
            if key in seen:
                twice.append("%s: %s %s stands at %s too" % (row.place, row.tag, name, seen[key]))
            seen[key] = row.place
    checks.add("no words twice with one tag, of %d" % len(seen), not twice, twice)


def check_counts(checks, rows):
    for tag, least in (("FOOD", LEAST_FOODS), ("ACTION", LEAST_ACTIONS), ("DISH", LEAST_DISHES)):
        listed = sum(row.tag == tag for row in rows)
        names = sum(len(row.names) for row in rows if row.tag == tag)
        checks.add("%s: %d rows, %d names (at least %d rows)" % (tag, listed, names, least), listed >= least)


def check_units(checks, rows, scorer):
    """Units of the corpus, which the scorer lists, are what measures stand for, and each is listed."""
    values = {row.value for row in rows if row.tag in MEASURES + ("LENGTH",)}
    odd = ["%s: %s" % (row.place, row.value) for row in rows
           if row.tag in MEASURES and row.value not in scorer.UNITS | YIELDS_ONLY]
    odd += ["nothing stands for %s" % unit for unit in sorted(scorer.UNITS - values)]
    checks.add("measures stand for the %d units of the corpus" % len(scorer.UNITS), not odd, odd)


def gold_dishes():
    for folder in ("corpus", "recordings"):
        for path in sorted(glob.glob(os.path.join(ROOT, "tests", folder, "**", "*.gold.json"), recursive=True)):
            if os.path.basename(os.path.dirname(path)) == "unseen":
                continue  # nobody reads these
            with open(path, encoding="utf-8") as file:
                yield from json.load(file)["dishes"]


def is_food(name, known):
    """Whether the name is one food of the lexicon, after what may stand before a food."""
    words = fold(name).split()
    while words:
        if "FOOD" in known.get(" ".join(words), ()):
            return True
        for n in range(len(words) - 1, 0, -1):
            if set(BEFORE_FOOD) & set(known.get(" ".join(words[:n]), ())):
                words = words[n:]
                break
        else:
            return False
    return False


def check_gold(checks, known, scorer):
    dishes = list(gold_dishes())
    foods = [line["food"][0] for dish in dishes for line in dish["ingredients"]]
    missing = {name for name in foods if not is_food(name, known)}
    checks.add_share("foods of the gold files", sum(name not in missing for name in foods), missing,
                     LEAST_GOLD_FOODS)
    # A step counts each time it is there, as a food does: one gold's odd word for a thing is no gap.
    actions = [step["action"] for dish in dishes for step in dish["steps"]]
    values = {scorer.action_key(tags["ACTION"]) for tags in known.values() if "ACTION" in tags}
    unknown = [action for action in actions if scorer.action_key(action) not in values]
    checks.add_share("actions of the gold files", len(actions) - len(unknown), unknown, LEAST_GOLD_ACTIONS)
    wrong = [action for action in actions if "ACTION" in known.get(fold(action), ())
             and scorer.action_key(known[fold(action)]["ACTION"]) != scorer.action_key(action)]
    checks.add_share("actions that stand for the scorer's class", len(actions) - len(wrong), wrong,
                     LEAST_GOLD_ACTIONS)
    preps = {prep for dish in dishes for line in dish["ingredients"] for prep in line.get("prep") or []}
    heads = {prep for prep in preps if any({"DONE", "STATE"} & set(known.get(part, ()))
                                           for part in [fold(prep), *fold(prep).split()])}
    checks.add_share("preparations of the gold files", len(heads), preps - heads, LEAST_GOLD_PREPS)


def read_pronunciations():
    sounds = {}
    with open(os.path.join(PACK, "pronunciations.tsv"), encoding="utf-8") as file:
        for line in file:
            if not line.startswith("#"):
                word, letters = line.rstrip("\n").split("\t")[:2]
                sounds.setdefault(word, []).append(letters)
    del sounds["word"]
    return sounds


def check_sounds(checks, rows):
    """The table of sounds: its letters, its size, and that it finds for a misheard word what was said."""
    letters, near = pronunciations.read_sounds()
    sounds, known = read_pronunciations(), set(letters.values())
    odd = [word for word, said in sounds.items() if not said or not set("".join(said)) <= known]
    size = os.path.getsize(os.path.join(PACK, "pronunciations.tsv"))
    checks.add("sounds of %d words, in letters of sounds.tsv, %d bytes" % (len(sounds), size),
               not odd and size <= SOUNDS_BYTES, odd)
    words = {word for row in rows if row.tag == "FOOD" for name in row.names for word in fold(name).split()
             if re.fullmatch("[a-z]{3,}", word)}
    silent = {word for word in words if word not in sounds}
    checks.add_share("words of foods with sounds", len(words) - len(silent), silent, LEAST_FOOD_WORDS)
    pairs = [pair.split() for pair in MISHEARD.split(",")]
    far = {"%s %s" % (said, heard) for said, heard in pairs
           if not any(pronunciations.distance(a, b, near) <= FARTHEST * max(len(a), len(b))
                      for a in sounds.get(said, ()) for b in sounds.get(heard, ()))}
    checks.add_share("misheard words near what was said", len(pairs) - len(far), far, LEAST_MISHEARD)


def check_places(checks):
    """The conditions of context-actions.tsv: one that is misspelt would never hold."""
    with open(os.path.join(PACK, "context-actions.tsv"), encoding="utf-8") as file:
        asked = {row[1][1:] for row in csv.reader(file, delimiter="\t") if len(row) > 1 and row[1].startswith("@")}
    odd = sorted(asked ^ names_of(os.path.join(ROOT, "src", "build", "place.def"), "PLACE"))
    checks.add("%d conditions of context-actions.tsv, all of place.def" % len(asked), asked and not odd, odd)


def check_lines(checks, known, path):
    with open(path, encoding="utf-8") as file:
        rows = list(csv.DictReader(file, delimiter="\t", quoting=csv.QUOTE_NONE))
    names = {}
    for row in rows:
        full, plain = (row.get("food_full") or ""), (row.get("food") or "")
        for name, other in zip(full.split(" | "), plain.split(" | ")):
            if name or other:
                names.setdefault((name, other), 0)
                names[name, other] += 1
    missing = {pair for pair in names if not any(is_food(name, known) for name in pair if name)}
    found = sum(count for pair, count in names.items() if pair not in missing)
    lost = ["%s (%d)" % (pair[0] or pair[1], names[pair]) for pair in missing]
    whole = found + sum(names[pair] for pair in missing)
    share = found / whole if whole else 0.0
    checks.add("foods of %d labelled lines: %d of %d, %.3f (at least %.2f)"
               % (len(rows), found, whole, share, LEAST_LINE_FOODS), share >= LEAST_LINE_FOODS, sorted(lost))


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--lines", metavar="FILE")
    parser.add_argument("--missing", action="store_true")
    options = parser.parse_args()
    problems, endings, scorer = [], read_endings(), loader.load(os.path.join(ROOT, "tests/corpus/score"))
    rows = [row for name in FILES for row in read_lexicon(name, problems)]
    known = known_words(rows, endings)
    checks = Checks(options.missing)
    check_rows(checks, rows, problems)
    check_twice(checks, rows)
    check_counts(checks, rows)
    check_units(checks, rows, scorer)
    check_gold(checks, known, scorer)
    check_sounds(checks, rows)
    check_places(checks)
    if options.lines and os.path.exists(options.lines):
        check_lines(checks, known, options.lines)
    else:
        print("skip  foods of labelled lines: no file given with --lines, or it is not there")
    print("%d passed, %d failed" % (checks.passed, checks.failed))
    return checks.failed > 0


if __name__ == "__main__":
    sys.exit(main())
