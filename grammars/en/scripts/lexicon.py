"""Reads the lexicons of this pack (format: docs/grammar.md), for scripts and checks.
SPDX-License-Identifier: MIT
"""
import os
import unicodedata

PACK = os.path.dirname(os.path.dirname(os.path.abspath(__file__)))


def fold(text):
    plain = unicodedata.normalize("NFKD", text.lower().replace("\u2019", "'"))
    plain = "".join(sign for sign in plain if not unicodedata.combining(sign))
    return " ".join(plain.replace("-", " ").split())


class Row:
    def __init__(self, place, tag, cells, forms, marks):
        words, value, own, others, inflected = cells + [""] * (5 - len(cells))
        self.place, self.tag = place, tag
        self.names = [name.strip() for name in [words, *others.split("|")] if name.strip()]
        self.value = value or words
        self.marks = marks + own.split()
        self.forms = inflected or forms


def read_lexicon(name, problems):
    """The rows of one file; mistakes of format go to `problems`."""
    rows, tag, forms, marks = [], None, "none", []
    with open(os.path.join(PACK, name + ".lex"), encoding="utf-8") as file:
        lines = file.read().split("\n")
    for number, line in enumerate(lines, 1):
        place = "%s.lex:%d" % (name, number)
        if line != line.rstrip() or "\r" in line:
            problems.append("%s: space at the end of the line" % place)
        if not line or line.startswith("#"):
            continue
        if line.startswith("@"):
            key, *rest = line.split()
            if key == "@tag":
                tag = rest[0]
            elif key == "@forms":
                forms = rest[0]
            elif key == "@marks":
                marks = rest
            else:
                problems.append("%s: unknown line %s" % (place, key))
            continue
        cells = line.split("\t")
        if tag is None or len(cells) > 5 or not cells[0]:
            problems.append("%s: no tag, no words or more than five cells" % place)
        else:
            rows.append(Row(place, tag, cells, forms, marks))
    return rows


def read_endings():
    with open(os.path.join(PACK, "forms.tsv"), encoding="utf-8") as file:
        lines = [line.rstrip("\n").split("\t") for line in file if line.strip() and not line.startswith("#")]
    return [(row[0], row[1].split(), int(row[2] or 0), row[3] if len(row) > 3 else "") for row in lines[1:]]


def ending_fits(word, end):
    if end == "*":
        return True
    if end.startswith("CONSONANT+"):
        end = end.split("+")[1]
        return len(word) > len(end) and word.endswith(end) and word[-len(end) - 1] not in "aeiou"
    return word.endswith(end)


def inflect(form, word, endings):
    for name, ends, cut, add in endings:
        if name == form and any(ending_fits(word, end) for end in ends):
            return word[:len(word) - cut] + add
    return word


def forms_of(row, name, endings):
    """Pairs of a form's words and its tag."""
    kind, _, given = row.forms.partition(":")
    words = fold(name).split()
    if kind.startswith("noun"):
        yield " ".join(words[:-1] + [given or inflect("plural", words[-1], endings)]), row.tag
    elif kind.startswith("verb"):
        at = len(words) - 1 if kind.endswith("-last") else 0
        stem = words[at] + (words[at][-1] if "2" in kind else "")
        done = inflect("done", stem, endings)
        made = given.split(",") if given else [inflect("third", words[at], endings),
                                               inflect("doing", stem, endings), done, done]
        for form, tag in zip(made, ("ACTION", "DOING", "DONE", "DONE")):
            yield " ".join(words[:at] + [form] + words[at + 1:]), tag


def known_words(rows, endings):
    """For each folded word or words: the tags, and for each tag the value."""
    known = {}
    for row in rows:
        for name in row.names:
            for words, tag in [(fold(name), row.tag), *forms_of(row, name, endings)]:
                known.setdefault(words, {}).setdefault(tag, row.value)
    return known
