#!/usr/bin/env python3
"""What `dishtake publish` writes, against programs that were not made with it.

Outside sources: FFmpeg's reader of FFMETADATA and its Matroska, MP4 and WebVTT readers (Debian's ffmpeg),
mkvtoolnix, whose XML form of Matroska chapters the file follows, Python's own XML parser, and ISO 8601
durations by Python's isodate or, without it, by a parser of the standard's own grammar written here.
SPDX-License-Identifier: MIT
"""
import filecmp
import json
import os
import re
import shutil
import subprocess
import sys
import tempfile
import unittest
import xml.etree.ElementTree as ET
from html.parser import HTMLParser

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "cli"))
from tool import ROOT, SAMPLE, run  # noqa: E402

try:
    import isodate
except ImportError:
    isodate = None

CORPUS = os.path.join(ROOT, "tests", "corpus")
PODLOVE = "{http://podlove.org/simple-chapters}"
HOSTILE = 'Tom & Jo\'s <b>; "hot" = # \\ soup'
TALK = """1
00:00:01,000 --> 00:00:06,000
Today we're making a tomato soup. You need two cups of flower.

2
00:00:06,000 --> 00:00:20,000
Chop one onion and add it to the pot.

3
00:00:20,000 --> 00:00:55,000
Simmer for twenty minutes. And that's our tomato soup.
"""


def output(*command):
    return subprocess.run(command, stdin=subprocess.DEVNULL, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL,
                          check=True).stdout.decode()


def seconds(clock):
    parts = [float(p) for p in clock.replace(",", ".").split(":")]
    return sum(p * 60 ** i for i, p in enumerate(reversed(parts)))


def edit(kind, first, last, said, **more):
    return {"kind": kind, "on": {"words": [first, last], "said": said, "before": "", "after": "", "at": 1.0}, **more}


class Folder(unittest.TestCase):
    def setUp(self):
        self.place = tempfile.TemporaryDirectory(prefix="dishtake-publish-")
        self.addCleanup(self.place.cleanup)
        self.dir = self.place.name
        self.out = os.path.join(self.dir, "out")

    def publish(self, *arguments, status=0):
        ended = run("publish", "--despite-findings", "-o", self.out, *arguments)
        self.assertEqual(ended.status, status, ended.err)
        return ended

    def read(self, name):
        with open(os.path.join(self.out, name), encoding="utf-8") as file:
            return file.read()

    def write(self, name, text):
        path = os.path.join(self.dir, name)
        with open(path, "w", encoding="utf-8", newline="") as file:
            file.write(text)
        return path

    def talk(self, *edits, text=TALK, name="talk.srt"):
        path = self.write(name, text)
        stem = name.rsplit(".", 1)[0]
        self.write(stem + ".edits.json", json.dumps({"format": "dishtake edits 1", "recording": {"file": name},
                                                     "edits": list(edits)}))
        return path

    def first_card(self):
        return min(n for n in os.listdir(self.out) if n.startswith("01-") and n.endswith(".html"))

    def left(self):
        return sorted(name for name in os.listdir(self.dir) if "new." in name)


class Whole(Folder):
    def test_two_runs_give_the_same_bytes(self):
        self.publish(SAMPLE, "--detail", "--video-url", "v.mp4")
        shutil.copytree(self.out, self.out + "1")
        self.publish(SAMPLE, "--detail", "--video-url", "v.mp4")
        names = os.listdir(self.out)
        self.assertEqual(names and sorted(names), sorted(os.listdir(self.out + "1")))
        self.assertEqual(filecmp.cmpfiles(self.out, self.out + "1", names, shallow=False)[1:], ([], []))

    def test_a_stop_finding_refuses_and_leaves_nothing(self):
        ended = run("publish", "-o", self.out, SAMPLE)
        self.assertEqual(ended.status, 1)
        self.assertIn("--despite-findings", ended.err)
        self.assertEqual(os.listdir(self.dir), [])

    def test_a_folder_of_somebody_elses_is_never_replaced(self):
        os.mkdir(self.out)
        with open(os.path.join(self.out, "photos.txt"), "w", encoding="utf-8") as file:
            file.write("mine")
        self.assertIn("photos.txt", self.publish(SAMPLE, status=4).err)
        self.assertEqual(os.listdir(self.out), ["photos.txt"])
        self.assertEqual(self.left(), [])

    def test_what_was_published_before_goes(self):
        self.publish(SAMPLE)
        third = [n for n in os.listdir(self.out) if n.startswith("03-")]
        self.publish(self.talk())
        self.assertTrue(third)
        self.assertEqual([n for n in third if n in os.listdir(self.out)], [])
        self.assertEqual(self.left(), [])

    def test_wrong_usage_leaves_the_old_folder(self):
        self.publish(SAMPLE)
        before = sorted(os.listdir(self.out))
        for wrong in (["--serves", "0"], ["--times", "1e300"], ["--units", "cubits"], ["--video-url", "javascript:x"],
                      ["--style", "no-such.css"], ["--letters", "x"], ["--serves", "4", "--times", "2"]):
            ended = run("publish", "--despite-findings", "-o", self.out, SAMPLE, *wrong)
            self.assertIn(ended.status, (2, 3), (wrong, ended.err))
            self.assertNotEqual(ended.err, "", wrong)
        self.assertEqual(sorted(os.listdir(self.out)), before)
        self.assertEqual(self.left(), [])

    def test_many_files_one_bad_is_named_at_the_end(self):
        bad = self.write("broken.srt", "nothing timed here\n")
        good = self.talk()
        for jobs in ("1", "3"):
            ended = self.publish("-j", jobs, good, bad, SAMPLE, status=3)
            self.assertRegex(ended.err.splitlines()[-1], r"1 of 3 files .*broken\.srt$")
            self.assertEqual(sorted(os.listdir(self.out)), ["hilltop-canteen", "talk"])

    def test_two_files_of_one_name_are_refused(self):
        os.mkdir(os.path.join(self.dir, "b"))
        one, other = self.talk(), self.write("b/talk.vtt", "WEBVTT\n\n00:01.000 --> 00:02.000\nhello\n")
        self.publish(one, other, status=2)

    def test_the_listed_files_are_there(self):
        self.publish(SAMPLE)
        page = self.read("index.html")
        links = set(re.findall(r'href="([^"#]+)', page))
        self.assertTrue(links)
        for link in links:
            self.assertTrue(os.path.exists(os.path.join(self.out, link)), link)
        listed = set(self.read(".published").split())
        self.assertEqual(listed | {".published"}, set(os.listdir(self.out)))
        self.assertEqual(listed - links, {"index.html"})

    def test_every_link_into_a_page_lands(self):
        self.publish(SAMPLE)
        for name in [n for n in os.listdir(self.out) if n.endswith(".html")]:
            for page, anchor in re.findall(r'href="([^"#]*)#([^"]+)"', self.read(name)):
                self.assertIn(f'id="{anchor}"', self.read(page or name), (name, page, anchor))


class Chapters(Folder):
    def chapters(self, path):
        shown = json.loads(output("ffprobe", "-v", "error", "-show_chapters", "-of", "json", path))["chapters"]
        return [(float(c["start_time"]), float(c["end_time"]), c["tags"]["title"]) for c in shown]

    def wanted(self):
        found = re.findall(r"(\S+) --> (\S+)\n(.*)", self.read("chapters.vtt"))
        plain = [(seconds(a), seconds(b), t.replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&")) for a, b, t in found]
        self.assertTrue(plain)
        return plain

    def sound(self, length):
        path = os.path.join(self.dir, "sound.mka")
        output("ffmpeg", "-v", "error", "-y", "-f", "lavfi", "-i", "anullsrc=r=8000:cl=mono", "-t", str(length), "-c:a",
               "pcm_s16le", path)
        return path

    def hostile(self):
        self.publish(self.talk(edit("dish-set", 0, 18, "today we're making a tomato soup", field="title", value=HOSTILE)))

    def check_muxed(self):
        wanted = self.wanted()
        sound = self.sound(wanted[-1][1])
        meta = os.path.join(self.out, "chapters.ffmetadata")
        self.assertEqual(self.chapters(meta), wanted)
        for name in ("muxed.mkv", "muxed.mp4"):
            path = os.path.join(self.dir, name)
            codec = "aac" if name.endswith("4") else "copy"
            output("ffmpeg", "-v", "error", "-y", "-i", sound, "-i", meta, "-map_chapters", "1", "-c:a", codec, path)
            self.assertEqual(self.chapters(path), wanted, name)

    @unittest.skipUnless(shutil.which("ffmpeg"), "ffmpeg is not installed")
    def test_ffmpeg_muxes_the_metadata_file(self):
        self.publish(SAMPLE, "--detail")
        self.check_muxed()

    @unittest.skipUnless(shutil.which("ffmpeg"), "ffmpeg is not installed")
    def test_ffmpeg_reads_a_title_of_signs(self):
        self.hostile()
        self.assertIn(HOSTILE, [t for _, _, t in self.wanted()])
        self.check_muxed()

    @unittest.skipUnless(shutil.which("mkvmerge") and shutil.which("ffmpeg"), "mkvtoolnix is not installed")
    def test_mkvmerge_reads_the_matroska_form(self):
        for make in (lambda: self.publish(SAMPLE, "--detail"), self.hostile):
            make()
            muxed = os.path.join(self.dir, "muxed.mka")
            output("mkvmerge", "-q", "-o", muxed, "--chapters", os.path.join(self.out, "chapters.matroska.xml"),
                   self.sound(self.wanted()[-1][1]))
            self.assertEqual(self.chapters(muxed), self.wanted())

    def test_podlove_is_xml_with_the_same_starts(self):
        for make in (lambda: self.publish(SAMPLE, "--detail"), self.hostile):
            make()
            root = ET.parse(os.path.join(self.out, "chapters.podlove.xml")).getroot()
            self.assertEqual((root.tag, root.get("version")), (PODLOVE + "chapters", "1.2"))
            self.assertEqual([(seconds(c.get("start")), c.get("title")) for c in root.iter(PODLOVE + "chapter")],
                             [(a, t) for a, _, t in self.wanted()])

    @unittest.skipUnless(shutil.which("ffprobe"), "ffmpeg is not installed")
    def test_ffprobe_reads_the_webvtt_form(self):
        self.publish(SAMPLE)
        shown = json.loads(output("ffprobe", "-v", "error", "-show_packets", "-of", "json",
                                  os.path.join(self.out, "chapters.vtt")))["packets"]
        self.assertEqual([(float(p["pts_time"]), float(p["pts_time"]) + float(p["duration_time"])) for p in shown],
                         [(a, b) for a, b, _ in self.wanted()])

    def test_the_rules_of_hosts_hold_for_every_recording(self):
        """First at 0:00, ascending, ten seconds each, titles short and unique; no other clock time in the description."""
        for name in sorted(os.listdir(CORPUS)):
            if not name.endswith((".srt", ".vtt", ".txt", ".tsv")):
                continue
            self.publish(os.path.join(CORPUS, name))
            lines = self.read("chapters.txt").splitlines()
            starts = [seconds(line.split(" ", 1)[0]) for line in lines]
            titles = [line.split(" ", 1)[1] for line in lines]
            self.assertEqual(starts[0], 0, name)
            self.assertTrue(all(b - a >= 10 for a, b in zip(starts, starts[1:])), (name, starts))
            self.assertTrue(all(len(t) <= 55 for t in titles), name)
            self.assertEqual(len(set(titles)), len(titles), name)
            text = self.read("description.txt")
            clocks = [line for line in text.splitlines() if re.search(r"\d:\d\d", line)]
            self.assertEqual(clocks, lines, name)
            self.assertNotRegex(text, "[<>]")
            self.assertLessEqual(len(text), 5000 if "over the" not in run("publish", "--despite-findings", "-o", self.out,
                                 os.path.join(CORPUS, name)).err else len(text), name)


class Captions(Folder):
    def test_byte_for_byte_where_nothing_changed(self):
        for text in (TALK, TALK.replace("\n", "\r\n"), "\ufeff" + TALK, TALK.rstrip("\n")):
            path = self.write("plain.srt", text)
            ended = run("captions", "--as", "srt", path)
            with open(path, "rb") as file:
                self.assertEqual(ended.bytes, file.read())

    def test_only_the_corrected_word_changes(self):
        for returns in ("\n", "\r\n"):
            text = TALK.replace("\n", returns)
            path = self.talk(edit("word", 10, 10, "flower", value="flour"), text=text)
            self.assertEqual(run("captions", "--as", "srt", path).bytes.decode(), text.replace("flower", "flour"))

    def test_what_the_cook_said_wrongly_stays(self):
        path = self.talk(edit("dish-set", 0, 18, "today", field="title", value="Onion soup"))
        self.assertEqual(run("captions", "--as", "srt", path).bytes.decode(), TALK)

    def test_a_misheard_word_is_mended_once_it_was_accepted(self):
        for before, number in (("", 10), ("all purpose ", 12)):
            text = TALK.replace("flower", before + "flower")
            path = self.talk(text=text)
            self.assertIn("misheard", run("check", path).out)
            self.assertEqual(run("captions", "--as", "srt", path).bytes.decode(), text)
            about = re.search(r"misheard: \"(.*?)\"", run("check", path).out)[1]
            path = self.talk(edit("finding", number, number, "flower", field="misheard", about=about, value="accepted"),
                             text=text)
            self.assertEqual(run("captions", "--as", "srt", path).bytes.decode(), text.replace("flower", "flour"))
            self.assertIn(before + "flour", run("captions", "--as", "webvtt", path).out)
            self.assertIn("flour", run("captions", "--as", "webvtt", "--reflow", path).out)

    def test_rolling_captions_are_mended_in_both_lines(self):
        text = ("WEBVTT\n\n00:00:01.000 --> 00:00:03.000\nwe add two cups of flower\n\n"
                "00:00:03.000 --> 00:00:03.010\nwe add two cups of flower\n\n"
                "00:00:03.010 --> 00:00:06.000\nwe add two cups of flower\nand stir it in well\n\n"
                "00:00:06.000 --> 00:00:06.010\nand stir it in well\n\n"
                "00:00:06.010 --> 00:00:09.000\nand stir it in well\nthen one egg goes in\n")
        path = self.talk(edit("word", 5, 5, "flower", value="flour"), text=text, name="rolling.vtt")
        self.assertEqual(run("captions", "--as", "webvtt", path).bytes.decode(), text.replace("flower", "flour"))

    def test_reflow_keeps_the_conventions(self):
        """DCMP Captioning Key: at most 32 letters a line, two lines; a second at least, six at most (common practice)."""
        for name in (SAMPLE, os.path.join(CORPUS, "granddad-stew.srt"), os.path.join(CORPUS, "rolling-soup.vtt")):
            out = run("captions", "--as", "srt", "--reflow", "-q", name).out
            blocks = [b.split("\n") for b in out.strip().split("\n\n")]
            self.assertGreater(len(blocks), 20)
            for block in blocks:
                start, end = (seconds(t) for t in block[1].split(" --> "))
                self.assertLessEqual(len(block) - 2, 2, block)
                self.assertTrue(all(len(line) <= 32 for line in block[2:]), block)
                self.assertTrue(0 < end - start <= 7, block)


class Data(Folder):
    DURATION = re.compile(r"^P(?:(\d+)D)?(?:T(?=\d)(?:(\d+)H)?(?:(\d+)M)?(?:(\d+)S)?)?$")

    def duration(self, text):
        if isodate:
            return isodate.parse_duration(text).total_seconds()
        days, hours, minutes, secs = (int(x or 0) for x in self.DURATION.match(text).groups())
        return days * 86400 + hours * 3600 + minutes * 60 + secs

    def recipes(self):
        names = sorted(n for n in os.listdir(self.out) if n.endswith(".jsonld"))
        return [(name, json.loads(self.read(name))) for name in names]

    def test_times_are_the_recipes(self):
        for source in (SAMPLE, os.path.join(CORPUS, "granddad-stew.srt"), os.path.join(CORPUS, "harbour-breads.srt")):
            self.publish(source)
            dishes = json.loads(self.read("recipes.json"))["dishes"]
            recipes = self.recipes()
            self.assertEqual(len(recipes), len(dishes))
            for (_, recipe), dish in zip(recipes, dishes):
                for key, time in (("prepTime", "active"), ("cookTime", "cook"), ("totalTime", "total")):
                    said = dish["times"].get(time)
                    self.assertEqual(key in recipe, said is not None, (source, key))
                    if said:
                        most = said["max"] if said["max"] is not None else said["min"]
                        self.assertEqual(self.duration(recipe[key]), round(most))

    def test_data_is_what_the_reader_sees(self):
        self.publish(SAMPLE)
        for name, recipe in self.recipes():
            text = " ".join(self.read(name.replace(".jsonld", ".txt")).split())
            for line in recipe["recipeIngredient"]:
                self.assertIn(line, text)
            page = self.read(name.replace(".jsonld", ".html"))
            inside = re.search(r'<script type="application/ld\+json">(.*?)</script>', page, re.S)[1]
            self.assertEqual(json.loads(inside), recipe)
            for absent in ("author", "aggregateRating", "datePublished", "image", "suitableForDiet"):
                self.assertNotIn(absent, recipe)

    def test_offsets_are_whole_seconds_inside_the_recording(self):
        self.publish(SAMPLE, "--video-url", "https://video.example/v?t={seconds}&x=1")
        length = json.loads(self.read("recipes.json"))["recording"]["length"]
        for _, recipe in self.recipes():
            for clip in recipe["video"]["hasPart"]:
                self.assertIsInstance(clip["startOffset"], int)
                self.assertLess(clip["startOffset"], clip["endOffset"])
                self.assertLessEqual(clip["endOffset"], length + 1)
                self.assertEqual(clip["url"], f"https://video.example/v?t={clip['startOffset']}&x=1")

    def test_a_media_fragment_without_a_place_for_seconds(self):
        self.publish(SAMPLE, "--video-url", "talk.mp4")
        self.assertRegex(self.read(self.first_card()), r'href="talk\.mp4#t=\d+"')

    def test_the_users_style_comes_last_and_stays_in_its_element(self):
        style = self.write("my.css", ".card{color:red}/*</style><script>alert(1)</script>*/")
        self.publish(SAMPLE, "--style", style)
        page = self.read(self.first_card())
        scripts = []
        parser = HTMLParser()
        parser.handle_starttag = lambda tag, attributes: tag == "script" and scripts.append(attributes)
        parser.feed(page)
        self.assertEqual(scripts, [[("type", "application/ld+json")]])
        self.assertGreater(page.index(".card{color:red}"), page.index(".card header"))


class Pictures(Folder):
    @unittest.skipUnless(shutil.which("ffmpeg"), "ffmpeg is not installed")
    def test_stills_are_pictures_of_their_moment(self):
        video = os.path.join(self.dir, "v.mp4")
        output("ffmpeg", "-v", "error", "-y", "-f", "lavfi", "-i", "testsrc=size=320x180:rate=2", "-t", "60", "-c:v",
               "mpeg4", video)
        self.publish(self.talk(), "--video", video)
        pictures = sorted(n for n in os.listdir(self.out) if n.endswith(".jpg"))
        self.assertGreaterEqual(len(pictures), 2)
        for name in pictures:
            shown = json.loads(output("ffprobe", "-v", "error", "-show_streams", "-of", "json", os.path.join(self.out, name)))
            self.assertEqual((shown["streams"][0]["width"], shown["streams"][0]["height"]), (320, 180))
            self.assertIn(name, self.read(".published"))
        recipe = json.loads(self.read("01-tomato-soup.jsonld"))
        self.assertEqual(recipe["image"], "01-tomato-soup.jpg")
        self.assertIn('src="01-tomato-soup.jpg"', self.read("01-tomato-soup.html"))

    def test_without_a_video_the_index_says_so(self):
        self.publish(self.talk())
        self.assertIn("Pictures were left out", self.read("index.html"))

    def test_what_is_no_video_only_leaves_pictures_out(self):
        self.assertRegex(self.publish(self.talk(), "--video", self.write("v.mp4", "no video")).err, "pictures")
        self.assertEqual([n for n in os.listdir(self.out) if n.endswith(".jpg")], [])


class Shopping(Folder):
    def test_the_order_of_files_changes_no_amount(self):
        other = os.path.join(CORPUS, "two-cooks.srt")
        items = [sorted(re.sub(r"\(for [^)]*\)", "", line) for line in
                 re.sub(r"\n      (?! )", " ", run("shopping", "-q", "-j", jobs, *files).out).splitlines() if "[ ]" in line)
                 for files in ((SAMPLE, other), (other, SAMPLE)) for jobs in ("1", "2")]
        self.assertGreater(len(items[0]), 10)
        self.assertTrue(all(one == items[0] for one in items))

    def test_a_file_that_cannot_be_read_is_named_and_the_rest_is_listed(self):
        ended = run("shopping", "-q", SAMPLE, self.write("bad.srt", "none"))
        self.assertEqual(ended.status, 3)
        self.assertIn("[ ]", ended.out)
        self.assertIn("bad.srt", ended.err.splitlines()[-1])


if __name__ == "__main__":
    unittest.main()
