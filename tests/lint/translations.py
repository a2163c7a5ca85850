# SPDX-License-Identifier: MIT
"""Translations of the window: what is missing, doubtful, wrong or ambiguous in them."""

import gettext
import io
import re
import subprocess
import tempfile
import xml.etree.ElementTree as ElementTree
from pathlib import Path

MARKED = re.compile(r'\b(?:_|N_|C_|NC_|ngettext)\s*\(|translatable="yes"')
# Words that are shown as they stand: a string where a marked one is expected.
BARE = re.compile(
    r'\b(gtk_label_new|gtk_button_new_with_(?:label|mnemonic)|gtk_window_set_title'
    r'|gtk_widget_set_tooltip_text|gtk_label_set_text|sw_stage_tell)'
    r'\s*\((?:[^()";]|\([^()]*\))*"[^"]*[A-Za-z]{2}')
BARE_IN_UI = re.compile(
    r'<(?:property|attribute) name="(?:label|title|tooltip-text|placeholder-text)">'
    r'[^<]*[A-Za-z]{2}')
LOOSE = re.compile(r" [:;?!»]|« |\d %(?!\w)")
ENVIRONMENT = {"LC_ALL": "C.UTF-8", "PATH": "/usr/bin:/bin"}
UPDATE = "run resources/po/update.sh and translate what is new"


def lines_of(root, name):
    lines = (root / "resources" / "po" / name).read_text(encoding="utf-8").splitlines()
    return [line for line in lines if line and not line.startswith("#")]


def catalogue(root, language):
    return str(root / "resources" / "po" / f"{language}.po")


def sources(root):
    return [path for folder in ("src", "ui") for path in sorted((root / folder).rglob("*"))
            if path.suffix in (".c", ".h", ".ui")]


def unlisted(root):
    """Sources with phrases that are not collected, and files that are gone."""
    there = {str(path.relative_to(root)) for path in sources(root)
             if MARKED.search(path.read_text(encoding="utf-8"))}
    names = lines_of(root, "POTFILES")
    return ([f"not in POTFILES: {name}" for name in sorted(there - set(names))]
            + [f"in POTFILES, but not there: {name}" for name in names
               if not (root / name).exists()])


def unmarked(root):
    """Words that would be shown in English in every language."""
    return [f"{path.relative_to(root)}: {hit.group(0).split()[0]} shows unmarked words"
            for path in sources(root)
            for hit in (BARE_IN_UI if path.suffix == ".ui" else BARE).finditer(
                path.read_text(encoding="utf-8"))
            if not MARKED.search(hit.group(0))]


def said_by(command):
    """What a tool has to complain about; empty when nothing."""
    done = subprocess.run(command, capture_output=True, text=True, env=ENVIRONMENT)
    return done.stderr if done.returncode or done.stderr else ""


def malformed(root):
    """Syntax, other places or key letters than in English."""
    return [f"{language}: {said}" for language in lines_of(root, "LINGUAS")
            if (said := said_by(["msgfmt", "--check-format", "--check-domain",
                                 "--check-accelerators=_", "--output-file=/dev/null",
                                 catalogue(root, language)]))]


def incomplete(root):
    """Phrases of the sources that a translation has not, or has with a doubt."""
    with tempfile.TemporaryDirectory() as folder:
        phrases = str(Path(folder) / "phrases.pot")
        said = said_by(["sh", str(root / "resources" / "po" / "collect.sh"), phrases])
        if said:
            return [said]
        return [f"{language}: {UPDATE}\n{said}" for language in lines_of(root, "LINGUAS")
                if (said := said_by(["msgcmp", catalogue(root, language), phrases]))]


def loose_signs(root):
    """French sets no-break spaces before : ; ? ! % and inside « »: a line never begins with one."""
    said = subprocess.run(["msgcat", "--no-wrap", catalogue(root, "fr")],
                          capture_output=True, text=True, check=True, env=ENVIRONMENT).stdout
    return [f"fr: an ordinary space at a sign: {line}" for line in said.splitlines()
            if line.startswith("msgstr") and LOOSE.search(line)]


def translator(root, language):
    """A function from (context, phrase) to its translation."""
    compiled = subprocess.run(["msgfmt", "--output-file=-", catalogue(root, language)],
                              capture_output=True, check=True).stdout
    table = gettext.GNUTranslations(io.BytesIO(compiled))
    return lambda context, phrase: (table.pgettext(context, phrase) if context
                                    else table.gettext(phrase))


def menus(root):
    """Lists of (context, label), one list a menu: what is open at the same time."""
    found = []

    def walk(menu):
        labels = []
        found.append(labels)
        for node in menu:
            parts = [node] if node.tag != "section" else list(node)
            for part in parts:
                labels += [(name.get("context"), name.text) for name in part.findall("attribute")
                           if name.get("name") == "label"]
                if part.tag == "submenu":
                    walk(part)

    for path in sorted((root / "ui").glob("*.ui")):
        for menu in ElementTree.parse(path).getroot().iter("menu"):
            walk(menu)
    return found


def shared_letters(labels):
    """Labels of one menu whose key letter another has, too."""
    letters = {}
    for label in labels:
        for letter in re.findall(r"_(\w)", label.lower()):
            letters.setdefault(letter, []).append(label)
    return [", ".join(same) for same in letters.values() if len(same) > 1]


def ambiguous(root):
    found = []
    ways = {"en": lambda context, phrase: phrase}
    ways |= {language: translator(root, language) for language in lines_of(root, "LINGUAS")}
    for language, say in ways.items():
        for menu in menus(root):
            found += [f"{language}: one key letter for {same}"
                      for same in shared_letters([say(*label) for label in menu])]
    return found
