#!/usr/bin/env python3
"""Ways that cooks name what they make: naming.txt.
SPDX-License-Identifier: MIT
"""
import json
import os
import subprocess
import sys
import tempfile

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path.insert(0, os.path.join(HERE, "..", "tools"))
import known  # noqa: E402

PROGRAM = os.path.join(os.environ.get("B", "build"), "dishtake")
# What is said around the naming, by second; a row's own words fill the blanks.
TALK = ((0, "{start}"), (8, "{foods}."), (16, "Put it all in there and stir it well."), (22, "{middle}"),
        (28, "Cook it for ten minutes."), (33, "Add one teaspoon of salt and stir."), (38, "{end}"))


def rows():
    """(known failure, right titles, captions) of each row."""
    with open(os.path.join(HERE, "naming.txt"), encoding="utf-8") as file:
        for line in file:
            if not line.strip() or line.startswith("#"):
                continue
            titles, foods, start, middle, end = (part.strip() for part in line.lstrip("! ").split("|"))
            said = {"foods": foods, "start": start, "middle": middle, "end": end}
            captions = [f"0:{at:02} {text}" for at, text in ((at, form.format(**said)) for at, form in TALK) if text]
            yield line.startswith("!"), titles.split(" / "), "\n".join(captions) + "\n"


def titles(folder, talks):
    """The titles of the dishes found in each talk, by one run over all."""
    files = [os.path.join(folder, f"{n}.txt") for n in range(len(talks))]
    for path, talk in zip(files, talks):
        with open(path, "w", encoding="utf-8") as file:
            file.write(talk)
    run = subprocess.run([PROGRAM, "extract", "--as-one-dish", *files], capture_output=True, text=True, check=True)
    return [[dish["title"] for dish in json.loads(line)["dishes"]] for line in run.stdout.splitlines()]


def main():
    table = list(rows())
    with tempfile.TemporaryDirectory() as folder:
        found = titles(folder, [talk for _, _, talk in table])
    return known.report("test_naming", ((fails, talk, wanted, given, len(given) == 1 and given[0] in wanted)
                                        for (fails, wanted, talk), given in zip(table, found, strict=True)), 100)


if __name__ == "__main__":
    sys.exit(main())
