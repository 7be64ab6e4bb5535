#!/usr/bin/env python3
"""The review page's server, spoken to byte by byte: every row of requests.tsv; then bodies in chunks, slow clients, a thousand
at once, two tabs, two programs, a kill in the middle of saving.

SPDX-License-Identifier: MIT
"""
import concurrent.futures
import json
import os
import re
import resource
import signal
import socket
import subprocess
import sys
import tempfile
import time
import unittest

HERE = os.path.dirname(os.path.abspath(__file__))
PROGRAM = os.environ.get("DISHTAKE", os.path.join(os.environ.get("B", "build"), "dishtake"))

TALK = """[0:00] Hello everybody, welcome back to the harbour kitchen.
[0:05] Today we're making a tomato soup. You need two tablespoons of olive oil.
[0:12] Chop one large onion and add it to the pot. Add a teaspoon of cumin seeds.
[0:20] Add three cups of tomatoes and stir in some salt. Simmer for twenty minutes.
[0:30] Blend it until smooth. And that's our tomato soup.
[0:40] Next up we're making a rice salad. Boil one cup of rice for twelve minutes.
[0:50] Chop one cucumber and add two tablespoons of lemon juice. Add paprika too.
[0:58] Toss everything together with a teaspoon of salt. And that's our rice salad.
"""
MEDIA = bytes(range(250)) * 4
# On every answer, whatever it is.
ALWAYS = {
    "x-content-type-options": "nosniff",
    "cross-origin-resource-policy": "same-origin",
    "cross-origin-opener-policy": "same-origin",
    "referrer-policy": "no-referrer",
    "x-frame-options": "DENY",
    "cache-control": "no-store",
}


class Review:
    """A running `dishtake review` on a transcript in a folder of its own."""

    def __init__(self, folder=None, name="talk.txt", video=True):
        self.folder = folder or tempfile.mkdtemp(prefix="dishtake-review-")
        self.transcript = os.path.join(self.folder, name)
        self.edits = os.path.join(self.folder, "talk.edits.json")
        if not os.path.exists(self.transcript):
            with open(self.transcript, "w", encoding="utf-8") as file:
                file.write(TALK)
        command = [PROGRAM, "review", "--no-open", self.transcript]
        if video:
            media = os.path.join(self.folder, "talk.webm")
            with open(media, "wb") as file:
                file.write(MEDIA)
            command += ["--video", media]
        self.process = subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.PIPE)
        self.begin()

    def begin(self):
        for line in self.process.stdout:
            found = re.search(rb"http://127\.0\.0\.1:(\d+)/#([0-9a-f]{32})", line)
            if found:
                self.port, self.key = int(found[1]), found[2].decode()
                break
        else:
            raise RuntimeError(self.process.stderr.read().decode())
        page = self.get("/api/recipes")
        self.media = (page["media"] or "").removeprefix("/media/")

    def end(self, how=signal.SIGINT):
        self.process.send_signal(how)
        status = self.process.wait(10)
        self.process.stdout.close()
        self.process.stderr.close()
        return status

    def send(self, raw, timeout=20):
        """Status, headers in lower case, body. Raw bytes in."""
        with socket.create_connection(("127.0.0.1", self.port), timeout) as s:
            s.sendall(raw)
            return receive(s, raw.startswith(b"HEAD "))

    def ask(self, method, target, body=None, extra=()):
        lines = [f"{method} {target} HTTP/1.1", f"Host: 127.0.0.1:{self.port}", f"Dishtake-Key: {self.key}", *extra]
        data = b"" if body is None else json.dumps(body).encode()
        if body is not None:
            lines += [f"Origin: http://127.0.0.1:{self.port}", "Content-Type: application/json",
                      f"Content-Length: {len(data)}"]
        return self.send("\r\n".join([*lines, "Connection: close", "", ""]).encode() + data)

    def get(self, target):
        status, _, body = self.ask("GET", target)
        assert status == 200, (target, status, body)
        return json.loads(body)

    def edit(self, edit, revision=None):
        revision = revision or self.get("/api/news")["revision"]
        status, _, body = self.ask("POST", "/api/edit", {"revision": revision, "edit": edit})
        return status, json.loads(body)


def receive(s, is_head=False):
    data = b""
    try:
        while b"\r\n\r\n" not in data:
            more = s.recv(65536)
            if not more:
                break
            data += more
        head, _, body = data.partition(b"\r\n\r\n")
        lines = head.decode("latin-1").split("\r\n")
        headers = {k.lower(): v.strip() for k, _, v in (line.partition(":") for line in lines[1:])}
        wanted = 0 if is_head else int(headers.get("content-length", 0))
        while len(body) < wanted:
            more = s.recv(65536)
            if not more:
                break
            body += more
    except ConnectionResetError:
        return 0, {}, b""
    if not lines[0]:
        return 0, {}, b""
    return int(lines[0].split()[1]), headers, body


def read_rows():
    with open(os.path.join(HERE, "requests.tsv"), encoding="utf-8") as file:
        rows = [line.rstrip("\n").split("\t") for line in file if not line.startswith("#")]
    return [dict(zip(rows[0], row)) for row in rows[1:]]


class Table(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.review = Review()

    @classmethod
    def tearDownClass(cls):
        assert cls.review.end() == 0

    def fill(self, text):
        known = {"{PORT}": str(self.review.port), "{KEY}": self.review.key, "{MEDIA}": self.review.media,
                 "{REV}": self.review.get("/api/news")["revision"], "{LONG}": "a" * 8000, "{NUL}": "\0", "{EMPTY}": "",
                 "{RANGES}": "bytes=" + ",".join(f"{i}-{i}" for i in range(1000))}
        for name, value in known.items():
            text = text.replace(name, value)
        return text

    def raw(self, row):
        headers = [] if row["headers"] == "-" else [self.fill(h) for h in row["headers"].split(" | ")]
        body = b"" if row["body"] == "-" else self.fill(row["body"]).encode()
        if row["body"] != "-" and not any(h.lower().startswith(("content-length", "transfer-enc")) for h in headers):
            headers.append(f"Content-Length: {len(body)}")
        head = [f"{row['method']} {self.fill(row['target'])} HTTP/1.1", *headers, "Connection: close", "", ""]
        return "\r\n".join(head).encode() + body

    def check(self, row):
        before = os.path.exists(self.review.edits)
        status, headers, body = self.review.send(self.raw(row))
        # What libmicrohttpd itself refuses before it asks us is closed or answered by it: nothing comes out either way.
        ours = status in (0, 400, 501, 505) and int(row["status"]) == 400
        if status != int(row["status"]) and not ours:
            return f"{status} instead of {row['status']}"
        if "content-security-policy" in headers or status not in (0, 400, 413):
            for name, value in ALWAYS.items():
                if headers.get(name) != value:
                    return f"{name}: {headers.get(name)}"
            if "default-src 'none'" not in headers.get("content-security-policy", ""):
                return "no policy"
        if "access-control-allow-origin" in headers or "set-cookie" in headers:
            return "a header that is never sent"
        if status >= 400 and (b"olive" in body or MEDIA[:20] in body or self.review.key.encode() in body):
            return "the answer leaks"
        if status == 403 and row["what"].startswith("Host") and body:
            return "a body for another host"
        return "it was written" if before != os.path.exists(self.review.edits) else None

    def test_every_row(self):
        wrong = []
        rows = read_rows()
        for row in rows:
            with self.subTest(row["what"]):
                problem = self.check(row)
                if problem:
                    wrong.append(f"{row['method']} {row['target'][:60]} ({row['what']}; {row['headers'][:150]}): {problem}")
        self.assertEqual(wrong, [])
        self.assertGreaterEqual(len(rows), 120)
        print(f"figure: {len(rows)} requests, each answered as it should be")

    def test_parts_are_the_right_bytes(self):
        for text, part in [("0-0", MEDIA[:1]), ("10-19", MEDIA[10:20]), ("990-", MEDIA[990:]), ("-7", MEDIA[-7:]),
                           ("0-99999", MEDIA)]:
            status, headers, body = self.review.ask("GET", "/media/" + self.review.media, extra=[f"Range: bytes={text}"])
            self.assertEqual((status, body), (206, part))
            self.assertRegex(headers["content-range"], r"^bytes \d+-\d+/1000$")

    def test_chunks(self):
        r = self.review
        head = (f"POST /api/card HTTP/1.1\r\nHost: 127.0.0.1:{r.port}\r\nDishtake-Key: {r.key}\r\nConnection: close\r\n"
                f"Origin: http://127.0.0.1:{r.port}\r\nContent-Type: application/json\r\nTransfer-Encoding: chunked\r\n\r\n")
        fine = head + "5\r\n{\"dis\r\n5\r\nh\":1}\r\n0\r\n\r\n"
        self.assertEqual(r.send(fine.encode())[0], 200)
        large = head + "".join(f"{4096:x}\r\n{'x' * 4096}\r\n" for _ in range(17)) + "0\r\n\r\n"
        self.assertEqual(r.send(large.encode())[0], 413)

    def test_publishing(self):
        """Everything in a folder beside the transcript; twice; and not over what somebody else put there."""
        folder = os.path.join(self.review.folder, "talk-published")
        for _ in range(2):
            status, _, body = self.review.ask("POST", "/api/publish", {})
            self.assertEqual((status, json.loads(body)), (200, {"said": "Published in " + folder}))
        for name in os.listdir(folder):
            self.assertGreater(os.path.getsize(os.path.join(folder, name)), 0, name)
        self.assertIn("01-tomato-soup.html", os.listdir(folder))
        with open(os.path.join(folder, "mine.txt"), "w") as file:
            file.write("mine")
        status, _, body = self.review.ask("POST", "/api/publish", {})
        self.assertEqual(status, 500)
        self.assertIn("mine.txt", json.loads(body)["error"])
        self.assertTrue(os.path.exists(os.path.join(folder, "mine.txt")))

    def test_publishing_what_is_unsafe(self):
        unsafe = """[0:05] Today we're making roast chicken. You need two pounds of chicken thighs and a teaspoon of salt.
[0:12] Rub the chicken with the salt. Roast the chicken at 400 degrees for forty minutes.
[0:30] Take it out when the inside reads 130 degrees on the thermometer.
[0:40] And that's our roast chicken.
"""
        folder = tempfile.mkdtemp(prefix="dishtake-review-")
        with open(os.path.join(folder, "talk.txt"), "w", encoding="utf-8") as file:
            file.write(unsafe)
        review = Review(folder)
        status, _, body = review.ask("POST", "/api/publish", {})
        review.end()
        self.assertEqual(status, 409)
        self.assertIn("unsafe as heard", json.loads(body)["error"])
        self.assertFalse(os.path.exists(os.path.join(folder, "talk-published")))

    def test_wrong_secrets_tell_nothing(self):
        """Ten thousand wrong secrets on a few connections that stay open."""
        r = self.review
        for first in range(0, 10000, 500):
            with socket.create_connection(("127.0.0.1", r.port), 20) as s:
                s.settimeout(20)
                raw = (f"GET /api/recipes HTTP/1.1\r\nHost: 127.0.0.1:{r.port}\r\nDishtake-Key: {first:032x}\r\n\r\n").encode()
                s.sendall(raw)
                self.assertEqual(receive(s)[0], 403)

    def test_slow_clients_hold_nobody_up(self):
        idle = [socket.create_connection(("127.0.0.1", self.review.port), 5) for _ in range(200)]
        for s in idle[:50]:
            s.sendall(b"GET / HT")
        begin = time.monotonic()
        self.review.get("/api/recipes")
        self.assertLess(time.monotonic() - begin, 10)  # an idle connection is closed after 20
        for s in idle:
            s.close()

    def test_a_thousand_at_once(self):
        def one(i):
            target = ["/api/news", "/api/recipes", "/main.js", "/media/" + self.review.media][i % 4]
            return self.review.ask("GET", target)[0]
        with concurrent.futures.ThreadPoolExecutor(64) as pool:
            answers = list(pool.map(one, range(1000)))
        self.assertEqual(set(answers), {200})

    def test_a_thousand_open_at_once(self):
        resource.setrlimit(resource.RLIMIT_NOFILE, (min(4096, resource.getrlimit(resource.RLIMIT_NOFILE)[1]),) * 2)
        raw = (f"GET /api/news HTTP/1.1\r\nHost: 127.0.0.1:{self.review.port}\r\nDishtake-Key: {self.review.key}\r\n"
               "Connection: close\r\n\r\n").encode()
        sockets = [socket.create_connection(("127.0.0.1", self.review.port), 20) for _ in range(1000)]
        for s in sockets:
            s.sendall(raw)
        self.assertEqual({receive(s)[0] for s in sockets}, {200})
        for s in sockets:
            s.close()

    def test_only_this_machine_is_listened_to(self):
        with open("/proc/net/tcp", encoding="ascii") as file:
            at = [line.split()[1] for line in file if line.split()[1].endswith(f":{self.review.port:04X}")
                  and line.split()[3] == "0A"]
        self.assertEqual(at, [f"0100007F:{self.review.port:04X}"])

    def test_the_secret_is_on_no_command_line(self):
        with open(f"/proc/{self.review.process.pid}/cmdline", "rb") as file:
            self.assertNotIn(self.review.key.encode(), file.read())


class Edits(unittest.TestCase):
    def setUp(self):
        self.review = Review()

    def tearDown(self):
        if self.review.process.poll() is None:
            self.review.end()

    def dish(self, i=0):
        return self.review.get("/api/recipes")["page"]["dishes"][i]

    def title(self, title):
        return {"kind": "dish-set", "on": self.dish()["id"], "field": "title", "value": title}

    def saved(self):
        with open(self.review.edits, encoding="utf-8") as file:
            return json.load(file)["edits"]

    def test_saved_before_it_is_said(self):
        status, answer = self.review.edit(self.title("Soup of the harbour"))
        self.assertEqual(status, 200)
        self.assertEqual(self.saved()[0]["value"], "Soup of the harbour")
        self.assertEqual(answer["page"]["dishes"][0]["title"], "Soup of the harbour")

    def test_only_what_changed_is_sent(self):
        before = self.review.get("/api/recipes")["page"]
        answer = self.review.edit(self.title("Soup of the harbour"))[1]["page"]
        self.assertIsInstance(answer["dishes"][0], dict)
        self.assertEqual(answer["dishes"][1:], list(range(1, len(before["dishes"]))))
        told = {name: [before[name][part] if isinstance(part, int) else part for part in answer[name]] for name in ("edits", "dishes", "findings")}
        self.assertEqual(dict(answer, **told), {key: value for key, value in self.review.get("/api/recipes")["page"].items()})

    def test_who_shows_something_else_gets_all(self):
        old = self.review.get("/api/news")["revision"]
        edit = dict(self.title("One"), key="abc-2")
        self.review.edit(edit, old)
        again = self.review.edit(edit, old)[1]["page"]  # the first answer was lost on the way
        self.assertTrue(all(isinstance(dish, dict) for dish in again["dishes"]))

    def test_stale_pages_are_told(self):
        old = self.review.get("/api/news")["revision"]
        self.assertEqual(self.review.edit(self.title("One"), old)[0], 200)
        self.assertEqual(self.review.edit(self.title("Two"), old)[0], 409)
        self.assertEqual(len(self.saved()), 1)

    def test_an_edit_is_not_done_twice(self):
        old = self.review.get("/api/news")["revision"]
        edit = dict(self.title("One"), key="abc-1")
        self.assertEqual(self.review.edit(edit, old)[0], 200)
        self.assertEqual(self.review.edit(edit, old)[0], 200)
        self.assertEqual(len(self.saved()), 1)

    def test_undo_after_a_restart(self):
        first = self.dish()["title"]
        self.review.edit(self.title("One"))
        self.review.end()
        self.review = Review(self.review.folder)
        self.assertEqual(self.dish()["title"], "One")
        self.assertEqual(self.review.edit({"kind": "undo"})[0], 200)
        self.assertEqual(self.dish()["title"], first)
        self.assertEqual([e["kind"] for e in self.saved()], ["dish-set", "undo"])

    def test_the_file_is_as_its_schema_says(self):
        import jsonschema
        with open(os.path.join(HERE, "..", "..", "docs", "schema", "edits.schema.json"), encoding="utf-8") as file:
            check = jsonschema.Draft202012Validator(json.load(file))
        lines = self.dish(1)["lines"]
        word = [next(x["words"][0] for x in lines if x["food"] == "paprika")] * 2
        for edit in (self.title("One"), {"kind": "word", "on": word, "value": "rye", "everywhere": True},
                     {"kind": "line-set", "on": lines[1]["id"], "field": "amount", "value": {"min": "1 1/2", "max": None}},
                     {"kind": "line-add", "on": self.dish(1)["id"], "to": lines[1]["id"], "value": {"food": "dill"}},
                     {"kind": "finding", "finding": 0, "value": "accepted", "reason": "so"},
                     {"kind": "dish-border", "on": self.dish(1)["id"], "field": "start", "to": word}, {"kind": "undo"},
                     {"kind": "redo"}):
            status, answer = self.review.edit(edit)
            self.assertEqual(status, 200, (edit, answer.get("error")))
        with open(self.review.edits, encoding="utf-8") as file:
            saved = json.load(file)
        check.validate(saved)
        del saved["edits"][1]["on"]["said"]
        self.assertFalse(check.is_valid(saved))

    def test_what_has_no_place_is_not_saved(self):
        lines = self.dish(1)["lines"]
        rice = next(x["id"] for x in lines if x["food"] == "rice")
        salt = next(x["id"] for x in lines if x["food"] == "salt")
        status, answer = self.review.edit({"kind": "line-join", "on": rice, "to": salt})
        self.assertEqual(status, 422)
        self.assertIn("cannot be added", answer["error"])
        self.assertFalse(os.path.exists(self.review.edits))

    def test_many_writers_lose_nothing(self):
        """Two programs on one file, two tabs each, a hundred edits: all are there, each once."""
        other = Review(self.review.folder)

        def write(i):
            review = [self.review, other][i % 2]
            edit = {"kind": "dish-set", "on": "d8", "field": "title", "value": f"Title {i}", "key": f"k{i}"}
            for _ in range(500):
                if review.edit(edit)[0] == 200:
                    return True
            return False
        with concurrent.futures.ThreadPoolExecutor(4) as pool:
            done = list(pool.map(write, range(100)))
        other.end()
        self.assertTrue(all(done))
        self.assertEqual(sorted(e["key"] for e in self.saved()), sorted(f"k{i}" for i in range(100)))

    def killed_while_editing(self, turn, acknowledged):
        """Edits until the program is killed: `turn` edits are acknowledged first, then it lives for a part of the time that the
        last of them took, so that a slow machine sees the same moments."""
        review = Review(self.review.folder, video=False)
        pool = concurrent.futures.ThreadPoolExecutor(1)
        kill = None
        try:
            for i in range(1000):
                begin = time.monotonic()
                key = f"{turn}-{i}"
                if review.edit({"kind": "dish-set", "on": "d8", "field": "title", "value": key, "key": key})[0] == 200:
                    acknowledged.append(key)
                if i == turn:
                    lives = (time.monotonic() - begin) * (0.37 * turn % 1.5)
                    kill = pool.submit(lambda: (time.sleep(lives), review.process.kill()))
        except (OSError, AssertionError, ValueError):
            pass
        kill.result()
        review.process.wait()
        review.process.stdout.close()
        review.process.stderr.close()

    def test_killed_in_a_loop(self):
        """Killed at any moment while edits come in: what was acknowledged is in the file."""
        self.review.end()
        acknowledged = []
        for turn in range(12):
            self.killed_while_editing(turn, acknowledged)
        keys = [e["key"] for e in self.saved()]
        self.assertEqual([k for k in acknowledged if k not in keys], [])
        self.assertEqual(len(keys), len(set(keys)))
        self.assertGreaterEqual(len(acknowledged), sum(turn + 1 for turn in range(12)))
        print(f"figure: killed 12 times in {len(acknowledged)} acknowledged edits, none lost")
        self.review = Review(self.review.folder)
        self.assertEqual([n for n in os.listdir(self.review.folder) if n.startswith(".")], [])

    def test_a_file_written_over_by_another_hand(self):
        self.review.edit(self.title("Mine"))
        with open(self.review.edits, "w", encoding="utf-8") as file:
            file.write('{"format":"dishtake edits 1","edits":[]}')
        self.review.get("/api/news")
        with open(self.review.edits + ".kept", encoding="utf-8") as file:
            self.assertEqual(json.load(file)["edits"][0]["value"], "Mine")
        self.assertEqual(self.review.edit(self.title("Next"))[0], 200)

    def test_a_broken_file_is_not_written_over(self):
        self.review.edit(self.title("Mine"))
        with open(self.review.edits, "w", encoding="utf-8") as file:
            file.write("{ broken")
        self.assertEqual(self.review.ask("GET", "/api/news")[0], 500)
        status, _, _ = self.review.ask("POST", "/api/edit", {"revision": "x", "edit": {"kind": "undo"}})
        self.assertEqual(status, 500)
        with open(self.review.edits, encoding="utf-8") as file:
            self.assertEqual(file.read(), "{ broken")

    def test_caption_text_is_never_code(self):
        """The bytes go through as JSON; no markup is made of them here."""
        title = "</script><img src=x onerror=alert(1)>\u2028 \" ' & {{x}}"
        status, answer = self.review.edit(self.title(title))
        self.assertEqual((status, answer["page"]["dishes"][0]["title"]), (200, title))

    def test_memory_stays_flat(self):
        def memory():
            with open(f"/proc/{self.review.process.pid}/status", encoding="ascii") as file:
                return int(re.search(r"VmRSS:\s+(\d+)", file.read())[1])

        def files():
            return len(os.listdir(f"/proc/{self.review.process.pid}/fd"))

        def some(n):
            for _ in range(n):
                for target in ("/api/news", "/api/recipes", "/style.css", "/media/" + self.review.media):
                    self.review.ask("GET", target)
        some(50)
        before, open_before = memory(), files()
        some(500)
        after = memory()
        print(f"figure: {after // 1024} MB after 2,000 requests, {before // 1024} MB before")
        self.assertLess(after, before * 1.05)
        self.assertLessEqual(files(), open_before + 2)


class Command(unittest.TestCase):
    def run_review(self, *arguments):
        return subprocess.run([PROGRAM, "review", *arguments], capture_output=True, timeout=20, check=False)

    def test_wrong_usage(self):
        with tempfile.TemporaryDirectory() as folder:
            talk = os.path.join(folder, "talk.txt")
            with open(talk, "w", encoding="utf-8") as file:
                file.write(TALK)
            self.assertEqual(self.run_review("-").returncode, 2)
            self.assertEqual(self.run_review("--port", "70000", talk).returncode, 2)
            self.assertEqual(self.run_review("--port", "x", talk).returncode, 2)
            self.assertEqual(self.run_review(os.path.join(folder, "none.srt")).returncode, 3)
            self.assertEqual(self.run_review("--video", os.path.join(folder, "none.mp4"), talk).returncode, 3)
            self.assertEqual(self.run_review("--video", talk, talk).returncode, 3)
            with open(os.path.join(folder, "talk.edits.json"), "w", encoding="utf-8") as file:
                file.write("{")
            bad = self.run_review("--no-open", talk)
            self.assertEqual(bad.returncode, 3)
            self.assertIn(b"talk.edits.json", bad.stderr)


if __name__ == "__main__":
    unittest.main()
