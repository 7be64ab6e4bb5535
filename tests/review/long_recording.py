"""A recording of three hours and thirty dishes or more: the tests' own recordings, one after the other, their times stretched.

SPDX-License-Identifier: MIT
"""
import glob
import json
import os
import re
import subprocess

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
SECONDS = 3 * 3600
DISHES = 30
CUE = re.compile(r"(\d+):(\d+):(\d+),(\d+) --> (\d+):(\d+):(\d+),(\d+)\n((?:.+\n)+)")


def cues(program, file):
    """Start, end, text of each caption, in seconds."""
    done = subprocess.run([program, "captions", "-q", "--as", "srt", file], capture_output=True, check=False)
    text = done.stdout.decode("utf-8", "replace").replace("\r\n", "\n")
    for m in CUE.finditer(text + "\n"):
        h, mi, s, ms, h2, mi2, s2, ms2 = map(int, m.groups()[:8])
        yield h * 3600 + mi * 60 + s + ms / 1000, h2 * 3600 + mi2 * 60 + s2 + ms2 / 1000, m[9]


def dishes_of(program, file):
    done = subprocess.run([program, "extract", "-q", "--no-edits", file], capture_output=True, check=False)
    return len(json.loads(done.stdout)["dishes"]) if done.returncode == 0 else 0


def parts(program):
    """Files with dishes until there are enough; how many dishes each has alone."""
    files = sorted(f for pattern in ("recordings", "corpus") for f in glob.glob(os.path.join(ROOT, "tests", pattern, "*.*"))
                   if not f.endswith((".gold.json", "README.md", "edits.json")))
    total = 0
    for file in files:
        count = dishes_of(program, file)
        total += count
        if count:
            yield file
        if total >= DISHES:
            return


def clock(seconds):
    ms = round(seconds * 1000)
    return f"{ms // 3600000:02}:{ms // 60000 % 60:02}:{ms // 1000 % 60:02},{ms % 1000:03}"


def write(program, path):
    """Writes it as SubRip."""
    pieces = [list(cues(program, file)) for file in parts(program)]
    stretch = SECONDS / sum(piece[-1][1] for piece in pieces if piece)
    start, n = 0.0, 0
    with open(path, "w", encoding="utf-8") as out:
        for piece in filter(None, pieces):
            for begin, end, text in piece:
                n += 1
                out.write(f"{n}\n{clock((start + begin) * stretch)} --> {clock((start + end) * stretch)}\n{text}\n")
            start += piece[-1][1]
