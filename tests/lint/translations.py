# SPDX-License-Identifier: MIT
"""Translations of the window: what is missing, doubtful, wrong or ambiguous in them."""

import re
import subprocess
from pathlib import Path

MARKED = re.compile(r'\b(?:_|N_|C_|NC_|ngettext)\s*\(|translatable="yes"')


def listed(root):
    """Files whose phrases are collected."""
    lines = (root / "resources" / "po" / "POTFILES").read_text(encoding="utf-8").splitlines()
    return [line for line in lines if line and not line.startswith("#")]


def languages(root):
    lines = (root / "resources" / "po" / "LINGUAS").read_text(encoding="utf-8").splitlines()
    return [line for line in lines if line and not line.startswith("#")]


def unlisted(root):
    """Sources with phrases that are not collected, and files that are gone."""
    there = {str(path.relative_to(root)) for folder in ("src", "ui")
             for path in (root / folder).rglob("*") if path.suffix in (".c", ".h", ".ui")
             and MARKED.search(path.read_text(encoding="utf-8"))}
    names = listed(root)
    return ([f"not in POTFILES: {name}" for name in sorted(there - set(names))]
            + [f"in POTFILES, but not there: {name}" for name in names
               if not (root / name).exists()])


def malformed(root):
    """What msgfmt says of the files: syntax, other places or key letters than in English."""
    found = []
    for language in languages(root):
        done = subprocess.run(
            ["msgfmt", "--check-format", "--check-domain", "--check-accelerators=_",
             "--output-file=/dev/null", str(root / "resources" / "po" / f"{language}.po")],
            capture_output=True, text=True, env={"LC_ALL": "C.UTF-8", "PATH": "/usr/bin:/bin"})
        if done.returncode or done.stderr:
            found.append(f"{language}: {done.stderr}")
    return found
