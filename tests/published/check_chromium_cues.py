#!/usr/bin/env python3
"""WebVTT files: times and words of the captions, against the cues that Chromium reads from them.

Outside source: Debian's Chromium, which reads a <track> by the algorithm of the W3C's text. Read are the cases of tests/read/webvtt.cases,
but for those that say "kept", where more is kept than the algorithm keeps; and the recordings that do not roll. Prints "N passed, N failed".
Without Chromium, Node or npm it says so and counts as skipped.
SPDX-License-Identifier: MIT
"""
import glob
import json
import os
import re
import sys
import tempfile

import check_ffprobe_cues as readers

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path.append(os.path.join(os.path.dirname(HERE), "tools"))
import browser  # pylint: disable=wrong-import-position

CASES = os.path.join(os.path.dirname(HERE), "read", "webvtt.cases")
MARKS = re.compile(r"\{\d+\.\d+\}|[\u200e\u200f]")  # how a word's own time is shown; marks of direction, which say nothing
ESCAPES = {r"\t": "\t", r"\r": "\r", r"\f": "\f", r"\0": "\0"}
CUE = re.compile(r"(\d+):\d+ (\S+) (\S+) (.*?)\| (.*)")


def words(text):
    return MARKS.sub("", text).split()


def captions(lines):
    """Start, end (-1 where there is none) and words of what a case shows. The voices of one cue are captions of their own, one right
    after the other: here one again."""
    cue = None
    for m in filter(None, map(CUE.fullmatch, lines)):
        start, end, speaker, said = float(m[2]), -1 if m[3] == "?" else float(m[3]), m[4], words(m[5].replace(" / ", " "))
        if cue and speaker not in ("?", cue[3]) and start == cue[1]:
            cue = (cue[0], end, cue[2] + said, speaker)
            continue
        if cue:
            yield cue[:3]
        cue = (start, end, said, speaker)
    if cue:
        yield cue[:3]


def cases():
    """Name, bytes and captions of each case."""
    with open(CASES, encoding="utf-8") as file:
        blocks = re.split(r"^= ", file.read(), flags=re.M)[1:]
    for block in blocks:
        name, rest = block.split("\n", 1)
        text, shown = rest.split("\n--\n", 1)
        text = re.sub(r"\\[trf0]", lambda m: ESCAPES[m[0]], text + "\n")
        yield name, text.encode(), list(captions(shown.split("\n\n")[0].splitlines()))


def compare(mine, theirs):
    """What differs; None when nothing does. A caption without words is none, and sounds are no words."""
    none = readers.no_words("\n".join(text for _, _, text in theirs or []))
    theirs = [(start, end, words(none.sub(" ", text))) for start, end, text in theirs or []]
    theirs = [cue for cue in theirs if cue[2]]
    if len(mine) != len(theirs):
        return f"{len(mine)} captions, {len(theirs)} by Chromium: {theirs[:3]}"
    return next((f"{a} is {b} by Chromium" for a, b in zip(mine, theirs) if not readers.close(a, b) or a[2] != b[2]), None)


def main():
    if not browser.is_ready():
        return 0
    program = f"{browser.BUILD}/san/tests/read/test_read"
    # A browser shows rolling captions as they stand there, line for line.
    wanted = [case for case in cases() if not re.search(r"\bkept\b|\brolling:", case[0])]
    for path in sorted(glob.glob("tests/corpus/*.vtt") + glob.glob("tests/recordings/**/*.vtt", recursive=True)):
        if os.path.basename(path) not in readers.ROLLING:
            with open(path, "rb") as file:
                wanted.append((path, file.read(), readers.ours(program, path)))
    with tempfile.TemporaryDirectory() as folder:
        for i, (_, data, _) in enumerate(wanted):
            with open(os.path.join(folder, f"{i:03}.vtt"), "wb") as file:
                file.write(data)
        theirs = json.loads(browser.output(os.path.join(HERE, "cues.mjs"), folder))
    failed = 0
    for i, (name, _, mine) in enumerate(wanted):
        wrong = compare(mine, theirs[f"{i:03}.vtt"])
        failed += bool(wrong)
        if wrong:
            print(f"FAILED {name}: {wrong}")
    print(f"{len(wanted) - failed} passed, {failed} failed")
    return 1 if failed or not wanted else 0


if __name__ == "__main__":
    sys.exit(main())
