# SPDX-License-Identifier: MIT
"""Every language says everything that English says, with the same {places}."""

import json
import re
from pathlib import Path

PLACE = re.compile(r"\{([a-z0-9_.-]+)\}")
# Said in a translation only: that it waits for a reader of the trade.
OWN = {"language.review"}


def texts(folder):
    every = {}
    for file in sorted(folder.glob("*.json")):
        every.update(json.loads(file.read_text(encoding="utf-8")))
    return every


def faults(root):
    """One line a fault; none when all languages are whole."""
    folder = Path(root) / "resources" / "texts"
    english = texts(folder / "en")
    found = []
    for other in sorted(folder.iterdir()):
        if other.name == "en" or not other.is_dir():
            continue
        said = texts(other)
        for key in sorted(english.keys() - said.keys()):
            found.append(f"{other.name}: {key} is missing")
        for key in sorted(said.keys() - english.keys() - OWN):
            found.append(f"{other.name}: {key} is not in English")
        if not OWN <= said.keys():
            found.append(f"{other.name}: language.review is missing")
        for key in english.keys() & said.keys():
            if set(PLACE.findall(english[key])) != set(PLACE.findall(said[key])):
                found.append(f"{other.name}: {key} has other places than the English text")
    return found
