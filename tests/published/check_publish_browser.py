#!/usr/bin/env python3
"""A published folder in Debian's Chromium, and its structured data by schema.org's types: published.mjs.
Screenshots and PDFs stay in B/published/shots. Without Chromium, Node, npm or pdfinfo it says so and counts as skipped.

SPDX-License-Identifier: MIT
"""
import os
import subprocess
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path.append(os.path.join(os.path.dirname(HERE), "tools"))
import browser  # pylint: disable=wrong-import-position

WORK = os.path.join(browser.BUILD, "published")
OUT, SHOTS = os.path.join(WORK, "out"), os.path.join(WORK, "shots")


def main():
    if not browser.is_ready("pdfinfo"):
        return 0
    os.makedirs(SHOTS, exist_ok=True)
    subprocess.run([browser.PROGRAM, "publish", "-q", "--despite-findings", "--units", "both", "--video-url",
                    "https://video.example/watch?t={seconds}", "-o", OUT, browser.SAMPLE], check=True, timeout=60)
    return browser.run(os.path.join(HERE, "published.mjs"), OUT, SHOTS)


if __name__ == "__main__":
    sys.exit(main())
