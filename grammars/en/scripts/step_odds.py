#!/usr/bin/env python3
"""Writes step-odds.tsv and the weights of src/build/told.def: how likely a verb is a step of a recipe.

  step_odds.py STEP_UNITS           (`make step-odds` does it; run it where the Makefile is, and build again after it)
  step_odds.py --test STEP_UNITS    what they are worth on sets left out: F1 of steps, all dishes of a recording taken as one

STEP_UNITS is the program that tests/tools/step_units.c makes. What is learned from are the verbs of the recordings with gold under
tests/ (but not those of tests/recordings/unseen): one is a step where the gold has that action in the caption that it is said in, or
within three seconds of it, each step of the gold for one verb. It is a logistic regression with an L2 penalty, in which each fact has
a weight of its own and one more where the rules say that the verb tells what to do. Left out together are sets whose writers are the
same. --test writes the weights of each fold into the tree, builds with them in a folder of its own, and restores them. Needs
scikit-learn (Debian package python3-sklearn). The same recordings give the same weights.
SPDX-License-Identifier: MIT
"""
import collections
import json
import subprocess
import sys

sys.path.insert(0, "tests/tools")
import deffile  # noqa: E402
import goldsets  # noqa: E402
import leftout  # noqa: E402
import loader  # noqa: E402
import logodds  # noqa: E402
import units  # noqa: E402

SLACK = 3.0  # seconds
SEEN = 6  # times, at least
PENALTY = 5.0
SMALLEST = 0.03
TABLE, WEIGHTS = "grammars/en/step-odds.tsv", "src/build/told.def"
KINDS = ("BEFORE", "BEHIND", "MARKED")
SCORE = loader.load("tests/corpus/score")

# What is learned from --------------------------------------------------------------------------------------------

class Verb:
    def __init__(self, line):
        at, self.action, ordered, *self.facts = line.split("\t")
        self.at, self.ordered, self.step = float(at), ordered == "1", False


def steps_of(path):
    gold = SCORE.load(path)
    dishes = SCORE.dishes_of(gold, gold=True)
    SCORE.stretch(dishes, SCORE.read_cues(SCORE.transcript_of(path, gold)))
    return sorted((step for dish in dishes for step in dish["steps"]), key=lambda step: step["at"])


def mark_steps(verbs, steps):
    given = [{"at": verb.at, "action": SCORE.action_key(verb.action), "ordered": verb.ordered} for verb in verbs]

    def cost(step, verb):
        away = SCORE.apart(step, verb)
        return (away, not verb["ordered"]) if step["actions"] == [verb["action"]] and away <= SLACK else None
    for _, n in SCORE.pair(steps, given, cost):
        verbs[n].step = True


def read_verbs(program):
    """The verbs of each set."""
    verbs = {}
    for name in goldsets.STEPS_READ:
        paths = {SCORE.transcript_of(path, SCORE.load(path)): path for path in goldsets.golds_of(name)}
        verbs[name] = []
        for path, lines in units.lines_of(program, paths):
            here = [Verb(line) for line in lines]
            mark_steps(here, steps_of(path))
            verbs[name] += here
    return verbs


# Weights ---------------------------------------------------------------------------------------------------------

def row_of(verb, kept):
    row = collections.Counter()
    for fact in verb.facts:
        for pair in ((fact, "other"), (fact, "ordered")) if verb.ordered else ((fact, "other"),):
            if pair in kept:
                row[pair] += 1
    return row


def fit_weights(verbs):
    """(of what is ordered, of the rest) for each fact."""
    count = collections.Counter(pair for verb in verbs for fact in set(verb.facts)
                                for pair in {(fact, "other"), (fact, "ordered" if verb.ordered else "other")})
    kept = {pair for pair, times in count.items() if times >= SEEN}
    found, intercept = logodds.learned([row_of(verb, kept) for verb in verbs], [verb.step for verb in verbs], PENALTY)
    weights = {fact: [found.get((fact, "ordered"), 0) + found.get((fact, "other"), 0), found.get((fact, "other"), 0)]
               for fact, _ in kept}
    weights["ALWAYS"] = [weight + intercept for weight in weights["ALWAYS"]]
    return {fact: [0 if abs(weight) < SMALLEST else weight for weight in pair] for fact, pair in weights.items()}


def write_table(weights):
    rows = []
    for fact, pair in weights.items():
        where, _, words = fact.partition(" ")
        if where not in KINDS and words and any(pair):
            rows.append((words, where, *(round(100 * weight) or "" for weight in pair)))
    logodds.write_table(TABLE, "words", sorted(rows, key=lambda row: row[:2]))


def beside_rows(weights):
    """The rows of told.def that have no condition: what was seen too rarely has none."""
    rows = []
    for fact, pair in weights.items():
        kind, _, name = fact.partition(" ")
        if kind in KINDS and any(pair):
            rows.append((KINDS.index(kind), f"{kind}({name}, {deffile.numbers(pair, 0)})\n"))
    return [row for _, row in sorted(rows)]


def write_def(weights):
    with open(WEIGHTS, encoding="utf-8") as file:
        lines = [deffile.filled(line, "TOLD", weights, 11) for line in file if not line.startswith(tuple(f"{kind}(" for kind in KINDS))]
    end = lines.index("#undef TOLD\n")
    with open(WEIGHTS, "w", encoding="utf-8") as file:
        file.writelines(lines[:end] + beside_rows(weights) + lines[end:])


def write(verbs):
    weights = fit_weights(verbs)
    write_table(weights)
    write_def(weights)


# What they are worth ---------------------------------------------------------------------------------------------

def figures_of(program, name):
    """Hits, steps given, steps wanted."""
    sums = [0, 0, 0]
    for path in goldsets.golds_of(name):
        transcript = SCORE.transcript_of(path, SCORE.load(path))
        run = subprocess.run([program, "extract", "--as-one-dish", transcript], stdout=subprocess.PIPE,
                             stderr=subprocess.DEVNULL, check=False)
        wanted, given = steps_of(path), [step for dish in SCORE.dishes_of(json.loads(run.stdout)) for step in dish["steps"]]
        acts = [{"at": step["at"], "actions": [action], "step": n} for n, step in enumerate(given)
                for action in dict.fromkeys(step["actions"])]
        hits = SCORE.pair(wanted, acts, SCORE.within(SCORE.STEP_SLACK, lambda a, b: a["actions"] == b["actions"]))
        used = collections.Counter(acts[j]["step"] for _, j in hits)
        for n, more in enumerate((len(hits), sum(max(1, used[n]) for n in range(len(given))), len(wanted))):
            sums[n] += more
    return sums


def test(verbs):
    total = [0, 0, 0]
    with leftout.restored(TABLE, WEIGHTS):
        for name in leftout.each_set(verbs, goldsets.SAME_COOKS, write, "build/step-odds"):
            sums = figures_of("build/step-odds/dishtake", name)
            total = [a + b for a, b in zip(total, sums)]
            print(f"{name:22} {SCORE.f1(*sums):.3f}", flush=True)
    print(f"{'all':22} {SCORE.f1(*total):.3f}  precision {total[0] / total[1]:.3f}  recall {total[0] / total[2]:.3f}")


def main():
    verbs = read_verbs(sys.argv[-1])
    if sys.argv[1] == "--test":
        test(verbs)
    else:
        write([verb for name in goldsets.STEPS_READ for verb in verbs[name]])


if __name__ == "__main__":
    main()
