"""On which line of a sheet's text a fault stands, so that a person finds it."""

from __future__ import annotations

import re

_HEADER = re.compile(r"^\s*(?P<open>\[\[?)\s*(?P<name>[^\[\]]+?)\s*\]\]?\s*(?:#.*)?$")
_KEY = re.compile(r"^\s*(?P<key>[A-Za-z0-9_.\-\"' ]+?)\s*=")
_NAMED_LINE = re.compile(r"line (\d+)(?:, column \d+)?")
_LAST_STEP = re.compile(r"(?:\.[^.\[\]]+|\[\d+\])$")
_FENCES = ('"""', "'''")


def line_of(text: str, where: str) -> int | None:
    """The line that a fault's place means, counted from 1; None where the text has no such line.

    A key that is missing is looked for at its table's header.
    """
    told = _NAMED_LINE.fullmatch(where)
    if told:
        return int(told[1])
    if where == "end of the file":
        return text.count("\n") + 1
    lines = _lines(text)
    place = where.partition(" (")[0]
    while place and place not in lines:
        shorter = _LAST_STEP.sub("", place)
        place = shorter if shorter != place else ""
    return lines.get(place)


def _lines(text: str) -> dict[str, int]:
    """Every table and key by its place, with the line on which it first stands."""
    found: dict[str, int] = {}
    counts: dict[str, int] = {}
    table, fence = "", ""
    for number, line in enumerate(text.split("\n"), start=1):
        if fence:
            fence = "" if fence in line else fence
            continue
        header = _HEADER.match(line)
        if header:
            table = _place(header["name"], header["open"] == "[[", counts)
            found.setdefault(table, number)
            continue
        key = _KEY.match(line)
        if key:
            found.setdefault(f"{table}.{_bare(key['key'])}".lstrip("."), number)
        fence = next((mark for mark in _FENCES if line.count(mark) % 2), "")
    return found


def _place(name: str, is_list: bool, counts: dict[str, int]) -> str:
    """ "drag.stack[3]" for the third [[drag.stack]]; a table inside a list's member carries its number."""
    name = _bare(name)
    if is_list:
        counts[name] = counts.get(name, 0) + 1
        return f"{name}[{counts[name]}]"
    owner = max((listed for listed in counts if name.startswith(f"{listed}.")), key=len, default="")
    return f"{owner}[{counts[owner]}]{name[len(owner) :]}" if owner else name


def _bare(name: str) -> str:
    return ".".join(part.strip().strip("\"'") for part in name.split("."))
