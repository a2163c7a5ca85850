# SPDX-License-Identifier: MIT
"""Runs functions named case_* of a module and prints their outcome as TAP."""

import sys
import traceback


def run(cases):
    """cases: (name, function) pairs; a function fails by raising AssertionError."""
    print(f"1..{len(cases)}")
    failed = 0
    for number, (name, function) in enumerate(cases, 1):
        try:
            reason = function()
        except Exception as error:  # a crash of one case must not hide the others
            failed += 1
            print(f"not ok {number} {name}")
            text = str(error) or traceback.format_exc()
            for line in text.splitlines():
                print(f"# {line}")
        else:
            print(f"ok {number} {name}" + (f" # SKIP {reason}" if reason else ""))
        sys.stdout.flush()
    return 1 if failed else 0
