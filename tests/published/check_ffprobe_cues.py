#!/usr/bin/env python3
"""SubRip and WebVTT files: counts, times and words of the captions, against ffprobe and ffmpeg.

Outside source: FFmpeg's own demuxers and decoders of SubRip and WebVTT (Debian's package ffmpeg). Rolling captions
come from FFmpeg as the file has them, each line twice; a line that the caption before showed too is left out here.
Prints "N passed, N failed". The program that shows what the readers read is the test of the readers itself:
check_ffprobe_cues.py [PROGRAM]; else it is taken from $B, the build folder.
SPDX-License-Identifier: MIT
"""
import collections
import glob
import json
import os
import re
import subprocess
import sys
import tempfile

SLACK = 0.0015  # FFmpeg counts in milliseconds
ROLLING = {"rolling-soup.vtt", "fixed-width.vtt", "muffled-peppers.vtt", "thursday-rice-night.vtt", "three-weeknights.vtt",
           "madurai-lunch-leeds.vtt", "night-nurse-kimchi.vtt", "babcia-christmas-eve.vtt", "porch-smoker-bill.vtt",
           "blue-gate-penang.vtt", "chat-says-hello.vtt", "lodger-on-the-left-ring.vtt", "mudroom-boots-drying.vtt", "screened-porch-evening.vtt",
           "shearing-shed-smoke.vtt", "stool-by-the-counter.vtt", "tannie-and-the-phone.vtt", "chapel-lane-slippers.vtt", "khanum-thursday.vtt",
           "seven-loaves-blind.vtt", "barn-above-hebden.vtt", "osu-balcony-radio.vtt", "share-house-stove.vtt", "window-over-the-sink.vtt"}
# Sounds and marks of speakers are no words of the talk; FFmpeg leaves them in.
MARKUP = re.compile(r"<[^>]*>|\{\\[^}]*\}")
NO_WORDS = r"\[ (?=__ \])|(?<=__) \]|\[(?! __ \])[^\]]*\]|^\([a-z ]*\)$|^[-–] ?|^[A-Z]+: |(?<=[.?!] )- |^\.\.\.$|>>|♪"
SPEAKS = 3  # times, at least: "Lina: " at the beginning of a line is a speaker, "Moutabal: " is none


def output(*command):
    return subprocess.run(command, stdin=subprocess.DEVNULL, capture_output=True, check=True).stdout.decode()


def packets(path):
    """Start and end of each caption, by ffprobe."""
    shown = json.loads(output("ffprobe", "-v", "error", "-show_packets", "-of", "json", path))
    return [(float(p["pts_time"]), float(p["pts_time"]) + float(p["duration_time"])) for p in shown["packets"]]


def decoded(path):
    """The text of each caption, by ffmpeg."""
    text = output("ffmpeg", "-v", "error", "-i", path, "-f", "srt", "-")
    blocks = re.split(r"\n\n(?=\d+\n\d\d:\d\d:\d\d,\d+ --> )", text.strip("\n"))
    return [block.split("\n")[2:] for block in blocks]


def no_words(text):
    """What of a file is no word of the talk."""
    names = collections.Counter(re.findall(r"^([A-Z][A-Za-z]*): ", text, re.M))
    return re.compile("|".join([NO_WORDS, *(f"^{name}: " for name, times in names.items() if times >= SPEAKS)]), re.M)


def words(lines, none):
    return [word for word in none.sub(" ", MARKUP.sub("", "\n".join(lines))).replace("\xa0", " ").split() if word != "-"]


def new_lines(captions):
    """Of rolling captions: the lines that stood not in the caption before."""
    above = []
    for lines in captions:
        here = [line.strip() for line in lines if line.strip()]
        yield [line for line in here if line not in above[-1:]]
        above = here


def ours(program, path):
    found = []
    for line in output(program, "--captions", path).splitlines():
        match = re.match(r"(\d+\.\d+) (-?\d+\.\d+) (.*)", line)
        if match:
            found.append((float(match[1]), float(match[2]), [word for word in match[3].split() if word != "-"]))
    return found


def whole_captions(mine, theirs):
    """Ours, but the voices of one caption are one again: one that begins with none of theirs goes to that which ends there."""
    joined = []
    for start, end, said in mine:
        own = any(abs(start - begins) <= SLACK for begins, _ in theirs)
        at = next((n for n in reversed(range(len(joined))) if abs(joined[n][1] - start) <= SLACK), None)
        if own or at is None:
            joined.append((start, end, said))
        else:
            joined[at] = (joined[at][0], end, joined[at][2] + said)
    return joined


def close(a, b):
    return abs(a[0] - b[0]) <= SLACK and abs(a[1] - b[1]) <= SLACK


def without_style(path, folder):
    """The file, or a copy without the STYLE blocks at which FFmpeg 5.1 stops reading."""
    with open(path, encoding="utf-8") as file:
        text = file.read()
    if "\nSTYLE\n" not in text:
        return path
    copy = os.path.join(folder, os.path.basename(path))
    with open(copy, "w", encoding="utf-8") as file:
        file.write(re.sub(r"\nSTYLE\n(?:.+\n)*", "\n", text))
    return copy


def compare(program, path, folder):
    """What differs; an empty list when nothing does."""
    plain = without_style(path, folder)
    mine, theirs, texts = ours(program, path), packets(plain), decoded(plain)
    none = no_words("\n".join(line for lines in texts for line in lines))
    wrong = []
    rolling = os.path.basename(path) in ROLLING
    if rolling:
        if not 0 < len(mine) < len(theirs):
            wrong.append(f"{len(mine)} captions, of {len(theirs)} that ffprobe counts")
        wrong += [f"no such caption: {a[:2]}" for a in mine if not any(close(a, b) for b in theirs)]
        texts = list(new_lines(texts))
    else:
        mine = whole_captions(mine, theirs)
        spoken = [(b, words(t, none)) for b, t in zip(theirs, texts) if words(t, none)]
        if len(mine) != len(spoken):
            wrong.append(f"{len(mine)} captions, ffprobe counts {len(spoken)}")
        wrong += [f"{a[:2]} is {b} by ffprobe" for a, (b, _) in zip(mine, spoken) if not close(a, b)]
    a = [word for caption in mine for word in caption[2]]
    b = [word for lines in texts for word in words(lines, none)]
    if a != b:
        at = next((i for i, (x, y) in enumerate(zip(a, b)) if x != y), min(len(a), len(b)))
        wrong.append(f"word {at}: {a[at:at + 6]}, by ffmpeg {b[at:at + 6]}")
    return wrong


def main():
    build = os.environ.get("B", "build")
    program = sys.argv[1] if len(sys.argv) > 1 else f"{build}/san/tests/read/test_read"
    # The other samples have faults that FFmpeg reads otherwise or not at all.
    samples = [f"tests/read/samples/{name}" for name in ("same.srt", "same.vtt", "repeats.srt")]
    files = sorted(glob.glob("tests/corpus/*.srt") + glob.glob("tests/corpus/*.vtt")
                   + glob.glob("tests/recordings/**/*.srt", recursive=True)
                   + glob.glob("tests/recordings/**/*.vtt", recursive=True)) + samples
    passed = failed = 0
    for path in files:
        with tempfile.TemporaryDirectory() as folder:
            wrong = compare(program, path, folder)
        passed, failed = passed + (not wrong), failed + bool(wrong)
        for line in wrong[:10]:
            print(f"{path}: {line}")
    print(f"{passed} passed, {failed} failed")
    return 1 if failed or not passed else 0


if __name__ == "__main__":
    sys.exit(main())
