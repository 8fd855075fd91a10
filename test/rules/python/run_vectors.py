"""Runs the five rules of rules.py over every vector, and over each of its variations: python3 run_vectors.py <root>.

Only findings with the codes of the five rules are compared; a vector of another rule shows that they keep silent.
"""

import copy
import json
import sys
from pathlib import Path

from rules import RULES

ORDER = ["spec-sheet", "machine-log", "toolbox", "stock", "procedure", "service-record"]


def tokens(pointer):
    return [one.replace("~1", "/").replace("~0", "~") for one in pointer.split("/")[1:]]


def apply(document, patch):
    """A JSON Patch of add, remove and replace."""
    document, patch = copy.deepcopy((document, patch))
    for operation in patch:
        *way, last = tokens(operation["path"])
        here = document
        for token in way:
            here = here[int(token)] if isinstance(here, list) else here[token]
        if isinstance(here, list):
            at = len(here) if last == "-" else int(last)
            if operation["op"] == "add":
                here.insert(at, operation["value"])
            elif operation["op"] == "remove":
                del here[at]
            else:
                here[at] = operation["value"]
        elif operation["op"] == "remove":
            del here[last]
        else:
            here[last] = operation["value"]
    return document


def place_key(document, pointer):
    """Sorts places as the document writes them, an object before what it holds."""
    key, here = [], document
    for token in tokens(pointer):
        if isinstance(here, list):
            key.append(int(token) if token.isdigit() else len(here))
            here = here[int(token)] if token.isdigit() and int(token) < len(here) else None
        else:
            keys = list(here) if isinstance(here, dict) else []
            key.append(keys.index(token) if token in keys else len(keys))
            here = here.get(token) if isinstance(here, dict) else None
    return key


def check(files, places):
    world = {kind: [one for one in files.values() if one["kind"] == kind] for kind in ORDER}
    world["leaves"] = places
    found = []
    for kind in ORDER:
        for file, document in files.items():
            if document["kind"] != kind:
                continue
            subjects = [("", document)]
            if kind == "machine-log":
                subjects += [(f"/records/{at}", one) for at, one in enumerate(document["records"])]
            for prefix, subject in subjects:
                own = [
                    {"code": code, "severity": severity, "file": file, "path": prefix + path, "params": params}
                    for code, (about, rule) in RULES.items()
                    if about == subject["kind"]
                    for path, severity, params in rule(subject, world)
                ]
                found += sorted(own, key=lambda one: place_key(document, one["path"]))
    return found


def main(root):
    manifest = json.loads((root / "schemas/v1/rules.json").read_text())
    places = [(one["kind"], one["place"].split("/")[1:]) for one in manifest["leaves"]]
    vectors = root / "schemas/v1/vectors"
    compared = own = 0
    failures = []
    for file in sorted(vectors.glob("*/*.json")):
        vector = json.loads(file.read_text())
        if vector.get("refusedBy") == "schema":
            continue
        base = {name: json.loads((vectors / vector["base"] / name).read_text()) for name in vector["files"]}
        cases = [(vector["patch"], vector["expect"])]
        cases += [(vector["patch"] + [one["change"]], one["expect"]) for one in vector["also"]]
        for patch, expect in cases:
            expected = [{key: one[key] for key in one if key != "why"} for one in expect if one["code"] in RULES]
            found = check(apply(base, patch), places)
            compared += 1
            own += vector["code"] in RULES
            if found != expected:
                failures.append({"file": str(file.relative_to(root)), "patch": patch[-1], "found": found, "expected": expected})
    print(json.dumps({"compared": compared, "own": own, "failures": failures}, indent=1))
    return 1 if failures else 0


if __name__ == "__main__":
    sys.exit(main(Path(sys.argv[1])))
