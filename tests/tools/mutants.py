#!/usr/bin/env python3
"""Small faults put into the core, one at a time, and whether a test notices: mutants.py WORK COUNT [SEED]

A copy of the sources in WORK is changed, never the sources themselves. A fault is a comparison, a sign, a connective or a
truth turned round in a line that does something. Each is compiled, then the quick tests run until one fails; what none of
them notices is printed with its place. Those that do not compile or do not change the program count as none.
SPDX-License-Identifier: MIT
"""
import glob
import os
import random
import re
import shutil
import subprocess
import sys

CORE = "base kitchen read words tag match split build check edits write".split()
SWAPS = [("<=", "<"), (">=", ">"), (" < ", " <= "), (" > ", " >= "), ("==", "!="), ("!=", "=="), ("&&", "||"), ("||", "&&"), (" + ", " - "),
         (" - ", " + "), ("return true;", "return false;"), ("return false;", "return true;"), ("++", "--"), ("continue;", "break;")]
MOST_SECONDS = 120
COPIED = ["Makefile", "src", "include", "grammars", "samples", "tests"]


MAKE = "make -j2 S=build/plain SAN= CFLAGS=-O1 " + (f"CC='{os.environ['CC']}' " if os.environ.get("CC") else "")


def library(root):
    with open(f"{root}/build/libdishtake.a", "rb") as file:
        return file.read()


def places(root):
    """Every fault that could be made: file, line, the line as it would be."""
    for folder in CORE:
        for path in sorted(glob.glob(f"{root}/src/{folder}/*.c")):
            with open(path, encoding="utf-8") as file:
                lines = file.readlines()
            for number, line in enumerate(lines):
                if not line.startswith(" ") or re.match(r"\s*(/?\*|assert)", line) or '"' in line:
                    continue
                for old, new in SWAPS:
                    for found in re.finditer(re.escape(old), line):
                        yield path, number, line[:found.start()] + new + line[found.end():]


def run(root, command, seconds=MOST_SECONDS):
    try:
        return subprocess.run(command, cwd=root, shell=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, timeout=seconds,
                              check=False, env=dict(os.environ, B="build")).returncode == 0
    except subprocess.TimeoutExpired:
        return False


def tests_of(folder, root):
    """The C programs of the folder first, then what goes through everything."""
    near = {"match": ["match", "pack"], "words": ["published"], "tag": ["match"], "base": ["base", "read"]}.get(folder, [folder])
    programs = [f"build/plain/{path[len(root) + 1:-2]}" for name in near for path in sorted(glob.glob(f"{root}/tests/{name}/test_*.c"))]
    scripts = [f"python3 {path[len(root) + 1:]}" for path in sorted(glob.glob(f"{root}/tests/{folder}/test_*.py"))]
    return programs, scripts + ["tests/spec/run_spec --floor tests/spec/floors.tsv build/dishtake", "tests/accuracy/accuracy.sh build/dishtake",
                                "python3 tests/cli/test_findings.py"]


def is_noticed(root, folder):
    """None: it is no fault, since it does not compile or gives the same program."""
    programs, scripts = tests_of(folder, root)
    before = library(root)
    if not run(root, MAKE + " ".join(["build/dishtake", *programs])) or library(root) == before:
        return None
    return not all(run(root, test) for test in programs + scripts)


def check_without(root):
    """Everything is built, and no test fails without a fault."""
    programs, scripts = zip(*(tests_of(folder, root) for folder in CORE))
    tests = sorted(set(sum(programs, [])) | set(sum(scripts, [])))
    if not run(root, MAKE + " ".join(["build/dishtake", *sorted(set(sum(programs, [])))]), 3000):
        sys.exit("it does not build")
    failing = [test for test in tests if not run(root, test)]
    if failing:
        sys.exit(f"fails without a fault: {failing}")


def main(work, count, seed):
    chance = random.Random(seed)
    os.makedirs(work, exist_ok=True)
    for name in COPIED:
        if not os.path.exists(os.path.join(work, name)):
            (shutil.copytree if os.path.isdir(name) else shutil.copy)(name, os.path.join(work, name))
    root = os.path.abspath(work)
    check_without(root)
    noticed = missed = 0
    every = list(places(root))
    while noticed + missed < count:
        path, number, line = chance.choice(every)
        with open(path, encoding="utf-8") as file:
            lines = file.readlines()
        kept, lines[number] = lines[number], line
        with open(path, "w", encoding="utf-8") as file:
            file.writelines(lines)
        result = is_noticed(root, path.split("/")[-2])
        lines[number] = kept
        with open(path, "w", encoding="utf-8") as file:
            file.writelines(lines)
        noticed, missed = noticed + (result is True), missed + (result is False)
        if result is False:
            print(f"not noticed: {path[len(root) + 1:]}:{number + 1}: {kept.strip()} -> {line.strip()}", flush=True)
    print(f"figure: {noticed} of {count} faults were noticed ({len(every)} could be made)")


if __name__ == "__main__":
    main(sys.argv[1], int(sys.argv[2]), int(sys.argv[3]) if len(sys.argv) > 3 else 1)
