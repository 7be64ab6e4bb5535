#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Tests of run_spec: how it reads spec files, runs a tool, compares and reports."""
import contextlib
import io
import json
import os
import stat
import sys
import tempfile
import unittest

HERE = os.path.dirname(os.path.abspath(__file__))


sys.path.append(os.path.join(os.path.dirname(HERE), "tools"))
import loader  # noqa: E402

run_spec = loader.load(os.path.join(HERE, "run_spec"))

# A tool that answers from a table, whose keys are the cues joined by " | ".
FAKE = """#!{python}
import json, re, sys
answers = json.load(open({answers!r}))
assert sys.argv[1:3] == ["extract", "--as-one-dish"]
paths = sys.argv[3:]
if {crash} and len(paths) > 1:
    sys.exit(3)
for path in paths:
    text = " | ".join(line for line in open(path, encoding="utf-8").read().splitlines()
                      if line and "-->" not in line and not line.isdigit())
    if text == "crash":
        sys.exit(3)
    print(json.dumps({{"dishes": [answers[text]] if text in answers else []}}))
"""


def line(food, low=None, high=None, unit=None, **more):
    said = None if low is None else {"min": low, "max": high, "approx": more.pop("approx", False)}
    return {"food": food, "amount": said, "unit": unit, "prep": [], **more}


class Files(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.TemporaryDirectory()
        self.addCleanup(self.folder.cleanup)

    def write(self, name, text):
        path = os.path.join(self.folder.name, name)
        with open(path, "w", encoding="utf-8") as file:
            file.write(text)
        return path

    def tool(self, answers, crash=False):
        table = self.write("answers.json", json.dumps(answers))
        path = self.write("tool", FAKE.format(python=sys.executable, answers=table, crash=crash))
        os.chmod(path, os.stat(path).st_mode | stat.S_IXUSR)
        return path

    def main(self, *arguments):
        out, err = io.StringIO(), io.StringIO()
        with contextlib.redirect_stdout(out), contextlib.redirect_stderr(err):
            code = run_spec.main(["--spec", self.folder.name, *arguments])
        return code, out.getvalue(), err.getvalue()

    def read(self, text):
        mistakes = []
        return run_spec.read_spec(self.write("group.spec", text), mistakes), mistakes


class Reading(Files):
    def test_cases_end_at_an_empty_line_or_the_next_case(self):
        cases, mistakes = self.read("checks: line\nProse.\n\n= one\ntwo | cups\nof rice\n--\n"
                                    "line 2 cup rice\n= two\nhello\n--\nnothing\n\n"
                                    "more prose\nline 3 cup oat\n")
        self.assertEqual(mistakes, [])
        self.assertEqual([case.name for case in cases], ["one", "two"])
        self.assertEqual(cases[0].utterance, "two | cups of rice")
        self.assertEqual(cases[0].line, 4)
        self.assertEqual(cases[0].group, "group")
        self.assertEqual(cases[1].expectations, [])

    def test_numbers(self):
        for text, want in (("2", 2), ("0.5", 0.5), ("3/4", 0.75), ("1 1/2", 1.5)):
            self.assertEqual(run_spec.number(text), want)
        self.assertEqual(run_spec.bounds("1/2..1 3/4"), (0.5, 1.75))
        self.assertEqual(run_spec.bounds("2.."), (2, None))

    def test_a_line_with_everything(self):
        got = run_spec.read_line("1 1/2..2 can bean / white bean ; prep=drained,rinsed ; "
                                 "package=400:gram ; taste=yes")
        self.assertEqual(got.foods, ["bean", "white bean"])
        self.assertEqual((got.min, got.max, got.unit), (1.5, 2, "can"))
        self.assertEqual(got.keys["package"], (400, 400, "gram"))

    def test_mistakes_name_file_and_line(self):
        for text in ("line 2 spoon rice", "line two cup rice", "line 2 cup rice ; colour=red",
                     "line - cup rice", "line 2 - rice", "action stir",
                     "temperature 350 F oven", "nothing\nline 2 cup rice",
                     "line 2 cup rice ; role=main", ""):
            cases, mistakes = self.read(f"checks: line\n= x\nwords\n--\n{text}\n")
            self.assertEqual(cases, [], text)
            self.assertEqual(len(mistakes), 1, text)
            self.assertIn("group.spec:2: ", mistakes[0])

    def test_a_case_without_a_divider(self):
        mistakes = self.read("checks: line\n= x\nwords\nline 2 cup rice\n")[1]
        self.assertIn('without "--"', mistakes[0])

    def test_the_first_line_names_the_kinds(self):
        for first in ("prose", "checks:", "checks: nothing", "checks: lines"):
            self.assertIn(":1: the first line", self.read(first + "\n")[1][0])

    def test_other_kinds(self):
        self.assertEqual(run_spec.read_temperature("350 F oven"), (350, "F", "oven"))
        self.assertEqual(run_spec.read_temperature("6 G of oven"), (6, "G", "oven"))
        self.assertEqual(run_spec.read_duration("60..120 each side"), (60, 120, "side"))
        self.assertEqual(run_spec.read_duration("7200.."), (7200, None, ""))
        self.assertEqual(run_spec.read_yield("4..6 people"), (4, 6, "serving"))
        for reader, text in ((run_spec.read_temperature, "350 K oven"),
                             (run_spec.read_temperature, "350 F hob"),
                             (run_spec.read_duration, "60 each pan"), (run_spec.read_yield, "4"),
                             (run_spec.read_action, "Stir!")):
            with self.assertRaises(run_spec.Mistake):
                reader(text)

    def test_the_same_words_twice(self):
        self.write("a.spec", "checks: line\n= x\nTwo cups.\n--\nnothing\n"
                             "= y\ntwo cups\n--\nnothing\n")
        code, _, err = self.main("--check")
        self.assertEqual(code, 2)
        self.assertIn("a.spec:6: the same words as", err)


class Comparing(unittest.TestCase):
    def same(self, text, given):
        return run_spec.same_line(run_spec.read_line(text), given)

    def test_foods(self):
        self.assertTrue(self.same("1 cup black olive", line("Kalamata black olives", 1, 1, "cup")))
        self.assertFalse(self.same("1 cup brown sugar", line("sugar", 1, 1, "cup")))
        self.assertFalse(self.same("1 cup chicken", line("chicken stock", 1, 1, "cup")))
        self.assertTrue(self.same("1 cup scallion / green onion", line("green onion", 1, 1, "cup")))

    def test_amounts(self):
        self.assertTrue(self.same("1/3 cup milk", line("milk", 0.3333, 0.3333, "cup")))
        self.assertTrue(self.same("2.. cup milk", line("milk", 2, None, "cup")))
        self.assertTrue(self.same("- - milk", line("milk")))
        for wrong in (line("milk", 2, 2, "cup"), line("milk", 0.3333, 0.3333, "tablespoon"),
                      line("milk"), line("milk", 0.3333, 0.3333, "cup", approx=True)):
            self.assertFalse(self.same("1/3 cup milk", wrong))
        self.assertFalse(self.same("- - milk", line("milk", 1, 1, "cup")))

    def test_preparations_are_compared_both_ways(self):
        want = "1 . onion ; prep=finely chopped"
        self.assertTrue(self.same(want, line("onion", 1, 1, "", prep=["chopped"])))
        self.assertFalse(self.same(want, line("onion", 1, 1, "")))
        self.assertFalse(self.same("1 . onion", line("onion", 1, 1, "", prep=["chopped"])))

    def test_a_state_counts_and_may_be_more(self):
        cold = line("butter", 1, 1, "cup", state=["cold"])
        self.assertTrue(self.same("1 cup butter ; prep=cold", cold))
        self.assertTrue(self.same("1 . mango", line("mango", 1, 1, "", state=["ripe"])))

    def test_flags(self):
        for key, field in (("taste=yes", {"to_taste": True}), ("optional=yes", {"optional": True}),
                           ("role=garnish", {"role": "garnish"}),
                           ("alt=chive", {"alternatives": ["chives"]}),
                           ("package=400:gram",
                            {"package": {"min": 400, "max": 400, "unit": "gram"}})):
            self.assertTrue(self.same(f"- - leek ; {key}", line("leek", **field)), key)
            self.assertFalse(self.same(f"- - leek ; {key}", line("leek")), key)
            self.assertFalse(self.same("- - leek", line("leek", **field)), key)

    def test_a_size_only_where_the_case_names_one(self):
        self.assertTrue(self.same("1 . egg", line("egg", 1, 1, "", size="large")))
        self.assertTrue(self.same("1 . egg ; size=large", line("egg", 1, 1, "", size="large")))
        self.assertFalse(self.same("1 . egg ; size=large", line("egg", 1, 1, "", size="small")))

    def test_heat_time_yield(self):
        gas, heat = {"value": 6, "unit": "gas mark", "of": "oven"}, run_spec.same_temperature
        self.assertTrue(heat((6, "G", "oven"), gas))
        self.assertFalse(heat((180, "C", "oven"), {"value": 180, "unit": "F", "of": "oven"}))
        side = {"min": 60, "max": 60, "each": "side"}
        self.assertTrue(run_spec.same_duration((60, 60, "side"), side))
        self.assertFalse(run_spec.same_duration((60, 60, ""), side))
        eaters = {"min": 4, "max": 6, "of": "people"}
        self.assertTrue(run_spec.same_yield((4, 6, "serving"), eaters))
        self.assertFalse(run_spec.same_yield((4, 6, "muffin"), eaters))

    def actions(self, wanted, given):
        verbs = [("action", verb) for verb in wanted]
        case = run_spec.Case("f", 1, "g", "n", "u", ("action",), verbs)
        return run_spec.judge(case, {"dishes": [{"steps": [{"actions": given}]}]})

    def test_actions_go_by_class_and_in_order(self):
        self.assertEqual(self.actions(["add", "stir"], ["pour", "mix"]), [])
        self.assertEqual(self.actions(["add"], ["add", "pour"]), [])
        self.assertEqual(self.actions(["boil"], ["bring to a boil"]), [])
        self.assertNotEqual(self.actions(["stir", "add"], ["add", "stir"]), [])
        self.assertNotEqual(self.actions(["stir"], ["stir", "bake"]), [])

    def test_one_given_pairs_with_one_wanted(self):
        twice = [("line", run_spec.read_line("1 cup milk"))] * 2
        case = run_spec.Case("f", 1, "g", "n", "u", ("line",), twice)
        notes = run_spec.judge(case, {"dishes": [{"ingredients": [line("milk", 1, 1, "cup")]}]})
        self.assertEqual(len(notes), 1)
        self.assertIn("missing line", notes[0])

    def test_only_the_declared_kinds_are_compared(self):
        case = run_spec.Case("f", 1, "g", "n", "u", ("duration",), [])
        self.assertEqual(run_spec.judge(case, {"dishes": [{"ingredients": [line("milk")]}]}), [])
        self.assertEqual(run_spec.judge(case, None), ["the tool failed"])


class Running(Files):
    SPEC = ("checks: line\n= right\ntwo cups | of rice\n--\nline 2 cup rice\n"
            "= wrong\na cup of oats\n--\nline 1 cup oat\n= quiet\nhello there\n--\nnothing\n")
    ANSWERS = {"two cups | of rice": {"ingredients": [line("rice", 2, 2, "cup")]},
               "a cup of oats": {"ingredients": [line("oat", 3, 3, "cup")]}}

    def test_cues(self):
        self.assertEqual(run_spec.srt("a | b"), "1\n00:00:00,000 --> 00:00:04,000\na\n\n"
                                                "2\n00:00:04,000 --> 00:00:08,000\nb\n")

    def test_rates_and_failures(self):
        self.write("talk.spec", self.SPEC)
        code, out, _ = self.main("--verbose", "talk", "--half", "both", self.tool(self.ANSWERS))
        self.assertEqual(code, 0)
        self.assertRegex(out, r"ALL +3 .* 66\.7 ")
        self.assertIn("talk.spec:6: wrong", out)
        self.assertIn("missing line 1.0..1.0 'cup' oat", out)
        self.assertIn("extra line 3..3 'cup' oat", out)
        self.assertNotIn("right", out)

    def test_only_the_open_half_is_shown(self):
        cases = (f"= n{n}\nsome words {n}\n--\nline 1 cup oat\n" for n in range(40))
        self.write("talk.spec", "checks: line\n" + "".join(cases))
        tool, mistakes = self.tool({}), []
        cases = run_spec.read_spec(os.path.join(self.folder.name, "talk.spec"), mistakes)
        shown = self.main("--verbose", "all", tool)[1]
        sides = {run_spec.half(case) for case in cases}
        self.assertEqual(sides, {"open", "held"})
        for case in cases:
            self.assertEqual(f": {case.name}\n" in shown, run_spec.half(case) == "open", case.name)

    def test_the_split_is_fixed(self):
        case = run_spec.Case("f", 1, "g", "n", "abc", ("line",), [])
        # Digests of RFC 3174, section 7.3 (from memory): that of "abc" begins with A, that of
        # TEST3 (a million times "a") with 3.
        self.assertEqual(run_spec.half(case), "open")
        self.assertEqual(run_spec.half(case._replace(utterance="a" * 1000000)), "held")

    def test_a_batch_that_fails_is_run_file_by_file(self):
        self.write("talk.spec", self.SPEC)
        self.assertRegex(self.main(self.tool(self.ANSWERS, crash=True))[1], r"ALL +3 .* 66\.7 ")

    def test_a_crash_costs_its_own_case_only(self):
        self.write("talk.spec", self.SPEC + "= crash\ncrash\n--\nnothing\n")
        code, out, _ = self.main("--verbose", "all", "--half", "both", self.tool(self.ANSWERS))
        self.assertRegex(out, r"ALL +4 .* 50\.0 ")
        self.assertIn("the tool failed", out)

    def test_floors(self):
        self.write("talk.spec", self.SPEC)
        tool = self.tool(self.ANSWERS)
        for rows, code, word in (("ALL\t60", 0, ""), ("ALL\t70", 1, "ALL is 66.7, below 70"),
                                 ("GAP\t0.5", 1, "points"), ("GAP\t100", 0, ""),
                                 ("chat\t1", 1, "no group chat")):
            floor = self.write("floors.tsv", f"group\tleast\n{rows}\n")
            got, _, err = self.main("--floor", floor, tool)
            self.assertEqual(got, code, rows)
            self.assertIn(word, err)


class Corpus(unittest.TestCase):
    def test_the_spec_files_have_no_mistake(self):
        out = io.StringIO()
        with contextlib.redirect_stdout(out):
            self.assertEqual(run_spec.main(["--check"]), 0)
        self.assertGreaterEqual(int(out.getvalue().split()[0]), 1500)


if __name__ == "__main__":
    unittest.main()
