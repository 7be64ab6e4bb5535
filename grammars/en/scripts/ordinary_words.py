#!/usr/bin/env python3
"""Writes ordinary-words.tsv and rare-words.tsv: words of plain English that neither the lexicons nor pronunciations.tsv have, so that "youngest" is
not taken for the foreign name of a dish, as "karaage" is; and names.tsv: people and places, which the lists have with a capital only.

  ordinary_words.py FILE MORE ...    a word a line: /usr/share/dict/american-english-small, and american-english, british-english of
                                     Debian's packages wamerican-small, wamerican, wbritish; the first has the common words

Their licence: ../LICENSES/scowl.txt. What they lack is in ordinary-words-hand.txt. Run it again after pronunciations.py.
SPDX-License-Identifier: MIT
"""
import os
import re
import sys

sys.dont_write_bytecode = True
from lexicon import PACK, fold  # noqa: E402
from pronunciations import lexicon_words  # noqa: E402

HAND = os.path.join(os.path.dirname(os.path.abspath(__file__)), "ordinary-words-hand.txt")
WORD = re.compile(r"[^\W\d_]{2,}")


def sounding_words():
    with open(os.path.join(PACK, "pronunciations.tsv"), encoding="utf-8") as file:
        return {line.split("\t")[0] for line in file if not line.startswith("#")}


def listed_words(paths):
    """(words, names): a name is a word that no list has without a capital."""
    found = set()
    for path in paths:
        with open(path, encoding="utf-8") as file:
            found.update(word for word in (line.strip() for line in file) if WORD.fullmatch(word))
    words = {word for word in found if word == word.lower()}
    return {fold(word) for word in words}, {fold(word) for word in found - words}


def hand_words():
    with open(HAND, encoding="utf-8") as file:
        text = "".join(line for line in file if not line.startswith("#"))
    words, names = ({fold(word) for word in WORD.findall(part)} for part in text.split("\nnames\n"))
    return words, names


def write(name, words):
    with open(os.path.join(PACK, name + ".tsv"), "w", encoding="utf-8") as file:
        file.write("# Made by scripts/ordinary_words.py from word lists of SCOWL (LICENSES/scowl.txt) and ordinary-words-hand.txt.\n"
                   "word\n")
        file.writelines(f"{word}\n" for word in sorted(words))
    print(f"{len(words)} {name}")


def main():
    common, _ = listed_words(sys.argv[1:2])
    words, names = listed_words(sys.argv[1:])
    more, people = hand_words()
    known = sounding_words() | lexicon_words()
    common -= known
    rare = (words | more) - known - common
    write("ordinary-words", common)
    write("rare-words", rare)
    write("names", (names | people) - known - common - rare)


if __name__ == "__main__":
    main()
