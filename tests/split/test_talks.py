#!/usr/bin/env python3
"""Short talks and the dishes that must be found in them: talks.txt.
SPDX-License-Identifier: MIT
"""
import json
import os
import re
import subprocess
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
PROGRAM = os.path.join(os.environ.get("B", "build"), "dishtake")
SLACK = 12.0


def seconds(clock):
    minutes, rest = clock.split(":")
    return 60 * int(minutes) + int(rest)


def cases(lines):
    """(known failure, what the case shows, caption lines, [(start, end or None, titles)]) of each talk."""
    found = []
    for line in lines:
        mark, rest = line[:1], line[1:].strip()
        if mark in ("=", "!"):
            found.append((mark == "!", rest, [], []))
        elif mark == "-":
            start, end, titles = re.fullmatch(r"(\S+) (?:to (\S+) )?(.*)", rest).groups()
            found[-1][3].append((seconds(start), seconds(end) if end else None, titles.split(" / ")))
        elif mark.isdigit():
            found[-1][2].append(line)
    return found


def dishes(captions):
    run = subprocess.run([PROGRAM, "extract", "-"], input="".join(captions), capture_output=True, text=True, check=True)
    return [(dish["start"], dish["end"], dish["title"]) for dish in json.loads(run.stdout)["dishes"]]


def is_right(given, wanted):
    return len(given) == len(wanted) and all(
        abs(start - begins) <= SLACK and (ends is None or abs(end - ends) <= SLACK) and title in titles
        for (start, end, title), (begins, ends, titles) in zip(given, wanted))


def main():
    failed = 0
    with open(os.path.join(HERE, "talks.txt"), encoding="utf-8") as file:
        table = cases(file)
    for known, shows, captions, wanted in table:
        given = dishes(captions)
        if is_right(given, wanted) == known:
            failed += 1
            print(f"{'passes now, unmark it' if known else 'wrong'}: {shows}\n  wanted {wanted}\n  given  {given}")
    print(f"test_talks: {len(table) - failed} of {len(table)} talks as they should be")
    return 1 if failed or len(table) < 10 else 0


if __name__ == "__main__":
    sys.exit(main())
