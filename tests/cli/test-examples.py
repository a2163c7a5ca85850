# SPDX-License-Identifier: MIT
"""Compares slopepack with the quantities worked by hand in examples/*.expected.md.

A line that counts has a name in back-quotes in its first cell and a number in its
second. A number printed with decimals holds to half of its last digit; a whole
number holds exactly.

Arguments: source root, slopepack.
"""

import functools
import json
import re
import subprocess
import sys
from pathlib import Path

ROOT = Path(sys.argv[1])
SLOPEPACK = str(Path(sys.argv[2]).resolve())
sys.path.insert(0, str(ROOT / "tests" / "lint"))
import tap  # noqa: E402

ROW = re.compile(r"^\| `([^`]+)` \| ([0-9.]+) \|", re.MULTILINE)


def expected(path):
    return [(name, text) for name, text in ROW.findall(path.read_text(encoding="utf-8"))]


@functools.lru_cache
def workings(job):
    done = subprocess.run([SLOPEPACK, "tally", job, "--format", "json"], capture_output=True,
                          timeout=60)
    assert done.returncode == 0, f"status {done.returncode}\n{done.stderr.decode()[-2000:]}"
    tally = json.loads(done.stdout)
    return {working["name"]: working["value"] for working in tally["workings"]}


def tolerance(text):
    decimals = len(text.partition(".")[2])
    return 0.5 * 10.0 ** -decimals if decimals else 0.0


def case_of(path, name, text):
    job = path.with_name(path.name.replace(".expected.md", ".slope.json"))

    def case():
        found = workings(job)
        assert name in found, f"slopepack has no number named {name}"
        assert abs(found[name] - float(text)) <= tolerance(text) * (1 + 1e-9), (
            f"slopepack says {found[name]}, worked by hand {text}")
    return f"/examples/{path.name.partition('.')[0]}/{name}", case


def case_every_job_has_hand_work():
    jobs = {path.name.partition(".")[0] for path in (ROOT / "examples").glob("*.slope.json")}
    papers = {path.name.partition(".")[0]: len(expected(path))
              for path in (ROOT / "examples").glob("*.expected.md")}
    assert len(jobs) >= 3
    assert jobs == set(papers), f"{jobs} against {set(papers)}"
    assert all(count >= 15 for count in papers.values()), papers


def case_schema():
    """The examples follow the published schema."""
    try:
        import jsonschema
    except ImportError:
        return "python3-jsonschema is not installed"
    schema = json.loads((ROOT / "resources/schema/job-1.schema.json").read_text("utf-8"))
    jsonschema.Draft7Validator.check_schema(schema)
    for path in sorted((ROOT / "examples").glob("*.slope.json")):
        jsonschema.validate(json.loads(path.read_text("utf-8")), schema)
    return None


def case_along():
    """Worked by hand in kelpie-lane.expected.md; a round crest has no such comparison."""
    def tail(name):
        done = subprocess.run([SLOPEPACK, "tally", ROOT / "examples" / name], timeout=60,
                              capture_output=True, check=True)
        return done.stdout.decode().partition("To compare: laid along")[2]
    for words in (r"Courses, the lowest first +4\n", r"with end laps +362\.10\sm\n",
                  r"End laps +7\n", r"Rolls +8\n"):
        assert re.search(words, tail("kelpie-lane.slope.json")), words
    assert tail("quernby-heap.slope.json") == ""


CASES = [("/examples/every-job-has-hand-work", case_every_job_has_hand_work),
         ("/examples/schema", case_schema),
         ("/examples/along", case_along)]
CASES += [case_of(path, name, text)
          for path in sorted((ROOT / "examples").glob("*.expected.md"))
          for name, text in expected(path)]

if __name__ == "__main__":
    sys.exit(tap.run(CASES))
