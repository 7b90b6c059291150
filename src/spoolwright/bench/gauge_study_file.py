"""A repeatability study as a file: one line a try, with the part, the person and the value."""

from __future__ import annotations

import csv
import re
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from spoolwright.bench import file_text
from spoolwright.bench.crossed import Values
from spoolwright.bench.unreadable import Unreadable
from spoolwright.quantities import NotAQuantity, display_unit
from spoolwright.quantities import read as read_quantity

MOST = 1000
ACCEPTED = (
    "a line of headings with part, person and value, then one line a try, such as “3; Ada; 1.02 mm”; "
    "every person takes every part equally often"
)
_DECIMAL_COMMA = re.compile(r"\d,(?:\d{1,2}|\d{4,})(?!\d)")
"""A comma that cannot part thousands; where one stands, all of them are decimal ones."""
_NAMES = {
    "part": ("part", "piece", "sample"),
    "person": ("person", "hand", "who", "operator", "appraiser"),
    "value": ("value", "reading", "measured", "result"),
}


@dataclass(frozen=True)
class Tries:
    """Each try of a study in the order it was taken [SI], and the same as a block."""

    rows: tuple[tuple[str, str, int, float], ...]

    @property
    def parts(self) -> tuple[str, ...]:
        return tuple(dict.fromkeys(row[0] for row in self.rows))

    @property
    def persons(self) -> tuple[str, ...]:
        return tuple(dict.fromkeys(row[1] for row in self.rows))

    @property
    def values(self) -> Values:
        """The tries as a block: parts by persons by tries."""
        return block(self.rows)


def block(rows: Sequence[tuple[str, str, int, float]]) -> Values:
    """Tries as a block of parts by persons by tries.

    Parameters
    ----------
    rows : sequence of tuple
        Part, person, number of the try **[-]** and value **[any one unit]**.

    Returns
    -------
    array
        Values **[same unit]**, shape (parts, persons, tries).

    Raises
    ------
    Unreadable
        Somebody did not measure a part as often as the others.

    Source
    ------
    Our own rule.

    Examples
    --------
    >>> block([("a", "x", 1, 1.0), ("a", "x", 2, 2.0), ("b", "x", 1, 3.0), ("b", "x", 2, 4.0)]).shape
    (2, 1, 2)
    """
    cells: dict[tuple[str, str], list[tuple[int, float]]] = {}
    for part, person, trial, value in rows:
        cells.setdefault((part, person), []).append((trial, value))
    parts = list(dict.fromkeys(part for part, _ in cells))
    persons = list(dict.fromkeys(person for _, person in cells))
    most = max((len(tries) for tries in cells.values()), default=0)
    for part in parts:
        for person in persons:
            found = len(cells.get((part, person), ()))
            if found != most:
                reason = f"{person} measured part {part} {found} times, where others did {most} times"
                raise Unreadable(reason, "", ACCEPTED)
    return np.array([[[v for _, v in sorted(cells[part, who])] for who in persons] for part in parts])


def read(data: bytes, dimension: str, *, unit: str = "", name: str = "") -> Tries:
    """Read the file of a study.

    Parameters
    ----------
    data : bytes
        Text of comma, semicolon or tab separated values **[-]**.
    dimension : str
        Key of `quantities.DIMENSIONS` of what was measured **[-]**.
    unit : str
        Of values that stand without one **[-]**; a unit in the heading ("value mm") counts before it.
    name : str
        What the file is called **[-]**; only for messages.

    Returns
    -------
    Tries
        At most a thousand of them **[SI unit of the dimension]**.

    Raises
    ------
    Unreadable
        No such columns, a line without a value, a study with holes.

    Source
    ------
    Our own format.

    Examples
    --------
    >>> text = "part;person;value mm\\n1;Ada;4,01\\n1;Ada;4,02\\n2;Ada;4,10\\n2;Ada;4,11\\n"
    >>> read(text.encode(), "length").values.shape
    (2, 1, 2)
    """
    text, _ = file_text.decode(data, name)
    lines = [line for line in text.splitlines() if line.strip(" ;,\t")]
    if len(lines) < 2:
        raise Unreadable("there is no try in it", name, ACCEPTED)
    if len(lines) - 1 > MOST:
        raise Unreadable(f"it holds {len(lines) - 1} tries", name, f"at most {MOST}")
    delimiter = max(";\t,", key=lines[0].count)
    heading, *rows = csv.reader(lines, delimiter=delimiter)
    at, in_heading = _columns(heading, name)
    comma = delimiter != "," and any(_DECIMAL_COMMA.search(cell) for row in rows for cell in row)
    found: list[tuple[str, str, int, float]] = []
    seen: dict[tuple[str, str], int] = {}
    for number, row in enumerate(rows, 2):
        where = f"{name}, line {number}" if name else f"line {number}"
        part, person, value = _cells(row, at, where)
        seen[part, person] = seen.get((part, person), 0) + 1
        value = value.replace(",", ".") if comma else value
        si = _value(value, dimension, in_heading or unit, where)
        found.append((part, person, seen[part, person], si))
    tries = Tries(tuple(found))
    block(tries.rows)
    return tries


def _columns(heading: Sequence[str], name: str) -> tuple[dict[str, int], str]:
    at: dict[str, int] = {}
    unit = ""
    for index, cell in enumerate(heading):
        word, _, rest = cell.strip().lower().partition(" ")
        kind = next((kind for kind, names in _NAMES.items() if word in names), "")
        if kind and kind not in at:
            at[kind] = index
            unit = cell.strip()[len(word) :].strip(" ()[]") if kind == "value" and rest else unit
    missing = [kind for kind in ("part", "person", "value") if kind not in at]
    if missing:
        raise Unreadable(f"no column is headed {' or '.join(missing)}", name or "first line", ACCEPTED)
    return at, unit


def _cells(row: Sequence[str], at: dict[str, int], where: str) -> tuple[str, str, str]:
    if len(row) <= max(at["part"], at["person"], at["value"]):
        raise Unreadable("a cell is missing", where, ACCEPTED)
    part, person, value = (row[at[kind]].strip()[:60] for kind in ("part", "person", "value"))
    if not (part and person and value):
        raise Unreadable("a cell is empty", where, ACCEPTED)
    return part, person, value


def _value(text: str, dimension: str, unit: str, where: str) -> float:
    typed = f"{text} {unit}" if unit and text[-1:].isdigit() else text
    try:
        return read_quantity(typed, dimension)
    except NotAQuantity as fault:
        usual = display_unit(dimension)
        hint = f"{fault.accepted}; or a unit in the heading, such as “value {usual}”"
        raise Unreadable(f"“{text[:30]}” {fault.reason}", where, hint) from None
