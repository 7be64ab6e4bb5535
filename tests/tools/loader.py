"""Loads a Python program of tests/ that has no .py ending (tests/corpus/score, tests/spec/run_spec), so that an ordinary import does
not find it.
SPDX-License-Identifier: MIT
"""
import importlib.machinery
import importlib.util
import os
import sys


def load(path):
    """The program at `path` as a module; nothing is written beside it."""
    name = os.path.basename(path)
    sys.dont_write_bytecode = True
    source = importlib.machinery.SourceFileLoader(name, path)
    module = importlib.util.module_from_spec(importlib.util.spec_from_loader(name, source))
    source.exec_module(module)
    return module
