#!/usr/bin/env python3
"""Whether what comes of every recording and of every utterance of tests/spec is what it was: tests/whole/same.tsv has a
digest of each recording and of each file of utterances. The figures have room for noise and the saved bytes are of twenty
recordings; this notices a change anywhere, one that was not meant as well as one that was. ACCEPT=1 writes the digests anew.
SPDX-License-Identifier: MIT
"""
import glob
import hashlib
import json
import os
import subprocess
import sys
import unittest

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
sys.path.append(os.path.join(ROOT, "tests/tools"))
import loader  # noqa: E402

PROGRAM = os.path.join(ROOT, os.environ.get("B", "build"), "dishtake")
SAVED = os.path.join(ROOT, "tests/whole/same.tsv")
SETS = ["samples", "tests/corpus", "tests/recordings", "tests/recordings/*"]
SHOWN = 10  # so many of those that differ
HELD_OUT = "tests/recordings/unseen/"  # changes with each round, so that nothing of it is kept


def digest(text):
    return hashlib.sha256(text.encode()).hexdigest()[:12]


def recordings():
    """(path, digest) of each."""
    golds = sorted(path for folder in SETS for path in glob.glob(f"{folder}/*.gold.json", root_dir=ROOT) if not path.startswith(HELD_OUT))
    paths = sorted(glob.glob("samples/*.srt", root_dir=ROOT))
    for gold in golds:
        begin = gold.removesuffix("gold.json")
        paths += [path for path in glob.glob(begin + "*", root_dir=ROOT) if path != gold]
    done = subprocess.run([PROGRAM, "extract", *paths], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, cwd=ROOT, check=False)
    lines = done.stdout.decode().splitlines()
    assert len(lines) == len(paths), f"{len(lines)} lines for {len(paths)} recordings"
    for path, line in zip(paths, lines):
        yield path, digest(line)


def utterances():
    """(path, digest of all that comes of its utterances) of each file."""
    run_spec = loader.load(os.path.join(ROOT, "tests/spec/run_spec"))
    for path in sorted(glob.glob("tests/spec/*.spec", root_dir=ROOT)):
        cases = run_spec.read_spec(os.path.join(ROOT, path), [])
        documents = list(run_spec.run(PROGRAM, cases))
        for document in documents:
            if document:
                document["recording"]["file"] = ""
        yield path, digest(json.dumps(documents))


def read_saved():
    with open(SAVED, encoding="utf-8") as file:
        return dict(line.rstrip("\n").split("\t") for line in file if not line.startswith("#"))


def save(digests):
    with open(SAVED, "w", encoding="utf-8") as file:
        file.write("# tests/whole/test_same.py: a recording or a file of utterances, and what comes of it. SPDX-License-Identifier: MIT\n")
        file.writelines(f"{key}\t{value}\n" for key, value in sorted(digests.items()))


class Same(unittest.TestCase):
    def test_what_comes_of_all_is_the_same(self):
        found = dict([*recordings(), *utterances()])
        if os.environ.get("ACCEPT"):
            save(found)
        saved = read_saved()
        self.assertEqual(found.keys(), saved.keys(), "ACCEPT=1 writes tests/whole/same.tsv anew, as does `make accept`")
        differ = [path for path, value in found.items() if saved[path] != value]
        print(f"figure: of {len(found) - len(differ)} of {len(found)} recordings and files of utterances the same comes as before")
        self.assertFalse(differ[:SHOWN], f"something else comes of {len(differ)}; ACCEPT=1 writes tests/whole/same.tsv anew, as does `make accept`")


if __name__ == "__main__":
    unittest.main()
