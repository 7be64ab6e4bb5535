#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Turn TTML captions into SubRip, so that the corpus scorer, which reads no TTML, can check their gold.

  ttml_to_srt.py RECORDING.ttml > RECORDING.srt

Only what our own recordings use: paragraphs with clock times and line breaks.
"""
import sys
import xml.etree.ElementTree as tree

SPACE = "{http://www.w3.org/ns/ttml}"


def said(paragraph):
    """The words of a paragraph; a line break in the file is no more than a space, <br/> is a new line."""
    out = paragraph.text or ""
    for child in paragraph:
        out += "\n" if child.tag == SPACE + "br" else said(child)
        out += child.tail or ""
    return out


def main():
    paragraphs = tree.parse(sys.argv[1]).iter(SPACE + "p")
    for number, paragraph in enumerate(paragraphs, 1):
        start, end = (paragraph.get(key).replace(".", ",") for key in ("begin", "end"))
        print(f"{number}\n{start} --> {end}\n{said(paragraph)}\n")


if __name__ == "__main__":
    main()
