#!/usr/bin/env python3
"""The review page in Debian's Chromium: page.mjs, with playwright-core and axe-core from npm. Screenshots stay in
B/browser/shots. Without Chromium, Node or npm it says so and counts as skipped.

SPDX-License-Identifier: MIT
"""
import os
import shutil
import subprocess
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path.append(os.path.join(os.path.dirname(HERE), "tools"))
import browser  # pylint: disable=wrong-import-position

SHOTS = os.path.join(browser.WORK, "shots")
VIDEO_SECONDS = 300


def make_video():
    """A test picture and a tone, as small as can be."""
    video = os.path.join(browser.WORK, "talk.webm")
    if not shutil.which("ffmpeg"):
        return "-"
    if not os.path.exists(video):
        subprocess.run(["ffmpeg", "-v", "error", "-y", "-f", "lavfi", "-i", "testsrc=size=320x180:rate=2", "-f", "lavfi",
                        "-i", "sine=frequency=220:sample_rate=8000", "-t", str(VIDEO_SECONDS), "-c:v", "libvpx", "-b:v", "60k",
                        "-deadline", "realtime", "-cpu-used", "8", "-c:a", "libopus", "-b:a", "8k", video], check=True,
                       timeout=240)
    return video


def main():
    if browser.is_missing():
        return 0
    browser.install()
    os.makedirs(SHOTS, exist_ok=True)
    return browser.run(os.path.join(HERE, "page.mjs"), browser.PROGRAM, browser.SAMPLE, make_video(), SHOTS)


if __name__ == "__main__":
    sys.exit(main())
