"""Scripts in Debian's Chromium, with what tests/tools/browser/package.json names from npm, installed once into B/browser.

SPDX-License-Identifier: MIT
"""
import filecmp
import os
import shutil
import subprocess

HERE = os.path.dirname(os.path.abspath(__file__))
BUILD = os.path.abspath(os.environ.get("B", "build"))
WORK = os.path.join(BUILD, "browser")
PROGRAM = os.environ.get("DISHTAKE", os.path.join(BUILD, "dishtake"))
SAMPLE = os.path.join(os.path.dirname(os.path.dirname(HERE)), "samples", "hilltop-canteen.srt")


def chromium():
    return os.environ.get("CHROMIUM") or shutil.which("chromium")


def is_missing(*tools):
    """Says what the machine lacks; then the test counts as skipped."""
    missing = [tool for tool in ("node", "npm", *tools) if not shutil.which(tool)]
    if missing or not chromium():
        print(f"no {', '.join(missing) or 'chromium'} here\n0 passed, 0 failed, 1 skipped")
        return True
    return False


def install():
    """As the lock file says; again only after that file changed."""
    os.makedirs(WORK, exist_ok=True)
    lock, kept = (os.path.join(folder, "package-lock.json") for folder in (os.path.join(HERE, "browser"), WORK))
    is_new = not os.path.exists(kept) or not filecmp.cmp(lock, kept, shallow=False)
    for name in ("package.json", "package-lock.json", ".npmrc"):
        shutil.copy(os.path.join(HERE, "browser", name), WORK)
    if is_new or not os.path.exists(os.path.join(WORK, "node_modules", ".package-lock.json")):
        subprocess.run(["npm", "ci", "--ignore-scripts", "--silent"], cwd=WORK, check=True, timeout=240)


def is_ready(*tools):
    """Installs what a browser's test needs; says why where that cannot be had, and the test counts as skipped."""
    if is_missing(*tools):
        return False
    try:
        install()
    except (subprocess.SubprocessError, OSError) as error:
        print(f"the packages cannot be had from npm: {error}\n0 passed, 0 failed, 1 skipped")
        return False
    return True


def start(script, *arguments, **options):
    """A script, which finds its packages because it runs as a copy in B/browser."""
    copy = shutil.copy(script, WORK)
    return subprocess.run(["node", copy, *arguments], cwd=WORK, env=dict(os.environ, CHROMIUM=chromium()), timeout=1100, **options)


def run(script, *arguments):
    """The script's exit status."""
    return start(script, *arguments, check=False).returncode


def output(script, *arguments):
    """What the script prints."""
    return start(script, *arguments, check=True, stdout=subprocess.PIPE, text=True).stdout
