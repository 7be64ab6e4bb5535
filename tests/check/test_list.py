#!/usr/bin/env python3
"""The ingredient list that the cook shows (`--list`): several dishes in one file, files that are none, who may name one.

SPDX-License-Identifier: MIT
"""
import json
import os
import subprocess
import sys
import tempfile
import unittest

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
PROGRAM = os.path.join(ROOT, os.environ.get("B", "build"), "dishtake")
SAMPLE = os.path.join(ROOT, "samples/hilltop-canteen.srt")


def run(*arguments, given=b"", folder=ROOT):
    return subprocess.run([PROGRAM, *arguments], input=given, capture_output=True, check=False, cwd=folder)


class Lists(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.TemporaryDirectory()
        self.addCleanup(self.folder.cleanup)

    def write(self, content):
        name = os.path.join(self.folder.name, "list.txt")
        with open(name, "wb") as file:
            file.write(content if isinstance(content, bytes) else content.encode())
        return name

    def findings(self, content, command="check", form=("--as", "json")):
        done = run(command, "-q", *form, "--list", self.write(content), SAMPLE)
        self.assertIn(done.returncode, (0, 1), done.stderr)
        return json.loads(done.stdout)

    def test_headings_tell_the_dishes_apart(self):
        document = self.findings("Baked apples\n4 large apples\n2 cups walnuts\n\nYogurt chicken skewers:\n3 lemons\n")
        dishes = {dish["title"]: dish["dish"] for dish in document["dishes"]}
        at = {f["about"]: f["dish"] for f in document["findings"] if "on your list" in f["why"]}
        self.assertEqual(at.get("walnut"), dishes["Baked apples"], document)
        lacks = [f for f in document["findings"] if f["kind"] == "not-listed"]
        self.assertTrue(lacks)
        self.assertNotIn(dishes["Red lentil soup"], [f["dish"] for f in lacks], "the list has no such dish")

    def test_a_heading_is_of_the_likest_title(self):
        """Half of the words of both at least; the first, the last or the middle one may be missing, and more may stand there."""
        for heading, title in (("Baked apples", "Baked apples"), ("Apples", "Baked apples"), ("Baked", "Baked apples"),
                               ("Lentil soup", "Red lentil soup"), ("Red soup", "Red lentil soup"), ("Red lentil", "Red lentil soup"),
                               ("Our red lentil soup", "Red lentil soup"), ("Chicken skewers", "Yogurt chicken skewers"),
                               ("Yogurt skewers", "Yogurt chicken skewers")):
            document = self.findings(f"{heading}:\n2 cups walnuts\n")
            dishes = {dish["dish"]: dish["title"] for dish in document["dishes"]}
            self.assertEqual([dishes.get(f["dish"]) for f in document["findings"] if f["about"] == "walnut"], [title], heading)

    def test_a_finding_names_line_and_second(self):
        found = [f for f in self.findings("Baked apples\n\n3/4 cup brown sugar\n")["findings"]
                 if f["kind"] == "contradiction" and f["about"] == "brown sugar"]
        self.assertEqual(len(found), 1)
        self.assertIn('"3/4 cup brown sugar" on your list (line 3)', found[0]["why"])
        self.assertIn("half a cup of brown sugar", found[0]["why"])
        self.assertAlmostEqual(found[0]["at"], 262, delta=3)

    def test_every_reading_command_takes_it(self):
        document = self.findings("Baked apples\n2 cups walnuts\n", "extract", ())
        self.assertIn("walnut", [f["about"] for f in document["findings"]])

    def test_encodings(self):
        for encoding in ("utf-8-sig", "utf-16", "cp1252"):
            document = self.findings("Baked apples\n4 apples\n1 cup cr\u00e8me fra\u00eeche\n".encode(encoding))
            self.assertIn("creme fraiche", [f["about"] for f in document["findings"]], encoding)

    def test_bad_files(self):
        for content, why in ((b"", "no ingredient"), (b"\n\n--\n", "no ingredient"),
                             (b"Subscribe for more!\n", "no ingredient"), (bytes(range(32)) * 9, "no text"),
                             (b"1 egg\n" * 1001, "at most 1000 lines"), (b"x" * 300000, "list.txt")):
            done = run("check", "--list", self.write(content), SAMPLE)
            self.assertEqual(done.returncode, 3, (content[:20], done.stderr))
            self.assertIn(why, done.stderr.decode())
            self.assertEqual(done.stdout, b"")
        self.assertEqual(run("check", "--list", "/nonexistent/list", SAMPLE).returncode, 3)

    def test_one_list_for_one_recording(self):
        name = self.write("1 egg\n")
        self.assertEqual(run("check", "--list", name, SAMPLE, SAMPLE).returncode, 2)
        self.assertEqual(run("check", "--list", "-", "-", given=b"1 egg").returncode, 2)
        self.assertEqual(run("card", "--list", name, SAMPLE).returncode, 2)


if __name__ == "__main__":
    result = unittest.main(exit=False).result
    bad = len(result.failures) + len(result.errors)
    print("%d passed, %d failed" % (result.testsRun - bad, bad))
    sys.exit(bool(bad))
