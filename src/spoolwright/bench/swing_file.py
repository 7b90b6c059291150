"""A phone's or logger's record of a swing out of a text file: moments and the one signal that swings most."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench import delimited, file_text
from spoolwright.bench.column_names import Column, columns, factor
from spoolwright.bench.unreadable import Unreadable

_ACCEPTED = "rows of a moment and an angle or an angular velocity, the moments rising"


@dataclass(frozen=True, eq=False)
class SwingRecord:
    """Moments [s] and the signal at them, which column it was, and what was left out."""

    time: NDArray[np.float64]
    signal: NDArray[np.float64]
    column: str
    notes: tuple[str, ...]


def read(data: bytes, *, name: str = "", column: str = "") -> SwingRecord:
    """The record of a swing from a text file.

    Parameters
    ----------
    data : bytes
        The whole file [-].
    name : str
        What the file is called [-]; only for messages.
    column : str
        Title or number, counted from 1, of the column that swings [-]; empty: the one that varies most.

    Returns
    -------
    SwingRecord
        Moments [s] and signal [unit of the file], shape (n,).

    Raises
    ------
    Unreadable
        No text, no numbers, no column of rising moments, no second column, a column that is not there.

    Notes
    -----
    A phone writes three axes: the one that swings is the one that varies most. Moments are seconds unless
    their header says otherwise, or unless a usual step of 1 or more says milliseconds (microseconds from
    1000 on).

    Source
    ------
    Our own rule.

    Examples
    --------
    >>> rows = "".join(f"{i / 100};0;{(-1) ** i}\\n" for i in range(40))
    >>> read(("time [s];x;y\\n" + rows).encode()).column
    '3 “y”'
    """
    text, _ = file_text.decode(data, name)
    table = delimited.read(text, name=name)
    found = columns(table)
    values = {one.index: table.column(one.index) for one in found}
    time = next((one for one in found if one.says_time and _rises(values[one.index])), None)
    time = time or next((one for one in found if _rises(values[one.index])), None)
    if time is None:
        raise Unreadable("no column holds moments that rise from row to row", name, _ACCEPTED)
    others = [one for one in found if one.index != time.index and not one.says_time]
    if not others:
        raise Unreadable("there is no second column beside the moments", name, _ACCEPTED)
    chosen = (
        _named(others, column, name)
        if column
        else max(others, key=lambda one: float(np.std(values[one.index])))
    )
    moments, notes = _seconds(values[time.index], time)
    kept = np.concatenate(([True], np.diff(moments) > 0))
    if len(others) > 1 and not column:
        notes = (
            *notes,
            f"Of {len(others)} signals the one in column {chosen.shown} swings most; it was read.",
        )
    return SwingRecord(moments[kept], values[chosen.index][kept], chosen.shown, notes)


def _rises(values: NDArray[np.float64]) -> bool:
    return len(values) > 1 and bool(np.all(np.diff(values) >= 0)) and values[-1] > values[0]


def _named(others: list[Column], asked: str, name: str) -> Column:
    for one in others:
        if asked.strip().lower() in (one.title.lower(), str(one.index + 1)):
            return one
    accepted = ", ".join(one.shown for one in others)
    raise Unreadable(f"there is no column “{asked[:40]}” that could swing", name, accepted)


def _seconds(values: NDArray[np.float64], column: Column) -> tuple[NDArray[np.float64], tuple[str, ...]]:
    if column.time_unit:
        return values * factor(column.time_unit, "time"), ()
    step = float(np.median(np.diff(values)))
    if step < 1:
        return values, ()
    unit, scale = ("milliseconds", 1e-3) if step < 1000 else ("microseconds", 1e-6)
    return values * scale, (f"The file names no unit of time; steps of {step:g} were read as {unit}.",)
