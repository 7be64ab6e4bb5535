#!/usr/bin/env python3
"""Help texts against the tables that make the parser: every command and option of src/cli/*.def is in --help, is parsed,
and nothing else is.
SPDX-License-Identifier: MIT
"""
import os
import re
import unittest

from tool import ROOT, SAMPLE, run


def rows(name, macro):
    """The table's rows, read as text: an independent reading of the .def file."""
    with open(os.path.join(ROOT, "src/cli", name), encoding="utf-8") as file:
        text = re.sub(r"/\*.*?\*/", "", file.read(), flags=re.S)
    return [re.findall(r'"((?:[^"\\]|\\.)*)"|\b([A-Za-z_0-9]+)\b|(\'.\')', body)
            for body in re.findall(macro + r"\((.*)\)", text)]


COMMANDS = [row[0][1] for row in rows("commands.def", "COMMAND")]
OPTIONS = [{"letter": row[1][2].strip("'"), "name": row[2][0], "argument": row[3][0], "commands": row[4][0].split()}
           for row in rows("options.def", "OPTION")]


def options_in(text):
    return set(re.findall(r"^  (?:-\w, |    )--([a-z-]+)", text, re.M))


class Help(unittest.TestCase):
    def test_tables_were_read(self):
        self.assertIn("extract", COMMANDS)
        self.assertGreater(len(OPTIONS), 8)

    def test_help_lists_every_command(self):
        out = run("--help").out
        for name in COMMANDS:
            self.assertRegex(out, rf"(?m)^  {name} ")
        self.assertEqual(options_in(out), {o["name"] for o in OPTIONS if not o["commands"]})

    def test_each_commands_help_lists_its_options_and_no_others(self):
        for name in COMMANDS:
            with self.subTest(name):
                ended = run(name, "--help")
                self.assertEqual((ended.status, ended.err), (0, ""))
                self.assertEqual(options_in(ended.out),
                                 {o["name"] for o in OPTIONS if not o["commands"] or name in o["commands"]})
                self.assertTrue(ended.out.startswith(f"For example: dishtake {name} "))

    def test_each_option_is_parsed_by_its_commands_only(self):
        for option in OPTIONS:
            for name in COMMANDS:
                value = ["1"] if option["argument"] else []
                ended = run(name, "--" + option["name"], *value, "--", "no-such-file")
                belongs = not option["commands"] or name in option["commands"]
                self.assertEqual("has no option" not in ended.err, belongs, (name, option))

    def test_letters_are_their_options(self):
        for option in OPTIONS:
            if len(option["letter"]) == 1 and option["letter"] != "0":
                self.assertIn(f"-{option['letter']}, --{option['name']}", run("check", "--help").out + run("--help").out)

    def test_ways_to_ask_for_help(self):
        self.assertEqual(run("help").out, run("--help").out)
        self.assertEqual(run("-h").out, run("--help").out)
        self.assertEqual(run("help", "card").out, run("card", "-h").out)

    def test_lines_fit_a_wide_terminal(self):
        for name in [[], *([n] for n in COMMANDS)]:
            for line in run(*name, "--help").out.splitlines():
                self.assertLessEqual(len(line), 120, line)

    def test_examples_of_the_help_run(self):
        for name in COMMANDS:
            if name == "review":  # serves a page until it is stopped; tests/review runs it
                continue
            line = run(name, "--help").out.splitlines()[0].removeprefix("For example: dishtake ")
            words = [word for word in line.replace("evening.srt", SAMPLE).split() if not word.startswith(">")]
            self.assertIn(run(*words).status, (0, 1), line)

    def test_version(self):
        self.assertRegex(run("--version").out, r"^dishtake \d+\.\d+\.\d+\n$")


if __name__ == "__main__":
    unittest.main()
