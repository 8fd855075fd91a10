"""Three rules, written from rules.json, on their vectors: python3 check.py <folder schemas/v1>."""

import copy
import json
import sys
from pathlib import Path

import jsonschema



def drain_at_mark_up(sheet):
    for gearcase, case in sheet["gearcases"].items():
        for opening, plug in case["openings"].items():
            for at, use in enumerate(plug["uses"]):
                if use["role"] == "drain" and use.get("wheelMark") == "mark up":
                    yield f"/gearcases/{gearcase}/openings/{opening}/uses/{at}/wheelMark", {"opening": plug["name"]}


def pause_reversed(log):
    for at, pause in enumerate(log.get("pauses", [])):
        if "to" in pause and pause["from"] > pause["to"]:
            yield f"/pauses/{at}", {"from": pause["from"], "to": pause["to"]}


def viscosities_swapped(stock):
    for key, container in stock["containers"].items():
        kv40, kv100 = container["oil"].get("kv40"), container["oil"].get("kv100")
        if kv40 and kv100 and kv100["value"] >= kv40["value"]:
            yield f"/containers/{key}/oil", {"container": container["name"], "kv40": kv40, "kv100": kv100}


def patch(documents, changes):
    """Applies a JSON Patch (RFC 6902) with add, remove and replace."""
    documents = copy.deepcopy(documents)
    for change in changes:
        *way, last = [key.replace("~1", "/").replace("~0", "~") for key in change["path"].split("/")[1:]]
        here = documents
        for key in way:
            here = here[int(key)] if isinstance(here, list) else here[key]
        if isinstance(here, list):
            last = len(here) if last == "-" else int(last)
        if change["op"] == "remove":
            del here[last]
        elif change["op"] == "add" and isinstance(here, list):
            here.insert(last, copy.deepcopy(change["value"]))
        else:
            here[last] = copy.deepcopy(change["value"])
    return documents


def main(folder):
    def read(path):
        return json.loads((folder / path).read_text(encoding="utf-8"))

    rules = {rule["code"]: rule for rule in read("rules.json")["rules"]}
    schemas = {kind: jsonschema.Draft202012Validator(read(f"{kind}.json")) for kind in ("spec-sheet", "machine-log", "stock")}
    failures = 0
    for code, find in (
        ("spec/drain-at-mark-up", drain_at_mark_up),
        ("log/pause-reversed", pause_reversed),
        ("stock/viscosities-swapped", viscosities_swapped),
    ):
        cases = 0
        for vector in (read(f"vectors/{name}") for name in rules[code]["vectors"]):
            base = {name: read(f"vectors/{vector['base']}/{name}") for name in vector["files"]}
            for change, expect in [([], vector["expect"])] + [([one["change"]], one["expect"]) for one in vector["also"]]:
                documents = patch(base, vector["patch"] + change).items()
                valid = all(schemas[one["kind"]].is_valid(one) for _, one in documents)
                found = [(name, *finding) for name, one in documents if one["kind"] in rules[code]["about"] for finding in find(one)]
                expected = [(one["file"], one["path"], one["params"]) for one in expect if one["code"] == code]
                cases += 1
                failures += found != expected or not valid
        print(f"{code}: {cases} cases")
    print(f"{failures} failures")
    return 1 if failures else 0


sys.exit(main(Path(sys.argv[1])))
