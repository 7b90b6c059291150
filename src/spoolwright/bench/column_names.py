"""What the header of a logger's file calls its columns, and in which unit they are."""

from __future__ import annotations

import re
from dataclasses import dataclass

from spoolwright.bench.delimited import Table
from spoolwright.quantities import DIMENSIONS, read

TIME_UNITS = "s, ms, μs, min, h"
FORCE_UNITS = "N, kgf, kg, g, lbf, lb, oz"

# Words that loggers put above a column, in the languages of the loggers that reach a bench.
_TIME_WORDS = (
    *("time", "elapsed", "timestamp", "seconds", "tick", "zeit", "temps", "tiempo", "tempo", "tid", "tijd"),
    *("czas", "aika", "время", "时间", "時間", "时刻"),
)
_FORCE_WORDS = (
    *("force", "pull", "load", "weight", "tension", "drag", "kraft", "last", "zug", "gewicht", "zugkraft"),
    *("charge", "poids", "fuerza", "peso", "forza", "carga", "kracht", "vekt", "siła", "voima"),
    *("сила", "нагрузка", "вес", "力", "拉力", "荷重", "重量", "负荷"),
)
_UNIT_WORDS = ("unit", "units", "einheit", "unité", "unidad", "unità", "enhet", "eenheid", "单位", "単位")
_NOT_THE_SIGNAL = ("peak", "max", "min", "mean", "average", "limit", "setpoint", "tare", "spitze", "pic")
_SAME_UNIT = {
    "sec": "s",
    "secs": "s",
    "sek": "s",
    "second": "s",
    "seconds": "s",
    "msec": "ms",
    "millisecond": "ms",
    "milliseconds": "ms",
    "microseconds": "us",
    "minute": "min",
    "minutes": "min",
    "秒": "s",
    "毫秒": "ms",
    "牛": "N",
    "牛顿": "N",
    "千克": "kg",
    "公斤": "kg",
    "千克力": "kgf",
    "克": "g",
    "磅": "lb",
    "kp": "kgf",
    "kg-f": "kgf",
    "kilogram-force": "kgf",
    "pound-force": "lbf",
    "n": "N",
    "newton": "N",
    "newtons": "N",
    "с": "s",
    "сек": "s",
    "мс": "ms",
    "н": "N",
    "кг": "kg",
    "кгс": "kgf",
    "г": "g",
}
_BRACKETED = re.compile(r"[\[({<]\s*([^\])}>]{1,16}?)\s*[\])}>]")
_LAST_WORD = re.compile(r"(?:[\s,/_:.-]|\bin\s)\s*([^\s,/_:.\[\](){}-]{1,14})\s*$")


@dataclass(frozen=True)
class Column:
    """One column of numbers: its place, what stands above it, and the unit found there."""

    index: int
    title: str
    time_unit: str
    force_unit: str

    @property
    def says_time(self) -> bool:
        return bool(self.time_unit) or _has_word(self.title, _TIME_WORDS)

    @property
    def says_force(self) -> bool:
        return bool(self.force_unit) or _has_word(self.title, _FORCE_WORDS)

    @property
    def is_summary(self) -> bool:
        """A peak or a limit that the gauge repeats beside its signal."""
        return _has_word(self.title, _NOT_THE_SIGNAL)

    @property
    def shown(self) -> str:
        return f"{self.index + 1} “{self.title}”" if self.title else f"{self.index + 1}"


def columns(table: Table) -> tuple[Column, ...]:
    """The columns of numbers in a table, with what their header says.

    Parameters
    ----------
    table : Table
        As `delimited.read` gives it [-].

    Returns
    -------
    tuple of Column
        One for each column of numbers [-], in their order.

    Source
    ------
    Our own rule; the units are those of `quantities`.

    Examples
    --------
    >>> from spoolwright.bench import delimited
    >>> [c.force_unit for c in columns(delimited.read("Time [s];Pull [kgf]\\n0;1\\n1;2\\n"))]
    ['', 'kgf']
    """
    return tuple(_column(table, index) for index in table.number_columns)


def _column(table: Table, index: int) -> Column:
    cells = [row[index].strip() for row in table.header if index < len(row)]
    words = [cell for cell in cells if cell and cell != "-"]
    title = " ".join(words)
    time, force = _has_word(title, _TIME_WORDS), _has_word(title, _FORCE_WORDS)
    time_unit = "" if force and not time else _unit_in(words, "time")
    force_unit = "" if time_unit or (time and not force) else _unit_in(words, "force")
    if not time_unit and table.is_clock(index):
        time_unit = "s"
    if not (time_unit or force_unit):
        beside = table.unit_in_cells(index) or _unit_of_next(table, index)
        time_unit, force_unit = (known_unit(beside, key) for key in ("time", "force"))
    return Column(index, title, time_unit, force_unit)


def _unit_of_next(table: Table, index: int) -> str:
    """The one word in a column of units beside a column of numbers."""
    titled = [row[index + 1] for row in table.header if index + 1 < len(row)]
    if table.header and not any(_has_word(title, _UNIT_WORDS) for title in titled):
        return ""
    return table.word_throughout(index + 1)


def _unit_in(cells: list[str], dimension: str) -> str:
    """The unit in a header: alone in its cell, in brackets, or as its last word."""
    for cell in reversed(cells):
        bracketed = _BRACKETED.findall(cell)
        last = _LAST_WORD.findall(cell)
        for word in (cell, *bracketed, *last):
            if unit := known_unit(word, dimension):
                return unit
    return ""


def known_unit(word: str, dimension: str) -> str:
    """The accepted name of a unit that somebody wrote, or "" where it is none of this dimension.

    Parameters
    ----------
    word : str
        As typed or as found in a header [-].
    dimension : str
        "time" or "force" [-].

    Returns
    -------
    str
        The name that `quantities` knows [-].

    Source
    ------
    The table of `quantities`.

    Examples
    --------
    >>> known_unit("Sec", "time"), known_unit("V", "force")
    ('s', '')
    """
    plain = word.strip().strip(".")
    plain = _SAME_UNIT.get(plain.lower(), plain)
    try:
        DIMENSIONS[dimension].unit(plain)
    except KeyError:
        return ""
    return plain


def factor(unit: str, dimension: str) -> float:
    """What one of this unit is in SI.

    Parameters
    ----------
    unit : str
        A name that `known_unit` gave [-].
    dimension : str
        "time" or "force" [-].

    Returns
    -------
    float
        SI units in one of them [s or N].

    Raises
    ------
    NotAQuantity
        A unit that is not of this dimension.

    Source
    ------
    The table of `quantities`.

    Examples
    --------
    >>> factor("ms", "time")
    0.001
    """
    return read(f"1 {unit}", dimension)


def _has_word(title: str, words: tuple[str, ...]) -> bool:
    low = title.lower()
    found = re.findall(r"[^\W\d_]+", low)
    return any(word in found or (not word.isascii() and word in low) for word in words)
