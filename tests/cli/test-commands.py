# SPDX-License-Identifier: MIT
"""slopepack from outside: command line in, exit status, words and files out.

Arguments: source root, slopepack.
"""

import os
import re
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

ROOT = Path(sys.argv[1])
SLOPEPACK = str(Path(sys.argv[2]).resolve())
sys.path.insert(0, str(ROOT / "tests" / "lint"))
import tap  # noqa: E402

EXAMPLES = ROOT / "examples"
JOB = EXAMPLES / "sandlark-bluff-road.slope.json"
BENCHED = EXAMPLES / "pinfold-cutting.slope.json"
COMMANDS = ["pack", "tally", "check", "draw", "why", "compare", "calendar"]
DONE, USAGE, STOP, UNREADABLE, CANNOT_LAY, CANNOT_WRITE = 0, 2, 3, 4, 5, 6


def run(*words, environment=None, **more):
    """No display and no settings of the person who runs the tests."""
    clean = {"PATH": os.environ["PATH"], "HOME": os.environ.get("HOME", "/")}
    clean.update({key: value for key, value in os.environ.items()
                  if key.endswith("SAN_OPTIONS") or key == "LOCPATH"})
    clean.update(environment or {})
    return subprocess.run([SLOPEPACK, *map(str, words)], capture_output=True, env=clean,
                          timeout=60, **more)


def changed_job(folder, name, *changes):
    """A copy of the example with exact texts replaced; every one must be there."""
    text = JOB.read_text(encoding="utf-8")
    for old, new in changes:
        assert old in text, f"{old!r} is not in {JOB.name}"
        text = text.replace(old, new, 1)
    path = Path(folder) / name
    path.write_text(text, encoding="utf-8")
    return path


# Words, exit status, parts of standard output, parts of standard error. {job} is
# the example, {tmp} a fresh folder. Whatever is not 0 or 3 prints nothing on
# standard output, and every complaint begins with the program's name.
TABLE = [
    ("no-command", [], USAGE, [], ["expected a command"]),
    ("help", ["--help"], DONE, ["Usage: slopepack", *COMMANDS, "Exit status"], []),
    ("help-short", ["-h"], DONE, ["Usage: slopepack"], []),
    ("version", ["--version"], DONE, ["slopepack 0."], []),
    ("unknown-command", ["lay"], USAGE, [],
     ["'lay'", "pack, tally, check, draw, why, compare, calendar, form"]),
    ("help-of-form", ["form", "--help"], DONE, ["slopepack form", "--paper", "--units"], []),
    ("form-without-output", ["form"], USAGE, [], ["-o FILE"]),
    ("form-wants-no-job", ["form", "{job}", "-o", "{tmp}/a.pdf"], USAGE, [], ["did not expect"]),
    ("form-bad-paper", ["form", "-o", "{tmp}/a.pdf", "--paper", "B5"], USAGE, [], ["'B5'"]),
    ("form-as-text", ["form", "--text", "--units", "us", "-o", "{tmp}/a.txt"], DONE, [], []),
    *[(f"help-of-{name}", [name, "--help"], DONE,
       [f"slopepack {name}", "JOB", "--units"], []) for name in COMMANDS],
    *[(f"no-job-for-{name}", [name], USAGE, [], [f"{name}: expected JOB"]) for name in COMMANDS],
    *[(f"unknown-option-of-{name}", [name, "{job}", "--sideways"], USAGE, [],
       ["--sideways", f"slopepack {name} --help"]) for name in COMMANDS],
    *[(f"no-such-job-for-{name}", [name, "{tmp}/none.slope.json", *more], UNREADABLE, [],
       ["none.slope.json"])
      for name, more in [("pack", ["-o", "{tmp}/a.pdf"]), ("tally", []), ("check", []),
                         ("draw", ["--view", "plan", "-o", "{tmp}/a.svg"]), ("why", [])]],
    ("job-is-a-folder", ["tally", "{tmp}"], UNREADABLE, [], ["cannot read the job"]),
    ("too-many-words", ["tally", "{job}", "more"], USAGE, [], ["did not expect 'more'"]),
    ("bad-units", ["tally", "{job}", "--units", "furlongs"], USAGE, [],
     ["'furlongs'", "metric or us"]),
    ("bad-language", ["tally", "{job}", "--language", "xx"], USAGE, [], ["'xx'", "en"]),
    ("bad-format", ["tally", "{job}", "--format", "yaml"], USAGE, [],
     ["'yaml'", "text, csv or json"]),
    ("option-without-value", ["tally", "{job}", "--format"], USAGE, [], ["--format"]),
    ("tally-text", ["tally", "{job}"], DONE, ["m²"], []),
    ("tally-us", ["tally", "{job}", "--units", "us"], DONE, ["ft"], []),
    ("tally-csv", ["tally", "{job}", "--format", "csv"], DONE, ["name,title,value,unit"], []),
    ("tally-json", ["tally", "{job}", "--format", "json"], DONE, ["{"], []),
    ("check-choice", ["check", "{job}"], DONE,
     ["held against this job", "(chosen)", "not given", "meets: 1.5H:1V", "does not: 2H:1V"], []),
    ("calendar-no-date", ["calendar", "{job}"], UNREADABLE, [],
     ["card.install_date", 'found ""', "2026-03-31"]),
    ("calendar-over-job", ["calendar", "{job}", "-o", "{job}"], USAGE, [], ["is the job itself"]),
    ("option-before-job", ["tally", "--format", "csv", "{job}"], DONE, ["name,title"], []),
    ("words-after-separator", ["tally", "--", "{job}"], DONE, ["m²"], []),
    ("compare", ["compare", "{job}"], DONE, ["Rolls", "4, 4 to 6"], []),
    ("compare-practices", ["compare", "{job}", "--practice", "illinois-830"], DONE,
     ["≠ Side lap", "102\u00a0mm"], []),
    ("compare-unknown-practice", ["compare", "{job}", "--practice", "x"], USAGE, [],
     ["--practice: found 'x'", "common, "]),
    ("why-list", ["why", "{job}"], DONE, ["A.1.runs", "rolls", "net-area"], []),
    ("why-one", ["why", "{job}", "A.1.runs"], DONE, ["12"], []),
    ("why-unknown", ["why", "{job}", "A.9.runs"], USAGE, [], ["'A.9.runs'", "lists the names"]),
    ("pack-to-dash", ["pack", "{job}", "-o", "-"], USAGE, [], ["found '-'", "name of a file"]),
    ("pack-without-output", ["pack", "{job}"], USAGE, [], ["-o FILE"]),
    ("pack-bad-paper", ["pack", "{job}", "-o", "{tmp}/a.pdf", "--paper", "B5"], USAGE, [],
     ["'B5'", "A4, Letter, A3 or Tabloid"]),
    ("pack-as-text", ["pack", "{job}", "--text", "-o", "{tmp}/a.txt"], DONE, [], []),
    ("pack-over-job", ["pack", "{job}", "-o", "{job}"], USAGE, [], ["is the job itself"]),
    ("pack-no-folder", ["pack", "{job}", "-o", "{tmp}/none/a.pdf"], CANNOT_WRITE, [], ["a.pdf"]),
    ("draw-bad-view", ["draw", "{job}", "--view", "side", "-o", "{tmp}/a.svg"], USAGE, [],
     ["'side'", "section, plan or face"]),
    ("draw-bad-ending", ["draw", "{job}", "--view", "plan", "-o", "{tmp}/a.gif"], USAGE, [],
     [".svg or .png"]),
    ("draw-bad-face", ["draw", "{job}", "--view", "plan", "--face", "Z", "-o", "{tmp}/a.svg"],
     USAGE, [], ["'Z'", "this job has: A"]),
    ("draw-bad-dpi", ["draw", "{job}", "--view", "plan", "-o", "{tmp}/a.png", "--dpi", "9"],
     USAGE, [], ["found 9", "36 to 600"]),
    ("draw-no-folder", ["draw", "{job}", "--view", "plan", "-o", "{tmp}/none/a.svg"],
     CANNOT_WRITE, [], ["a.svg"]),
]


def case_of_table(row):
    name, words, status, out, err = row

    def case():
        with tempfile.TemporaryDirectory() as folder:
            done = run(*[word.replace("{job}", str(JOB)).replace("{tmp}", folder)
                         for word in words])
            stdout, stderr = done.stdout.decode(), done.stderr.decode()
            assert done.returncode == status, (
                f"status {done.returncode}, expected {status}\n{stdout[:400]}\n{stderr[:2000]}")
            for part in out:
                assert part in stdout, f"no {part!r} on standard output:\n{stdout[:2000]}"
            for part in err:
                assert part in stderr, f"no {part!r} on standard error:\n{stderr[:2000]}"
            if status not in (DONE, STOP):
                assert stdout == "", f"complaint, yet on standard output:\n{stdout[:400]}"
                assert stderr.startswith("slopepack: "), stderr[:2000]
                assert not os.listdir(folder), f"left behind: {os.listdir(folder)}"
    return name, case


def expect_job_trouble(status, parts, *changes):
    with tempfile.TemporaryDirectory() as folder:
        path = changed_job(folder, "bad.slope.json", *changes)
        done = run("tally", path)
        stderr = done.stderr.decode()
        assert done.returncode == status, f"status {done.returncode}, expected {status}\n{stderr}"
        for part in parts:
            assert part in stderr, f"no {part!r} in: {stderr}"
        assert done.stdout == b""


def case_job_not_json():
    expect_job_trouble(UNREADABLE, ["bad.slope.json:", "']' expected"],
                       ('"faces": [', '"faces": [['))


def case_job_newer():
    expect_job_trouble(UNREADABLE, ["bad.slope.json", "99"],
                       ('"slopewright": 1', '"slopewright": 99'))


def case_job_wrong_type():
    expect_job_trouble(UNREADABLE, ["bad.slope.json", "practice"],
                       ('"id": "common"', '"id": 7'))


def case_job_unknown_practice():
    expect_job_trouble(CANNOT_LAY, ['bad.slope.json: practice.id: found "none"', '"common"'],
                       ('"id": "common"', '"id": "none"'))


def case_job_unknown_soil():
    expect_job_trouble(CANNOT_LAY, ['bad.slope.json: faces[0].soil: found "cheese"', '"sand"'],
                       ('"soil": "sand"', '"soil": "cheese"'))


def case_job_unknown_key():
    """A mistyped key counts for nothing, and is named."""
    with tempfile.TemporaryDirectory() as folder:
        job = changed_job(folder, "typo.slope.json", ('"crest": 1', '"crest": 1, "topsoill_m": 1'))
        done = run("tally", job)
        assert done.returncode == DONE, done.stderr.decode()
        for part in (b"typo.slope.json", b"topsoill_m"):
            assert part in done.stderr, done.stderr


def case_job_byte_order_mark():
    with tempfile.TemporaryDirectory() as folder:
        job = Path(folder) / "marked.slope.json"
        job.write_bytes(b"\xef\xbb\xbf" + JOB.read_bytes())
        assert run("tally", job).stdout == run("tally", JOB).stdout


def case_job_cut_short():
    """Every hundredth beginning of a file is refused, with a message and without a crash."""
    text = JOB.read_bytes()
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "cut.slope.json"
        for length in range(0, len(text) - 2, max(1, len(text) // 40)):
            path.write_bytes(text[:length])
            done = run("check", path)
            assert done.returncode == UNREADABLE, f"{length} bytes: status {done.returncode}"
            assert b"cut.slope.json" in done.stderr, done.stderr


def case_pack_written():
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "pack.pdf"
        done = run("pack", JOB, "-o", path)
        assert done.returncode in (DONE, STOP), done.stderr.decode()
        assert path.read_bytes().startswith(b"%PDF-1.")
        assert os.listdir(folder) == ["pack.pdf"], os.listdir(folder)
        checked = subprocess.run(["qpdf", "--check", path], capture_output=True, text=True)
        assert checked.returncode == 0, checked.stdout + checked.stderr
        fonts = subprocess.run(["pdffonts", path], capture_output=True, text=True).stdout
        rows = fonts.splitlines()[2:]
        assert rows and all(re.search(r" yes (yes|no)  *(yes|no) ", row) for row in rows), fonts


def case_pack_same_bytes():
    """Time, zone, locale, folder and user's name leave no trace."""
    with tempfile.TemporaryDirectory() as folder:
        first, second = Path(folder) / "one.pdf", Path(folder) / "two.pdf"
        run("pack", JOB, "-o", first, environment={"TZ": "UTC", "LC_ALL": "C"})
        run("pack", JOB, "-o", second, cwd=folder,
            environment={"TZ": "Pacific/Auckland", "LC_ALL": "de_DE.UTF-8", "USER": "somebody"})
        assert first.read_bytes() == second.read_bytes()


def case_pack_replaces_whole():
    """A pack that cannot be made leaves the old file alone."""
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "pack.pdf"
        path.write_text("old")
        assert run("pack", Path(folder) / "none.json", "-o", path).returncode == UNREADABLE
        assert path.read_text() == "old"
        assert run("pack", JOB, "-o", path).returncode in (DONE, STOP)
        assert path.read_bytes().startswith(b"%PDF")


def case_pack_papers():
    sizes = {"A4": (595.3, 841.9), "Letter": (612, 792), "A3": (841.9, 1190.6),
             "Tabloid": (792, 1224)}
    with tempfile.TemporaryDirectory() as folder:
        for paper, points in sizes.items():
            path = Path(folder) / f"{paper}.pdf"
            assert run("pack", JOB, "-o", path, "--paper", paper).returncode in (DONE, STOP)
            info = subprocess.run(["pdfinfo", path], capture_output=True, text=True).stdout
            found = re.search(r"Page size: +([\d.]+) x ([\d.]+)", info)
            got = sorted(float(number) for number in found.groups())
            assert all(abs(a - b) < 0.2 for a, b in zip(got, points)), f"{paper}: {got}"


def case_pack_fingerprint():
    """The footer's fingerprint is the beginning of what sha256sum says of the job file."""
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "pack.pdf"
        run("pack", JOB, "-o", path)
        text = subprocess.run(["pdftotext", path, "-"], capture_output=True, text=True).stdout
        digest = subprocess.run(["sha256sum", JOB], capture_output=True, text=True).stdout
        assert digest[:12] in text, f"{digest[:12]} is not in the pack"


def case_draw_all():
    signs = {"svg": b"<svg", "png": b"\x89PNG"}
    with tempfile.TemporaryDirectory() as folder:
        for view in ("section", "plan", "face"):
            for ending, sign in signs.items():
                path = Path(folder) / f"{view}.{ending}"
                done = run("draw", BENCHED, "--view", view, "-o", path)
                assert done.returncode == DONE, done.stderr.decode()
                assert sign in path.read_bytes()[:400], f"{path.name} is no {ending}"


# A text that is missing shows its id; a place that got no value keeps its braces.
UNWORDED = re.compile(r"\{[a-z_]+\}|\b(?:report|working|finding|practice|soil|blanket|evidence|"
                      r"severity|pin-role|pin|site|pack|drawing|step|detail)"
                      r"\.[a-z][a-z0-9-]*[a-z](?:\.[a-z]+)?\b")


def expect_worded(text, where):
    # Names of numbers look alike and are meant: "A.pins.toe", "pins.300".
    found = [word for word in UNWORDED.findall(text)]
    assert not found, f"{where}: words missing: {sorted(set(found))[:20]}"


def case_words_of_reports():
    for job in sorted(EXAMPLES.glob("*.slope.json")):
        for words in (["tally"], ["check"], ["why"], ["tally", "--format", "csv"]):
            text = run(words[0], job, *words[1:]).stdout.decode()
            assert text
            expect_worded(text, f"{words} {job.name}")


def case_words_of_pack():
    with tempfile.TemporaryDirectory() as folder:
        for job in sorted(EXAMPLES.glob("*.slope.json")):
            path = Path(folder) / "pack.pdf"
            run("pack", job, "-o", path)
            text = subprocess.run(["pdftotext", "-layout", path, "-"], capture_output=True,
                                  text=True).stdout
            assert len(text) > 2000, f"{job.name}: little text in the pack"
            expect_worded(text, job.name)


def case_why_every_name():
    """Every listed name has its working, with a value and a line to check it by."""
    names = [line.split()[0] for line in run("why", JOB).stdout.decode().splitlines()]
    assert len(names) > 25
    for name in names:
        done = run("why", JOB, name)
        text = done.stdout.decode()
        assert done.returncode == DONE and f"({name})" in text, f"{name}: {text}"
        expect_worded(text, name)


def case_calendar():
    """Dates by the practice: every 7 days, mended within 4 (practices.json)."""
    with tempfile.TemporaryDirectory() as folder:
        job = changed_job(folder, "dated.slope.json",
                          ('"install_date": ""', '"install_date": "2026-03-31"'))
        listed = run("calendar", job).stdout.decode()
        path = Path(folder) / "dates.ics"
        done = run("calendar", job, "-o", path)
        assert done.returncode == DONE and done.stdout == b"", done.stderr.decode()
        first, text = path.read_bytes(), path.read_bytes().decode("utf-8")
        assert run("calendar", job, "-o", path).returncode == DONE
        assert path.read_bytes() == first, "two files of one job differ"
    assert listed.startswith("2026-04-07  Inspection 1"), listed[:200]
    assert "2026-04-11" in listed.splitlines()[0], listed[:200]
    assert text.startswith("BEGIN:VCALENDAR\r\n") and text.endswith("END:VCALENDAR\r\n")
    assert "DTSTART;VALUE=DATE:20260407\r\n" in text
    assert text.count("BEGIN:VEVENT") == text.count("END:VEVENT") == len(listed.splitlines()) - 1
    assert all(len(line.encode()) <= 75 for line in text.split("\r\n"))
    assert "\n" not in text.replace("\r\n", "")


def case_check_status():
    """3 exactly when a stop is printed; --strict makes cautions count."""
    for job in sorted(EXAMPLES.glob("*.slope.json")):
        done, strict = run("check", job), run("check", job, "--strict")
        text = done.stdout.decode()
        stop = text.startswith("Stop:") or "\nStop:" in text
        assert done.returncode == (STOP if stop else DONE), f"{job.name}: {done.returncode}"
        assert strict.returncode == (STOP if stop or "Caution" in text else DONE), job.name


def case_output_full():
    """A disk without room is not a success."""
    if not Path("/dev/full").exists():
        return "no /dev/full here"
    clean = dict(os.environ)
    with open("/dev/full", "w", encoding="utf-8") as full:
        done = subprocess.run([SLOPEPACK, "tally", JOB], stdout=full, stderr=subprocess.PIPE,
                              env=clean, timeout=60)
    assert done.returncode == CANNOT_WRITE, done.returncode
    assert b"standard output" in done.stderr
    return None


def case_locale():
    """Numbers do not depend on the locale."""
    for words in (["tally", JOB], ["tally", JOB, "--format", "json"], ["why", JOB, "rolls"]):
        plain = run(*words, environment={"LC_ALL": "C"}).stdout
        comma = run(*words, environment={"LC_ALL": "de_DE.UTF-8"}).stdout
        assert plain == comma and plain


def case_units_change_words_only():
    """CSV and JSON are SI whoever reads."""
    for form in ("csv", "json"):
        metric = run("tally", JOB, "--format", form, "--units", "metric").stdout
        assert metric == run("tally", JOB, "--format", form, "--units", "us").stdout and metric


def case_no_gtk():
    """Neither named by the program nor pulled in by what it names."""
    for tool in (["readelf", "-d", SLOPEPACK], ["ldd", SLOPEPACK]):
        text = subprocess.run(tool, capture_output=True, text=True, check=True).stdout
        assert "libc.so" in text
        assert not re.search(r"libgtk|libgdk-|libX11", text.replace("libgdk_pixbuf", "")) \
            or tool[0] == "ldd" and "libgtk" not in text, text


def case_manual():
    """The manual page names every command, option and exit status the program knows."""
    manual = (ROOT / "resources" / "man" / "slopepack.1").read_text(encoding="utf-8")
    plain = manual.replace("\\-", "-")
    for name in [*COMMANDS, "form"]:
        assert f".B {name}\n" in plain, f"no command {name}"
        text = run(name, "--help").stdout.decode()
        for option in re.findall(r"^ +(?:-\w, )?(--[a-z]+)", text, re.MULTILINE):
            assert option in plain, f"no option {option} of {name}"
    codes = re.findall(r"^  (\d)  ", run("--help").stdout.decode(), re.MULTILINE)
    assert len(codes) == 7
    for code in codes:
        assert f".B {code}\n" in plain, f"no exit status {code}"
    if shutil.which("man") is None:
        return "man is not installed"
    done = subprocess.run(["man", "--warnings", "-l", ROOT / "resources/man/slopepack.1"],
                          capture_output=True, text=True, env={**os.environ, "MANWIDTH": "80"})
    assert done.stderr == "", done.stderr
    return None


CASES = [(f"/cli/table/{name}", case) for name, case in map(case_of_table, TABLE)]
CASES += [(f"/cli/{name[5:].replace('_', '-')}", function)
          for name, function in list(globals().items())
          if name.startswith("case_") and name != "case_of_table"]

if __name__ == "__main__":
    sys.exit(tap.run(CASES))
