# SPDX-License-Identifier: MIT
"""Help pages that have gone stale: what they name and the program no longer has.

That they read, and that every link leads somewhere, is for the tests of store.
"""

import json
import re
import subprocess
import xml.etree.ElementTree as ElementTree
from collections import Counter
from pathlib import Path

KEY = re.compile(r"\[\[([^\]]+)\]\]")
LABEL = re.compile(r"(?<![*\\])\*([^*{]+)\*(?!\*)")
VERDICT = re.compile(r"\bsafe\b|\bsafely\b|\bunsafe\b", re.IGNORECASE)
MODIFIERS = {"Ctrl": "<Control>", "Shift": "<Shift>", "Alt": "<Alt>"}
# Keys of the help window, and keys that every window of the desktop has.
OWN_KEYS = {"<Alt>Left", "<Alt>Right", "<Control>f", "<Shift>", "<Control>"}
WORDS = re.compile(r'\b(?:N?_|C_|ngettext)\s*\(((?:\s*"(?:[^"\\]|\\.)*"\s*,?)+)')
STRING = re.compile(r'"((?:[^"\\]|\\.)*)"')
# What a page has in every language: keys, places, texts, where links and drawings lead.
SAME = re.compile(r"\[\[[^\]]+\]\]|\{[^}]+\}|\]\([^)]+\)")
TYPED = re.compile(r"`[^`]*`")
TRANSLATED = re.compile(r'^msgstr(?:\[\d\])? "(.+)"$', re.MULTILINE)
# French sets no-break spaces there.
SPACED = {"fr": re.compile(r" [:;?!%»]|« ")}
# Where the window says which page it opens.
TARGETS = [re.compile(r'sw_help_button_new\s*\(\s*"([^"]+)"'),
           re.compile(r'HEADING\s*\(N_ \("[^"]*"\),\s*"([^"]+)"\)'),
           re.compile(r'\.help = "([^"]+)"'),
           re.compile(r'app\.help::([\w#-]+)')]


def pages(root, language="en"):
    folder = Path(root) / "resources" / "help" / language
    return {path.stem: path.read_text(encoding="utf-8") for path in sorted(folder.glob("*.md"))}


def other_languages(root):
    return [folder.name for folder in sorted((Path(root) / "resources" / "help").iterdir())
            if folder.name != "en"]


def texts(root, language="en"):
    found = {}
    for path in (Path(root) / "resources" / "texts" / language).glob("*.json"):
        found.update(json.loads(path.read_text(encoding="utf-8")))
    return found


def accelerator(key):
    """"Ctrl+Shift+S" as GTK writes it: "<Control><Shift>s"."""
    *modifiers, name = key.split("+")
    if name in MODIFIERS:
        return MODIFIERS[name]
    name = name.lower() if len(name) == 1 else name
    return "".join(MODIFIERS.get(part, f"<{part}?>") for part in modifiers) + name


def bound_keys(root):
    """What the application binds, and what the list of keys in the window says."""
    source = (Path(root) / "src" / "app" / "sw-application.c").read_text(encoding="utf-8")
    table = re.search(r"^set_keys.*?^}", source, re.MULTILINE | re.DOTALL).group(0)
    keys = set(re.findall(r'"((?:<\w+>)*\w+)"', table))
    overlay = ElementTree.parse(Path(root) / "ui" / "help-overlay.ui")
    for node in overlay.iter("property"):
        if node.get("name") == "accelerator":
            keys.update(node.text.split())
    return keys | OWN_KEYS


def keys_left_out(root):
    """Keys of the program that the page of keys does not tell."""
    told = {accelerator(key) for key in KEY.findall(pages(root)["keys"])}
    return [f"keys: {key} is missing" for key in sorted(bound_keys(root) - OWN_KEYS - told)]


def plain(text):
    return text.replace("_", "").replace('\\"', '"').strip()


def words_of_window(root):
    found = {plain(text) for text in texts(root).values()}
    for path in (Path(root) / "src" / "app").glob("*.c"):
        for call in WORDS.findall(path.read_text(encoding="utf-8")):
            found.add(plain("".join(STRING.findall(call))))
            found.update(plain(part) for part in STRING.findall(call))
    for path in (Path(root) / "ui").glob("*.ui"):
        for node in ElementTree.parse(path).iter():
            if node.get("translatable") == "yes" and node.text:
                found.add(plain(node.text))
    return found


def translated_words_of_window(root, language):
    done = subprocess.run(["msgcat", "--no-wrap",
                           str(Path(root) / "resources" / "po" / f"{language}.po")],
                          capture_output=True, text=True, check=True, encoding="utf-8")
    return ({plain(text) for text in texts(root, language).values()}
            | {plain(text) for text in TRANSLATED.findall(done.stdout)})


def unknown_keys(root, language="en"):
    keys = bound_keys(root)
    return [f"{name}: the key {key} is not one of the program's"
            for name, text in pages(root, language).items()
            for key in KEY.findall(text) if accelerator(key) not in keys]


def unknown_labels(root, language="en"):
    words = (words_of_window(root) if language == "en"
             else translated_words_of_window(root, language))
    return [f"{name}: the window does not say {label!r}"
            for name, text in pages(root, language).items()
            for label in LABEL.findall(re.sub(r"\*{[^}]+}\*", "", text))
            if plain(label) not in words]


def unknown_targets(root):
    """Pages and places that "?" buttons open."""
    there = set()
    for name, text in pages(root).items():
        there.add(name)
        there.update(f"{name}#{place}" for place in re.findall(r"\{#([\w-]+)\}", text))
    return [f"{path.name}: opens {target}, which is no page or place of the help"
            for path in sorted((Path(root) / "src" / "app").glob("*.c"))
            for pattern in TARGETS
            for target in pattern.findall(path.read_text(encoding="utf-8"))
            if target not in there]


def unlisted(root, language="en"):
    listed = re.findall(r"\]\(([\w-]+)\)", pages(root, language)["contents"])
    return [f"{name}: not in the contents" for name in pages(root, language)
            if name not in listed and name != "contents"]


def findings_left_out(root):
    """Every finding and every way of failing is explained, once."""
    page = pages(root)["findings"]
    ids = texts(root)
    found = []
    for key in ids:
        if match := re.fullmatch(r"check\.(F\d+)\.title", key):
            if f"{{#{match.group(1)}}}" not in page:
                found.append(f"findings: no place {{#{match.group(1)}}}")
        if re.fullmatch(r"finding\.[\w-]+\.title", key) and page.count(f"{{{key}}}") != 1:
            found.append(f"findings: {key} stands there {page.count(f'{{{key}}}')} times")
        if key.startswith("site.") and f"{{{key}}}" not in page:
            found.append(f"findings: the question {key} is missing")
    return found


def practices_left_out(root):
    page = pages(root)["sources"]
    return [f"sources: {key} is missing" for key in texts(root)
            if key.startswith("practice-name.") and f"{{{key}}}" not in page]


def verdicts(root):
    return [f"{name}: says {hit.group(0)!r}" for name, text in pages(root).items()
            for hit in VERDICT.finditer(text)
            # A safety data sheet is a paper, not a verdict.
            if not text[hit.start():].lower().startswith("safety")]


def unlike_english(root, language):
    """What only one of the two has. A page that is not there yet is shown in English."""
    english = pages(root)
    found = []
    for name, text in pages(root, language).items():
        here = Counter(SAME.findall(text))
        there = Counter(SAME.findall(english.get(name, "")))
        found += [f"{name}: {mark} is missing" for mark in sorted(there - here)]
        found += [f"{name}: {mark} is not in English" for mark in sorted(here - there)]
    return found


def badly_spaced(root, language):
    return [f"{name}: no no-break space in {line[max(hit.start() - 8, 0):hit.end()]!r}"
            for name, text in pages(root, language).items() if language in SPACED
            for line in TYPED.sub("", text).splitlines()
            for hit in SPACED[language].finditer(line)]


def faults_of_translation(root, language):
    return [f"{language}/{fault}" for fault in unknown_labels(root, language)
            + unlike_english(root, language) + badly_spaced(root, language)]


def faults(root):
    """One line a fault; none when the help is up to date."""
    return (unknown_keys(root) + unknown_labels(root) + unknown_targets(root) + unlisted(root)
            + keys_left_out(root)
            + findings_left_out(root) + practices_left_out(root) + verdicts(root)
            + [fault for language in other_languages(root)
               for fault in faults_of_translation(root, language)])
