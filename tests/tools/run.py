#!/usr/bin/env python3
"""Runs test programs and closes with one line for all of them: "N passed, N failed".

  run.py "PROGRAM ARGUMENT..."...

A program may be a cmocka one, a Python unittest, or anything that prints lines "N passed, N failed"; what says
none of this counts as one test. The output of a program that failed is shown whole, with the command that
repeats it; a program that passed has a line. Lines that begin with "figure:" are always shown.
SPDX-License-Identifier: MIT
"""
import os
import re
import shlex
import subprocess
import sys
import time

TIMEOUT_SECONDS = 1200


def counts(output, status):
    """Passed and failed tests as the program itself counted them, and how many it left out."""
    passed = failed = skipped = 0
    known = False
    for match in re.finditer(r"^\[  PASSED  \] (\d+) test|^\[  FAILED  \] .*: (\d+) test", output, re.M):
        known = True
        passed += int(match[1] or 0)
        failed += int(match[2] or 0)
    for match in re.finditer(r"^(\d+) passed, (\d+) failed(?:, (\d+) skipped)?", output, re.M):
        known = True
        passed += int(match[1])
        failed += int(match[2])
        skipped += int(match[3] or 0)
    unit = re.search(r"^Ran (\d+) tests? in", output, re.M)
    if unit:
        known = True
        bad = sum(int(n) for n in re.findall(r"(?:failures|errors)=(\d+)", output))
        left = sum(int(n) for n in re.findall(r"skipped=(\d+)", output))
        passed += int(unit[1]) - bad - left
        failed += bad
        skipped += left
    if not known and status == 0:
        passed = 1
    if status != 0 and failed == 0:
        failed = 1
    return passed, failed, skipped


def run(program):
    words = shlex.split(program)
    command = [sys.executable, *words] if words[0].endswith(".py") else [os.path.join(".", words[0]), *words[1:]]
    env = dict(os.environ, ASAN_OPTIONS="detect_leaks=1:allocator_may_return_null=1", LC_ALL="C.UTF-8",
               PYTHONDONTWRITEBYTECODE="1")
    begin = time.monotonic()
    try:
        done = subprocess.run(command, stdin=subprocess.DEVNULL, stdout=subprocess.PIPE, stderr=subprocess.STDOUT,
                              env=env, timeout=TIMEOUT_SECONDS, check=False)
        output, status = done.stdout.decode("utf-8", "replace"), done.returncode
    except subprocess.TimeoutExpired as late:
        output = (late.stdout or b"").decode("utf-8", "replace") + f"\nstopped after {TIMEOUT_SECONDS} s\n"
        status = 1
    except OSError as error:
        output, status = f"{error}\n", 1
    return output, status, time.monotonic() - begin


def main(programs):
    total_passed = total_failed = total_skipped = 0
    for program in programs:
        output, status, seconds = run(program)
        passed, failed, skipped = counts(output, status)
        total_passed, total_failed, total_skipped = (
            total_passed + passed, total_failed + failed, total_skipped + skipped)
        left_out = f", {skipped} skipped" if skipped else ""
        if failed:
            print(output.rstrip())
            print(f"FAILED {program}: {passed} passed, {failed} failed{left_out} (repeat: {program})")
        else:
            print(f"  {program}: {passed} passed{left_out} ({seconds:.1f} s)")
            for line in output.splitlines():
                if line.startswith("figure:"):
                    print("    " + line)
        sys.stdout.flush()
    if total_skipped:
        print(f"({total_skipped} skipped: see the programs above)")
    print(f"{total_passed} passed, {total_failed} failed")
    return 1 if total_failed or not total_passed else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
