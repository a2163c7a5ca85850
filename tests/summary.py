# SPDX-License-Identifier: MIT
"""Adds up single test cases from meson's logs and prints what a person wants to know.

Arguments: pairs of a title and a testlog.json. Last line: "N passed, N failed".
"""

import json
import re
import sys
from pathlib import Path

CASE = re.compile(r"^(ok|not ok)\b[ \t]*\d*[ \t]*-?[ \t]*(.*?)[ \t]*(#[ \t]*SKIP\b.*)?$",
                  re.IGNORECASE)


class Run:
    def __init__(self):
        self.passed = 0
        self.failed = []
        self.skipped = []

    def add(self, program):
        """One test program of the log."""
        name = program["name"]
        before = len(self.failed)
        cases = 0
        for line in (program.get("stdout") or "").splitlines():
            match = CASE.match(line)
            if not match:
                continue
            cases += 1
            outcome, case, skip = match.groups()
            if skip:
                self.skipped.append(f"{name}: {case} ({skip.lstrip('# ').strip()})")
            elif outcome.lower() == "ok":
                self.passed += 1
            else:
                self.failed.append(f"{name}: {case}")
        self.add_outcome(program, cases, len(self.failed) > before)

    def add_outcome(self, program, cases, has_failed_case):
        """A program can fail without a failed case (crash, leak), or have no cases at all."""
        name, result = program["name"], program["result"]
        if result == "SKIP":
            if not cases:
                self.skipped.append(f"{name}: the whole program")
        elif result not in ("OK", "EXPECTEDFAIL"):
            if not has_failed_case:
                self.failed.append(f"{name}: the program ended with {result}, "
                                   f"status {program.get('returncode')}")
        elif not cases:
            self.passed += 1


def read(path):
    run = Run()
    programs = []
    log = Path(path)
    if not log.exists():
        run.failed.append(f"no log {path}: the run did not start")
        return run, programs
    for line in log.read_text(encoding="utf-8").splitlines():
        programs.append(json.loads(line))
        run.add(programs[-1])
    if not programs:
        run.failed.append(f"{path} is empty: no test was run")
    return run, programs


def show_failure(program):
    print(f"\n--- {program['name']}: {program['result']}, status {program.get('returncode')}")
    for stream in ("stdout", "stderr"):
        lines = [line for line in (program.get(stream) or "").splitlines()
                 if not line.startswith("ok ")]
        for line in lines[-60:]:
            print(f"    {line}")


def main(arguments):
    total = Run()
    rows = []
    for title, path in zip(arguments[::2], arguments[1::2]):
        run, programs = read(path)
        for program in programs:
            if program["result"] not in ("OK", "SKIP", "EXPECTEDFAIL"):
                show_failure(program)
        rows.append((title, run))
        total.passed += run.passed
        total.failed += [f"{title}: {text}" for text in run.failed]
        total.skipped += [f"{title}: {text}" for text in run.skipped]

    width = max(len(title) for title, _ in rows)
    print()
    for title, run in rows:
        print(f"{title:<{width}}  {run.passed:5} passed  {len(run.failed):3} failed  "
              f"{len(run.skipped):3} skipped")
    for word, names in (("Skipped", total.skipped), ("Failed", total.failed)):
        if names:
            print(f"\n{word}:")
            for name in names:
                print(f"  {name}")
    print(f"\n{total.passed} passed, {len(total.failed)} failed")
    return 1 if total.failed else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
