"""A short table of pulls, as a spreadsheet writes it: what was set, start-up pull, running pull."""

from __future__ import annotations

import csv
import io
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType

from spoolwright.bench import file_text
from spoolwright.bench.pulls import MOST, OnePull
from spoolwright.bench.unreadable import Unreadable
from spoolwright.quantities import NotAQuantity, Typed, read_typed

_NAMES: Mapping[str, tuple[str, ...]] = MappingProxyType(
    {
        "at": ("turns", "setting", "star", "knob", "lever", "number", "pull", "time", "temperature", "speed"),
        "start_up": ("start-up", "start up", "start_up", "startup", "start", "highest"),
        "running": ("running", "run", "steady"),
        "judder": ("judder",),
    }
)
ALONG: Mapping[str, str] = MappingProxyType(
    {"turns": "ratio", "number": "ratio", "time": "time", "temperature": "temperature", "speed": "speed"}
)
"""What may change from pull to pull, and as which kind of quantity it is read."""

_HEADER = 'a first row such as "turns; start-up [kg]; running [kg]"'
LONGEST = 200_000


@dataclass(frozen=True)
class _Column:
    """A column of the table: where it is, and the unit that stands above it."""

    index: int
    unit: str


def read(data: bytes, *, name: str = "", along: str = "turns") -> tuple[OnePull, ...]:
    """The pulls in a short table.

    Parameters
    ----------
    data : bytes
        The whole file [-]: rows of cells parted by semicolons, tabs or commas, a header first.
    name : str
        What the file is called [-]; only for messages.
    along : str
        What changes from pull to pull [-]: "turns", "number", "time", "temperature" or "speed".

    Returns
    -------
    tuple of OnePull
        Pulls [N] with what was set, in the order of the file.

    Raises
    ------
    Unreadable
        No text, no header, a column that is missing, a cell that cannot be read: where, and what is accepted.

    Notes
    -----
    A unit stands above its column or behind each number. The last digit of a cell is the step of the scale.

    Source
    ------
    Our own rules; RFC 4180 for quoted cells (from memory).

    Examples
    --------
    >>> [pull] = read("turns;start-up [kg];running [kg]\\n1,5;3,4;3,2\\n".encode())
    >>> pull.at, round(pull.running, 3), round(pull.step, 3)
    (1.5, 31.381, 0.981)
    """
    if len(data) > LONGEST:
        raise Unreadable("the file is too long for a table of pulls", name, f"at most {MOST} rows")
    text, _ = file_text.decode(data, name)
    rows = [row for row in _cells(text) if any(cell.strip() for cell in row)]
    if len(rows) < 2:
        raise Unreadable("the table has no rows below its header", name, _HEADER)
    columns = _columns(rows[0], name)
    if len(rows) - 1 > MOST:
        raise Unreadable(f"the table has {len(rows) - 1} rows", name, f"at most {MOST} pulls")
    return tuple(_pull(row, number, columns, along, name) for number, row in enumerate(rows[1:], 2))


def _cells(text: str) -> list[list[str]]:
    first = text.lstrip("\ufeff").splitlines()[0] if text.strip() else ""
    mark = max(";\t,|", key=first.count)
    return list(csv.reader(io.StringIO(text.lstrip("\ufeff")), delimiter=mark))


def _columns(header: Sequence[str], name: str) -> dict[str, _Column]:
    found: dict[str, _Column] = {}
    for index, cell in enumerate(header):
        title, unit = _titled(cell)
        for key in ("start_up", "running", "judder", "at"):
            if key not in found and any(word in title for word in _NAMES[key]):
                found[key] = _Column(index, unit)
                break
    missing = [key for key in ("at", "running") if key not in found]
    if missing:
        said = {"at": "what was set", "running": "the running pull"}
        raise Unreadable(f"no column for {' and '.join(said[key] for key in missing)}", name, _HEADER)
    return found


def _titled(cell: str) -> tuple[str, str]:
    """Title and unit: "running [kg]", "running (kg)", "running, kg"."""
    title, _, rest = cell.replace("(", "[").replace(", ", "[").partition("[")
    return title.strip().lower(), rest.replace("]", "").replace(")", "").strip()


def _pull(row: Sequence[str], number: int, columns: Mapping[str, _Column], along: str, name: str) -> OnePull:
    where = f"{name}, line {number}" if name else f"line {number}"
    running = _cell(row, columns["running"], "force", where)
    start = _cell(row, columns.get("start_up"), "force", where)
    shaken = _cell(row, columns.get("judder"), "ratio", where)
    at = _cell(row, columns["at"], ALONG[along], where)
    if running is None or at is None:
        raise Unreadable("a value is missing", where, "what was set and the running pull in every row")
    return OnePull(
        at.value,
        running.value,
        start.value if start else None,
        max(running.resolution, start.resolution if start else 0.0),
        shaken.value if shaken else None,
    )


def _cell(row: Sequence[str], column: _Column | None, dimension: str, where: str) -> Typed | None:
    text = row[column.index].strip() if column and column.index < len(row) else ""
    if column is None or not text:
        return None
    bare = text.replace(",", "").replace(".", "").lstrip("+-").isdigit()
    try:
        return read_typed(f"{text} {column.unit}" if bare and column.unit else text, dimension)
    except NotAQuantity as fault:
        raise Unreadable(f"“{fault.typed}” {fault.reason}", where, fault.accepted) from None
