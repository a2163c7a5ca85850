# SPDX-License-Identifier: MIT
"""Class handouts solved from outside: every exercise from the words of the sheet alone,
with plain school mathematics, and held against the answers.

Arguments: source root, slopepack.

What is checked against is no agency's table but geometry: Pythagoras, Heron's formula, the
law of cosines, length x depth x width, and purity x germination as on a seed tag. What the
sheet prints is all that the solver sees; an exercise that lacks a number fails.
"""

import math
import os
import re
import subprocess
import sys
import tempfile
from pathlib import Path

ROOT = Path(sys.argv[1])
SLOPEPACK = str(Path(sys.argv[2]).resolve())
sys.path.insert(0, str(ROOT / "tests" / "lint"))
import tap  # noqa: E402

SEEDS = (1, 2, 3)
UNITS = ("metric", "us")
FRACTIONS = {"¼": 0.25, "½": 0.5, "¾": 0.75, "⅛": 0.125, "⅜": 0.375, "⅝": 0.625,
             "⅞": 0.875}
# What rounding of the printed answer can make: half its last digit, and a little for a
# quarter inch in a length that was rounded on the way.
CLOSE = 0.006


def sheet(job, kind, units, seed):
    environment = {key: value for key, value in os.environ.items()
                   if key in ("PATH", "HOME") or key.endswith("SAN_OPTIONS")}
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "sheet.txt"
        out = subprocess.run([SLOPEPACK, "pack", str(job), "--kind", kind, "--seed", str(seed),
                              "--units", units, "--language", "en", "--text", "-o", str(path)],
                             capture_output=True, env=environment, timeout=60)
        assert out.returncode in (0, 3), out.stderr.decode()
        return path.read_text(encoding="utf-8").replace("\u00a0", " ")


def inches(text):
    """'3½', '12', '½' or '0.39'."""
    fraction = FRACTIONS.get(text[-1], 0.0)
    whole = text[:-1] if text[-1] in FRACTIONS else text
    return (float(whole) if whole else 0.0) + fraction


def length(text):
    """Metres or feet: '13.46 m', '150 mm', '44 ft 3 in', '6 in'."""
    text = text.strip()
    if text.endswith(" mm"):
        return float(text[:-3]) / 1000.0
    if text.endswith(" m"):
        return float(text[:-2])
    feet = re.fullmatch(r"(?:(\d+) ft)? ?(?:(\S+) in)?", text)
    assert feet, f"not a length: {text!r}"
    return float(feet[1] or 0) + (inches(feet[2]) / 12.0 if feet[2] else 0.0)


def exercises(text):
    """The text of each exercise, by number."""
    parts = re.split(r"(?m)^Exercise (\d)[:] .*$", text)
    return {int(parts[i]): parts[i + 1] for i in range(1, len(parts), 2)}


def answers(text):
    """Answer by question of one exercise of the key."""
    rows = [line.split(" | ") for line in text.splitlines()]
    return {row[1]: row[2] for row in rows if len(row) == 6 and row[0].isdigit()}


def found(pattern, text):
    match = re.search(pattern, text)
    assert match, f"not given: {pattern}"
    return match.groups() if len(match.groups()) > 1 else match[1]


def shape(text):
    rise, ratio, width = found(r"Rise (.+?), gradient ([\d.]+)H:1V, width (.+?)\.\n", text)
    return length(rise), float(ratio), length(width)


def up(ratio):
    return math.ceil(ratio - 1e-9)


def solve_laying(text, key):
    rise, ratio, width = shape(text)
    roll, long = map(length, found(r"Rolls (.+?) × (.+?)\. ", text))
    lap = length(found(r"Side lap at least (.+?)\. ", text))
    crest, toe = map(length, found(r"takes (.+?) at the crest and (.+?) at the toe", text))
    spacing, lap_spacing = map(length, found(
        r"Pins every (.+?) at most in the key trench, every (.+?) at most down", text))
    soil, firm, loose, wind = found(
        r"Soil: .+?, (firm|loose)\. Pins for this soil: (.+?) where it is firm, (.+?) where "
        r"it is loose\. Wind from the (left|right)", text)
    face = math.hypot(rise * ratio, rise)
    runs = up((width - lap) / (roll - lap))
    cut = crest + face + toe
    per_roll = math.floor(long / cut)
    yard = 1.0 if " m," in text else 9.0
    expect = {
        "Length of the face down the slope": face,
        "Net area": face * width / yard,
        "Number of runs": runs,
        "Side lap as laid, the surplus spread evenly": (runs * roll - width) / (runs - 1),
        "Cut length of a run": cut,
        "Whole runs from one roll, none joined": per_roll,
        "Rolls, no run joined": up(runs / per_roll),
        "Pins in the key trench, one row": up(width / spacing) + 1,
        "Pins down all side laps together": (math.floor(face / lap_spacing) + 1) * (runs - 1),
        "Length of pin to order": length(firm if soil == "firm" else loose),
    }
    for question, value in expect.items():
        same(key, question, value)
    assert key["Angle in degrees"] == f"{math.degrees(math.atan(1 / ratio)):.1f}°"
    side = "left" if wind == "right" else "right"
    assert key["Where the first run is laid"] == f"at the {side} end"
    assert len(key) == 12, f"{len(key)} questions"


def solve_earth(text, key):
    rise, ratio, width = shape(text)
    trenches = re.findall(r"trench along the whole (?:crest|toe), (.+?) deep and (.+?) wide",
                          text)
    swell, back, load = found(r"takes (\d+) % more room\. (\d+) % of the loose soil goes back;"
                              r" the rest is hauled away in loads of ([\d.]+) ", text)
    rate, purity, germination = found(
        r"Seed: ([\d.]+) \S+/\S+(?: ft²)? of pure live seed\. On the tag: purity (\d+) %, "
        r"germination (\d+) %", text)
    us = " ft " in text
    face = math.hypot(rise * ratio, rise)
    area = face * width
    dug = sum(width * length(depth) * length(across) for depth, across in trenches)
    dug /= 27.0 if us else 1.0
    loose = dug * (1 + float(swell) / 100)
    haul = loose * (1 - float(back) / 100)
    share = float(purity) * float(germination) / 1e4
    live = area * float(rate) / 1000
    assert trenches, "no trench"
    for question, value in {
        "Length of the face down the slope": face,
        "Net area": area / (9.0 if us else 1.0),
        "Soil dug from the trenches, as it lay in the ground": dug,
        "The same soil, loose": loose,
        "Loose soil to haul away": haul,
        "Loads": up(haul / float(load)),
        "Share of pure live seed in the seed as sold": 100 * share,
        "Pure live seed for the face": live,
        "Seed as sold, to order": live / share,
    }.items():
        same(key, question, value)
    assert len(key) == 9, f"{len(key)} questions"


def heron(a, b, c):
    s = (a + b + c) / 2
    return math.sqrt(s * (s - a) * (s - b) * (s - c))


def angle(a, b, across):
    return math.acos((a * a + b * b - across * across) / (2 * a * b))


def solve_taped(text, key):
    ab, bc, cd, da, ac = (length(found(rf"{name}  (.+?)[;\]]", text))
                          for name in ("AB", "BC", "CD", "DA", "AC"))
    taped, allowed = map(length, found(r"taped as (.+?); it may be (.+?) off", text))
    yard = 1.0 if " m;" in text else 9.0
    both = angle(ab, ac, bc) + angle(ac, da, cd)
    bd = math.sqrt(ab * ab + da * da - 2 * ab * da * math.cos(both))
    same(key, "Area of triangle ABC", heron(ab, bc, ac) / yard)
    same(key, "Area of triangle ACD", heron(ac, cd, da) / yard)
    same(key, "Area of the face", (heron(ab, bc, ac) + heron(ac, cd, da)) / yard)
    same(key, "BD, worked out from the other tapes", bd)
    verdict = "right" if abs(taped - bd) <= allowed else "tape again"
    assert key["The sketch: right, or to be taped again"] == verdict


def same(key, question, value):
    """Counts exactly; all else as printed."""
    printed = key[question]
    if printed.isdigit():
        assert int(printed) == value, f"{question}: {printed}, worked out {value}"
        return
    number = re.fullmatch(r"([\d.\u202f ]+) (m²|yd²|m³|yd³|kg|lb|%)", printed)
    if number:
        digits = number[1].replace(" ", "")
        step = 10.0 ** -len(digits.partition(".")[2])
        assert abs(float(digits) - value) <= 0.51 * step, f"{question}: {printed}, {value}"
        return
    step = 0.0006 if printed.endswith("mm") else CLOSE
    if printed.endswith("in"):
        step = 0.013  # an eighth of an inch, in feet
    assert abs(length(printed) - value) <= step, f"{question}: {printed}, {value}"


def solve(job, units, seed):
    asked = exercises(sheet(job, "class", units, seed))
    key = exercises(sheet(job, "class-key", units, seed))
    assert sorted(asked) == sorted(key) == [1, 2, 3, 4, 5], sorted(asked)
    for number, solver in ((1, solve_laying), (2, solve_laying), (3, solve_laying),
                           (4, solve_earth), (5, solve_taped)):
        try:
            solver(asked[number].replace(" * ", " "), answers(key[number]))
        except AssertionError as error:
            raise AssertionError(f"exercise {number}, {units}, seed {seed}: {error}")


def case(job):
    def run():
        for units in UNITS:
            for seed in SEEDS:
                solve(job, units, seed)
    return run


CASES = [(f"class-{job.name.split('.')[0]}", case(job))
         for job in sorted((ROOT / "examples").glob("*.slope.json"))]
sys.exit(tap.run(CASES))
