#!/usr/bin/env python3
"""Runs test programs and closes with one line for all of them: "N passed, N failed".

  run.py "PROGRAM ARGUMENT..."...

As many run at once as there are processors (JOBS=1: one at a time), begun in the order given, so the longest stand
first. Each has its wall time and its processor time, children included. A program may be a cmocka one, a Python unittest, or anything that prints lines "N passed, N failed"; what says
none of this counts as one test. The output of a program that failed is shown whole, with the command that
repeats it; a program that passed has a line. Lines that begin with "figure:" are always shown.
SPDX-License-Identifier: MIT
"""
import concurrent.futures
import os
import re
import shlex
import signal
import subprocess
import sys
import tempfile
import threading
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
    """What it printed, its exit status, and how many seconds of the clock and of processors it took."""
    words = shlex.split(program)
    command = [sys.executable, *words] if words[0].endswith(".py") else [os.path.join(".", words[0]), *words[1:]]
    env = dict(os.environ, ASAN_OPTIONS="detect_leaks=1:allocator_may_return_null=1", LC_ALL="C.UTF-8",
               PYTHONDONTWRITEBYTECODE="1")
    begin = time.monotonic()
    with tempfile.TemporaryFile() as out:
        try:
            process = subprocess.Popen(command, stdin=subprocess.DEVNULL, stdout=out, stderr=subprocess.STDOUT, env=env,
                                       start_new_session=True)
        except OSError as error:
            return f"{error}\n", 1, 0, 0
        # Not communicate(): only wait4 says what the program and its children took.
        late = threading.Timer(TIMEOUT_SECONDS, os.killpg, (process.pid, signal.SIGKILL))
        late.start()
        _, status, used = os.wait4(process.pid, 0)
        late.cancel()
        process.returncode = os.waitstatus_to_exitcode(status)
        out.seek(0)
        output = out.read().decode("utf-8", "replace")
    seconds = time.monotonic() - begin
    if process.returncode == -signal.SIGKILL and seconds >= TIMEOUT_SECONDS:
        output += f"\nstopped after {TIMEOUT_SECONDS} s\n"
    return output, process.returncode, seconds, used.ru_utime + used.ru_stime


def main(programs):
    totals = [0, 0, 0]
    with concurrent.futures.ThreadPoolExecutor(int(os.environ.get("JOBS") or os.cpu_count() or 1)) as pool:
        running = {pool.submit(run, program): program for program in programs}
        for done in concurrent.futures.as_completed(running):
            totals = [a + b for a, b in zip(totals, report(running[done], *done.result()))]
    passed, failed, skipped = totals
    if skipped:
        print(f"({skipped} skipped: see the programs above)")
    print(f"{passed} passed, {failed} failed")
    return 1 if failed or not passed else 0


def report(program, output, status, seconds, processor):
    """Prints the program's line, or all it said if it failed; its counts."""
    passed, failed, skipped = counts(output, status)
    left_out = f", {skipped} skipped" if skipped else ""
    if failed:
        print(output.rstrip())
        print(f"FAILED {program}: {passed} passed, {failed} failed{left_out} (repeat: {program})")
    else:
        print(f"  {program}: {passed} passed{left_out} ({seconds:.1f} s, processor {processor:.1f} s)")
        for line in output.splitlines():
            if line.startswith("figure:"):
                print("    " + line)
    sys.stdout.flush()
    return passed, failed, skipped


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
