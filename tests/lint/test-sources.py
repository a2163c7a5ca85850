# SPDX-License-Identifier: MIT
"""House rules that can be read off the files. Arguments: source root, C compiler, flags."""

import json
import re
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

import contrast
import floors
import help_pages
import languages
import tap
import translations

ROOT = Path(sys.argv[1])
COMPILER = sys.argv[2]
FLAGS = sys.argv[3:]

LINES_AT_MOST = 800
COLUMNS_AT_MOST = 100
FORBIDDEN_STEMS = {"utils", "util", "helpers", "helper", "common", "misc"}
CODE = {".c", ".h", ".py", ".sh"}
FOLDERS = ["src", "include", "ui", "tests", "examples", "resources", ".ci"]


def files(suffixes, folders=FOLDERS):
    return [path for folder in folders for path in sorted((ROOT / folder).rglob("*"))
            if path.is_file() and path.suffix in suffixes and "__pycache__" not in path.parts]


def read(path):
    return path.read_text(encoding="utf-8")


def name_of(path):
    return str(path.relative_to(ROOT))


def expect_none(found):
    assert not found, "\n".join(found)


def rooms():
    for room in floors.ROOMS:
        for folder in (ROOT / "src" / room, ROOT / "include" / "slopewright" / room):
            for path in sorted(folder.rglob("*.[ch]")):
                yield room, path


def case_floors():
    seen = list(rooms())
    assert len(seen) > 30, f"only {len(seen)} files found: is {ROOT} the source tree?"
    expect_none([f"{name_of(path)}: {text}" for room, path in seen
                 for text in floors.violations(room, read(path))])


def case_floors_can_fail():
    """The check itself: a wrong include of every kind is seen, a right one is not."""
    wrong = [("ground", "#include <slopewright/layout/layout.h>"),
             ("base", '#include "slopewright/store/store.h"'),
             ("paint", "# include <slopewright/sheet/pack.h>"),
             ("sheet", "#include <slopewright/store/store.h>"),
             ("cli", "#include <gtk/gtk.h>"),
             ("tally", "#include <jansson.h>"),
             ("layout", '#include "../store/reader.h"')]
    right = [("layout", "#include <slopewright/ground/ground.h>"),
             ("document", "#include <slopewright/store/store.h>"),
             ("app", "#include <gtk/gtk.h>"), ("store", "#include <jansson.h>")]
    for room, text in wrong:
        assert floors.violations(room, text), f"missed in {room}: {text}"
    for room, text in right:
        expect_none(floors.violations(room, text))


def compile_alone(text):
    with tempfile.TemporaryDirectory() as folder:
        source = Path(folder) / "alone.c"
        source.write_text(text, encoding="utf-8")
        return subprocess.run(
            [COMPILER, "-std=gnu17", "-fsyntax-only", "-Wall", "-Wextra", "-Wpedantic",
             "-Wconversion", "-Wstrict-prototypes", "-Werror", *FLAGS,
             f"-I{ROOT / 'include'}", str(source)],
            capture_output=True, text=True)


def case_headers_alone():
    """Each public header compiles on its own, twice in one file, under strict flags."""
    headers = files({".h"}, ["include"])
    assert len(headers) > 20
    found = []
    for header in headers:
        line = f"#include <{header.relative_to(ROOT / 'include')}>\n"
        done = compile_alone(line + line + "int main (void) { return 0; }\n")
        if done.returncode:
            found.append(f"{name_of(header)}:\n{done.stderr}")
    expect_none(found)


def case_headers_alone_can_fail():
    assert compile_alone("int add (double a) { return a; }\n").returncode != 0


def case_sizes():
    found = []
    for path in files(CODE | {".ui", ".css"}):
        lines = read(path).split("\n")
        if len(lines) > LINES_AT_MOST:
            found.append(f"{name_of(path)}: {len(lines)} lines, at most {LINES_AT_MOST}")
        # Addresses, texts of templates and the one-line comments of headers cannot be broken.
        found += [f"{name_of(path)}:{number}: {len(line)} columns, at most {COLUMNS_AT_MOST}"
                  for number, line in enumerate(lines, 1)
                  if len(line) > COLUMNS_AT_MOST and "://" not in line and path.suffix != ".ui"
                  and not (path.suffix == ".h" and "/*" in line)]
    expect_none(found)


def case_names():
    expect_none([name_of(path) for path in files(CODE | {".ui", ".css", ".json"})
                 if FORBIDDEN_STEMS & set(re.split(r"[-_.]", path.name.lower()))])


def case_licence_line():
    found = []
    for path in files(CODE):
        head = read(path).split("\n")[:2]
        if not any("SPDX-License-Identifier: MIT" in line for line in head):
            found.append(f"{name_of(path)}: no SPDX line on top")
    expect_none(found)


def case_numbers_and_locale():
    """Rooms below cli never read or write a double through the C locale, nor ask the clock."""
    pattern = re.compile(
        r"\b(strtod|atof|setlocale|localtime|g_strtod|time|rand|g_random_\w+)\s*\(")
    printf = re.compile(r'printf[^;]*"[^"]*%[-+ #0-9.*]*[feEgG]')
    found = []
    for room, path in rooms():
        if room in ("cli", "app", "document"):
            continue
        text = re.sub(r"/\*.*?\*/", "", read(path), flags=re.DOTALL)
        found += [f"{name_of(path)}: {hit}" for hit in pattern.findall(text)]
        found += [f"{name_of(path)}: printf of a double" for _ in printf.findall(text)]
    expect_none(found)


def texts():
    ids = {}
    for path in sorted((ROOT / "resources" / "texts" / "en").glob("*.json")):
        for key, value in json.loads(read(path)).items():
            assert key not in ids, f"{key} stands in {ids[key][0]} and {path.name}"
            ids[key] = (path.name, value)
    return ids


TEXT_CALL = re.compile(r'sw_texts_(?:get|fill|fill_table|has)\s*\(\s*[^,"]+,\s*"([^"%]+)"\s*[,)]')


def case_text_ids():
    """Every text id written out in a call exists."""
    ids = texts().keys() | languages.OWN
    found = [f"{name_of(path)}: {key}" for _, path in rooms()
             for key in TEXT_CALL.findall(read(path)) if key not in ids]
    expect_none(found)


def case_texts_wording():
    """No verdict "safe"; sentences are trimmed; places are well formed."""
    found = []
    for key, (name, text) in texts().items():
        if re.search(r"\bsafe\b|\bsafely\b|\bunsafe\b", text, re.IGNORECASE):
            found.append(f"{name}: {key}: says {text!r}")
        if text != text.strip() or not text:
            found.append(f"{name}: {key}: empty or padded")
        if re.sub(r"\{[a-z][a-z0-9_]*\}", "", text).count("{"):
            found.append(f"{name}: {key}: broken place in {text!r}")
    expect_none(found)


def case_resources_listed():
    """Every data file is in the bundle and every file of the bundle is there."""
    manifest = read(ROOT / "resources" / "slopewright.gresource.xml")
    listed = set(re.findall(r"<file[^>]*>([^<]+)</file>", manifest))
    folder = ROOT / "resources"
    there = {str(path.relative_to(folder)) for part in ("texts", "catalogue", "schema")
             for path in (folder / part).rglob("*.json")}
    there |= {str(path.relative_to(folder)) for path in (folder / "help").rglob("*.md")}
    expect_none([f"not in the bundle: {name}" for name in sorted(there - listed)]
                + [f"not there: {name}" for name in sorted(listed)
                   if not (folder / name).exists()])


def case_sources_listed():
    """No source file that the build does not know."""
    found = []
    for folder in ("src", "tests"):
        for path in sorted((ROOT / folder).rglob("*.c")):
            build = path.parent / "meson.build"
            names = read(build) if build.exists() else ""
            stem = path.stem.removeprefix("test-")
            if path.name not in names and f"'{stem}'" not in names:
                found.append(f"{name_of(path)}: not in {name_of(build)}")
    expect_none(found)


def case_placeholders_left():
    """No work left behind in the code, and no path of one machine."""
    pattern = re.compile(r"\b(TODO|FIXME|XXX|HACK|lorem)\b|/work/|/home/\w")
    this = Path(__file__).resolve()
    expect_none([f"{name_of(path)}: {hit}" for path in files(CODE | {".json", ".md", ".1"})
                 if path.resolve() != this
                 for hit in (match.group(0) for match in pattern.finditer(read(path)))])


def case_languages():
    expect_none(languages.faults(ROOT))


def case_languages_can_fail():
    with tempfile.TemporaryDirectory() as folder:
        texts = Path(folder) / "resources" / "texts"
        for name, said in [("en", {"a": "{n} runs", "b": "Dig."}),
                           ("fr", {"a": "{m} lés", "c": "Creuser."})]:
            (texts / name).mkdir(parents=True)
            (texts / name / "all.json").write_text(json.dumps(said), encoding="utf-8")
        assert languages.faults(folder) == [
            "fr: b is missing", "fr: c is not in English", "fr: language.review is missing",
            "fr: a has other places than the English text"]


def case_translations_listed():
    """Every file with phrases of the window is collected for the translators."""
    expect_none(translations.unlisted(ROOT))


def case_translations_marked():
    expect_none(translations.unmarked(ROOT))


def case_translations_well_formed():
    expect_none(translations.malformed(ROOT))


def case_translations_complete():
    expect_none(translations.incomplete(ROOT))


def case_translations_key_letters():
    """Within one menu, every letter that is pressed stands for one item."""
    assert len(translations.menus(ROOT)) > 2
    expect_none(translations.ambiguous(ROOT))


def case_translations_french_spaces():
    expect_none(translations.loose_signs(ROOT))


def case_translations_can_fail():
    assert translations.shared_letters(["_Open…", "Close", "_Options"]) == ["_Open…, _Options"]
    for wrong in ('gtk_label_new ("Length")', 'gtk_widget_set_tooltip_text (f (x), "Two words")'):
        assert translations.BARE.search(wrong), wrong
    assert translations.LOOSE.search("Pourquoi ?")
    assert translations.BARE_IN_UI.search('<property name="label">Length</property>')


def case_help():
    expect_none(help_pages.faults(ROOT))


def case_help_can_fail():
    """Every check of the help sees what it is for."""
    with tempfile.TemporaryDirectory() as folder:
        root = Path(folder)
        for name in ("src/app", "ui", "resources"):
            shutil.copytree(ROOT / name, root / name)
        page = root / "resources" / "help" / "en" / "keys.md"
        page.write_text(read(page).replace("[[Ctrl+E]]", "[[Ctrl+J]]")
                        + "*Save the Moon* is safe.\n", encoding="utf-8")
        (page.parent / "stray.md").write_text("# Stray\n", encoding="utf-8")
        findings = page.parent / "findings.md"
        findings.write_text(read(findings).replace("{finding.fire.title}", "Fire"),
                            encoding="utf-8")
        (root / "src" / "app" / "new.c").write_text('sw_help_button_new ("moon#dark", NULL)',
                                                    encoding="utf-8")
        for other in set(help_pages.other_languages(root)) - {"fr"}:
            shutil.rmtree(page.parent.parent / other)
        french = page.parent.parent / "fr" / "limits.md"
        french.write_text(read(french).replace("](sources)", "](moon)")
                          + "*Sauver la lune* : non\n", encoding="utf-8")
        assert help_pages.faults(root) == [
            "keys: the key Ctrl+J is not one of the program's",
            "keys: the window does not say 'Save the Moon'",
            "new.c: opens moon#dark, which is no page or place of the help",
            "stray: not in the contents",
            "keys: <Control>e is missing",
            "findings: finding.fire.title stands there 0 times",
            "keys: says 'safe'",
            "fr/limits: the window does not say 'Sauver la lune'",
            "fr/findings: {finding.fire.title} is not in English",
            "fr/keys: [[Ctrl+J]] is missing",
            "fr/keys: [[Ctrl+E]] is not in English",
            "fr/limits: ](sources) is missing",
            "fr/limits: ](moon) is not in English",
            "fr/limits: no no-break space in 'la lune* :'"]


def case_contrast():
    expect_none(contrast.palette_faults(read(ROOT / "resources" / "palette.json"))
                + contrast.style_faults(read(ROOT / "ui" / "style.css")))


def case_contrast_can_fail():
    palette = read(ROOT / "resources" / "palette.json").replace("#5c6166", "#8c9196")
    assert contrast.palette_faults(palette) == ["muted: 3.2:1, not 4.5:1"]
    style = read(ROOT / "ui" / "style.css").replace("opacity: 0.8", "opacity: 0.55")
    assert [fault.split(":")[0] for fault in contrast.style_faults(style)] == [
        "dim-label on #f6f5f4", "dim-label on #353535"]


CASES = [(f"/lint/{name[5:].replace('_', '-')}", function)
         for name, function in list(globals().items()) if name.startswith("case_")]

if __name__ == "__main__":
    sys.exit(tap.run(CASES))
