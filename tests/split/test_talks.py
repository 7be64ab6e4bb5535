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
sys.path.insert(0, os.path.join(HERE, "..", "tools"))
import known  # noqa: E402

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
    with open(os.path.join(HERE, "talks.txt"), encoding="utf-8") as file:
        table = cases(file)
    found = [dishes(captions) for _, _, captions, _ in table]
    return known.report("test_talks", ((fails, shows, wanted, given, is_right(given, wanted))
                                       for (fails, shows, _, wanted), given in zip(table, found)), 10)


if __name__ == "__main__":
    sys.exit(main())
