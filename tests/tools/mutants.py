#!/usr/bin/env python3
"""Small faults put into the core, one at a time, and whether a test notices: mutants.py WORK COUNT [SEED [FOLDER|FILE...]]

A copy of the sources in WORK is changed, never the sources themselves. A fault is a comparison, a sign, a connective or a
truth turned round in a line that does something, in the folders and files of src/ that are named ("split", "build/talk.c";
or all of CORE). The test
programs are built with sanitizers, and the tests run from the quickest to the slowest until one fails; what none of them notices is
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
            "tests/published/check_publish_browser.py", "tests/published/check_chromium_cues.py", "tests/published/check_json_suite.py", "tests/faults/check_faults",
            "tests/scale/check_parallel", "tests/api/test_install.py", "tests/corpus/test_score.py", "tests/spec/test_run_spec.py",
            "tests/lexicon/check_lexicon.py", "tests/disk/test_save", "tests/disk/test_folder", "tests/disk/test_disk",
            "tests/scale/test_resume.py", "tests/cli/test_bad_input.py", "tests/review/test_requests.py", "tests/pack/check_ready",
            "tests/published/test_publish.py", "tests/split/test_shares.py"}
# Long, and of one folder: only for a fault there.
ONLY_OF = {"tests/edits/test_edits": "edits", "tests/edits/test_values": "edits", "tests/match/test_sieve": "match",
           "tests/published/check_ffprobe_cues.py": "read"}
WHOLE = ["tests/spec/run_spec --floor tests/spec/floors.tsv build/dishtake", "tests/accuracy/accuracy.sh build/dishtake"]
MOST_SECONDS = 120
CC = shlex.split(os.environ.get("CC", "cc"))
# As the Makefile has them, but that one library holds the core, and shows all it has: for a fault only that is made anew.
STANDARD = "-O1 -std=c11 -fPIC -w -MMD -MP".split()
SANITIZERS = "-fsanitize=address,undefined -fno-sanitize-recover=all -DARENA_MALLOC".split()
SOURCE = "-Isrc -Iinclude -Itests -D_POSIX_C_SOURCE=200809L -DPCRE2_CODE_UNIT_WIDTH=8 -DDISHTAKE_VERSION=0".split()
LIBRARIES = "libpcre2-8 jansson libutf8proc expat icu-i18n icu-uc cmocka".split()
BUILTIN = ["build/*_builtin.o", "build/page_files.o"]
# Scripts run the program that is shipped, test programs have sanitizers.
BUILDS = {"build": [], "build/san": SANITIZERS}


def cc(*arguments):
    return subprocess.run([*CC, *arguments], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, check=False).returncode == 0


def compile_file(path):
    """The bytes of the object without sanitizers; None where it does not compile."""
    objects = [path.replace("src/", build + "/").replace(".c", ".o") for build in BUILDS]
    if not all(cc(*STANDARD, *flags, *SOURCE, "-c", "-o", name, path) for name, flags in zip(objects, BUILDS.values())):
        return None
    with open(objects[0], "rb") as file:
        return file.read()


def link_core():
    for build, flags in BUILDS.items():
        objects = [path.replace("src/", build + "/").replace(".c", ".o") for folder in ["", *CORE, "model", "pack"]
                   for path in sorted(glob.glob(os.path.join("src", folder, "*.c")))]
        builtin = [name for pattern in BUILTIN for name in sorted(glob.glob(pattern))]
        if not cc(*flags, "-shared", "-o", f"{build}/libcore.so", *builtin, *(name for name in objects if os.path.basename(name) not in TOOLS)):
            sys.exit("the core does not link")


def link_program(build, output, *inputs):
    """With the core as a library that is loaded."""
    flags = subprocess.run(["pkg-config", "--cflags", "--libs", *LIBRARIES], stdout=subprocess.PIPE, check=True, text=True).stdout.split()
    os.makedirs(os.path.dirname(output), exist_ok=True)
    if not cc(*STANDARD, *BUILDS[build], *SOURCE, "-o", output, *inputs, f"{build}/libcore.so", *flags, "-lm", "-lpthread", "-ldl",
              f"-Wl,-rpath,{os.getcwd()}/{build}"):
        sys.exit(f"{output} does not link")


def make_all(programs):
    made = subprocess.run(["make", "-j2", f"CC={shlex.join(CC)}", "CFLAGS=", f"STD={' '.join(STANDARD)}", f"SAN={' '.join(SANITIZERS)}",
                           "build/dishtake", "build/talk_units", "build/san/libcore.a", "build/san/libdisk.a"],
                          stdout=subprocess.DEVNULL, check=False)
    if made.returncode:
        sys.exit("it does not build")
    link_core()
    link_program("build", "build/dishtake", *(name for folder in ("disk", "review", "cli") for name in sorted(glob.glob(f"build/{folder}/*.o"))),
                 "build/asset_files.o")
    for program in programs:
        inputs = [program.replace("build/san/", "") + ".c", *(["tests/fuzz/replay.c"] if "/fuzz_" in program else []), "build/san/libdisk.a"]
        if not os.path.exists(program) or any(os.path.getmtime(name) > os.path.getmtime(program) for name in inputs):
            link_program("build/san", program, *inputs)


def sources(names):
    for name in names:
        found = sorted(glob.glob(f"src/{name}" if name.endswith(".c") else f"src/{name}/*.c"))
        if not found:
            sys.exit(f"{name} is no folder of src/ with sources, and no source in one")
        yield from found


def places(names):
    """Every fault that could be made: file, line, the line as it would be."""
    for path in sources(names):
        with open(path, encoding="utf-8") as file:
            lines = file.readlines()
        for number, line in enumerate(lines):
            if not line.startswith(" ") or re.match(r"\s*(/?\*|assert)", line) or '"' in line:
                continue
            for old, new in SWAPS:
                for found in re.finditer(re.escape(old), line):
                    yield path, number, line[:found.start()] + new + line[found.end():]


class Tests:
    """All that can notice a fault, the quickest first as far as is known. One that fails and has never passed is tried without
    the fault; if it fails then too, it is left out."""

    def __init__(self):
        programs = [path for path in glob.glob("tests/*/test_*.c") if path[:-2] not in LEFT_OUT]
        scripts = [path for path in glob.glob("tests/*/test_*.py") + glob.glob("tests/*/check_*") if path not in LEFT_OUT]
        self.seconds = {f"build/san/{path[:-2]}": 0 for path in programs}
        make_all([*self.seconds, *(f"build/san/{path[:-2]}" for path in glob.glob("tests/fuzz/fuzz_*.c"))])
        self.seconds.update(dict.fromkeys(scripts, 1))
        self.seconds.update(dict.fromkeys(WHOLE, 5))
        self.passed = set()

    def fails(self, test):
        _, status, _, self.seconds[test] = run.run(test)
        if status == 0:
            self.passed.add(test)
        return status != 0

    def notice(self, path, mend):
        """The name of the first that fails with the fault in the file; "" when none does. `mend` takes the fault out."""
        folder = path.split("/")[1]
        for test in sorted(self.seconds, key=self.seconds.get):
            if any(name in test and folder != of for name, of in ONLY_OF.items()) or not self.fails(test):
                continue
            mend()
            if test in self.passed or not self.fails(test):
                return test
            print(f"left out, since it fails without a fault: {test}", flush=True)
            del self.seconds[test]
            return None  # what the others say was not asked with the fault in place
        mend()
        return ""


def write(path, lines):
    with open(path, "w", encoding="utf-8") as file:
        file.writelines(lines)


def notice(path, number, line, tests):
    """By which test, "" by none. None: it is no fault, or it could not be told."""
    with open(path, encoding="utf-8") as file:
        lines = file.readlines()
    before = compile_file(path)

    def mend():
        write(path, lines)
        if compile_file(path) != before:
            sys.exit(f"{path} is not as it was")
        link_core()
    write(path, lines[:number] + [line] + lines[number + 1:])
    now = compile_file(path)
    if now is None or now == before:
        mend()
        return None
    link_core()
    by = tests.notice(path, mend)
    if by is not None:
        print(f"{'noticed by ' + by if by else 'not noticed'}: {path}:{number + 1}: {lines[number].strip()} -> {line.strip()}", flush=True)
    return by


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


def main(work, count, seed, names):
    chance = random.Random(seed)
    renew(work)
    os.chdir(work)
    os.environ["B"] = "build"
    run.TIMEOUT_SECONDS = MOST_SECONDS
    tests = Tests()
    every = list(places(names))
    results = []
    while len(results) < count:
        by = notice(*chance.choice(every), tests)
        results += [] if by is None else [by]
    print(f"figure: {sum(map(bool, results))} of {count} faults were noticed ({len(every)} could be made)")


if __name__ == "__main__":
    main(sys.argv[1], int(sys.argv[2]), int(sys.argv[3]) if len(sys.argv) > 3 else 1, sys.argv[4:] or CORE)
