#!/usr/bin/env python3
"""Ingredient lines and steps of written recipes, labelled by people, against what the program makes of them.

  check_labelled_lines.py [PROGRAM] FOLDER

FOLDER has the tables ingredient_lines.tsv (TASTEset 2.0: Wroblewska, Kaliska, Pawlowski, Wisniewski, Sosnowski, Lawrynowicz 2022, MIT),
step_lines.tsv and times_temperatures.tsv (RISeC: Jiang, Zaporojets, Deleu, Demeester, Develder 2020, MIT), a row for each line, with
what people labelled in it. The tables are not part of the project; without a FOLDER nothing is checked. Each ingredient line is a
recording of its own, each recipe's steps are one. A food is right that shares its last word, or half of its words, with the label;
a quantity that is one of the labelled ones; a unit that is the labelled one, written out; a preparation that shares a word.
SPDX-License-Identifier: MIT
"""
import collections
import csv
import fractions
import json
import os
import re
import subprocess
import sys
import tempfile
import unicodedata

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path.insert(0, os.path.join(HERE, "..", "tools"))
from loader import load  # noqa: E402

score = load(os.path.join(HERE, "..", "corpus", "score"))
# Under what was reached when this was written; percent.
FLOORS = {"food precision": 95, "food recall": 90, "quantity": 98, "unit": 94, "preparation": 90, "action precision": 82,
          "action recall": 83, "duration": 95, "temperature": 88}
WRITTEN_OUT = {"tbsp": "tablespoon", "tsp": "teaspoon", "oz": "ounce", "lb": "pound", "lbs": "pound", "g": "gram", "gm": "gram",
               "ml": "milliliter", "kg": "kilogram", "l": "liter", "c": "cup", "pkg": "packet", "package": "packet",
               "envelope": "packet", "fl oz": "fluid-ounce", "fluid ounce": "fluid-ounce", "rasher": "slice", "spear": "piece"}
STEP_SECONDS = 30


def rows_of(folder, name):
    with open(os.path.join(folder, name), encoding="utf-8") as file:
        return list(csv.DictReader(file, delimiter="\t", quoting=csv.QUOTE_NONE))


def several(cell):
    return [part.strip() for part in cell.split("|") if part.strip()]


def extract(program, recordings):
    """What the program makes of each list of (second, text)."""
    with tempfile.TemporaryDirectory() as folder:
        names = [os.path.join(folder, f"{n}.txt") for n in range(len(recordings))]
        for name, captions in zip(names, recordings):
            with open(name, "w", encoding="utf-8") as file:
                for second, text in captions:
                    file.write(f"{second // 3600:02}:{second // 60 % 60:02}:{second % 60:02}\n{text}\n\n")
        run = subprocess.run([program, "extract", "-q", "--as-one-dish", *names], stdout=subprocess.PIPE, text=True, check=True)
    return [json.loads(line)["dishes"] for line in run.stdout.splitlines()]


# Ingredient lines ------------------------------------------------------------------------------------------------

def numbers_in(cell):
    plain = unicodedata.normalize("NFKC", cell).replace("\u2044", "/")
    found = re.findall(r"\d+\s+\d+/\d+|\d+/\d+|\d*\.\d+|\d+", plain)
    return [float(sum(fractions.Fraction(part) for part in number.split())) for number in found]


def is_food(label, line):
    want = score.tokens(label)
    for name in [line["food"], *line["alternatives"]]:
        have = score.tokens(name)
        if want and have and (want[-1] == have[-1] or score.token_f1(want, have) >= 0.5):
            return True
    return False


def is_unit(labels, line):
    have = json.dumps([line["unit"], line["package"], line["size"]]).lower()
    plain = [re.sub(r"e?s$", "", label.lower().rstrip(".")) for label in labels]
    return any(WRITTEN_OUT.get(label.lower().rstrip("s."), short) in have for label, short in zip(labels, plain))


def compare_line(row, lines, count):
    full, plain = several(row["food_full"] or row["food"]), several(row["food"])
    hits = sum(any(is_food(label, line) for line in lines for label in {name, *plain[n:n + 1]}) for n, name in enumerate(full))
    count["food", "wanted"] += len(full)
    count["food", "given"] += max(len(lines), hits)
    count["food", "right"] += hits
    if not lines:
        return
    line, amount = lines[0], lines[0]["amount"] or {}
    given = [amount[end] for end in ("min", "max") if amount.get(end) is not None]
    checks = (("quantity", numbers_in(row["quantity"]), lambda want: any(abs(a - b) < 0.011 * max(1, b) for a in given for b in want)),
              ("unit", several(row["unit"]), lambda want: is_unit(want, line)),
              ("preparation", score.tokens(row["prep"]),
               lambda want: bool(set(want) & set(score.tokens(" ".join([*line["prep"], *line["state"], line["food"]]))))))
    for name, want, is_right in checks:
        if want:
            count[name, "wanted"] += 1
            count[name, "right"] += is_right(want)


def check_ingredients(program, folder, count):
    rows = [row for row in rows_of(folder, "ingredient_lines.tsv") if row["food"].strip()]
    for row, dishes in zip(rows, extract(program, [[(0, row["text"])] for row in rows])):
        compare_line(row, [line for dish in dishes for line in dish["ingredients"]], count)


# Steps -----------------------------------------------------------------------------------------------------------

def by_line(steps):
    found = collections.defaultdict(list)
    for step in steps:
        found[int(step["start"] // STEP_SECONDS)].append(step)
    return found


def base(verb):
    """The verb of "stirring", "turning"; what has no such verb in score's rows stays as it is."""
    stem = verb.removesuffix("ing")
    shapes = [verb] if stem == verb else [stem, stem + "e", stem[:-1]]
    known = {*score.action_rows(), *score.LONE_ACTIONS}
    return next((shape for shape in shapes if shape in known), verb)


def label_key(label, text):
    """Of "reduce heat" only "reduce" is labelled."""
    heat = label == "reduce" and re.search(r"\breduce (the )?heat\b", text.lower())
    return score.action_key("reduce heat" if heat else base(label.split()[0]))


def count_actions(labels, text, steps, count):
    want = collections.Counter(label_key(label.lower(), text) for label in labels)
    have = collections.Counter(score.action_key(a.split()[0]) for step in steps for a in step["actions"])
    count["action", "wanted"] += sum(want.values())
    count["action", "given"] += sum(have.values())
    count["action", "right"] += sum((want & have).values())


def count_numbers(name, labels, given, count):
    count[name, "wanted"] += len(labels)
    count[name, "right"] += sum(any(abs(label - number) < 1.5 for number in given) for label in labels)


def check_steps(program, folder, count):
    recipes, times = collections.defaultdict(list), collections.defaultdict(list)
    for row in rows_of(folder, "step_lines.tsv"):
        recipes[row["recipe"]].append(row)
    for row in rows_of(folder, "times_temperatures.tsv"):
        if row["low"].strip():
            times[row["recipe"], row["line"], row["type"] == "TEMPERATURE"].append(float(row["low"]))
    talks = [[(n * STEP_SECONDS, re.sub(r"^\d+\)\s*", "", row["text"])) for n, row in enumerate(rows)] for rows in recipes.values()]
    for (recipe, rows), dishes in zip(recipes.items(), extract(program, talks)):
        steps = by_line([step for dish in dishes for step in dish["steps"]])
        for n, row in enumerate(rows):
            count_actions(several(row["action"]), row["text"], steps[n], count)
            given = [time[end] for step in steps[n] for time in step["durations"] for end in ("min", "max")]
            count_numbers("duration", times[recipe, row["line"], False], given, count)
            heats = [heat["value"] for step in steps[n] for heat in step["temperatures"]]
            count_numbers("temperature", times[recipe, row["line"], True], heats, count)


def figures_of(count):
    for name in ("food", "action"):
        yield f"{name} precision", count[name, "right"] / count[name, "given"]
        yield f"{name} recall", count[name, "right"] / count[name, "wanted"]
    for name in ("quantity", "unit", "preparation", "duration", "temperature"):
        yield name, count[name, "right"] / count[name, "wanted"]


def main():
    folder = sys.argv[-1]
    program = sys.argv[1] if len(sys.argv) > 2 else os.path.join(os.environ.get("B", "build"), "dishtake")
    if len(sys.argv) < 2 or not os.path.isfile(os.path.join(folder, "ingredient_lines.tsv")):
        print("no folder with labelled lines is given: nothing is checked")
        print("0 passed, 0 failed, 1 skipped")
        return 0
    count, failed = collections.Counter(), 0
    check_ingredients(program, folder, count)
    check_steps(program, folder, count)
    for name, share in figures_of(count):
        low = 100 * share < FLOORS[name]
        failed += low
        print(f"figure: {name} {100 * share:.1f} of 100" + (f": under {FLOORS[name]}" if low else ""))
    print(f"{len(FLOORS) - failed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
