"""The due rule in Python's standard library, written from docs/intervals.md, docs/sql.md and the comments of DueRow.

Reads questions as JSON Lines from standard input and writes a verdict for each. Numbers are exact: a figure is its decimal.
"""
import calendar
import json
import math
import sys
from datetime import date, timedelta
from fractions import Fraction

ORDER = ["overdue", "due", "cannot tell", "due soon", "not due"]
PER_UNIT = {"h": 1000, "km": 10**9, "mi": 1_609_344_000}
MOST_PER_DAY = {"h": 24 * 1000, "km": 2400 * 10**9, "mi": 2400 * 10**9}


def count(value, unit):
    """Thousandths of an hour or micrometres, half of one rounded up."""
    return None if value is None else math.floor(value * PER_UNIT[unit] + Fraction(1, 2))


def day(text):
    return None if text is None else date.fromisoformat(text)


def add(start, months, days):
    """Months first; in a month that is too short its last day. None past the calendar's end."""
    at = start.year * 12 + start.month - 1 + int(months)
    year, month = at // 12, at % 12 + 1
    try:
        last = calendar.monthrange(year, month)[1]
        return date(year, month, min(start.day, last)) + timedelta(days=int(days))
    except (ValueError, OverflowError):
        return None


def judge_meter(row, name, every, window, unit, every_unit, lead, question):
    start, now = count(row.get(f"last{name}"), unit), count(row.get(name.lower()), unit)
    served, read, today = day(row.get("lastDate")), day(row.get(f"{name.lower()}Date")), day(question["today"])
    if now is None:
        now, read = start, served
    every, window = count(every, every_unit), count(window or 0, every_unit)
    if None in (start, now, served, read) or every <= 0 or read < served or read > today or now < start:
        return "cannot tell"
    if now - start > ((read - served).days + 1) * MOST_PER_DAY[unit]:
        return "cannot tell"
    due = start + every
    if now >= due:
        return "overdue" if now > due + window else "due"
    fraction = question["soon"].get("fraction")
    if (lead is not None and now >= due - lead) or (fraction is not None and now - start >= fraction * every):
        return "due soon"
    return "cannot tell" if (today - read).days > question["staleAfter"]["days"] else "not due"


def judge_period(row, question):
    served, today = day(row.get("lastDate")), day(question["today"])
    months, days = row.get("everyMonths") or 0, row.get("everyDays") or 0
    due = None if served is None or served > today or months + days == 0 else add(served, months, days)
    if due is None:
        return "cannot tell"
    if today >= due:
        last = add(due, row.get("windowMonths") or 0, row.get("windowDays") or 0)
        return "overdue" if last is not None and today > last else "due"
    soon = question["soon"]
    fraction = soon.get("fraction")
    near = "days" in soon and (due - today).days <= soon["days"]
    used = fraction is not None and (today - served).days >= fraction * (due - served).days
    return "due soon" if near or used else "not due"


def judge(question):
    row, soon, verdicts = question["row"], question["soon"], []
    if row.get("everyHours") is not None and not row.get("noHourMeter"):
        lead = count(soon.get("hours"), "h")
        verdicts.append(judge_meter(row, "Hours", row["everyHours"], row.get("windowHours"), "h", "h", lead, question))
    if row.get("everyDistance") is not None and not row.get("noOdometer"):
        lead = count(soon["distance"]["value"], soon["distance"]["unit"]) if "distance" in soon else None
        units = row.get("distanceUnit"), row["everyDistanceUnit"]
        interval = row["everyDistance"], row.get("windowDistance")
        verdicts.append(judge_meter(row, "Distance", *interval, *units, lead, question))
    if row.get("everyMonths") is not None or row.get("everyDays") is not None:
        verdicts.append(judge_period(row, question))
    event, served = day(row.get("eventDate")), day(row.get("lastDate"))
    if event is not None and event <= day(question["today"]) and (served is None or event > served):
        verdicts.append("due")
    return min(verdicts or ["cannot tell"], key=ORDER.index)


for line in sys.stdin:
    print(json.dumps(judge(json.loads(line, parse_float=Fraction, parse_int=Fraction))))
