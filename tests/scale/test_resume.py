#!/usr/bin/env python3
"""extract --resume over two thousand files: what was done is not done again, whatever moment a run is killed at, and the
output is what one undisturbed run without it writes, byte for byte.
SPDX-License-Identifier: MIT
"""
import fcntl
import glob
import os
import random
import re
import shutil
import signal
import subprocess
import sys
import tempfile
import time
import unittest

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
PROGRAM = os.path.join(ROOT, os.environ.get("B", "build"), "dishtake")
GRAMMAR = os.path.join(ROOT, "grammars", "en")
FILES = 2000
BAD = (37, 1500)  # no transcripts
UNREADABLE, UNWRITTEN, USAGE = 3, 4, 2


def talk(n):
    return "".join(f"{i}.0\t{i}.9\t{words}\n" for i, words in enumerate(
        (f"Today we make soup number {n}.", f"Add {n % 9 + 1} cups of water.", "Simmer it for ten minutes.")))


class Resume(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.mkdtemp()
        self.addCleanup(shutil.rmtree, self.folder)

    def make(self, count):
        self.names = [f"{n:04}.tsv" for n in range(count)]
        for n, name in enumerate(self.names):
            self.put(name, "no transcript" if n in BAD else talk(n))

    def put(self, name, text):
        with open(os.path.join(self.folder, name), "w", encoding="utf-8") as file:
            file.write(text)

    def get(self, name):
        with open(os.path.join(self.folder, name), "rb") as file:
            return file.read()

    def command(self, *arguments, jobs=2):
        return [PROGRAM, "extract", "--jobs", str(jobs), *arguments, *self.names]

    def run_it(self, *arguments, jobs=2):
        return subprocess.run(self.command(*arguments, jobs=jobs), cwd=self.folder, capture_output=True, check=False, timeout=600)

    def resume(self, *arguments, status=0, jobs=2):
        """Taken over from an earlier run, and what was said."""
        done = self.run_it("--resume", "-o", "all.jsonl", *arguments, jobs=jobs)
        said = done.stderr.decode()
        self.assertEqual(done.returncode, status, said)
        found = re.search(r"(\d+) of \d+ files were done by an earlier run", said)
        return int(found[1]) if found else 0, said

    def kept_size(self):
        kept = os.path.join(self.folder, "all.jsonl.resume")
        return os.path.getsize(kept) if os.path.exists(kept) else 0

    def is_whole(self, *arguments, plain=None):
        plain = plain or self.run_it("-q", *arguments).stdout
        self.assertEqual(plain.count(b"\n"), len(self.names))
        self.assertEqual(self.get("all.jsonl"), plain)
        self.assertEqual(glob.glob(os.path.join(glob.escape(self.folder), ".*")), [], "something is left beside it")

    def test_two_thousand_files_killed_again_and_again(self):
        self.make(FILES)
        self.put("all.jsonl", "old\n")
        chance, before, kills = random.Random(7), [], 0
        for _ in range(8):
            run = subprocess.Popen(self.command("--resume", "-o", "all.jsonl"), cwd=self.folder, stderr=subprocess.DEVNULL)
            enough = self.kept_size() + chance.randrange(1, 60_000)
            while run.poll() is None and self.kept_size() < enough:
                time.sleep(0.001)
            run.send_signal(signal.SIGKILL)
            kills += run.wait() == -signal.SIGKILL
            before.append(self.kept_size())
            self.assertEqual(self.get("all.jsonl"), b"old\n", "a half-written output was given the name")
        self.assertGreater(kills, 4)
        # A killed run's last piece may be half; it is cut off by the next one.
        self.assertTrue(all(b > a - 10_000 for a, b in zip(before, before[1:])), f"thrown away: {before}")
        _, said = self.resume(status=UNREADABLE)
        for n in BAD:
            self.assertIn(f"{n:04}.tsv: is no transcript", said)
        self.is_whole()
        self.put("all.jsonl", "gone\n")
        taken, _ = self.resume(status=UNREADABLE, jobs=1)
        self.assertEqual(taken, FILES - len(BAD), "a bad file is tried again, all others are not")
        self.is_whole()
        print(f"figure: {kills} kills among {FILES} files, the kept part grew to {max(before) >> 10} KB, the output is whole")

    def test_only_what_changed_is_done_again(self):
        self.make(30)
        self.resume()
        self.put("0003.tsv", talk(99))
        self.put("0004.edits.json", '{"format": "dishtake edits 1", "edits": []}')
        self.assertEqual(self.resume()[0], 28)
        self.is_whole()
        self.names = self.names[10:] + ["0001.tsv", "new.tsv"]
        self.put("new.tsv", talk(5))
        self.assertEqual(self.resume()[0], 21)
        self.is_whole()

    def test_another_grammar_or_option_does_everything_again(self):
        self.make(12)
        self.resume()
        for arguments in (["--kitchen", "us"], ["--as-one-dish"], ["--dishes", "2"], ["--grammar", GRAMMAR], ["--no-edits"], []):
            with self.subTest(arguments):
                taken, said = self.resume(*arguments)
                self.assertEqual(taken, 0)
                self.assertIn("everything is done again", said)
                self.is_whole(*arguments)
                self.assertEqual(self.resume(*arguments)[0], 12)

    def test_another_build_does_everything_again(self):
        self.make(5)
        self.resume()
        other = os.path.join(self.folder, "other-build")
        shutil.copy(PROGRAM, other)
        with open(other, "ab") as file:
            file.write(b"\0")
        done = subprocess.run([other, *self.command("--resume", "-o", "all.jsonl")[1:]], cwd=self.folder, capture_output=True,
                              check=False)
        self.assertIn(b"everything is done again", done.stderr)
        self.assertNotIn(b"by an earlier run", done.stderr)

    def test_what_is_broken_is_done_again(self):
        self.make(20)
        self.resume()
        kept, plain = self.get("all.jsonl.resume"), self.run_it("-q").stdout
        head = kept.index(b"\n") + 1
        chance = random.Random(11)
        places = [0, 1, 5, head - 1, head, head + 20, head + 51, len(kept) - 1, len(kept)]
        for cut in places + [chance.randrange(len(kept)) for _ in range(20)]:
            with self.subTest(cut=cut):
                self.keep(kept[:cut])
                taken, _ = self.resume()
                self.assertEqual(taken == 20, cut == len(kept))
                self.is_whole(plain=plain)
        for place in [chance.randrange(head, len(kept)) for _ in range(20)]:
            with self.subTest(flipped=place):
                self.keep(kept[:place] + bytes([kept[place] ^ 1]) + kept[place + 1:])
                self.assertLess(self.resume()[0], 20)
                self.is_whole(plain=plain)

    def keep(self, content):
        with open(os.path.join(self.folder, "all.jsonl.resume"), "wb") as file:
            file.write(content)

    def test_only_one_run_at_a_time(self):
        self.make(3)
        self.resume()
        with open(os.path.join(self.folder, "all.jsonl.resume"), "rb") as file:
            fcntl.flock(file, fcntl.LOCK_EX)
            _, said = self.resume(status=UNWRITTEN)
        self.assertIn("all.jsonl.resume: another run is writing it", said)

    def test_nobody_elses_file_is_written_over(self):
        self.make(3)
        for content in (b"my own notes", b"my own notes, and some more of them, longer than a line"):
            self.keep(content)
            _, said = self.resume(status=UNWRITTEN)
            self.assertIn("all.jsonl.resume: ", said)
            self.assertEqual(self.get("all.jsonl.resume"), content)

    def test_it_needs_a_file(self):
        self.make(2)
        for arguments in ([], ["-o", "-"]):
            done = self.run_it("--resume", *arguments)
            self.assertEqual((done.returncode, done.stdout), (USAGE, b""))
            self.assertIn(b"-o FILE", done.stderr)


if __name__ == "__main__":
    sys.exit(unittest.main())
