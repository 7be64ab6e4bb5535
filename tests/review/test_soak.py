#!/usr/bin/env python3
"""Many requests to the review page's program, two pages in turn, an edit now and then: its memory and its open files stay as
they are. REQUESTS=10000 before a release.

SPDX-License-Identifier: MIT
"""
import os
import sys
import unittest

from test_requests import Review

REQUESTS = int(os.environ.get("REQUESTS", "1000"))
EDIT_EVERY = 100
GROWTH_MOST = 1.05


def memory(pid):
    """KB that are in use, and how many files are open."""
    with open(f"/proc/{pid}/status", encoding="ascii") as file:
        kilobytes = next(int(line.split()[1]) for line in file if line.startswith("VmRSS:"))
    return kilobytes, len(os.listdir(f"/proc/{pid}/fd"))


class Soak(unittest.TestCase):
    def ask_once(self, review, n):
        if n % EDIT_EVERY == 0:
            status, _ = review.edit({"kind": "dish-set", "on": self.dish, "field": "title", "value": f"Soup {n}"} if n // EDIT_EVERY % 2 else {"kind": "undo"})
            self.assertEqual(status, 200)
        elif n % 3 == 0:
            self.assertEqual(review.ask("GET", f"/media/{review.media}", extra=["Range: bytes=10-19"])[0], 206)
        elif n % 3 == 1:
            review.get(("/api/words", "/api/recipes")[n % 2])
        else:
            self.assertEqual(review.send(b"GET /api/recipes HTTP/1.1\r\nHost: elsewhere\r\nConnection: close\r\n\r\n")[0], 403)

    def test_many_requests(self):
        review = Review()
        self.addCleanup(review.end)
        self.dish = review.get("/api/recipes")["page"]["dishes"][0]["id"]
        for n in range(1, REQUESTS // 5):
            self.ask_once(review, n)
        before, files_before = memory(review.process.pid)
        for n in range(REQUESTS // 5, REQUESTS + 1):
            self.ask_once(review, n)
        after, files_after = memory(review.process.pid)
        print(f"figure: {REQUESTS} requests: {before} KB after a fifth of them, {after} KB at the end; {files_before} and {files_after} files open")
        self.assertLessEqual(after, before * GROWTH_MOST)
        self.assertLessEqual(files_after, files_before + 2)


if __name__ == "__main__":
    sys.exit(unittest.main())
