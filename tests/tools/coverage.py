#!/usr/bin/env python3
"""How much of the core the tests reach: coverage.py BUILD FOLDER... Reads what a build with --coverage left behind, by gcov;
the program and the test programs are added up. Prints a line a folder and the files with the most branches not taken;
with SHOW=src/edits/value.c the lines of that file, too.

Calls to assert and to the arena's jump are branches too, so not all can be taken. SPDX-License-Identifier: MIT
"""
import collections
import json
import os
import subprocess
import sys

ALONE = ("src/pipeline.c", "src/dishtake.c", "src/output.c", "src/shopping.c")
TOOLS = ("src/pack/embed.c", "src/pack/precompile.c", "src/precompile.c")  # run while building, and not of the core
LINES_LEAST, BRANCHES_LEAST = 95.0, 85.0
AT_ONCE = 60
WORST = 25


def notes(build):
    for folder, _, names in os.walk(build):
        if "/tests" not in folder:
            yield from (os.path.join(folder, name) for name in names if name.endswith(".gcno"))


def reports(build):
    """What gcov says of each object, as it prints it for machines."""
    files = sorted(notes(build))
    for i in range(0, len(files), AT_ONCE):
        # What no test has run has no counts beside it, which gcov says by its exit status.
        done = subprocess.run(["gcov", "--json-format", "--stdout", "--branch-probabilities", *files[i:i + AT_ONCE]], check=False,
                              stdout=subprocess.PIPE, stderr=subprocess.DEVNULL)
        yield from (json.loads(line) for line in done.stdout.splitlines() if line.startswith(b"{"))


def add_up(build):
    """Of each file: times that each line was run, and that each branch was taken."""
    lines, branches = collections.defaultdict(collections.Counter), collections.defaultdict(collections.Counter)
    for report in reports(build):
        for file in report["files"]:
            name = os.path.relpath(file["file"])
            for line in file["lines"]:
                lines[name][line["line_number"]] += line["count"]
                for i, branch in enumerate(line["branches"]):
                    branches[name][(line.get("function_name"), line["line_number"], i)] += branch["count"]
    return lines, branches


def share(counters):
    taken = sum(1 for counter in counters for count in counter.values() if count)
    every = sum(len(counter) for counter in counters)
    return 100 * taken / max(1, every), every


def show(name, lines, branches):
    """The lines of one file that were never run, or that went one way only."""
    never = {line for line, count in lines[name].items() if not count}
    one_way = {line for (_, line, _), count in branches[name].items() if not count} - never
    with open(name, encoding="utf-8") as file:
        for number, text in enumerate(file, 1):
            if number in never or number in one_way:
                print(f"{number:5} {'never' if number in never else 'one way'}: {text.rstrip()}")


def main(build, folders):
    lines, branches = add_up(build)
    inside = [name for name in lines if name.startswith(tuple(f"src/{folder}/" for folder in folders)) or name in ALONE]
    inside = [name for name in inside if name not in TOOLS]
    for folder in [*(f"src/{folder}/" for folder in folders), *ALONE]:
        names = [name for name in inside if name.startswith(folder)]
        print("  %-16s lines %5.1f %%   branches %5.1f %% of %d" % (folder, share([lines[n] for n in names])[0], *share([branches[n] for n in names])))
    gaps = sorted(((sum(1 for count in branches[n].values() if not count), n) for n in inside), reverse=True)
    print("most branches not taken: " + ", ".join(f"{name} {count}" for count, name in gaps[:WORST]))
    of_lines, of_branches = share([lines[n] for n in inside])[0], share([branches[n] for n in inside])[0]
    print(f"figure: the core: {of_lines:.1f} % of lines (aim {LINES_LEAST:.0f}), {of_branches:.1f} % of branches (aim {BRANCHES_LEAST:.0f})")
    if os.environ.get("SHOW"):
        show(os.environ["SHOW"], lines, branches)


if __name__ == "__main__":
    main(sys.argv[1], sys.argv[2:])
