#!/usr/bin/env python3
"""Every recording's JSON against docs/schema/recipes.schema.json, by a general-purpose validator (python3-jsonschema,
JSON Schema 2020-12), and what a schema cannot say: ids that are there, words in order, times inside the recording.
SPDX-License-Identifier: MIT
"""
import glob
import json
import os
import unittest

import jsonschema

from tool import ROOT, SAMPLE, run

TRANSCRIPTS = sorted(name for folder in ("samples", "tests/corpus", "tests/recordings", "tests/recordings/flawless")
                     for ending in ("srt", "vtt", "ttml", "txt", "md", "json", "tsv")
                     for name in glob.glob(os.path.join(ROOT, folder, "*." + ending))
                     if not name.endswith((".gold.json", "README.md")))


def load_schema():
    with open(os.path.join(ROOT, "docs/schema/recipes.schema.json"), encoding="utf-8") as file:
        return json.load(file)


class Schema(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        schema = load_schema()
        jsonschema.Draft202012Validator.check_schema(schema)
        cls.validator = jsonschema.Draft202012Validator(schema)
        names = [os.path.relpath(name, ROOT) for name in TRANSCRIPTS]
        cls.outputs = dict(zip(names, run("extract", "-q", *names).out.splitlines()))

    def test_all_recordings_are_there(self):
        self.assertGreater(len(TRANSCRIPTS), 25)
        self.assertEqual(len(self.outputs), len(TRANSCRIPTS))

    def test_every_output_fits_the_schema(self):
        for name, line in self.outputs.items():
            with self.subTest(name):
                errors = [f"{'/'.join(map(str, e.absolute_path))}: {e.message[:200]}"
                          for top in self.validator.iter_errors(json.loads(line))
                          for e in (top.context or [top]) if e.schema_path[0] == 0 or not top.context]
                self.assertEqual(errors, [])

    def test_a_file_that_cannot_be_read_has_a_line_of_the_schema(self):
        lines = run("extract", "-q", SAMPLE, "no-such-file.srt").out.splitlines()
        self.assertEqual(len(lines), 2)
        self.validator.validate(json.loads(lines[1]))
        self.assertIn("no-such-file.srt", json.loads(lines[1])["error"])

    def test_the_schema_refuses_what_is_wrong(self):
        good = json.loads(self.outputs[SAMPLE])
        self.validator.validate(good)
        for break_it in (lambda d: d.pop("findings"), lambda d: d.update(extra=1), lambda d: d.update(format="other"),
                         lambda d: d["dishes"][0].update(id="x1"), lambda d: d["dishes"][0].pop("yield"),
                         lambda d: d["dishes"][0]["ingredients"][0].update(role="hero"),
                         lambda d: d["dishes"][0]["ingredients"][0].update(at="12"),
                         lambda d: d["dishes"][0]["steps"][0].update(text="")):
            bad = json.loads(self.outputs[SAMPLE])
            break_it(bad)
            self.assertFalse(self.validator.is_valid(bad))

    def test_one_file_and_many_give_the_same_values(self):
        self.assertEqual(json.loads(run("extract", SAMPLE).out), json.loads(self.outputs[SAMPLE]))

    def test_what_points_points_to_something(self):
        for name, line in self.outputs.items():
            recording = json.loads(line)
            with self.subTest(name):
                self.check_recording(recording)

    def check_recording(self, recording):
        count, length = recording["recording"]["words"], recording["recording"]["length"]
        for dish in recording["dishes"]:
            ids = [item["id"] for item in dish["ingredients"]]
            self.assertEqual(len(ids), len(set(ids)))
            pointers = [i for step in dish["steps"] for i in step["uses"]]
            pointers += [i for item in dish["shopping_lines"] + dish["allergens"] for i in item.get("lines", [])
                         + item.get("because", [])]
            self.assertLessEqual(set(pointers), set(ids))
            for item in [dish, *dish["ingredients"], *dish["steps"]]:
                first, last = item["words"]
                self.assertTrue(0 <= first <= last < count)
            for step in dish["steps"]:
                self.assertTrue(0 <= step["start"] <= step["end"] <= length + 0.001)
            for item in dish["ingredients"]:
                self.assertEqual(item["amount"] is None, item["unit"] is None)
                if item["amount"] and item["amount"]["max"] is not None:
                    self.assertLessEqual(item["amount"]["min"], item["amount"]["max"])
        dishes = {dish["id"] for dish in recording["dishes"]}
        self.assertEqual(len(dishes), len(recording["dishes"]))
        for finding in recording["findings"]:
            self.assertIn(finding["dish"], dishes | {None})


if __name__ == "__main__":
    unittest.main()
