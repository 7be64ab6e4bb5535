#!/usr/bin/env python3
"""Writes the figures of now into docs/accuracy.md: tables.py PROGRAM   (`make accuracy-tables` does it; run it where the Makefile is)

Rows keep their places and their texts; what is left out of a table stays out of it. What is made anew:

  rows below a line with the command of a table   each row whose first word the command prints too
  "    SET   numbers", "    SET: pk ..."          ALL of that set
  "| `SET`, now |", and "| now |" below a set     that set as one dish (as_one.py)

To be read in the diff before it is committed. Rows of first runs and of other days stand below no command, and stay.
SPDX-License-Identifier: MIT
"""
import glob
import os
import re
import subprocess
import sys

sys.path.append(os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "tools"))
import goldsets  # noqa: E402

PAGE = "docs/accuracy.md"
COMMAND = re.compile(r"`python3 tests/corpus/score build/dishtake ([^`]*)`")
SETS = {os.path.basename(folder): folder for folder in goldsets.ALL}
SCORE, AS_ONE = "tests/corpus/score", "tests/accuracy/as_one.py"


def printed(tool, program, patterns):
    golds = [path for pattern in patterns for path in sorted(glob.glob(pattern))]
    run = subprocess.run([sys.executable, tool, program, *golds], capture_output=True, text=True, check=False)
    return run.stdout.splitlines()


class Figures:
    """What the tools print, each asked once."""

    def __init__(self, program):
        self.program, self.known = program, {}

    def rows(self, tool, patterns):
        """The lines printed, by their first words."""
        key = (tool, patterns)
        if key not in self.known:
            lines = printed(tool, self.program, patterns)
            self.known[key] = {line.split()[0]: line for line in reversed(lines) if line.strip()}
        return self.known[key]

    def of_set(self, name):
        return self.rows(SCORE, (f"tests/{SETS[name]}/*.gold.json",))

    def as_one(self, name):
        food = self.rows(AS_ONE, (f"tests/{SETS[name]}/*.gold.json",))["food"]
        return [number.lstrip("0") for number in re.findall(r"[\d.]+", food)]


def numbers(line):
    return line.split()[1:]


def written(lines, figures):
    command, about = None, None
    for line in lines:
        found = COMMAND.search(line)
        command = tuple(found[1].split()) if found else None if line.startswith(("#", "|")) else command
        of_set = re.match(r"    (\w+)(:?) +(?:pk )?\d", line)
        one = re.match(r"\| (?:`(\w+)`, )?(\w+) \|", line)
        about = one[1] or about if one else about
        if of_set and of_set[1] in SETS and not command:
            name, rest = of_set[1], figures.of_set(of_set[1])
            yield f"    {name}: {rest['pk'].strip()}" if of_set[2] else (
                f"    {name:22}" + "".join(f"{number:10}" for number in numbers(rest["ALL"])).rstrip())
        elif command and re.match(r"    .*\d\.\d", line) and line.split()[0] in figures.rows(SCORE, command):
            now = figures.rows(SCORE, command)[line.split()[0]]
            yield re.match(r"\D*", line)[0] + now[re.match(r"\D*", now).end():].rstrip()
        elif one and one[2] == "now" and about in SETS and re.search(r"\| \.\d", line):
            yield f"| {f'`{one[1]}`, ' if one[1] else ''}now | {' | '.join(figures.as_one(about))} |"
        else:
            yield line


def main():
    with open(PAGE, encoding="utf-8") as file:
        lines = file.read().splitlines()
    done = list(written(lines, Figures(sys.argv[1])))
    with open(PAGE, "w", encoding="utf-8") as file:
        file.write("\n".join(done) + "\n")


if __name__ == "__main__":
    main()
