#!/usr/bin/env python3
"""Bad input, bad usage, bad places to write to: each gets one clear line and the exit status that --help states.
SPDX-License-Identifier: MIT
"""
import os
import re
import shutil
import subprocess
import tempfile
import unittest

from tool import PROGRAM, ROOT, SAMPLE, SANITIZED, run

FOUND, USAGE, UNREADABLE, UNWRITTEN = 1, 2, 3, 4
BINARY = bytes(range(256)) * 64

# name of the case, the file's bytes, what the message says
INPUTS = [
    ("empty file", b"", "spoken words|is no transcript|empty"),
    ("one byte", b"x", "is no transcript"),
    ("one line end", b"\n", "spoken words|is no transcript|empty"),
    ("byte-order mark alone", b"\xef\xbb\xbf", "spoken words|is no transcript|empty"),
    ("binary", BINARY, "is no t"),
    ("zeroes", bytes(5000), "is no t"),
    ("prose", b"Add two cups of flour.\nStir.\n", "is no transcript"),
    ("JSON of another kind", b'{"name": "x"}', "expected|segments"),
    ("broken JSON", b'[{"start": 1, "end": 2, "text": "add flour"', "expected|JSON"),
    ("deep JSON", b"[" * 100000, "expected|JSON"),
    ("head without captions", b"WEBVTT\n\n", "spoken words|caption"),
    ("XML of another kind", b"<?xml version='1.0'?><a><b/></a>", "expected|TTML|spoken"),
]


class BadInput(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.mkdtemp()
        self.addCleanup(shutil.rmtree, self.folder)

    def path(self, name, content=None):
        path = os.path.join(self.folder, name)
        if content is not None:
            with open(path, "wb") as file:
                file.write(content)
        return path

    def check_message(self, ended, status, pattern):
        self.assertEqual(ended.status, status, ended.err)
        self.assertRegex(ended.err, pattern)
        self.assertEqual(ended.out, "")
        self.assertNotIn("\x00", ended.err)

    def test_files_that_are_no_transcripts(self):
        for program in (PROGRAM, SANITIZED):
            for name, content, pattern in INPUTS:
                with self.subTest(name, program=program):
                    path = self.path("input", content)
                    ended = run("extract", path, program=program)
                    self.check_message(ended, UNREADABLE, re.escape(path) + r"(:\d+)*: .*(" + pattern + ")")
                    again = run("card", "-", stdin=content, program=program)
                    self.assertEqual(again.status, UNREADABLE, again.err)

    def test_missing_file_and_folder(self):
        self.check_message(run("extract", self.path("nothing")), UNREADABLE, "nothing: cannot be read: there is no such file")
        self.check_message(run("check", self.folder), UNREADABLE, "this is a folder; a file is needed")

    @unittest.skipIf(os.geteuid() == 0, "root may read everything")
    def test_file_without_permission(self):
        path = self.path("shut", b"1\n")
        os.chmod(path, 0)
        self.check_message(run("extract", path), UNREADABLE, "cannot be read")

    def test_one_line_of_100_mb(self):
        path = self.path("large")
        with open(path, "wb") as file:
            piece = b"add two cups of flour and stir " * 33000
            for _ in range(100):
                file.write(piece)
        self.check_message(run("extract", path), UNREADABLE, "too large: more than 64 MB")
        with open(path, "rb") as file:
            done = subprocess.run([PROGRAM, "extract", "-"], stdin=file, capture_output=True, check=False)
        self.assertEqual(done.returncode, UNREADABLE)

    def test_one_caption_of_30_mb_ends_in_order(self):
        text = b"00:00:01,000 --> 00:10:00,000\n" + b"add two cups of flour and stir " * 1000000
        ended = run("extract", self.path("long.srt", text))
        self.assertIn(ended.status, (0, UNREADABLE), ended.err[:500])

    def test_unwritable_output(self):
        self.check_message(run("extract", SAMPLE, "-o", "/nonexistent/folder/out.json"), UNWRITTEN,
                           "/nonexistent/folder/out.json: cannot be written: No such file or directory")
        self.check_message(run("extract", SAMPLE, "-o", self.folder), UNWRITTEN, "this is a folder; a file is needed")
        with open("/dev/full", "wb") as full:
            ended = run("extract", SAMPLE, stdout=full)
        self.assertEqual(ended.status, UNWRITTEN)
        self.assertRegex(ended.err, "standard output: cannot be written: No space left on device")
        with open("/dev/full", "wb") as full:
            self.assertEqual(run("--help", stdout=full).status, UNWRITTEN)

    def test_output_appears_only_when_it_is_whole(self):
        out = self.path("out.json", b"old")
        self.assertEqual(run("extract", "no-such.srt", "-o", out).status, UNREADABLE)
        ended = run("extract", SAMPLE, "-o", out)
        self.assertEqual((ended.status, ended.out), (0, ""))
        with open(out, "rb") as file:
            self.assertEqual(file.read(), run("extract", SAMPLE).bytes)
        self.assertEqual(os.listdir(self.folder), ["out.json"])

    def test_an_output_is_held_until_it_has_its_name(self):
        """Its lock goes with its last descriptor, and then another run may clear it away; and it is on the disk before."""
        trace, out = self.path("trace", b""), os.path.join(self.folder, "out.json")
        done = subprocess.run(["strace", "-o", trace, "-e", "trace=openat,fcntl,write,fsync,close,rename,renameat,renameat2", PROGRAM, "extract", SAMPLE,
                               "-o", out], capture_output=True, check=False)
        self.assertEqual(done.returncode, 0, done.stderr)
        held, synced, named = set(), False, False
        with open(trace, encoding="utf-8") as file:
            for line in file:
                first = re.match(r"\w+\((\d+)", line)
                result = int((re.search(r" = (-?\d+)", line) or ["", -1])[1])
                if line.startswith("openat") and ".out.json.new" in line and "O_EXCL" in line:
                    held = {result}
                elif line.startswith("rename") and "out.json" in line:
                    self.assertTrue(held and synced, line)
                    named = True
                elif first and int(first[1]) in held:
                    if line.startswith("fcntl") and "F_DUPFD" in line:
                        held.add(result)
                    synced = line.startswith("fsync") or (synced and not line.startswith("write"))
                    held -= {int(first[1])} if line.startswith("close") else set()
        self.assertTrue(named)

    def test_a_file_that_cannot_be_read_leaves_an_old_output_alone(self):
        out = self.path("out.json", b"old")
        run("extract", "no-such.srt", "-o", out)
        with open(out, "rb") as file:
            self.assertEqual(file.read(), b"old")

    def test_one_bad_file_is_passed_over_and_named(self):
        bad = self.path("bad.srt", b"nothing")
        for jobs in ("1", "3"):
            ended = run("extract", "--jobs", jobs, SAMPLE, bad, "tests/corpus/tiny.tsv")
            self.assertEqual(ended.status, UNREADABLE)
            lines = ended.out.splitlines()
            self.assertEqual(len(lines), 3)
            self.assertIn('"error"', lines[1])
            self.assertIn("tiny.tsv", lines[2])
            self.assertTrue(ended.err.rstrip().endswith(f"1 of 3 files could not be read: {bad}"), ended.err)


USAGES = [
    ([], "^$", "Use: dishtake COMMAND"),
    (["extract"], "extract needs FILE..., as in: dishtake extract ", ""),
    (["extrat", "x"], 'no command "extrat"; did you mean extract\\?', ""),
    (["zzzzzz"], 'no command "zzzzzz"; see dishtake --help', ""),
    (["card", "--dihs", "2", "x"], "no option --dihs; did you mean --dish\\?", ""),
    (["card", "--xyzzyxyzzy", "x"], "no option --xyzzyxyzzy; see", ""),
    (["card", "-Z", "x"], "no option -Z", ""),
    (["extract", "--dish", "2", "x"], "extract has no option --dish", ""),
    (["card", "--dish"], "--dish needs a value", ""),
    (["card", "--dish", "0", SAMPLE], "--dish 0: a whole number from 1 to 1000000", ""),
    (["card", "--dish", "1000001", SAMPLE], "--dish 1000001: a whole number from 1 to 1000000", ""),
    (["card", "--dish", "two", SAMPLE], "--dish two: a whole number", ""),
    (["card", "--dish=99", SAMPLE], "there is no dish 99; the recording has", ""),
    (["card", "--as", "pdf", SAMPLE], "card cannot be written as pdf; it can as text, markdown", ""),
    (["chapters", "a", "b"], "chapters takes one FILE", ""),
    (["explain", SAMPLE, "--at", "noon"], "--at noon: a time is needed", ""),
    (["explain", SAMPLE, "--at", "9:00:00"], "it ends at 5:4", ""),
    (["extract", "--quiet=yes", SAMPLE], "--quiet takes no value", ""),
    (["card", "--dishes", "0", SAMPLE], "--dishes 0: a whole number", ""),
    (["card", "--dishes", "201", SAMPLE], "--dishes 201: at most 200 are told apart", ""),
    (["chapters", "--dishes", "2", "--as-one-dish", SAMPLE], "give one of them", ""),
    (["extract", "--jobs", "-1", SAMPLE], "--jobs -1: a whole number", ""),
    (["check", "--fail-on", "bad", SAMPLE], "--fail-on bad: note, ask, fix or stop", ""),
    (["measure"], "measure needs AMOUNT..., as in: dishtake measure", ""),
    (["measure", "flour"], "flour|number|amount", ""),
    (["measure", "2 cups flour", "--in", "parsec"], "parsec", ""),
    (["extract", "--kitchen", "mars", SAMPLE], 'no kitchen "mars"; there are us', ""),
]


class Usage(unittest.TestCase):
    def test_wrong_usage_is_told_in_one_line(self):
        for arguments, error, out in USAGES:
            with self.subTest(arguments):
                ended = run(*arguments)
                self.assertEqual(ended.status, USAGE, ended.err)
                self.assertRegex(ended.err, error)
                self.assertIn(out, ended.out)
                self.assertLessEqual(ended.err.count("\n"), 1)

    def test_check_fails_from_the_level_asked_for(self):
        levels = ["note", "ask", "fix", "stop"]
        findings = run("check", SAMPLE).out.splitlines()
        heard = [levels.index(re.match(r"[^:]+:\d+:\d+: (\w+): ", line)[1]) for line in findings]
        for level, name in enumerate(levels):
            wanted = FOUND if max(heard) >= level else 0
            self.assertEqual(run("check", "--fail-on", name, SAMPLE).status, wanted, name)

    def test_findings_are_in_a_form_that_editors_follow(self):
        with open(os.path.join(ROOT, SAMPLE), encoding="utf-8") as file:
            lines = file.read().split("\n")
        for line in run("check", SAMPLE).out.splitlines():
            match = re.fullmatch(r"(.+?):(\d+):(\d+): (note|ask|fix|stop): [a-z-]+: .+ \(at \d+:\d\d\)", line)
            self.assertIsNotNone(match, line)
            self.assertLessEqual(int(match[3]), len(lines[int(match[2]) - 1]), line)

    def test_options_may_stand_anywhere(self):
        wanted = run("card", "--dish", "2", SAMPLE).out
        for arguments in (["--dish=2", "card", SAMPLE], ["card", SAMPLE, "--dish", "2"], ["card", "--dish", "2", "--", SAMPLE]):
            self.assertEqual(run(*arguments).out, wanted)

    def test_standard_input_is_read(self):
        with open(os.path.join(ROOT, SAMPLE), "rb") as file:
            ended = run("chapters", "-", stdin=file.read())
        self.assertEqual(ended.out, run("chapters", SAMPLE).out)

    def test_jobs_change_no_byte(self):
        files = [SAMPLE, "tests/corpus/tiny.tsv", "tests/corpus/two-cooks.srt"] * 8
        once = run("extract", "--jobs", "1", *files)
        for jobs in ("2", "5"):
            self.assertEqual(run("extract", "--jobs", jobs, *files).bytes, once.bytes)
        self.assertEqual(run("extract", "--jobs", "3", *files[:6], program=SANITIZED).bytes,
                         run("extract", *files[:6]).bytes)

    def test_quiet_keeps_errors(self):
        self.assertIn("no such file", run("extract", "-q", "nothing.srt").err)
        self.assertEqual(run("chapters", "-q", SAMPLE).err, "")

    def test_measure_takes_its_words_quoted_or_not(self):
        wanted = run("measure", "2 cups flour", "--in", "gram")
        self.assertRegex(wanted.out, r"^2 cups flour = 250 grams\n  USDA ")  # USDA SR28 20081: 1 cup = 125 g
        self.assertEqual(run("measure", "2", "cups", "flour", "--in", "gram").out, wanted.out)
        self.assertRegex(run("measure", "350 F", "--in", "C").out, r"= 177 °C")  # (350 - 32) * 5 / 9 = 176.7

    def test_another_locale_changes_nothing(self):
        self.assertEqual(run("extract", SAMPLE, env={"LC_ALL": "de_DE.UTF-8"}).bytes, run("extract", SAMPLE).bytes)


class Grammar(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.mkdtemp()
        self.addCleanup(shutil.rmtree, self.folder)
        shutil.copytree(os.path.join(ROOT, "grammars"), os.path.join(self.folder, "g"))
        self.pack = os.path.join(self.folder, "g", "en")

    def append(self, name, text):
        with open(os.path.join(self.pack, name), "a", encoding="utf-8") as file:
            file.write(text)

    def test_the_same_grammar_from_disk_gives_the_same(self):
        for folder in (self.pack, self.pack + "/"):
            self.assertEqual(run("extract", "--grammar", self.pack, SAMPLE).bytes, run("extract", SAMPLE).bytes)

    def test_a_changed_grammar_is_used(self):
        self.append("foods.lex", "@tag FOOD\n@forms noun\nglimberry\n")
        cue = b"1\n00:00:01,000 --> 00:00:09,000\nAdd two cups of glimberries to the bowl and stir.\n"
        ended = run("extract", "--as-one-dish", "--grammar", self.pack, "-", stdin=cue)
        self.assertIn('"food": "glimberry"', ended.out)

    def test_ten_mistakes_are_ten_messages(self):
        lines = {"foods.lex": "@tag NOSUCHTAG\nfood\tvalue\tnosuchmark\nsame\tone\na\tb\tc\td\te\tf\n@nosuch x\n",
                 "lines.rules": "rule no-when\n  give amount low\n\nrule bad-class\n  when  NOSUCHCLASS\n  give  amount low\n"
                                "  ex \"a\" -> nothing\n\nrule open-bracket\n  when  (NUMBER\n  give  amount\n"
                                "  ex \"a\" -> nothing\n\nnonsense here\n",
                 "pack.list": "no-such-file.lex\n../../outside.lex\nfoods.doc\n"}
        for name, text in lines.items():
            self.append(name, text)
        ended = run("extract", "--grammar", self.pack, SAMPLE)
        self.assertEqual(ended.status, UNREADABLE)
        self.assertEqual(ended.out, "")
        placed = [line for line in ended.err.splitlines() if re.match(re.escape(self.pack) + r"/[\w.]+:\d+:\d+: \S", line)]
        self.assertGreaterEqual(len(placed), 10, ended.err)
        self.assertEqual(len(placed), len(set(placed)))
        for name in lines:
            self.assertTrue(any(name in line for line in placed), name)

    # Tables that the kitchen cannot be made without; all others may be missing, and what they are for is then not done.
    NEEDED = set("""forms kitchen-words unit-words food-forms food-modifiers food-parts shop-aisles findings units food-weights food-aliases foods
                    kitchens kitchen-metric oven-marks safe-temperatures allergens scaling-notes measures action-times caution-words
                    title-foods title-rules caution-rules allergen-names""".split())

    def test_any_table_may_be_missing(self):
        """Those that are needed are named; without the others there are recipes all the same."""
        path = os.path.join(self.pack, "pack.list")
        with open(path, encoding="utf-8") as file:
            lines = file.readlines()
        for line in [line for line in lines if line.endswith(".tsv\n")]:
            name = os.path.basename(line)[:-len(".tsv\n")]
            with open(path, "w", encoding="utf-8") as file:
                file.writelines(other for other in lines if other != line)
            ended = run("extract", "-q", "--grammar", self.pack, SAMPLE)
            self.assertEqual(ended.status, UNREADABLE if name in self.NEEDED else 0, line)
            self.assertEqual(f"{name}.tsv" in ended.err, name in self.NEEDED, ended.err)

    def test_no_pack_at_all(self):
        ended = run("extract", "--grammar", self.folder, SAMPLE)
        self.assertEqual(ended.status, UNREADABLE)
        self.assertRegex(ended.err, "pack.list: cannot be read: there is no such file")


if __name__ == "__main__":
    unittest.main()
