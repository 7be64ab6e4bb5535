"""tests/cli/tool.py: runs the built program for the tests of this folder.
SPDX-License-Identifier: MIT
"""
import os
import subprocess

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
BUILD = os.path.join(ROOT, os.environ.get("B", "build"))
PROGRAM = os.path.join(BUILD, "dishtake")
SANITIZED = os.path.join(BUILD, "san", "dishtake")
SAMPLE = "samples/hilltop-canteen.srt"


class Ended:
    """How a run ended; texts are decoded, since messages are read by people."""

    def __init__(self, done):
        self.status = done.returncode
        self.bytes = done.stdout or b""
        self.out = self.bytes.decode("utf-8", "replace")
        self.err = (done.stderr or b"").decode("utf-8", "replace")


def run(*arguments, stdin=b"", program=PROGRAM, timeout=120, stdout=subprocess.PIPE, env=None):
    done = subprocess.run([program, *arguments], input=stdin, stdout=stdout, stderr=subprocess.PIPE, cwd=ROOT,
                          timeout=timeout, check=False, env=dict(os.environ, **(env or {})))
    return Ended(done)
