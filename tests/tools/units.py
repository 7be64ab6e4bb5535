"""What a tool of tests/tools prints of recordings with gold.
SPDX-License-Identifier: MIT
"""
import re
import subprocess


def lines_of(program, paths):
    """(path of the gold, the lines that the tool prints of its transcript) for each recording. `paths`: golds by transcript."""
    run = subprocess.run([program, *paths], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True, check=True)
    for part in re.split(r"^# ", run.stdout, flags=re.M)[1:]:
        transcript, *lines = part.splitlines()
        yield paths[transcript], lines
