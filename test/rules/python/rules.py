"""Ten rules, written from schemas/v1/rules.json alone. Python's standard library only.

Each takes (document, world), where world holds all documents of the set by kind, and yields (path, severity, params).
"""

from fractions import Fraction

# Exact factors: litre and millilitre of the SI; US and imperial gallon of 231 in3 and 4.54609 L, inch of 25.4 mm.
IN3 = Fraction("16.387064")
GAL_US, GAL_IMP = 231 * IN3, Fraction("4546.09")
MILLILITRES = {
    "mL": Fraction(1), "cm3": Fraction(1), "L": Fraction(1000),
    "gal_us": GAL_US, "qt_us": GAL_US / 4, "pt_us": GAL_US / 8, "fl_oz_us": GAL_US / 128,
    "gal_imp": GAL_IMP, "qt_imp": GAL_IMP / 4, "pt_imp": GAL_IMP / 8, "fl_oz_imp": GAL_IMP / 160,
}
# Pound of 0.45359237 kg, standard gravity of 9.80665 m/s2, foot of 0.3048 m.
LBF = Fraction("0.45359237") * Fraction("9.80665")
KGF = Fraction("9.80665")
NEWTON_METRES = {
    "N.m": Fraction(1), "cN.m": Fraction(1, 100), "dN.m": Fraction(1, 10), "kN.m": Fraction(1000),
    "lbf.ft": LBF * Fraction("0.3048"), "lbf.in": LBF * Fraction("0.0254"), "ozf.in": LBF * Fraction("0.0254") / 16,
    "kgf.m": KGF, "kgf.cm": KGF / 100,
}
TEMPERATURES = {"degC", "degF", "K"}
STATED = ("nominal", "nominal with tolerance", "limits")


def leaves(sheet, places):
    """Yields (path, place, kind, leaf): base leaves in the order of the document, then those of the overrides."""

    def walk(here, tokens):
        items = enumerate(here) if isinstance(here, list) else here.items()
        for key, value in items:
            if not isinstance(value, (dict, list)):
                continue
            now = tokens + [str(key)]
            for kind, place in places:
                if len(place) == len(now) and all(a in ("*", b) for a, b in zip(place, now)):
                    path = "/" + "/".join(now)
                    yield path, path, kind, value
                    break
            else:
                yield from walk(value, now)

    yield from walk({key: sheet[key] for key in sheet if key != "overrides"}, [])
    for at, override in enumerate(sheet.get("overrides", [])):
        for place, entry in enumerate(override["set"]):
            yield f"/overrides/{at}/set/{place}/to", entry["path"], entry["kind"], entry["to"]


def stated_values(path, here):
    if isinstance(here, dict) and here.get("kind") in STATED:
        yield path, here
        return
    items = enumerate(here) if isinstance(here, list) else here.items()
    for key, value in items:
        if isinstance(value, (dict, list)):
            yield from stated_values(f"{path}/{key}", value)


def tolerance_too_large(sheet, world):
    for path, _, _, leaf in leaves(sheet, world["leaves"]):
        for at, value in stated_values(path, leaf):
            printed = [(at, value)] + [(f"{at}/printed/{n}", one) for n, one in enumerate(value.get("printed", []))]
            for where, one in printed:
                if one["kind"] != "nominal with tolerance" or one["unit"] in TEMPERATURES:
                    continue
                for side in ("minus", "plus"):
                    if Fraction(one[side]) >= Fraction(one["value"]):
                        params = {key: one[key] for key in ("value", "minus", "plus", "unit")}
                        yield f"{where}/{side}", "error", params
                        break


def limits_reversed(sheet, world):
    for path, _, _, leaf in leaves(sheet, world["leaves"]):
        for at, value in stated_values(path, leaf):
            printed = [(at, value)] + [(f"{at}/printed/{n}", one) for n, one in enumerate(value.get("printed", []))]
            for where, one in printed:
                if "min" in one and "max" in one and Fraction(one["min"]) > Fraction(one["max"]):
                    yield where, "error", {key: one[key] for key in ("min", "max", "unit")}


def volumes(value):
    """The low and the high volume in mL; None where the value is not judged."""
    if value is None or value["kind"] == "not stated" or value["unit"] not in MILLILITRES:
        return None
    if value["kind"] == "limits":
        low, high = value.get("min", value.get("max")), value.get("max", value.get("min"))
    else:
        low = high = value["value"]
    if low is None:
        return None
    factor = MILLILITRES[value["unit"]]
    return Fraction(low) * factor, Fraction(high) * factor


def pairs(sheet, places, one, other):
    blocks = {}
    for path, place, kind, leaf in leaves(sheet, places):
        if kind == "value" and place in (one, other):
            block = "/".join(path.split("/")[:3]) if path.startswith("/overrides/") else ""
            blocks.setdefault(block, {}).setdefault(place, (path, leaf))
    base = blocks.get("", {})
    for block in blocks.values():
        changed = block.get(one) or block.get(other)
        first, second = block.get(one) or base.get(one), block.get(other) or base.get(other)
        if first and second:
            yield changed[0], first[1], second[1]


def refill_larger_than_dry_fill(sheet, world):
    for gearcase_id, gearcase in sheet["gearcases"].items():
        fill = f"/gearcases/{gearcase_id}/oilSpace/fill"
        for path, refill, dry in pairs(sheet, world["leaves"], f"{fill}/drainAndRefill", f"{fill}/dryFill"):
            first, second = volumes(refill), volumes(dry)
            if first is None or second is None or first[0] <= second[1]:
                continue
            yield path, "error", {
                "gearcase": gearcase["name"],
                "refill": {"value": float(first[0]), "unit": "mL"},
                "dryFill": {"value": float(second[1]), "unit": "mL"},
            }


def parts(sheet):
    """Openings, covers and shields: pointer, name."""
    for gearcase_id, gearcase in sheet["gearcases"].items():
        for kind in ("openings", "covers"):
            for key, part in gearcase.get(kind, {}).items():
                yield f"/gearcases/{gearcase_id}/{kind}/{key}", f"{gearcase['name']}, {part['name']}"
    for key, shield in sheet.get("shields", {}).items():
        yield f"/shields/{key}", shield["name"]


def stages_not_rising(sheet, world):
    named = list(parts(sheet))
    for path, place, kind, leaf in leaves(sheet, world["leaves"]):
        if kind != "tightening" or leaf["kind"] != "torque" or "stages" not in leaf:
            continue
        name = next((name for pointer, name in named if place.startswith(pointer + "/")), None)
        if name is None:
            continue
        steps = [aim(one) for one in leaf["stages"] + [leaf["torque"]]]
        last = len(steps) - 1
        for at in range(1, len(steps)):
            before, step = steps[at - 1], steps[at]
            if before is None or step is None:
                continue
            first, second = (Fraction(one["value"]) * NEWTON_METRES[one["unit"]] for one in (before, step))
            may_be_equal = at == last and "thenAngle" in leaf
            if first < second or (first == second and may_be_equal):
                continue
            where = f"{path}/torque" if at == last else f"{path}/stages/{at}"
            yield where, "error", {"part": name, "before": before, "step": step}
            break


def aim(torque):
    figure = torque.get("max", torque.get("min")) if torque["kind"] == "limits" else torque["value"]
    return None if figure is None else {"value": figure, "unit": torque["unit"]}


def overlapping_overrides(sheet, world):
    variants = sheet["machine"]["variants"]
    seen = {}
    for at, override in enumerate(sheet.get("overrides", [])):
        for place, entry in enumerate(override["set"]):
            pointer, when = f"/overrides/{at}/set/{place}", override["when"]
            earlier = seen.setdefault(entry["path"], [])
            for other, condition in earlier:
                if both_hold(condition, when, variants):
                    yield pointer, "error", {"target": entry["path"], "with": other}
                    break
            earlier.append((pointer, when))


def both_hold(first, second, variants):
    if not variants:
        return agree(first, second)
    for variant_id, variant in variants.items():
        if any(variant_id not in one.get("variants", [variant_id]) for one in (first, second)):
            continue
        own = variant.get("when", {})
        if agree(first, second) and agree(first, own) and agree(second, own):
            return True
    return False


def agree(first, second):
    return agree_market(first, second) and agree_years(first, second) and agree_serials(first, second)


def agree_market(first, second):
    return "market" not in first or "market" not in second or bool(set(first["market"]) & set(second["market"]))


def agree_years(first, second):
    years = [one.get("modelYears", {}) for one in (first, second)]
    return max(one.get("from", 0) for one in years) <= min(one.get("to", 9999) for one in years)


def agree_serials(first, second):
    if "serials" not in first or "serials" not in second:
        return True
    one, other = first["serials"], second["serials"]
    short, long = sorted((one.get("prefix", ""), other.get("prefix", "")), key=len)
    if short != long:
        rest = long[len(short):]
        return long.startswith(short) and rest.isascii() and rest.isdigit()
    return not ends_before(one, other) and not ends_before(other, one)


def ends_before(one, other):
    to, start = one.get("to"), other.get("from")
    return to is not None and start is not None and len(to) == len(start) and to < start


def pause_reversed(log, world):
    for at, pause in enumerate(log.get("pauses", [])):
        if pause["from"] > pause["to"]:
            yield f"/pauses/{at}", "error", {"from": pause["from"], "to": pause["to"]}


def larger(one, other):
    first, second = (Fraction(str(each["value"])) * MILLILITRES[each["unit"]] for each in (one, other))
    return first > second


def vessel_graduation(toolbox, world):
    for vessel_id, vessel in toolbox["vessels"].items():
        for key in ("graduation", "lowestMark"):
            if key in vessel and larger(vessel[key], vessel["size"]):
                params = {"vessel": vessel["name"], "size": vessel["size"], "mark": vessel[key]}
                yield f"/vessels/{vessel_id}/{key}", "error", params
                break


def opened_larger_than_size(stock, world):
    for container_id, container in stock["containers"].items():
        if "opened" in container and larger(container["opened"], container["size"]):
            params = {"container": container["name"], "opened": container["opened"], "size": container["size"]}
            yield f"/containers/{container_id}/opened", "error", params


def sheet_of(record, world):
    named = record["sheet"]["id"], record["sheet"]["revision"]
    return next((one for one in world["spec-sheet"] if (one["id"], one["revision"]) == named), None)


def leak_left(record, world):
    sheet = sheet_of(record, world)
    if sheet is None or record["detail"] != "full":
        return
    for at, entry in enumerate(record["entries"]):
        found, gearcase = entry.get("leaks"), sheet["gearcases"].get(entry["gearcase"])
        if gearcase is not None and found in ("weeping", "dripping"):
            severity = "error" if found == "dripping" else "warning"
            yield f"/entries/{at}/leaks", severity, {"gearcase": gearcase["name"], "found": found}


def plug_not_tightened(record, world):
    sheet = sheet_of(record, world)
    if sheet is None or record["detail"] != "full":
        return
    named = dict(parts(sheet))
    key = lambda entry: (entry["gearcase"], entry.get("instance"))
    for at, entry in enumerate(record["entries"]):
        if entry["gearcase"] not in sheet["gearcases"]:
            continue
        done = {one["on"] for other in record["entries"] if key(other) == key(entry) for one in other["tightened"]}
        for place, opened in enumerate(entry["opened"]):
            if opened in named and opened not in done:
                yield f"/entries/{at}/opened/{place}", "error", {"part": named[opened]}


RULES = {
    "spec/limits-reversed": ("spec-sheet", limits_reversed),
    "spec/overlapping-overrides": ("spec-sheet", overlapping_overrides),
    "spec/tolerance-too-large": ("spec-sheet", tolerance_too_large),
    "torque/stages-not-rising": ("spec-sheet", stages_not_rising),
    "fill/refill-larger-than-dry-fill": ("spec-sheet", refill_larger_than_dry_fill),
    "log/pause-reversed": ("machine-log", pause_reversed),
    "toolbox/vessel-graduation": ("toolbox", vessel_graduation),
    "stock/opened-larger-than-size": ("stock", opened_larger_than_size),
    "record/leak-left": ("service-record", leak_left),
    "record/plug-not-tightened": ("service-record", plug_not_tightened),
}
