"""Tests of the scorer, on small invented cases: python3 -m unittest test_score"""
import contextlib
import copy
import io
import json
import os
import sys
import tempfile
import time
import unittest
from unittest import mock

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path.append(os.path.join(os.path.dirname(HERE), "tools"))
import loader  # noqa: E402

score = loader.load(os.path.join(HERE, "score"))


def line(food, low, unit, at, **more):
    return {"food": food, "min": low, "max": low, "unit": unit, "at": at, **more}


TRANSCRIPT = """\
1
00:00:00,000 --> 00:00:05,000
Hello, I'm back in the kitchen.

2
00:00:10,000 --> 00:00:16,000
First a barley salad for four. Preheat the oven to 200 degrees.

3
00:00:20,000 --> 00:00:27,000
Two cups of barley, three chopped green onions, salt to taste.

4
00:00:40,000 --> 00:00:47,000
Stir in a 400-gram can of beans and roast it for 20 minutes.

5
00:01:30,000 --> 00:01:36,000
Now a plum tea.

6
00:01:40,000 --> 00:01:48,000
Simmer six plums in a quart of water. Some honey. Lovely with biscuits.
"""

GOLD = {
    "transcript": "two.srt", "about": "one cook, two dishes",
    "dishes": [
        {"titles": ["Barley salad", "Roast barley salad"], "start": 10.0, "end": 47.0,
         "yield": {"min": 4, "max": 4, "of": "serving"},
         "ingredients": [
             line(["barley", "pearl barley"], 2, "cup", 20.0),
             line(["scallion", "green onion"], 3, "", 20.0, prep=["chopped"]),
             line(["salt"], None, None, 20.0, to_taste=True),
             line(["canned bean", "bean"], 1, "can", 40.0, group=["salad"],
                  package={"min": 400, "max": 400, "unit": "gram"})],
         "temperatures": [{"value": 200, "unit": "C", "of": "oven", "at": 10.0}],
         "durations": [{"min": 1200, "max": 1200, "of": "roast", "each": None, "at": 40.0}],
         "steps": [{"at": 10.0, "action": "preheat"}, {"at": 40.0, "action": "stir"}, {"at": 40.0, "action": "roast"}]},
        {"titles": ["Plum tea"], "start": 90.0, "end": 108.0, "yield": None,
         "ingredients": [
             line(["plum"], 6, "", 100.0), line(["water"], 1, "quart", 100.0),
             line(["honey"], None, None, 100.0), line(["biscuit"], None, None, 100.0, role="serve-with")],
         "temperatures": [], "durations": [], "steps": [{"at": 100.0, "action": "simmer"}]}],
    "problems": [{"kind": "no-yield", "dish": 1, "at": 90.0, "about": "yield"},
                 {"kind": "vague-amount", "dish": 1, "at": 100.0, "about": "honey"}]}


def answer(gold=GOLD, serve_with=False):
    """The output that says all that a gold says."""
    dishes = []
    for d, dish in enumerate(gold["dishes"]):
        lines = [{"food": entry["food"][-1], "at": entry["at"], "unit": entry["unit"],
                  "amount": None if entry["min"] is None else {"min": entry["min"], "max": entry["max"]},
                  "package": entry.get("package"), "prep": entry.get("prep", []),
                  "group": (entry.get("group") or [None])[0], "to_taste": entry.get("to_taste", False),
                  "optional": entry.get("optional", False), "role": entry.get("role", "ingredient")}
                 for entry in dish["ingredients"] if serve_with or entry.get("role") != "serve-with"]
        steps = [{"start": step["at"], "end": step["at"] + 5, "actions": [step["action"]], "temperatures": [],
                  "durations": []} for step in dish["steps"]]
        steps[0]["temperatures"], steps[-1]["durations"] = dish["temperatures"], dish["durations"]
        dishes.append({"id": f"dish-{d}", "title": dish["titles"][-1], "start": dish["start"], "end": dish["end"],
                       "yield": dish["yield"], "ingredients": lines, "steps": steps})
    findings = [{**item, "dish": None if item["dish"] is None else f"dish-{item['dish']}"} for item in gold["problems"]]
    return {"format": "dishtake session 1", "dishes": dishes, "findings": findings}


def figures(output, gold=GOLD, cues=()):
    return score.score_recording(copy.deepcopy(gold), output, cues)[0].figures()


def running(process):
    try:
        with open(f"/proc/{process}/stat", encoding="utf-8") as file:
            return file.read().rpartition(")")[2].split()[0] != "Z"
    except OSError:
        return False


LESS = ("pk", "window_diff", "failed", "false_findings")


class Words(unittest.TestCase):
    def test_plural_and_singular_fall_together(self):
        for one, many in [("berry", "berries"), ("cookie", "cookies"), ("tomato", "tomatoes"), ("leaf", "leaves"),
                          ("radish", "radishes"), ("peach", "peaches"), ("olive", "olives"), ("clove", "cloves"),
                          ("pea", "peas"), ("cheese", "cheeses"), ("jalapeño", "Jalapenos")]:
            self.assertEqual(score.tokens(one), score.tokens(many), many)
        for word in ("asparagus", "hummus", "couscous", "swiss"):
            self.assertEqual(score.tokens(word), (word,))

    def test_head_noun(self):
        heads = {"boneless chicken thighs": "thigh", "juice of a lemon": "juice", "butter, melted": "butter",
                 "tuna in oil": "tuna"}
        for name, head in heads.items():
            self.assertEqual(score.food_key(name)[1], head, name)

    def test_likeness(self):
        alike = [("soy sauce", "soy sauce"), ("brown sugar", "sugar"), ("dark brown sugar", "light brown sugar"),
                 ("onion", "red onions"), ("lemon juice", "juice of one lemon")]
        unlike = [("soy sauce", "hot sauce"), ("olive oil", "sesame oil"), ("garlic powder", "garlic"),
                  ("flour", "then we go and add some flour"), ("salt", "")]
        for right, given in alike:
            self.assertGreater(score.likeness(right, given), 0, (right, given))
        for right, given in unlike:
            self.assertEqual(score.likeness(right, given), 0, (right, given))

    def test_actions(self):
        same = [("stir", "combine"), ("sauté", "fry"), ("bring to a boil", "boil"), ("let rest", "rest"),
                ("stir in", "mix")]
        other = [("turn off", "flip"), ("cut in", "chop"), ("boil", "simmer"), ("whisk", "stir")]
        for one, two in same:
            self.assertEqual(score.action_key(one), score.action_key(two), (one, two))
        for one, two in other:
            self.assertNotEqual(score.action_key(one), score.action_key(two), (one, two))


class Figures(unittest.TestCase):
    def test_f1(self):
        self.assertEqual(score.f1(0, 0, 0), 1.0)
        self.assertEqual(score.f1(0, 3, 0), 0.0)
        self.assertAlmostEqual(score.f1(2, 3, 4), 4 / 7)

    def test_close(self):
        self.assertTrue(score.close(0.33, 1 / 3))
        self.assertTrue(score.close(None, None))
        self.assertFalse(score.close(None, 0.0))
        self.assertFalse(score.close(100, 102))

    def test_pair_takes_the_cheapest_and_then_as_many_as_can_be(self):
        costs = {(0, 0): 1, (0, 1): 2, (1, 0): 3}
        cost = lambda a, b: costs.get((a, b))
        self.assertEqual(score.pair([0, 1], [0, 1], cost, most=False), [(0, 0)])
        self.assertEqual(score.pair([0, 1], [0, 1], cost), [(0, 1), (1, 0)])

    def test_windows_shifted(self):
        # 12 s, 2 segments, k = 12 / 4 = 3, windows i = 0..8. A border at 5 lies in windows 2, 3, 4, one at 6 in
        # 3, 4, 5: windows 2 and 5 disagree.
        self.assertEqual(score.windows([5], [6], 12), (2, 2, 9))

    def test_windows_extra(self):
        # Borders 5 and 6 against 6 alone (windows 3, 4, 5). Window 2 holds 5 only: both measures disagree.
        # Windows 3 and 4 hold two against one: WindowDiff alone. Window 5 holds 6 only: none.
        self.assertEqual(score.windows([6], [5, 6], 12), (1, 3, 9))

    def test_windows_missed(self):
        # 20 s, borders at 5, 10 and 15: k = 20 / 8 = 2.5, rounded up to 3, 17 windows; each border lies in three.
        self.assertEqual(score.windows([5, 10, 15], [], 20), (9, 9, 17))
        self.assertEqual(score.windows([5, 10, 15], [5, 10, 15], 20), (0, 0, 17))
        self.assertEqual(score.windows([], [], 0), (0, 0, 0))
        self.assertEqual(score.windows([0], [0.2], 10)[:2], (0, 0), "a border at the very start is none")


class Recordings(unittest.TestCase):
    def test_perfect(self):
        for serve_with in (False, True):
            for name, figure in figures(answer(serve_with=serve_with)).items():
                self.assertEqual(figure, 0.0 if name in LESS else 1.0, name)

    def test_empty(self):
        got = figures({})
        for name in ("boundary_f1", "title_accuracy", "food_f1", "food_precision", "ingredient_line_f1", "prep_f1",
                     "group_accuracy", "optional_accuracy", "role_accuracy", "temperature_f1", "duration_f1", "step_f1",
                     "yield_accuracy", "problem_f1", "problem_no_yield_f1", "all_right"):
            self.assertEqual(got[name], 0.0, name)
        self.assertEqual(got["problem_unsafe_f1"], 1.0, "neither wanted nor given")
        self.assertGreater(got["pk"], 0.0)

    def test_nothing_to_find(self):
        nothing = {**GOLD, "dishes": [], "problems": []}
        self.assertEqual(figures({"dishes": []}, nothing)["boundary_f1"], 1.0)
        got = figures(answer(), nothing)
        for name in ("boundary_f1", "food_f1", "ingredient_line_f1", "step_f1", "problem_f1"):
            self.assertEqual(got[name], 0.0, name)

    def test_amount_off_by_one(self):
        output = answer()
        output["dishes"][0]["ingredients"][0]["amount"] = {"min": 3, "max": 3}
        got = figures(output)
        self.assertEqual(got["food_f1"], 1.0)
        self.assertAlmostEqual(got["ingredient_line_f1"], 6 / 7)
        self.assertEqual(got["all_right"], 0.5)

    def test_line_needs_unit_package_and_taste(self):
        for change in ({"unit": "gram"}, {"package": {"min": 200, "max": 200, "unit": "gram"}}, {"package": None}):
            output = answer()
            output["dishes"][0]["ingredients"][3].update(change)
            self.assertAlmostEqual(figures(output)["ingredient_line_f1"], 6 / 7, msg=change)
        output = answer()
        output["dishes"][0]["ingredients"][2]["to_taste"] = False
        self.assertAlmostEqual(figures(output)["ingredient_line_f1"], 6 / 7)

    def test_extra_line(self):
        output = answer()
        extra = copy.deepcopy(output["dishes"][1]["ingredients"][0])
        output["dishes"][1]["ingredients"].append({**extra, "food": "sugar"})
        got = figures(output)
        self.assertAlmostEqual(got["food_precision"], 7 / 8)
        self.assertEqual((got["food_recall"], got["all_right"]), (1.0, 0.5))
        output["dishes"][1]["ingredients"][-1]["role"] = "serve-with"
        self.assertEqual(figures(output)["food_f1"], 1.0)

    def test_same_food_twice(self):
        gold = copy.deepcopy(GOLD)
        gold["dishes"][1]["ingredients"].append(line(["water"], 2, "cup", 104.0))
        output = answer(gold)
        output["dishes"][1]["ingredients"].reverse()
        self.assertEqual(figures(output, gold)["ingredient_line_f1"], 1.0)
        output["dishes"][1]["ingredients"].pop(0)
        self.assertEqual(figures(output, gold)["food_recall"], 7 / 8)

    def test_too_far_in_time(self):
        for shift, recall in ((19.0, 1.0), (21.0, 6 / 7)):
            output = answer()
            output["dishes"][1]["ingredients"][0]["at"] += shift
            self.assertAlmostEqual(figures(output)["food_recall"], recall)

    def test_a_word_time_inside_the_cue_is_right(self):
        output = answer()
        output["dishes"][1]["ingredients"][0]["at"] = 100.0 + 27.0
        cues = [(90.0, 96.0, "a"), (100.0, 108.0, "b")]
        self.assertLess(figures(output)["food_recall"], 1.0)
        self.assertEqual(figures(output, cues=cues)["food_recall"], 1.0)

    def test_the_start_of_a_cue_is_right_where_the_gold_has_a_word_time(self):
        gold = copy.deepcopy(GOLD)
        gold["dishes"][1]["ingredients"][0]["at"] = 125.0
        cues = [(90.0, 96.0, "a"), (100.0, 130.0, "b")]
        self.assertLess(figures(answer(), gold)["food_recall"], 1.0)
        self.assertEqual(figures(answer(), gold, cues=cues)["food_recall"], 1.0)

    def test_titles_swapped(self):
        output = answer()
        first, second = output["dishes"]
        first["title"], second["title"] = second["title"], first["title"]
        got = figures(output)
        self.assertEqual((got["title_accuracy"], got["food_f1"], got["boundary_f1"]), (0.0, 1.0, 1.0))

    def test_ingredients_swapped(self):
        output = answer()
        first, second = output["dishes"]
        first["ingredients"], second["ingredients"] = second["ingredients"], first["ingredients"]
        got = figures(output)
        self.assertEqual((got["food_f1"], got["all_right"], got["title_accuracy"]), (0.0, 0.0, 1.0))

    def test_order_of_output_is_free(self):
        output = answer()
        output["dishes"].reverse()
        self.assertEqual(figures(output)["problem_f1"], 1.0)

    def test_interleaved_dishes(self):
        gold = copy.deepcopy(GOLD)
        gold["dishes"][0]["end"] = 200.0
        gold["dishes"][1]["end"] = 180.0
        self.assertEqual(figures(answer(gold), gold)["ingredient_line_f1"], 1.0)

    def test_two_dishes_run_together(self):
        output = answer()
        first, second = output["dishes"]
        first.update(end=108.0, ingredients=first["ingredients"] + second["ingredients"])
        output["dishes"] = [first]
        got = figures(output)
        self.assertAlmostEqual(got["boundary_f1"], 2 / 3)
        self.assertAlmostEqual(got["food_f1"], 4 / 7)
        self.assertEqual(got["title_accuracy"], 0.5)

    def test_the_largest_overlap_decides_which_dish_is_which(self):
        output = answer()
        output["dishes"][0]["end"] = 95.0  # runs on into the second dish, which is missing
        output["dishes"][1].update(start=0.0, end=12.0)
        got = figures(output)
        self.assertEqual((got["title_accuracy"], got["food_recall"]), (0.5, 4 / 7))

    def test_boundary_slack(self):
        for shift, figure in ((11.0, 1.0), (13.0, 0.5)):
            output = answer()
            output["dishes"][1]["start"] -= shift
            self.assertEqual(figures(output)["boundary_f1"], figure)

    def test_title_needs_four_words_of_five(self):
        output = answer()
        output["dishes"][0]["title"] = "The roasted barley salad"  # 2 of 3 and 2 of 2 words: 0.8
        self.assertEqual(figures(output)["title_accuracy"], 1.0)
        output["dishes"][0]["title"] = "Warm roasted barley salad"  # 2 of 4 and 2 of 2: 0.67
        self.assertEqual(figures(output)["title_accuracy"], 0.5)

    def test_prep_group_optional_role(self):
        for key, value, figure, expected in (("prep", ["finely chopped"], "prep_f1", 1.0),
                                             ("prep", ["sliced"], "prep_f1", 0.0),
                                             ("group", "salad", "group_accuracy", 6 / 7),
                                             ("optional", True, "optional_accuracy", 6 / 7),
                                             ("role", "garnish", "role_accuracy", 6 / 7)):
            output = answer()
            output["dishes"][0]["ingredients"][1][key] = value
            self.assertAlmostEqual(figures(output)[figure], expected, msg=(key, value))

    def test_temperatures_and_durations(self):
        for part, key, value in (("temperatures", "unit", "F"), ("temperatures", "of", "oil"), ("temperatures", "at", 31),
                                 ("durations", "max", 1800), ("durations", "each", "side"), ("durations", "min", None)):
            output = copy.deepcopy(answer())
            step = output["dishes"][0]["steps"][0 if part == "temperatures" else -1]
            step[part][0][key] = value
            self.assertEqual(figures(output)[part[:-1] + "_f1"], 0.0, (part, key))

    def test_open_duration(self):
        gold = copy.deepcopy(GOLD)
        gold["dishes"][0]["durations"][0]["max"] = None
        self.assertEqual(figures(answer(gold), gold)["duration_f1"], 1.0)
        self.assertEqual(figures(answer(), gold)["duration_f1"], 0.0)

    def test_steps(self):
        output = answer()
        first = output["dishes"][0]
        first["steps"] = [first["steps"][0], {"start": 40.0, "actions": ["combine", "bake", "dance"],
                                              "durations": first["steps"][-1]["durations"]}]
        self.assertEqual(figures(output)["step_f1"], 1.0, "one step may hold two of the gold's")
        first["steps"].append({"start": 40.0, "actions": ["dance", "sing"]})
        self.assertAlmostEqual(figures(output)["step_precision"], 4 / 5)
        first["steps"][1]["start"] = 53.0
        self.assertAlmostEqual(figures(output)["step_recall"], 2 / 4)

    def test_yield(self):
        for value, right in (({"min": 4, "max": 4, "of": "people"}, 1.0), ({"min": 4, "max": 6, "of": "serving"}, 0.5),
                             ({"min": 4, "max": 4, "of": "loaf"}, 0.5), (None, 0.5)):
            output = answer()
            output["dishes"][0]["yield"] = value
            self.assertEqual(figures(output)["yield_accuracy"], right, value)

    def test_problems(self):
        for change, right in (({"at": 190.0}, 2), ({"about": "sweetener", "at": 112.0}, 2), ({"dish": "dish-0"}, 1),
                              ({"about": "sweetener", "at": 190.0}, 1), ({"kind": "no-amount"}, 1), ({"dish": None}, 1)):
            output = answer()
            output["findings"][1].update(change)
            self.assertEqual(figures(output)["problem_recall"], right / 2, change)
        output = answer()
        output["findings"][0].update(at=0.0, about="")
        self.assertEqual(figures(output)["problem_no_yield_f1"], 1.0, "by its dish alone")

    def test_a_problem_about_a_small_word(self):
        gold = copy.deepcopy(GOLD)
        gold["problems"].append({"kind": "misheard", "dish": 0, "at": 40.0, "about": "for", "meant": "four"})
        output = answer(gold)
        output["findings"][-1]["at"] = 10.0
        self.assertEqual(figures(output, gold)["problem_misheard_f1"], 1.0)

    def test_a_problem_of_no_dish(self):
        gold = copy.deepcopy(GOLD)
        gold["problems"].append({"kind": "cut-off", "dish": None, "at": 0.0, "about": "hello"})
        self.assertEqual(figures(answer(gold), gold)["problem_cut_off_f1"], 1.0)
        output = answer(gold)
        output["findings"][-1]["dish"] = "a dish that the gold lacks"
        self.assertEqual(figures(output, gold)["problem_cut_off_f1"], 0.0)

    def test_problems_name_dishes_by_their_place_in_the_gold(self):
        gold = copy.deepcopy(GOLD)
        gold["dishes"].reverse()
        for item in gold["problems"]:
            item["dish"] = 0
        self.assertEqual(figures(answer(gold), gold)["problem_f1"], 1.0)

    def test_misshapen_output_is_scored_all_the_same(self):
        for output in ({"dishes": None}, {"dishes": [1, {}]}, {"dishes": [{"start": "x", "ingredients": [{"at": []}]}]},
                       {"dishes": [{"id": {}, "steps": [{"actions": "stir", "durations": [{"min": True}]}]}],
                        "findings": [{"dish": []}, 3]},
                       {"dishes": [{"start": 10.0, "end": 10 ** 400, "ingredients": [{"food": "salt", "at": 1e999}]}]}):
            self.assertEqual(figures(output)["all_right"], 0.0)


class Transcripts(unittest.TestCase):
    def test_webvtt_rolling_with_word_times_and_voices(self):
        cues = score.read_captions(
            "WEBVTT\n\nNOTE nothing\nhere\n\n00:01.000 --> 00:03.000 align:start position:0%\n \n"
            "two<00:01.400><c> cups</c>\n\n00:03.000 --> 00:03.010\ntwo cups\n \n\n"
            "id-3\n00:03.010 --> 00:05.000\ntwo cups\nof<00:03.500><c> rye</c>\n\n"
            "01:00:05.000 --> 01:00:06.000\n<v Ann>Rye &amp; wheat</v>\n")
        self.assertEqual(cues, [(1.0, 3.0, "two cups"), (3.01, 5.0, "of rye"), (3605.0, 3606.0, "Rye & wheat")])

    def test_subrip_without_empty_lines(self):
        cues = score.read_captions("1\n00:00:01,500 --> 00:00:02,000\none\n2\n00:00:03,000 --> 00:00:04,000\ntwo\n")
        self.assertEqual(cues, [(1.5, 2.0, "one"), (3.0, 4.0, "two")])

    def test_text_lines(self):
        cues = score.read_lines("# Title\n\n[0:05] one\nmore\n\n1:02:03 two\n**[2:00]** three\n- 4:00 - 4:10 four\n"
                                "5:00\nfive\nAnn Lee [6:00]: six\n")
        self.assertEqual(cues, [(5.0, None, "one more"), (3723.0, None, "two"), (120.0, None, "three"),
                                (240.0, 250.0, "four"), (300.0, None, "five"), (360.0, None, "six")])

    def test_json(self):
        for document, cues in (
                ({"segments": [{"start": 1.5, "end": 2, "text": " a"}, {"start": 2, "end": 3, "text": "b"}]},
                 [(1.5, 2.0, "a"), (2.0, 3.0, "b")]),
                ({"events": [{"tStartMs": 0, "dDurationMs": 900, "segs": [{"utf8": "a"}, {"utf8": " b"}]},
                             {"tStartMs": 1200, "segs": [{"utf8": "c"}]}]}, [(0.0, 0.9, "a b"), (1.2, None, "c")]),
                ([{"timestamp": [0.5, 2.5], "text": "a"}], [(0.5, 2.5, "a")]),
                ([{"from": "00:00:01,000", "to": "00:00:02,000", "text": "a"}], [(1.0, 2.0, "a")])):
            self.assertEqual(score.read_json(json.dumps(document)), cues)

    def test_table(self):
        self.assertEqual(score.read_table("start\tend\ttext\n0\t2000\ta\n2500\t4000\tb\n"),
                         [(0.0, 2.0, "a"), (2.5, 4.0, "b")])
        self.assertEqual(score.read_table("0.5\t2.5\ta\n3.0\t4.0\tb\n"), [(0.5, 2.5, "a"), (3.0, 4.0, "b")])
        self.assertEqual(score.read_table("time\ttext\n0:05\ta\n"), [(5.0, None, "a")])


class Checks(unittest.TestCase):
    def messages(self, change):
        gold = copy.deepcopy(GOLD)
        change(gold)
        return score.check_gold(gold, score.read_captions(TRANSCRIPT))

    def test_nothing_to_say(self):
        self.assertEqual(self.messages(lambda gold: None), [])

    def test_says_so(self):
        def first(gold):
            return gold["dishes"][0]
        cases = {
            "no `about`": lambda g: g.pop("about"),
            "unknown key `note`": lambda g: first(g).update(note=1),
            "not in the order": lambda g: g["dishes"].reverse(),
            "no cue at 60": lambda g: first(g)["durations"][0].update(at=60.0),
            "stand inside a cue": lambda g: first(g)["steps"][1].update(at=44.0),
            "outside its dish": lambda g: first(g)["temperatures"][0].update(at=90.0),
            "before it starts": lambda g: first(g).update(end=5.0),
            "no titles": lambda g: first(g).update(titles=[]),
            "of what?": lambda g: first(g)["yield"].update(of=""),
            "no problem no-yield": lambda g: first(g).update({"yield": None}),
            "unit tbsp is not canonical": lambda g: first(g)["ingredients"][0].update(unit="tbsp"),
            "null only together": lambda g: first(g)["ingredients"][0].update(unit=None),
            "one of min and max": lambda g: first(g)["ingredients"][0].update(max=None),
            "in order": lambda g: first(g)["ingredients"][0].update(max=1),
            "in lower case": lambda g: first(g)["ingredients"][0].update(food=["Barley"]),
            "not named within": lambda g: first(g)["ingredients"][0].update(food=["oats"]),
            "role side": lambda g: first(g)["ingredients"][0].update(role="side"),
            "of grill": lambda g: first(g)["temperatures"][0].update(of="grill"),
            "each pan": lambda g: first(g)["durations"][0].update(each="pan"),
            "not a known verb": lambda g: first(g)["steps"][1].update(action="zzz"),
            "kind odd": lambda g: g["problems"][0].update(kind="odd"),
            "there is no dish 2": lambda g: g["problems"][1].update(dish=2),
            "no-yield of no dish": lambda g: g["problems"][0].update(dish=0),
            "no `meant`": lambda g: g["problems"][1].update(kind="misheard"),
            "is not captioned": lambda g: g["problems"][1].update(kind="misheard", meant="a", about="zzz")}
        for message, change in cases.items():
            self.assertIn(message, " ".join(self.messages(change)))

    def test_a_misheard_food_need_not_be_captioned(self):
        def change(gold):
            gold["dishes"][0]["ingredients"][0]["food"] = ["parsley"]
            gold["problems"].append({"kind": "misheard", "dish": 0, "at": 20.0, "about": "barley", "meant": "parsley"})
        self.assertEqual(self.messages(change), [])


class Digests(unittest.TestCase):
    def setUp(self):
        self.cues = score.read_captions(TRANSCRIPT)
        self.hashed = score.hash_gold(GOLD, self.cues, "pepper")

    def figures(self, output):
        return score.score_hashed(self.hashed, output).figures()

    def test_perfect(self):
        for serve_with in (False, True):
            got = self.figures(answer(serve_with=serve_with))
            for name in ("boundary_f1", "title_accuracy", "food_f1", "ingredient_line_f1", "temperature_f1",
                         "duration_f1", "all_right"):
                self.assertEqual(got[name], 1.0, name)

    def test_empty_and_wrong(self):
        self.assertEqual(self.figures({})["ingredient_line_recall"], 0.0)
        output = answer()
        output["dishes"][0]["ingredients"][0]["amount"] = {"min": 3, "max": 3}
        output["dishes"][1]["ingredients"].append({"food": "sugar", "at": 100.0})
        got = self.figures(output)
        self.assertAlmostEqual(got["ingredient_line_recall"], 6 / 7)
        self.assertAlmostEqual(got["ingredient_line_precision"], 6 / 8)
        self.assertEqual(got["all_right"], 0.0)

    def test_a_food_both_put_in_and_served_with(self):
        gold = copy.deepcopy(GOLD)
        gold["dishes"][1]["ingredients"].append(line(["honey"], None, None, 100.0, role="serve-with"))
        hashed = score.hash_gold(gold, self.cues, "pepper")
        self.assertEqual(score.score_hashed(hashed, answer())["ingredient_line"], [7, 7, 7])

    def test_holds_no_word_of_the_recording(self):
        text = json.dumps(self.hashed)
        self.assertNotEqual(self.hashed, score.hash_gold(GOLD, self.cues, "salt"))
        for word in ("barley", "scallion", "plum", "salad", "oven", "cup", "200", "roast"):
            self.assertNotIn(f'"{word}', text)
        inner = {key for dish in self.hashed["dishes"] for key in dish}
        self.assertLessEqual(inner, {"start", "title", "lines", "spare", "heats", "times"})


class CommandLine(unittest.TestCase):
    def setUp(self):
        scratch = tempfile.TemporaryDirectory()
        self.addCleanup(scratch.cleanup)
        self.at = lambda *names: os.path.join(scratch.name, *names)
        self.write("two.srt", TRANSCRIPT)
        self.write("two.gold.json", json.dumps(GOLD))
        self.write("answer.json", json.dumps(answer()))

    def write(self, name, text):
        with open(self.at(name), "w", encoding="utf-8") as file:
            file.write(text)
        os.chmod(self.at(name), 0o755)
        return self.at(name)

    def tool(self, body):
        return self.write("tool", f"#!/bin/sh\n{body}\n")

    def run_score(self, *arguments):
        out, err = io.StringIO(), io.StringIO()
        with mock.patch.object(sys, "argv", ["score", *arguments]), contextlib.redirect_stdout(out), \
                contextlib.redirect_stderr(err):
            try:
                status = score.main()
            except SystemExit as stop:
                status = stop.code
        return status, out.getvalue(), err.getvalue()

    def test_good_tool(self):
        tool = self.tool(f'test "$1" = extract && test -f "$2" && cat {self.at("answer.json")}')
        status, out, err = self.run_score("--json", tool, self.at("two.gold.json"))
        self.assertEqual((status, err), (0, ""))
        self.assertEqual(json.loads(out)["all"]["ingredient_line_f1"], 1.0)
        self.assertEqual(json.loads(out)["two"]["failed"], 0)

    def test_failing_tools_count_as_empty_and_are_named(self):
        for body, why in (("exit 3", "exit status 3"), ("kill -9 $$", "exit status -9"), ("echo '{'", "no JSON"),
                          ("echo '[]'", "no list of dishes"), (r"printf '\377'", "no JSON")):
            status, out, err = self.run_score("--json", self.tool(body), self.at("two.gold.json"))
            self.assertEqual(status, 0)
            self.assertIn(why, err)
            self.assertEqual((json.loads(out)["all"]["failed"], json.loads(out)["all"]["food_f1"]), (1, 0.0))
        self.assertIn("two: ", self.run_score(self.at("missing"), self.at("two.gold.json"))[2])

    def test_slow_tool(self):
        child = self.at("child")
        with mock.patch.object(score, "TIMEOUT", 0.3):
            _, _, err = self.run_score("--json", self.tool(f"sleep 30 & echo $! > {child}; wait"), self.at("two.gold.json"))
        self.assertIn("still running", err)
        with open(child, encoding="utf-8") as file:
            number = int(file.read())
        for _ in range(100):
            if not running(number):
                break
            time.sleep(0.01)
        self.assertFalse(running(number), "what the tool started goes on")

    def test_saved_outputs(self):
        os.mkdir(self.at("saved"))
        os.rename(self.at("answer.json"), self.at("saved", "two.json"))
        status, out, _ = self.run_score("--verbose", "--from", self.at("saved"), self.at("two.gold.json"))
        self.assertEqual(status, 0)
        self.assertIn("== two", out)
        os.rename(self.at("saved", "two.json"), self.at("saved", "other.json"))
        self.assertIn("two: ", self.run_score("--from", self.at("saved"), self.at("two.gold.json"))[2])

    def test_floor(self):
        floor = self.write("floor.json", '{"food_f1": 0.9, "ingredient_line_f1": 0.95, "failed": 0, "pk": 0.5}')
        tool = self.tool(f"cat {self.at('answer.json')}")
        self.assertEqual(self.run_score("--floor", floor, tool, self.at("two.gold.json"))[0], 0)
        status, _, err = self.run_score("--floor", floor, self.tool("exit 3"), self.at("two.gold.json"))
        self.assertEqual(status, 1)
        for name in ("food_f1", "ingredient_line_f1", "failed"):
            self.assertIn(f"{name} is ", err)
        status, _, err = self.run_score("--floor", self.write("odd.json", '{"odd": 1}'), tool, self.at("two.gold.json"))
        self.assertEqual(status, 1)
        self.assertIn("no figure odd", err)

    def test_check(self):
        self.assertEqual(self.run_score("--check", self.at("two.gold.json")), (0, "", ""))
        self.write("two.gold.json", json.dumps(GOLD).replace('"quart"', '"quarts"'))
        status, out, _ = self.run_score("--check", self.at("two.gold.json"))
        self.assertEqual(status, 1)
        self.assertIn("two.gold.json: dishes[1].ingredients[1] (water): unit quarts is not canonical", out)

    def test_hashed(self):
        hashed = self.write("hashed.json", self.run_score("--hash", self.at("two.gold.json"), "pepper")[1])
        tool = self.tool(f"cat {self.at('answer.json')}")
        status, out, _ = self.run_score("--hashed", hashed, tool, self.at("two.srt"))
        self.assertEqual(status, 0)
        self.assertIn("title", out)
        self.assertNotIn("step", out)

    def test_wrong_use(self):
        for arguments in ((), ("tool",), ("--from", self.at("")), ("--hashed", "x", "y")):
            self.assertEqual(self.run_score(*arguments)[0], 2, arguments)


if __name__ == "__main__":
    unittest.main()
