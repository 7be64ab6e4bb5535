#!/usr/bin/env python3
"""Whose an oven's heat is that is said before the dish: preheats.txt.
SPDX-License-Identifier: MIT
"""
import json
import os
import subprocess
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path.insert(0, os.path.join(HERE, "..", "tools"))
import known  # noqa: E402

PROGRAM = os.path.join(os.environ.get("B", "build"), "dishtake")


def cases(lines):
    """(name, transcript, {title's word: its temperatures}) of each case."""
    found = []
    for line in map(str.strip, lines):
        if line.startswith("="):
            found.append((line[1:].strip(), [], {}))
        elif line.startswith("["):
            found[-1][1].append(line)
        elif line.startswith("-"):
            word, _, heats = line[1:].strip().partition(" ")
            found[-1][2][word] = [heat.strip() for heat in heats.split(",") if heat.strip()]
    return found


def given(transcript, words):
    run = subprocess.run([PROGRAM, "extract", "-"], input="\n".join(transcript) + "\n", capture_output=True, text=True,
                         check=True)
    out = {}
    for dish in json.loads(run.stdout)["dishes"]:
        key = next((word for word in words if word in dish["title"].lower()), dish["title"])
        heats = out.setdefault(key, [])
        heats += [f"{h['value']:g} {h['unit']} {h['of']}" for step in dish["steps"] for h in step["temperatures"]]
    return out


def main():
    with open(os.path.join(HERE, "preheats.txt"), encoding="utf-8") as file:
        table = cases(file)
    heats = [given(transcript, wanted) for _, transcript, wanted in table]
    return known.report("test_preheats", ((False, name, wanted, heat, heat == wanted)
                                          for (name, _, wanted), heat in zip(table, heats)), 3)


if __name__ == "__main__":
    sys.exit(main())
