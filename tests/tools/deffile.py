"""The weights in a .def file: rows MACRO(NAME, weight, ...), and behind the weights what they are of.
SPDX-License-Identifier: MIT
"""
import re


def names_of(path, macro):
    with open(path, encoding="utf-8") as file:
        return re.findall(rf"^{macro}\((\w+),", file.read(), re.M)


def numbers(weights, digits=5):
    """As they stand in a row."""
    return ", ".join(f"{weight + 0.0:{digits}.2f}" for weight in weights)


def filled(text, macro, weights, width, digits=5):
    """The text with the weights of those rows made anew, and all else as it was. `weights`: a tuple by name, all of one length;
    `width`: of the names with their commas."""
    count = len(next(iter(weights.values())))

    def row(match):
        return f"{macro}({match[1] + ',':{width}} {numbers(weights.get(match[1], (0,) * count), digits)},"
    return re.sub(rf"^{macro}\((\w+),(?: *-?[\d.]+,){{{count}}}", row, text, flags=re.M)


def fill(path, macro, weights, width, digits=5):
    with open(path, encoding="utf-8") as file:
        text = filled(file.read(), macro, weights, width, digits)
    with open(path, "w", encoding="utf-8") as file:
        file.write(text)
