#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Turn a plain script into the rolling captions that automatic captioning writes.

  roll_captions.py SCRIPT.tsv > RECORDING.vtt

A line of the script is start, end and text, divided by tabs, times in seconds. A line whose text stands in
brackets ([Music]) gets no word times. Every line is shown three times: word by word under the line before it,
alone for a hundredth of a second, and above the next one.
"""
import sys

HOLD = 0.01
SETTINGS = "align:start position:0%"


def clock(at):
    ms = round(at * 1000)
    return f"{ms // 3600000:02d}:{ms // 60000 % 60:02d}:{ms // 1000 % 60:02d}.{ms % 1000:03d}"


def timed_words(start, end, text):
    """The line with a time before each word but the first; longer words take longer."""
    words = text.split()
    if text.startswith("["):
        return text
    weights = [len(word) + 2 for word in words]
    step = (end - start) / sum(weights)
    out, at = words[0], start + weights[0] * step
    for word, weight in zip(words[1:], weights[1:]):
        out += f"<{clock(at)}><c> {word}</c>"
        at += weight * step
    return out


def cue(start, end, upper, lower):
    return f"{clock(start)} --> {clock(end)} {SETTINGS}\n{upper}\n{lower}\n\n"


def roll(lines):
    """`lines` are (start, end, text), in order and without overlap."""
    out, before = "WEBVTT\nKind: captions\nLanguage: en\n\n", " "
    for start, end, text in lines:
        out += cue(start, end, before, timed_words(start, end, text))
        out += cue(end, end + HOLD, text, " ")
        before = text
    return out


def main():
    with open(sys.argv[1], encoding="utf-8") as file:
        rows = [line.rstrip("\n").split("\t") for line in file if line.strip()]
    sys.stdout.write(roll([(float(start), float(end), text) for start, end, text in rows]))


if __name__ == "__main__":
    main()
