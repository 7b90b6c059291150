"""Text of a logger's file to rows of cells: finds out the delimiter, decimal mark, where numbers begin."""

from __future__ import annotations

import csv
import re
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench.unreadable import NeedsAnswer, Question, Unreadable

MOST_ROWS = 600_000
"""Ten minutes at 1 kHz: no pull and no coast-down of a reel lasts longer."""

LONGEST_LINE = 4_000
"""Letters. A gauge with a hundred channels writes about a thousand."""

MOST_COLUMNS = 200

MOST_CELLS = 8_000_000
"""A dozen columns of the longest file; each takes some sixty bytes while it is read."""

DELIMITERS = {"tab": "\t", "semicolon": ";", "bar": "|", "comma": ",", "space": " "}
DECIMALS = {"point": ".", "comma": ","}

_LOOK_AT = 400
_NUMBER = {
    ".": re.compile(r"[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d{1,3})?"),
    ",": re.compile(r"[+-]?(?:\d+(?:,\d*)?|,\d+)(?:[eE][+-]?\d{1,3})?"),
}
_CLOCK = re.compile(
    r"(?:\S+[ T])?(\d{1,3}):(\d{2})(?::(\d{2}))?(?:[.,](\d+))?(?:Z|[+-]\d\d:?\d\d)?(?:\s*([AP])\.?M\.?)?",
    re.IGNORECASE,
)
_WITH_UNIT = re.compile(r"([+-]?[\d.,]*\d(?:[eE][+-]?\d{1,3})?)\s*([^\W\d_]{1,7})")
_DAY = 86400.0
_NOT_FINITE = re.compile(r"[+-]?(?:nan|inf|infinity|1\.#\w+)", re.IGNORECASE)
_ACCEPTED_NUMBER = "a plain number such as 12.5 or 12,5 in every row"


@dataclass(frozen=True)
class Table:
    """What was found: the rows of cells, their line numbers, the lines above them, how they are written."""

    name: str
    rows: list[list[str]]
    lines: list[int]
    header: list[list[str]]
    above: list[str]
    delimiter: str
    decimal: str
    width: int

    def where(self, row: int) -> str:
        """The place of a row in words: 'pull.csv, line 214'."""
        return f"{self.name}, line {self.lines[row]}" if self.name else f"line {self.lines[row]}"

    def is_number(self, column: int) -> bool:
        """Whether this column begins with a number or a time of day."""
        return _is_value(self.rows[0][column], self.decimal) if column < len(self.rows[0]) else False

    @property
    def number_columns(self) -> list[int]:
        """The columns that hold numbers, counted from 0."""
        return [column for column in range(self.width) if self.is_number(column)]

    def column(self, column: int) -> NDArray[np.float64]:
        """The numbers of one column; times of day become seconds, and go on counting after midnight."""
        values = np.array([self._value(i, column) for i in range(len(self.rows))], dtype=np.float64)
        if self.is_clock(column):
            values[1:] += _DAY * np.cumsum(np.diff(values) < -0.5 * _DAY)
        return values

    def unit_in_cells(self, column: int) -> str:
        """What stands after the number in every cell of a column."""
        units = {_parted(row[column])[1] for row in self.rows if column < len(row)}
        return units.pop() if len(units) == 1 else ""

    def word_throughout(self, column: int) -> str:
        """What every cell of a column says, if they all say the same."""
        words = {row[column].strip() for row in self.rows if column < len(row)}
        return words.pop() if len(words) == 1 else ""

    def is_clock(self, column: int) -> bool:
        """Whether this column holds times of day rather than plain numbers."""
        return bool(_CLOCK.fullmatch(self.rows[0][column].strip()))

    def _value(self, row: int, column: int) -> float:
        cells = self.rows[row]
        if column >= len(cells):
            raise Unreadable(f"column {column + 1} is missing", self.where(row), _ACCEPTED_NUMBER)
        cell = _parted(cells[column])[0]
        if _NUMBER[self.decimal].fullmatch(cell):
            value = float(cell.replace(",", "."))
            if abs(value) < 1e15:
                return value
            raise Unreadable(f"{cell} is beyond anything measured here", self.where(row), _ACCEPTED_NUMBER)
        return self._odd_value(row, cell)

    def _odd_value(self, row: int, cell: str) -> float:
        if clock := _CLOCK.fullmatch(cell):
            return _seconds(clock)
        if _NOT_FINITE.fullmatch(cell):
            raise Unreadable(f"the gauge wrote “{cell}”", self.where(row), _ACCEPTED_NUMBER)
        shown = f"“{cell[:30]}” is not a number" if cell else "a value is missing"
        raise Unreadable(shown, self.where(row), _ACCEPTED_NUMBER)


def read(text: str, *, name: str = "", delimiter: str = "", decimal: str = "") -> Table:
    """The rows of numbers in the text of a logger's file, with the header above them.

    Parameters
    ----------
    text : str
        The whole file as text [-].
    name : str
        What the file is called [-]; only for messages.
    delimiter : str
        "tab", "semicolon", "bar", "comma" or "space", or the mark itself [-]; empty: find out.
    decimal : str
        "point" or "comma", or the mark itself [-]; empty: find out.

    Returns
    -------
    Table
        At least one row [-]; all rows have numbers in the same columns as the first.

    Raises
    ------
    Unreadable
        No numbers in it, too many rows, text between the numbers, commas in two meanings.
    NeedsAnswer
        A delimiter or decimal mark that is not one of the accepted ones.

    Notes
    -----
    Each pair of delimiter and decimal mark is tried on the first 400 lines. The pair wins under which most
    lines look alike, then the one whose header has as many cells, then the one with the most numbers.

    Source
    ------
    Our own rule; RFC 4180 for quoted cells (from memory).

    Examples
    --------
    >>> read("t;F\\n0,1;2,5\\n0,2;2,6\\n").column(1).tolist()
    [2.5, 2.6]
    """
    _check_size(text, name)
    lines = [(n, line) for n, line in enumerate(text.splitlines(), 1) if line.strip(' \t;,|"')]
    if len(lines) > MOST_ROWS:
        raise Unreadable(f"the file has {len(lines)} rows", name, f"at most {MOST_ROWS} rows")
    _check_lines(lines, name)
    best = max(_layouts(lines[:_LOOK_AT], delimiter, decimal), key=lambda layout: layout.score, default=None)
    if best is None or best.alike == 0:
        raise Unreadable(*_no_numbers(lines, name))
    _refuse_two_commas(best, lines, name)
    if best.width > MOST_COLUMNS:
        raise Unreadable(f"the file has {best.width} columns", name, f"at most {MOST_COLUMNS} columns")
    if (marks := text.count(best.delimiter)) > MOST_CELLS * (4 if best.delimiter == " " else 1):
        raise Unreadable(f"the file has about {marks} values", name, f"at most {MOST_CELLS} values")
    return _table(best, lines, name)


def _check_size(text: str, name: str) -> None:
    """Before a line is cut off: a list of tens of millions of lines fills the memory of a small machine."""
    ends = sum(text.count(mark) for mark in "\n\r\v\f\x1c\x1d\x1e\x85\u2028\u2029")
    if ends > 4 * MOST_ROWS:
        raise Unreadable(f"the file has {ends} ends of lines", name, f"at most {MOST_ROWS} rows")


def _check_lines(lines: Sequence[tuple[int, str]], name: str) -> None:
    number, longest = max(lines, key=lambda line: len(line[1]), default=(0, ""))
    if len(longest) > LONGEST_LINE:
        where = f"{name}, line {number}" if name else f"line {number}"
        reason = f"the line is {len(longest)} letters long, so this is no table of samples"
        raise Unreadable(reason, where, f"lines of at most {LONGEST_LINE} letters")


@dataclass(frozen=True)
class _Layout:
    """One way to cut the lines, and how well it goes."""

    delimiter: str
    decimal: str
    first: int
    alike: int
    width: int
    numbers: int
    header_fits: bool

    @property
    def score(self) -> tuple[int, bool, float, int]:
        return self.alike, self.header_fits, self.numbers / self.width, self.numbers


def _layouts(lines: Sequence[tuple[int, str]], delimiter: str, decimal: str) -> Iterator[_Layout]:
    marks = _marks(delimiter, DELIMITERS, "delimiter")
    points = _marks(decimal, DECIMALS, "decimal")
    for mark in marks:
        cells = list(_cut((line for _, line in lines), mark))
        for point in points:
            if found := _layout(cells, mark, point):
                yield found


def _marks(asked: str, known: dict[str, str], key: str) -> tuple[str, ...]:
    if not asked:
        return tuple(known.values())
    mark = known.get(asked.strip().lower(), asked)
    if mark not in known.values():
        accepted = ", ".join(known)
        raise NeedsAnswer((Question(key, f"“{asked}” is no {key} that is known here.", accepted),))
    return (mark,)


def _cut(lines: Iterable[str], mark: str) -> Iterator[list[str]]:
    """Line by line, so that a quotation mark left open spoils its own line and no other."""
    for line in lines:
        if mark == " ":
            yield line.replace('"', " ").split()
        elif '"' in line:
            yield next(csv.reader([line], delimiter=mark, skipinitialspace=mark != "\t"), [])
        else:
            yield line.split(mark)


def _layout(cells: Sequence[list[str]], mark: str, point: str) -> _Layout | None:
    patterns = [tuple(i for i, cell in enumerate(row) if _is_value(cell, point)) for row in cells]
    shapes = Counter((len(row), pattern) for row, pattern in zip(cells, patterns, strict=True) if pattern)
    if not shapes:
        return None
    (width, pattern), alike = max(shapes.items(), key=lambda item: (item[1], len(item[0][1])))
    first = next(i for i, row in enumerate(cells) if len(row) == width and patterns[i] == pattern)
    above = cells[first - 1] if first else None
    fits = above is not None and len(above) == width
    if mark == "," and not fits and _is_split_decimal(cells[first:], width, pattern):
        return None
    return _Layout(mark, point, first, alike, width, len(pattern), fits)


def _is_split_decimal(rows: Sequence[list[str]], width: int, pattern: tuple[int, ...]) -> bool:
    """Two columns of whole numbers whose second has leading zeros are one column with a decimal comma."""
    if width != 2 or len(pattern) != 2:
        return False
    pairs = [row for row in rows if len(row) == 2]
    whole = all(cell.strip().lstrip("+-").isdigit() for row in pairs for cell in row)
    return whole and any(len(row[1].strip()) > 1 and row[1].strip()[0] == "0" for row in pairs)


def _is_value(cell: str, point: str) -> bool:
    return bool(_NUMBER[point].fullmatch(_parted(cell)[0]) or _CLOCK.fullmatch(cell.strip()))


def _parted(cell: str) -> tuple[str, str]:
    """A number and the unit behind it, where a gauge writes one into every cell."""
    cell = cell.strip()
    found = _WITH_UNIT.fullmatch(cell) if cell and cell[-1].isalpha() else None
    return (found[1], found[2]) if found else (cell, "")


def _no_numbers(lines: Sequence[tuple[int, str]], name: str) -> tuple[str, str, str]:
    shown = lines[0][1].strip()[:40] if lines else ""
    reason = f"there are no rows of numbers in the file; it begins with “{shown}”"
    return reason, name, "rows of numbers, one row for each sample, with the units named above them"


def _refuse_two_commas(layout: _Layout, lines: Sequence[tuple[int, str]], name: str) -> None:
    """Refuse 0,01,12,5 under the header time,force: the comma stands for two things."""
    if layout.delimiter != "," or layout.first == 0 or layout.header_fits:
        return
    (_, above), (number, row) = lines[layout.first - 1], lines[layout.first]
    whole = all(cell.strip().lstrip("+-").isdigit() for cell in row.split(","))
    if whole and above.count(",") >= 1 and layout.width == 2 * (above.count(",") + 1):
        where = f"{name}, line {number}" if name else f"line {number}"
        reason = f"in “{row.strip()[:40]}” the comma both parts the columns and marks the decimals"
        raise Unreadable(reason, where, "decimal points, or columns parted by semicolons or tabs")


def _table(layout: _Layout, lines: Sequence[tuple[int, str]], name: str) -> Table:
    rows = list(_cut((line for _, line in lines[layout.first :]), layout.delimiter))
    numbers = [n for n, _ in lines[layout.first :]]
    end = len(rows)
    lead = next(i for i, cell in enumerate(rows[0]) if _is_value(cell, layout.decimal))
    while end > 1 and not any(_is_value(cell, layout.decimal) for cell in rows[end - 1][: lead + 1]):
        end -= 1
    above = [line for _, line in lines[: layout.first]]
    titles = (_titles(row, layout) for row in _cut(above, layout.delimiter))
    header = [row for row in titles if len(row) >= layout.width - 1][-3:]
    return Table(
        name, rows[:end], numbers[:end], header, above, layout.delimiter, layout.decimal, layout.width
    )


def _titles(row: list[str], layout: _Layout) -> list[str]:
    """Cells of a line above the numbers; where blanks part them, a bracket belongs to the word before."""
    if layout.delimiter != " " or len(row) <= layout.width:
        return row
    joined: list[str] = []
    for word in row:
        if joined and word[:1] in "([{<":
            joined[-1] += f" {word}"
        else:
            joined.append(word)
    return joined


def _seconds(clock: re.Match[str]) -> float:
    """Hours, minutes and seconds to seconds; with one colon it is minutes and seconds."""
    first, second, third, rest, half = clock.groups()
    fraction = float(f"0.{rest}") if rest else 0.0
    if third is None:
        return int(first) * 60.0 + int(second) + fraction
    hours = int(first) if half is None else int(first) % 12 + 12 * (half in "pP")
    return hours * 3600.0 + int(second) * 60.0 + int(third) + fraction
