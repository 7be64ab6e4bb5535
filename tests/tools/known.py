"""For tests that are a table of cases, some of which are known to fail.
SPDX-License-Identifier: MIT
"""


def report(name, cases, least):
    """The exit status of a test: 0 when all cases are as they should be, and there are `least`. A case is (known to fail, what it
    shows, what is wanted, what is given, whether that is right); one that is known to fail must."""
    failed = count = 0
    for known, shows, wanted, given, right in cases:
        count += 1
        if right == known:
            failed += 1
            print(f"{'passes now, unmark it' if known else 'wrong'}: {shows}\n  wanted {wanted}\n  given  {given}")
    print(f"{name}: {count - failed} of {count} as they should be")
    return 1 if failed or count < least else 0
