#!/usr/bin/env python3
"""The numbers in the words of safety.tsv against the published rows they name in safe-temperatures.tsv (USDA FSIS, FDA, CDC and
others; each row names its publication), and the tables of the finders against each other.
SPDX-License-Identifier: MIT
"""
import os
import re
import unittest

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
HEAT = re.compile(r"(\d+) F[, (]+(\d+) C")


def rows(name):
    with open(os.path.join(ROOT, "grammars", name), encoding="utf-8") as file:
        lines = [line.rstrip("\n").split("\t") for line in file if line.strip() and not line.startswith("#")]
    for line in lines[1:]:
        assert len(line) <= len(lines[0]), (name, line)
    return [dict(zip(lines[0], row + [""] * (len(lines[0]) - len(row)))) for row in lines[1:]]


class Safety(unittest.TestCase):
    published = {row["id"]: row for row in rows("common/safe-temperatures.tsv")}
    rules = rows("en/safety.tsv")
    sets = {row["set"] for row in rows("en/check-words.tsv")}

    def test_every_rule_names_a_published_row(self):
        for rule in self.rules:
            self.assertTrue(self.published[rule["source"]]["publication"], rule["rule"])

    def test_temperatures_are_the_published_ones(self):
        known = {round(float(row["temp_f"])) for row in self.published.values() if row["temp_f"]}
        checked = 0
        for rule in self.rules:
            row = self.published[rule["source"]]
            for fahrenheit, celsius in HEAT.findall(rule["why"] + " " + rule["suggest"]):
                self.assertIn(int(fahrenheit), known, rule["rule"])
                self.assertEqual(int(celsius), round((int(fahrenheit) - 32) / 1.8), rule["rule"])
                checked += 1
            if rule["said"] in ("low", "none"):
                said = [int(f) for f, _ in HEAT.findall(rule["suggest"])]
                self.assertEqual(said[0], float(row["temp_f"]), rule["rule"])
        self.assertGreater(checked, 8)

    def test_hours_and_days_are_the_published_ones(self):
        for rule in self.rules:
            row = self.published[rule["source"]]
            for number, unit in re.findall(r"(\d+) (hours|days|minutes|months)", rule["suggest"]):
                texts = " ".join((row["time_min"], row["time_max"], row["time_unit"], row["rule"]))
                self.assertRegex(texts, r"\b%s\b" % number, "%s: %s %s" % (rule["rule"], number, unit))

    def test_advice_defers_to_local_rules(self):
        for rule in self.rules:
            self.assertRegex(rule["suggest"], "follow your local (food-safety|health) authority", rule["rule"])
            self.assertNotRegex(rule["why"] + rule["suggest"], r"\b(is safe|fine|kills)\b")

    def test_sets_that_rules_name_are_there(self):
        for rule in self.rules:
            for column in ("said", "with", "unless"):
                if rule[column] and rule[column] not in ("low", "none", "inside"):
                    self.assertIn(rule[column].removeprefix("at-once "), self.sets, rule["rule"])

    def test_every_case_has_words(self):
        with open(os.path.join(ROOT, "src/check/findings.def"), encoding="utf-8") as file:
            cases = set(re.findall(r"^FINDING\((\w+)\)", file.read(), re.M))
        table = {row["case"]: row for row in rows("en/findings.tsv")}
        self.assertEqual(cases, set(table))
        for row in table.values():
            self.assertIn(row["level"], ("stop", "fix", "ask", "note"))
            self.assertTrue(row["why"] and row["suggest"])

    def test_every_range_names_where_it_is_from(self):
        for row in rows("common/plausible.tsv"):
            self.assertTrue(row["source"], row["rule"])


if __name__ == "__main__":
    unittest.main()
