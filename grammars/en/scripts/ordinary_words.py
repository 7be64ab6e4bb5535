#!/usr/bin/env python3
"""Writes ordinary-words.tsv: words of plain English that neither the lexicons nor pronunciations.tsv have, so that "youngest" is
not taken for the foreign name of a dish, as "karaage" is.

  ordinary_words.py FILE        FILE has a word a line: /usr/share/dict/american-english-small of Debian's package wamerican-small

Its licence: ../LICENSES/scowl.txt. Run it again after pronunciations.py.
SPDX-License-Identifier: MIT
"""
import os
import sys

sys.dont_write_bytecode = True
from lexicon import PACK  # noqa: E402
from pronunciations import lexicon_words, ordinary_words  # noqa: E402


def sounding_words():
    with open(os.path.join(PACK, "pronunciations.tsv"), encoding="utf-8") as file:
        return {line.split("\t")[0] for line in file if not line.startswith("#")}


def main():
    words = {word for word in ordinary_words(sys.argv[1]) if "'" not in word and len(word) > 1}
    rows = sorted(words - sounding_words() - lexicon_words())
    with open(os.path.join(PACK, "ordinary-words.tsv"), "w", encoding="utf-8") as file:
        file.write("# Made by scripts/ordinary_words.py from a word list of SCOWL (LICENSES/scowl.txt).\nword\n")
        file.writelines(word + "\n" for word in rows)
    print(f"{len(rows)} words")


if __name__ == "__main__":
    main()
