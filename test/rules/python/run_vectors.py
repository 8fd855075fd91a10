"""Runs the ten rules of rules.py over every vector, and over each of its variations: python3 run_vectors.py <root>.

Only findings with the codes of the ten rules are compared; a vector of another rule shows that they find nothing there.
"""
import copy
import json
import sys
from pathlib import Path

from rules import RULES

ORDER = ["spec-sheet", "machine-log", "toolbox", "stock", "procedure", "service-record"]


def tokens(pointer):
    return [one.replace("~1", "/").replace("~0", "~") for one in pointer.split("/")[1:]]


def step(here, token):
    return here[int(token) if isinstance(here, list) else token]


def apply(document, patch):
    """A JSON Patch of add, remove and replace."""
    document = copy.deepcopy(document)
    for operation in copy.deepcopy(patch):
        *way, last = tokens(operation["path"])
        here = document
        for token in way:
            here = step(here, token)
        is_list = isinstance(here, list)
        at = last if not is_list else len(here) if last == "-" else int(last)
        if operation["op"] == "remove":
            del here[at]
        elif operation["op"] == "add" and is_list:
            here.insert(at, operation["value"])
        else:
            here[at] = operation["value"]
    return document


def place_key(here, pointer):
    """Sorts places as the document writes them, an object before what it holds."""
    key = []
    for token in tokens(pointer):
        key.append(int(token) if isinstance(here, list) else list(here).index(token))
        here = step(here, token)
    return key


def check(files, places):
    """The findings of RULES, which has the order of the manifest; a record in a log counts as a document after it."""
    world = {kind: [one for one in files.values() if one["kind"] == kind] for kind in ORDER} | {"leaves": places}
    found = []
    for file, document in sorted(files.items(), key=lambda item: ORDER.index(item[1]["kind"])):
        records = document["records"] if document["kind"] == "machine-log" else []
        for prefix, subject in [("", document)] + [(f"/records/{at}", one) for at, one in enumerate(records)]:
            own = [
                {"code": code, "severity": severity, "file": file, "path": prefix + path, "params": params}
                for code, (about, rule) in RULES.items() if about == subject["kind"]
                for path, severity, params in rule(subject, world)
            ]
            found += sorted(own, key=lambda one: place_key(document, one["path"]))
    return found


def main(root):
    manifest = json.loads((root / "schemas/v1/rules.json").read_text("utf-8"))
    places = [(one["kind"], one["place"].split("/")[1:]) for one in manifest["leaves"]]
    vectors = root / "schemas/v1/vectors"
    compared, own, failures = 0, dict.fromkeys(RULES, 0), []
    for file in sorted(vectors.glob("*/*.json")):
        vector = json.loads(file.read_text("utf-8"))
        if vector.get("refusedBy") == "schema":
            continue
        base = {name: json.loads((vectors / vector["base"] / name).read_text("utf-8")) for name in vector["files"]}
        for case in [{"expect": vector["expect"]}] + vector["also"]:
            patch = vector["patch"] + ([case["change"]] if "change" in case else [])
            expected = [{key: one[key] for key in one if key != "why"} for one in case["expect"] if one["code"] in RULES]
            found = check(apply(base, patch), places)
            compared += 1
            if vector["code"] in RULES:
                own[vector["code"]] += 1
            if found != expected:
                failures.append({"file": file.name, "patch": patch[-1], "found": found, "expected": expected})
    print(json.dumps({"compared": compared, "own": own, "failures": failures}, indent=1))
    return 1 if failures else 0


if __name__ == "__main__":
    sys.exit(main(Path(sys.argv[1])))
