#!/usr/bin/env python3
"""Runs cases.txt and the files beside it: short talk and what `dishtake check` must and must not find in it.

  test_check.py [WORD...]    only the cases whose title has one of the words
SPDX-License-Identifier: MIT
"""
import json
import os
import subprocess
import sys
import tempfile

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
PROGRAM = os.path.join(ROOT, os.environ.get("B", "build"), "dishtake")
CASES = ("cases.txt", "amounts.txt", "contradictions.txt", "twice.txt", "unsafe.txt", "hazards.txt", "misheard.txt", "unused.txt", "dangers.txt")
SECONDS_A_CAPTION = 5


def read_cases(name):
    """Title, place, captions, wanted (kind, word), unwanted kinds, ingredient list, what is known to be missed."""
    cases = []
    with open(os.path.join(ROOT, "tests/check", name), encoding="utf-8") as file:
        for number, line in enumerate(file, 1):
            line = line.strip()
            if not line or line.startswith("#"):
                continue
            if line.startswith("= "):
                cases.append([line[2:], "tests/check/%s:%d" % (name, number), None, [], [], None, []])
            elif cases[-1][2] is None:
                cases[-1][2] = [part.strip() for part in line.split("|")]
            elif line.startswith("+ "):
                cases[-1][5] = "\n".join(part.strip() for part in line[2:].split("|"))
            elif line.startswith("! "):
                cases[-1][6].append(tuple(line[2:].split(" ", 1)))
            elif line.startswith("- "):
                cases[-1][4].append(line[2:])
            else:
                cases[-1][3].append(tuple(line.split(" ", 1)))
    return cases


def findings_of(captions, shown, one_dish):
    talk = "".join("%d:%02d %s.\n" % (n * SECONDS_A_CAPTION // 60, n * SECONDS_A_CAPTION % 60, caption)
                   for n, caption in enumerate(captions))
    with tempfile.NamedTemporaryFile() as file:
        file.write((shown or "").encode())
        file.flush()
        done = subprocess.run([PROGRAM, "check", "-q", *(["--as-one-dish"] if one_dish else []), "--as", "json",
                               *(["--list", file.name] if shown else []), "-"], input=talk.encode(),
                              stdout=subprocess.PIPE, check=False)
    return [(f["kind"], f["about"] or "") for f in json.loads(done.stdout)["findings"]]


def mistakes(case):
    title, _, captions, wanted, unwanted, shown, missed = case
    found = findings_of(captions, shown, not title.startswith("dishes:"))
    for kind, word in wanted:
        if not any(k == kind and word.lower() in about.lower() for k, about in found):
            yield "%s %s was not found" % (kind, word), found
    for kind, word in missed:
        if any(k == kind and word.lower() in about.lower() for k, about in found):
            yield "%s %s is found now: take its \"!\" away" % (kind, word), found
    for kind in unwanted:
        if any(k == kind for k, _ in found):
            yield "%s was found" % kind, found


def main():
    cases = [case for name in CASES for case in read_cases(name)
             if not sys.argv[1:] or any(word in case[0] for word in sys.argv[1:])]
    failed = 0
    for case in cases:
        for mistake, found in mistakes(case):
            failed += 1
            print("%s: %s: %s; findings: %s" % (case[1], case[0], mistake, found))
    print("%d cases of findings, %d mistakes" % (len(cases), failed))
    return failed > 0 or not cases


if __name__ == "__main__":
    sys.exit(main())
