"""What learned tables are worth on sets that they were not learned from.
SPDX-License-Identifier: MIT
"""
import contextlib
import subprocess

import goldsets


@contextlib.contextmanager
def restored(*paths):
    """The files are as they were afterwards."""
    kept = {}
    for path in paths:
        with open(path, encoding="utf-8") as file:
            kept[path] = file.read()
    try:
        yield
    finally:
        for path, text in kept.items():
            with open(path, "w", encoding="utf-8") as file:
                file.write(text)


def each_set(cases, together, write, folder):
    """Each set, when `write` has learned from the cases of those that were not written with it (`together`: sets by the set that they
    are left out with), and a program with that stands in the folder."""
    for group in dict.fromkeys(together.get(name, name) for name in goldsets.READ):
        write([case for name in goldsets.READ if together.get(name, name) != group for case in cases[name]])
        subprocess.run(["make", "-s", f"B={folder}", f"{folder}/dishtake"], stdout=subprocess.DEVNULL, check=True)
        yield from (name for name in goldsets.READ if together.get(name, name) == group)


def each_tally(as_one, cases, write, folder):
    """(name, tally) of each set, left out with those of the same writers, all dishes of a recording as one; "all" is the last.
    `as_one`: tests/accuracy/as_one.py."""
    total = as_one.score.Tally()
    for name in each_set(cases, goldsets.WRITTEN_TOGETHER, write, folder):
        tally = as_one.score.Tally()
        for path in goldsets.golds_of(name):
            tally.merge(as_one.one(f"{folder}/dishtake", path)[1])
        total.merge(tally)
        yield name, tally
    yield "all", total
