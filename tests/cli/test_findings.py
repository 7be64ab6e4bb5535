#!/usr/bin/env python3
"""Findings as SARIF against the published JSON Schema of the OASIS standard (SARIF 2.1.0, rtm.5, as the npm package
@microsoft/jest-sarif 1.0.0-beta.0 carries it; its `id` is left out), as JSON against what the text says, and what every
finding must have: a kind that is known, a place in the file, words in plain English, and no promise.
SPDX-License-Identifier: MIT
"""
import collections
import glob
import json
import os
import re
import unittest

import jsonschema

from tool import ROOT, run

FILES = sorted(os.path.relpath(name, ROOT) for folder in ("tests/corpus", "tests/recordings", "tests/recordings/flawless")
               for ending in ("srt", "vtt", "ttml", "txt", "md", "json", "tsv")
               for name in glob.glob(os.path.join(ROOT, folder, "*." + ending))
               if not name.endswith((".gold.json", "README.md")))
LINE = re.compile(r"^(.*?):(\d+):(\d+): (stop|fix|ask|note): ([a-z-]+): (.*) \(at [\d:]+\)$")


def rows(table):
    with open(os.path.join(ROOT, "grammars", table), encoding="utf-8") as file:
        lines = [line.rstrip("\n").split("\t") for line in file if line.strip() and not line.startswith("#")]
    return [dict(zip(lines[0], row)) for row in lines[1:]]


class Findings(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.text = {name: run("check", "-q", name).out for name in FILES}
        cls.json = {name: json.loads(run("check", "-q", "--as", "json", name).out) for name in FILES}
        cls.sarif = {name: json.loads(run("check", "-q", "--as", "sarif", name).out) for name in FILES}

    def test_sarif_fits_the_published_schema(self):
        with open(os.path.join(ROOT, "tests/published/sarif-2.1.0.schema.json"), encoding="utf-8") as file:
            validator = jsonschema.Draft4Validator(json.load(file))
        for name, log in self.sarif.items():
            self.assertEqual([e.message for e in validator.iter_errors(log)], [], name)
        broken = json.loads(json.dumps(next(iter(self.sarif.values()))))
        broken["runs"][0]["tool"] = {}
        self.assertFalse(validator.is_valid(broken), "the validator lets everything pass")

    def test_the_three_forms_say_the_same(self):
        for name in FILES:
            lines = [LINE.match(line) for line in self.text[name].splitlines()]
            self.assertTrue(all(lines), name)
            said = [(m[4], m[5], int(m[2]), int(m[3])) for m in lines]
            listed = [(f["level"], f["kind"], f["line"], f["column"]) for f in self.json[name]["findings"]]
            results = [(r["properties"]["level"], r["ruleId"]) for r in self.sarif[name]["runs"][0]["results"]]
            self.assertEqual(said, listed, name)
            self.assertEqual([s[:2] for s in said], results, name)

    def test_sarif_points_at_the_words(self):
        """The column is in characters: what stands there in the file is what was said."""
        checked = 0
        for name in FILES:
            if not name.endswith((".srt", ".txt", ".md", ".vtt")):
                continue
            with open(os.path.join(ROOT, name), encoding="utf-8-sig") as file:
                lines = file.read().split("\n")
            for result, finding in zip(self.sarif[name]["runs"][0]["results"], self.json[name]["findings"]):
                if not finding["said"]:
                    continue
                region = result["locations"][0]["physicalLocation"]["region"]
                line = lines[region["startLine"] - 1]
                if "<" in line or "&" in line:
                    continue  # tags and entities are not in the text that columns are counted in
                first = finding["said"].split()[0]
                checked += line[region["startColumn"] - 1:].startswith(first)
        self.assertGreater(checked, 50)

    def test_summary_counts_each_dish(self):
        for name, document in self.json.items():
            wanted = collections.Counter((f["dish"], f["level"]) for f in document["findings"] if not f["dismissed"])
            for dish in document["dishes"]:
                for level in ("stop", "fix", "ask", "note"):
                    self.assertEqual(dish[level], wanted[dish["dish"], level], name)

    def test_stop_comes_first_and_then_time(self):
        for name, document in self.json.items():
            order = [(f["level"] != "stop", f["at"]) for f in document["findings"]]
            self.assertEqual(order, sorted(order), name)

    def test_kinds_and_levels_are_rows_of_the_pack(self):
        known = {(row["kind"], row["level"]) for row in rows("en/findings.tsv")}
        known |= {("unsafe", row["level"]) for row in rows("en/safety.tsv")}
        for document in self.json.values():
            for finding in document["findings"]:
                self.assertIn((finding["kind"], finding["level"]), known)

    def test_unsafe_names_its_publication_and_defers(self):
        for document in self.json.values():
            self.assertIn("no proof of safety", document["note"])
            for finding in document["findings"]:
                if finding["kind"] == "unsafe":
                    self.assertTrue(finding["source"])
                    self.assertRegex(finding["suggest"], "local (food-safety|health) authority")

    def test_no_blank_is_left_and_nothing_is_promised(self):
        for name in FILES:
            self.assertNotRegex(self.text[name], r"\{\d\}|missing from the video|is safe\b")


if __name__ == "__main__":
    unittest.main()
