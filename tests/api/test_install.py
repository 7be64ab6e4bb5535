#!/usr/bin/env python3
"""What `make install` puts where: a program of another C and C++ project builds with the public header and pkg-config, runs
with the shared library, and uninstall leaves no file.
SPDX-License-Identifier: MIT
"""
import os
import re
import shutil
import subprocess
import tempfile
import unittest

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
BUILD = os.environ.get("B", "build")

PROGRAM = r"""
#include <dishtake.h>
#include <stdio.h>
#include <string.h>

int main(void)
{
    static const char talk[] = "0:01 Mix two cups of flour with a cup of milk.\n0:09 Bake for an hour.\n";
    struct dishtake *d = dishtake_new(NULL, 0);
    size_t length = 0;
    const char *out = NULL;
    if (d && dishtake_read(d, talk, strlen(talk), "talk", NULL) == DISHTAKE_DONE)
        out = dishtake_write(d, "recipes", "json", NULL, &length);
    puts(out ? dishtake_version() : "nothing");
    dishtake_free(d);
    return !out;
}
"""


def call(*command, **more):
    return subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False, stdin=subprocess.DEVNULL, **more)


class Install(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.mkdtemp()
        self.addCleanup(shutil.rmtree, self.folder)
        self.prefix = os.path.join(self.folder, "opt")

    def make(self, target):
        env = {name: value for name, value in os.environ.items() if not name.startswith(("MAKE", "MFLAGS"))}
        done = call("make", "--no-print-directory", f"B={BUILD}", f"PREFIX={self.prefix}", target, env=env)
        self.assertEqual(done.returncode, 0, done.stdout + done.stderr)

    def installed(self):
        return sorted(os.path.relpath(os.path.join(folder, name), self.prefix)
                      for folder, _, names in os.walk(self.prefix) for name in names)

    def test_another_project_builds_on_it(self):
        self.make("install")
        self.assertEqual(self.installed(), ["bin/dishtake", "include/dishtake.h", "lib/libdishtake.a", "lib/libdishtake.so",
                                            "lib/libdishtake.so.0", "lib/pkgconfig/dishtake.pc",
                                            "share/bash-completion/completions/dishtake",
                                            "share/fish/vendor_completions.d/dishtake.fish", "share/man/man1/dishtake.1",
                                            "share/zsh/site-functions/_dishtake"])
        env = dict(os.environ, PKG_CONFIG_PATH=os.path.join(self.prefix, "lib/pkgconfig"),
                   LD_LIBRARY_PATH=os.path.join(self.prefix, "lib"))
        flags = call("pkg-config", "--cflags", "--libs", "dishtake", env=env).stdout.split()
        self.assertIn("-ldishtake", flags)
        for compiler, ending in (("cc", "c"), ("g++", "cc")):
            source, program = os.path.join(self.folder, "use." + ending), os.path.join(self.folder, "use")
            with open(source, "w", encoding="utf-8") as file:
                file.write(PROGRAM)
            built = call(compiler, "-Wall", "-Wextra", "-Werror", "-o", program, source, *flags)
            self.assertEqual(built.returncode, 0, built.stderr)
            ran = call(program, env=env)
            self.assertRegex(ran.stdout, r"^\d+\.\d+\.\d+\n$", ran.stderr)
        self.make("uninstall")
        self.assertEqual(self.installed(), [])

    def test_the_shared_library_shows_its_door_and_no_more(self):
        library = os.path.join(ROOT, BUILD, "libdishtake.so")
        shown = re.findall(r" [TDBRV] (\S+)", call("nm", "-D", "--defined-only", library).stdout)
        with open(os.path.join(ROOT, "include/dishtake.h"), encoding="utf-8") as file:
            declared = re.findall(r"DISHTAKE_API[^;]*?\b(dishtake_\w+)\(", file.read())
        self.assertEqual(sorted(shown), sorted(declared))
        self.assertIn("libdishtake.so.0", call("readelf", "-d", library).stdout)


if __name__ == "__main__":
    unittest.main()
