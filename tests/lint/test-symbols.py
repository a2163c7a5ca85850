# SPDX-License-Identifier: MIT
"""No name is defined twice: static libraries would silently take the first one linked.

Arguments: the rooms' static libraries.
"""

import re
import subprocess
import sys

import tap

LIBRARIES = sys.argv[1:]


def defined():
    """Global names of code and data, with the objects that define them."""
    places = {}
    text = subprocess.run(["nm", "--defined-only", "--extern-only", "--print-file-name",
                           *LIBRARIES], capture_output=True, text=True, check=True).stdout
    for line in text.splitlines():
        # .../libsw-base.a:.../count.c.o:0000000000000820 T sw_count_up
        match = re.match(r".*/([^/]+\.a):.*?([^/:]+):[0-9a-f]+ ([TDBR]) (\S+)$", line)
        if match:
            library, part, _, name = match.groups()
            places.setdefault(name, []).append(f"{library} ({part})")
    # Sanitizers add names of their own; meson puts the bundle of resources, whole, into
    # each library that stands on it.
    return {name: where for name, where in places.items()
            if not name.startswith(("__asan", "__odr", "__ubsan", "sw_resources_"))}


def case_defined_once():
    twice = [f"{name}: {' and '.join(where)}" for name, where in defined().items()
             if len(where) > 1]
    assert not twice, "\n".join(twice)


def case_prefix():
    wrong = [f"{name}: {where[0]}" for name, where in defined().items()
             if not name.startswith("sw_")]
    assert len(defined()) > 100, "few names found: are these the rooms' libraries?"
    assert not wrong, "\n".join(wrong)


CASES = [("/lint/symbols/defined-once", case_defined_once),
         ("/lint/symbols/prefix", case_prefix)]

if __name__ == "__main__":
    sys.exit(tap.run(CASES))
