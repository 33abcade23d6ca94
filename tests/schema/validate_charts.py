#!/usr/bin/env python3
"""Validates chart files against the JSON Schema, and proves on faulty ones that the schema can say no.

usage: validate_charts.py SCHEMA CHART...
"""

import copy
import json
import sys

import jsonschema

# Faults, each one change to a sound chart: a path to a member and the value put there.
SOUND = {
    "format": "lacewright-chart",
    "version": 1,
    "castOn": {"stitches": 3},
    "stitches": [{"id": "own", "takes": 1, "makes": 1, "glyph": [{"at": [0, 0], "tail": "l20 20"}]}],
    "width": 3,
    "repeats": [{"name": "A", "right": 1, "left": 2, "jogs": [{"row": 1, "left": 1}]}],
    "rowRepeat": {"firstRow": 1, "lastRow": 2},
    "points": [{"name": "S", "column": 1}],
    "sizes": [{"name": "M", "start": "S", "end": 3, "times": {"A": 2}, "body": 91.5, "shoulder": 8}],
    "grading": {"pieces": 2, "leastEase": -5.5, "shoulders": [{"row": 4, "right": 1, "left": 3}]},
    "rows": ["k*3", "own yo k2tog", "*c22l **2", "k2tog *  p"],
    "unknown": {"kept": True},
}
FAULTS = [
    (["format"], "picture"),
    (["version"], 2),
    (["worked"], "sideways"),
    (["castOn"], {}),
    (["castOn"], {"stitches": 1, "multiple": 2}),
    (["gauge"], {"rows": 0}),
    (["stitches", 0, "id"], "a b"),
    (["stitches", 0, "takes"], 61),
    (["stitches", 0, "kind"], "unknown"),
    (["stitches", 0, "glyph", 0, "tail"], 'z"/>'),
    (["width"], 4001),
    (["width"], 2.5),
    (["repeats", 0, "right"], 0),
    (["repeats", 0, "jogs", 0], {"left": 1}),
    (["rowRepeat"], {"firstRow": 1}),
    (["points", 0, "column"], "1"),
    (["points", 0, "name"], ""),
    (["sizes", 0, "start"], 0),
    (["sizes", 0, "times", "A"], -1),
    (["sizes", 0, "changes"], [{"firstRow": 1, "lastRow": 1, "start": 1}]),
    (["sizes", 0, "substitutions"], [{"row": 1, "column": 1, "edge": "left", "stitch": "k"}]),
    (["sizes", 0, "body"], 0),
    (["sizes", 0, "shoulder"], 1.5),
    (["grading", "pieces"], 0),
    (["grading", "rising"], 1),
    (["grading", "mostEase"], 1001),
    (["grading", "edgeStitches"], -1),
    (["grading", "shoulders", 0], {"row": 1, "right": 1}),
    (["rows"], []),
    (["rows", 0], ""),
    (["rows", 0], "k*0"),
    (["rows", 0], "k*2x"),
    (["rows", 0], ["k", "k", "k"]),
]


def with_fault(path, value):
    chart = copy.deepcopy(SOUND)
    place = chart
    for step in path[:-1]:
        place = place[step]
    place[path[-1]] = value
    return chart


def main():
    schema_path, *charts = sys.argv[1:]
    if not charts:
        sys.exit("no chart to validate")
    with open(schema_path, encoding="utf-8") as file:
        schema = json.load(file)
    validator_class = jsonschema.Draft202012Validator
    validator_class.check_schema(schema)
    validator = validator_class(schema)
    failures = 0
    for path in charts:
        with open(path, encoding="utf-8") as file:
            for error in validator.iter_errors(json.load(file)):
                print(f"{path}: {error.json_path}: {error.message}")
                failures += 1
    for error in validator.iter_errors(SOUND):
        print(f"a sound chart: {error.json_path}: {error.message}")
        failures += 1
    for path, value in FAULTS:
        if validator.is_valid(with_fault(path, value)):
            print(f"the schema accepts {value!r} at {path}")
            failures += 1
    print(f"{len(charts)} charts and {len(FAULTS)} faults, {failures} failures")
    sys.exit(1 if failures else 0)


if __name__ == "__main__":
    main()
