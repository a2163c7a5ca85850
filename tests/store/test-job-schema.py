# SPDX-License-Identifier: MIT
"""Holds the published schema of job files against the samples and the examples.

The reader is held against the same table by test-job-file.c; a row whose schema
column says "ok" and whose reader column does not is a rule that a schema cannot say.

Arguments: source root.
"""

import json
import sys
from pathlib import Path

ROOT = Path(sys.argv[1])
DATA = ROOT / "tests" / "store" / "data"
SCHEMA = json.loads((ROOT / "resources/schema/job-1.schema.json").read_text(encoding="utf-8"))
sys.path.insert(0, str(ROOT / "tests" / "lint"))
import tap  # noqa: E402

try:
    import jsonschema
except ImportError:
    jsonschema = None


def without_duplicates(pairs):
    keys = [key for key, _ in pairs]
    assert len(set(keys)) == len(keys), "duplicate key"
    return dict(pairs)


def refuse(word):
    raise ValueError(f"{word} is not JSON")


def errors(path):
    """Every complaint about a file, [] when it is good."""
    try:
        tree = json.loads(path.read_bytes().decode("utf-8"), parse_constant=refuse,
                          object_pairs_hook=without_duplicates)
    except (ValueError, AssertionError, RecursionError) as error:
        return [str(error)]
    validator = jsonschema.Draft202012Validator(SCHEMA)
    return [error.message for error in validator.iter_errors(tree)]


def table():
    for line in (DATA / "table.tsv").read_text(encoding="utf-8").splitlines():
        if line and not line.startswith("#"):
            yield line.split("\t")


def nodes(node, path=""):
    if isinstance(node, dict):
        if "properties" in node:
            for key, child in node["properties"].items():
                yield f"{path}.{key}", child
        for key, child in node.items():
            if key != "allOf":  # limits of keys that are described elsewhere
                yield from nodes(child, f"{path}.{key}")


def case_schema_is_valid():
    jsonschema.Draft202012Validator.check_schema(SCHEMA)


def case_every_key_is_described():
    bare = [path for path, node in nodes(SCHEMA) if not node.get("description")]
    assert not bare, "\n".join(bare)


def case_table():
    wrong = []
    count = 0
    for name, _, want, *_ in table():
        count += 1
        found = errors(DATA / f"{name}.slope.json")
        if (want == "ok") != (not found):
            wrong.append(f"{name}: expected {want}, found {found}")
    assert count > 70, f"only {count} rows"
    assert not wrong, "\n".join(wrong)


def case_table_is_complete():
    named = {row[0] for row in table()}
    files = {str(path.relative_to(DATA)).removesuffix(".slope.json")
             for path in DATA.rglob("*.slope.json")}
    assert named == files, sorted(named ^ files)


def case_examples():
    wrong = {str(path): found for path in sorted((ROOT / "examples").rglob("*.slope.json"))
             if (found := errors(path))}
    assert not wrong, wrong


CASES = [("/store/schema/valid", case_schema_is_valid),
         ("/store/schema/every-key-is-described", case_every_key_is_described),
         ("/store/schema/table", case_table),
         ("/store/schema/table-is-complete", case_table_is_complete),
         ("/store/schema/examples", case_examples)]

if __name__ == "__main__":
    if jsonschema is None:
        print("1..0 # SKIP the Python module jsonschema is not installed")
        sys.exit(0)
    sys.exit(tap.run(CASES))
