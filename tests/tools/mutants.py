#!/usr/bin/env python3
"""Small faults put into the core, one at a time, and whether a test notices: mutants.py WORK COUNT [SEED [FOLDER...]]

A copy of the sources in WORK is changed, never the sources themselves. A fault is a comparison, a sign, a connective or a
truth turned round in a line that does something, in the folders of src/ that are named (or all of CORE). Program and tests
are built with sanitizers, and the tests run from the quickest to the slowest until one fails; what none of them notices is
printed with its place. What does not compile, or compiles to the same object, is no fault and is not counted.
SPDX-License-Identifier: MIT
"""
import filecmp
import glob
import os
import random
import re
import shlex
import shutil
import subprocess
import sys

import run

CORE = "base kitchen read words tag match split build check edits write".split()
SWAPS = [("<=", "<"), (">=", ">"), (" < ", " <= "), (" > ", " >= "), ("==", "!="), ("!=", "=="), ("&&", "||"), ("||", "&&"), (" + ", " - "),
         (" - ", " + "), ("return true;", "return false;"), ("return false;", "return true;"), ("++", "--"), ("continue;", "break;")]
TOOLS = {"embed.o", "precompile.o"}
COPIED = ["Makefile", "src", "include", "grammars", "samples", "tests", "docs"]
# Left out: what needs a browser, an installed package or valgrind, what takes minutes, what looks at no code of the core, and
# what wants a program without sanitizers.
LEFT_OUT = {"tests/review/test_browser.py", "tests/review/test_soak.py", "tests/limits/check_limits.py", "tests/packaging/check_package",
            "tests/published/check_publish_browser.py", "tests/published/check_json_suite.py", "tests/faults/check_faults",
            "tests/scale/check_parallel", "tests/api/test_install.py", "tests/corpus/test_score.py", "tests/spec/test_run_spec.py",
            "tests/lexicon/check_lexicon.py", "tests/disk/test_save", "tests/disk/test_folder", "tests/disk/test_disk",
            "tests/scale/test_resume.py", "tests/cli/test_bad_input.py", "tests/review/test_requests.py", "tests/kitchen/check_ready"}
# Long, and of one folder: only for a fault there.
ONLY_OF = {"tests/edits/test_edits": "edits", "tests/edits/test_values": "edits", "tests/match/test_sieve": "match",
           "tests/published/check_ffprobe_cues.py": "read"}
WHOLE = ["tests/spec/run_spec --floor tests/spec/floors.tsv build/dishtake", "tests/accuracy/accuracy.sh build/dishtake"]
MOST_SECONDS = 120
CC = shlex.split(os.environ.get("CC", "cc"))
SANITIZERS = "-O1 -fsanitize=address,undefined -fno-sanitize-recover=all -DARENA_MALLOC".split()
# As the Makefile has them, but that one library holds the core, and shows all it has: for a fault only that is made anew.
STANDARD = "-std=c11 -fPIC -w -MMD -MP".split()
SOURCE = "-Isrc -Iinclude -Itests -D_POSIX_C_SOURCE=200809L -DPCRE2_CODE_UNIT_WIDTH=8 -DDISHTAKE_VERSION=0".split()
LIBRARIES = "libpcre2-8 jansson libutf8proc expat icu-i18n icu-uc cmocka".split()
CORE_OBJECTS = ["build/dishtake.o", "build/output.o", "build/shopping.o", "build/pipeline.o", "build/pack_builtin.o", "build/kitchen_builtin.o", "build/page_files.o"]
LIBRARY = "build/libcore.so"


def cc(*arguments):
    return subprocess.run([*CC, *arguments], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, check=False).returncode == 0


def compiled(path):
    """The bytes of the object as it would be shipped; None where it does not compile."""
    if not cc("-O2", "-std=c11", "-w", *SOURCE, "-c", "-o", "build/fault.o", path):
        return None
    with open("build/fault.o", "rb") as file:
        return file.read()


def make_library(path=None):
    """After the file has changed; all of it where none is named."""
    objects = CORE_OBJECTS + [name for folder in [*CORE, "model", "pack"] for name in sorted(glob.glob(f"build/{folder}/*.o"))]
    if path and not cc(*SANITIZERS, *STANDARD, *SOURCE, "-c", "-o", path.replace("src/", "build/").replace(".c", ".o"), path):
        sys.exit(f"{path} compiles, but not with sanitizers")
    if not cc(*SANITIZERS, "-shared", "-o", LIBRARY, *[name for name in objects if os.path.basename(name) not in TOOLS]):
        sys.exit("the core does not link")


def make_all(programs):
    flags = subprocess.run(["pkg-config", "--cflags", "--libs", *LIBRARIES], stdout=subprocess.PIPE, check=True, text=True).stdout.split()
    last = [LIBRARY, *flags, "-lm", "-lpthread", "-ldl", f"-Wl,-rpath,{os.getcwd()}/build"]
    if subprocess.run(["make", "-j2", f"CC={shlex.join(CC)}", f"CFLAGS={' '.join(SANITIZERS)}", f"LDFLAGS={' '.join(SANITIZERS)}",
                       f"STD={' '.join(STANDARD)}", "build/dishtake"], stdout=subprocess.DEVNULL, check=False,
                      env=dict(os.environ, ASAN_OPTIONS="detect_leaks=0")).returncode:
        sys.exit("it does not build")
    make_library()
    outer = [name for folder in ("disk", "review", "cli") for name in sorted(glob.glob(f"build/{folder}/*.o"))]
    if not cc(*SANITIZERS, "-o", "build/dishtake", *outer, "build/asset_files.o", *last):
        sys.exit("the program does not link")
    for program in programs:
        os.makedirs(os.path.dirname(program), exist_ok=True)
        more = ["tests/fuzz/replay.c"] if "/fuzz_" in program else []
        disk = [name for name in outer if "/disk/" in name]
        if not cc(*SANITIZERS, *STANDARD, *SOURCE, "-o", program, program.replace("build/san/", "") + ".c", *more, *disk, *last):
            print(f"left out, since it does not link so: {program}", flush=True)


def places(folders):
    """Every fault that could be made: file, line, the line as it would be."""
    for folder in folders:
        for path in sorted(glob.glob(f"src/{folder}/*.c")):
            if path == "src/kitchen/precompile.c":
                continue
            with open(path, encoding="utf-8") as file:
                lines = file.readlines()
            for number, line in enumerate(lines):
                if not line.startswith(" ") or re.match(r"\s*(/?\*|assert)", line) or '"' in line:
                    continue
                for old, new in SWAPS:
                    for found in re.finditer(re.escape(old), line):
                        yield path, number, line[:found.start()] + new + line[found.end():]


def quickest_first():
    """All tests that pass without a fault, in the order of what they take."""
    programs = [path for path in glob.glob("tests/*/test_*.c") if path[:-2] not in LEFT_OUT]
    scripts = [path for path in glob.glob("tests/*/test_*.py") + glob.glob("tests/*/check_*") if path not in LEFT_OUT]
    programs = [f"build/san/{path[:-2]}" for path in programs + glob.glob("tests/fuzz/fuzz_*.c")]
    make_all(programs)
    times = {}
    for test in [*(name for name in programs if "/test_" in name), *scripts, *WHOLE]:
        _, status, _, times[test] = run.run(test)
        if status:
            print(f"left out, since it fails without a fault: {test}", flush=True)
            del times[test]
    return sorted(times, key=times.get)


def write(path, lines):
    with open(path, "w", encoding="utf-8") as file:
        file.writelines(lines)


def is_noticed(path, tests, before):
    """By which test, "" by none. None: it is no fault."""
    now = compiled(path)
    if now is None or now == before:
        return None
    make_library(path)
    folder = path.split("/")[1]
    near = [test for test in tests if not any(name in test and folder != of for name, of in ONLY_OF.items())]
    return next((test for test in near if run.run(test)[1] != 0), "")


def renew(work):
    """The copy holds what the sources hold now; what was built of the rest of it stays."""
    for name in COPIED:
        old, new = (set(files(os.path.join(top, name), top)) for top in (work, "."))
        for path in old - new:
            os.remove(os.path.join(work, path))
        for path in new:
            if path not in old or not filecmp.cmp(path, os.path.join(work, path), shallow=False):
                os.makedirs(os.path.dirname(os.path.join(work, path)), exist_ok=True)
                shutil.copy(path, os.path.join(work, path))


def files(path, top):
    for folder, _, names in os.walk(path):
        yield from (os.path.relpath(os.path.join(folder, name), top) for name in names)
    if os.path.isfile(path):
        yield os.path.relpath(path, top)


def main(work, count, seed, folders):
    chance = random.Random(seed)
    renew(work)
    os.chdir(work)
    os.environ["B"] = "build"
    tests = quickest_first()
    run.TIMEOUT_SECONDS = MOST_SECONDS
    results = []
    every = list(places(folders))
    while len(results) < count:
        path, number, line = chance.choice(every)
        with open(path, encoding="utf-8") as file:
            lines = file.readlines()
        before = compiled(path)
        write(path, lines[:number] + [line] + lines[number + 1:])
        by = is_noticed(path, tests, before)
        write(path, lines)
        if by is None:
            continue
        make_library(path)
        results.append(by)
        print(f"{'noticed by ' + by if by else 'not noticed'}: {path}:{number + 1}: {lines[number].strip()} -> {line.strip()}", flush=True)
    print(f"figure: {sum(map(bool, results))} of {count} faults were noticed ({len(every)} could be made)")


if __name__ == "__main__":
    main(sys.argv[1], int(sys.argv[2]), int(sys.argv[3]) if len(sys.argv) > 3 else 1, sys.argv[4:] or CORE)
