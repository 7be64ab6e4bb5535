#!/usr/bin/env python3
"""Scores punctuated recordings as machines would have captioned them, beside what they score as they are.

  stripped.py PROGRAM [--keep DIR] [--verbose NAME]

Three degrees, one against the same gold as the other:
  as is      the captions as they are; recordings without full stops are left out
  stripped   no punctuation, no capitals, no speakers; the same cues
  recut      stripped, and cut into cues of two to four seconds at whatever word that is, with fillers and repeats
Chance is seeded by the recording's name, so that each run makes the same captions. --keep leaves the captions in a
folder. --verbose lists what differs in one recording, in each degree.
SPDX-License-Identifier: MIT
"""
import argparse
import glob
import json
import os
import random
import re
import subprocess
import sys
import tempfile

HERE = os.path.dirname(os.path.abspath(__file__))
TESTS = os.path.dirname(HERE)
sys.path.append(os.path.join(TESTS, "tools"))
import loader  # noqa: E402

score = loader.load(os.path.join(TESTS, "corpus/score"))
SETS = {"corpus": "corpus", "recordings": "recordings", "second": "recordings/second",
        "flawless": "recordings/flawless"}
DEGREES = ("as is", "stripped", "recut")
SHOWN = ("boundary_f1", "title_accuracy", "food_f1", "ingredient_line_f1", "prep_f1", "temperature_f1", "duration_f1",
         "step_f1", "yield_accuracy", "problem_f1", "all_right", "pk")
WORDS_PER_STOP_MOST = 60  # as src/words/limits.h has it: fewer stops are none
FILLER_EVERY, REPEAT_EVERY = 18, 40  # words, on average
FILLERS = ("um", "uh", "um", "uh", "you know", "er")
CUE_SECONDS = (2.0, 4.0)
CUE = re.compile(r"(\d+):(\d+):(\d+)[,.](\d+) --> (\d+):(\d+):(\d+)[,.](\d+)")


def seconds(parts):
    hours, minutes, whole, part = map(int, parts)
    return hours * 3600 + minutes * 60 + whole + part / 1000


def clock(at):
    ms = round(at * 1000)
    return f"{ms // 3600000:02d}:{ms // 60000 % 60:02d}:{ms // 1000 % 60:02d},{ms % 1000:03d}"


def cues_of(program, transcript):
    """Any format, read by the program and written as SubRip: (start, end, text)."""
    srt = subprocess.run([*program, "captions", "--no-edits", transcript], capture_output=True, text=True,
                         check=True).stdout
    for block in re.split(r"\n\n+", srt.strip()):
        lines = block.split("\n")
        match = CUE.match(lines[1]) if len(lines) > 2 else None
        if match:
            yield seconds(match.groups()[:4]), seconds(match.groups()[4:]), "\n".join(lines[2:])


def punctuated(cues):
    text = " ".join(cue[2] for cue in cues)
    return len(re.findall(r"[.!?](?:\s|$)", text)) * WORDS_PER_STOP_MOST >= len(text.split())


def stripped(text):
    """As a recogniser would have it: signs that stand between words go, those inside of a number stay."""
    text = re.sub(r"<[^>]*>", "", text)
    text = re.sub(r"(?m)^\s*(?:[-\u2013\u2014]|>>)\s*", "", text)  # who speaks
    text = re.sub(r"(?m)^\s*[A-Z][a-z]+:\s", "", text)
    text = re.sub(r"\s[-\u2013\u2014]+\s|[\u2014\u2026]|\.\.\.", " ", text)
    text = re.sub(r"[.,!?;:]+(?=[\s\"')\u201d\u2019]|$)|[\"()\u201c\u201d\u2018]|(?<!\w)'|'(?!\w)", "", text)
    return " ".join(text.lower().split())


def timed_words(cues):
    """Each word with its time, laid by letters across its cue."""
    for start, end, text in cues:
        words = text.split()
        letters, passed = sum(len(word) + 1 for word in words), 0
        for word in words:
            begin = start + (end - start) * passed / letters
            passed += len(word) + 1
            yield begin, start + (end - start) * passed / letters, word


def stumbled(words, chance):
    """Fillers before words, and words said twice; they take the time of the word that they stand before."""
    for start, end, word in words:
        if chance.random() < 1 / FILLER_EVERY:
            word = f"{chance.choice(FILLERS)} {word}"
        elif chance.random() < 1 / REPEAT_EVERY and not word[0].isdigit():
            word = f"{word} {word}"
        yield start, end, word


def recut(cues, name):
    chance, out = random.Random(name), []
    words = list(stumbled(timed_words(cues), chance))
    while words:
        length = chance.uniform(*CUE_SECONDS)
        n = 1
        while n < len(words) and words[n][1] - words[0][0] <= length:
            n += 1
        out.append((words[0][0], words[n - 1][1], " ".join(word[2] for word in words[:n])))
        words = words[n:]
    return out


def degrees(cues, name):
    plain = [(start, end, stripped(text)) for start, end, text in cues]
    plain = [cue for cue in plain if cue[2]]
    return {"stripped": plain, "recut": recut(plain, name)}


def write_srt(path, cues):
    with open(path, "w", encoding="utf-8") as file:
        for n, (start, end, text) in enumerate(cues, 1):
            file.write(f"{n}\n{clock(start)} --> {clock(end)}\n{text}\n\n")


def extract(program, transcripts):
    """The outputs as JSON, in the order of the transcripts; one run, so that the grammar is read once."""
    done = subprocess.run([*program, "extract", "--quiet", *transcripts], capture_output=True, text=True, check=False)
    lines = done.stdout.splitlines()
    if len(lines) != len(transcripts):
        sys.exit(f"{len(lines)} outputs for {len(transcripts)} transcripts: {done.stderr[-500:]}")
    return [json.loads(line) for line in lines]


class Recording:
    """A punctuated recording with gold, and its captions in each degree."""

    def __init__(self, program, path, folder):
        self.name = os.path.basename(path).removesuffix(".gold.json")
        with open(path, encoding="utf-8") as file:
            self.gold = json.load(file)
        self.transcript = os.path.join(os.path.dirname(path), self.gold["transcript"])
        self.captions = {DEGREES[0]: self.transcript}
        cues = list(cues_of(program, self.transcript))
        self.punctuated = punctuated(cues)
        for degree, made in degrees(cues, self.name).items():
            self.captions[degree] = os.path.join(folder, f"{self.name}.{degree}.srt")
            write_srt(self.captions[degree], made)


def report(label, tallies):
    names = [name.replace("_accuracy", "").replace("_f1", "").replace("ingredient_", "") for name in SHOWN]
    print(f"{label:<16}", *(f"{name[:9]:>9}" for name in names))
    for degree in DEGREES:
        figures = tallies[degree].figures()
        print(f"  {degree:<14}", *(f"{figures[name]:9.3f}" for name in SHOWN))


def run(program, sets, folder, verbose):
    total = {degree: score.Tally() for degree in DEGREES}
    for label, paths in sets.items():
        recordings = [r for r in (Recording(program, path, folder) for path in paths) if r.punctuated]
        tallies = {degree: score.Tally() for degree in DEGREES}
        for degree in DEGREES:
            for r, output in zip(recordings, extract(program, [r.captions[degree] for r in recordings])):
                tally, notes = score.score_recording(r.gold, output, score.read_cues(r.transcript))
                tallies[degree].merge(tally)
                total[degree].merge(tally)
                if r.name == verbose:
                    print(f"== {r.name}, {degree}", *notes, sep="\n   ")
        report(f"{label} ({len(recordings)})", tallies)
    report("ALL", total)


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--keep", metavar="DIR")
    parser.add_argument("--verbose", metavar="NAME")
    parser.add_argument("program")
    options = parser.parse_args()
    sets = {label: sorted(glob.glob(os.path.join(TESTS, part, "*.gold.json"))) for label, part in SETS.items()}
    program = options.program.split()
    with tempfile.TemporaryDirectory() as scratch:
        os.makedirs(options.keep or scratch, exist_ok=True)
        run(program, sets, options.keep or scratch, options.verbose)


if __name__ == "__main__":
    main()
