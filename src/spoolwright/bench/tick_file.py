"""Tick times out of a text file: with or without a header, with a decimal comma, in s, ms or microseconds."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench import delimited, file_text
from spoolwright.bench.column_names import TIME_UNITS, Column, columns, factor, known_unit
from spoolwright.bench.delimited import Table
from spoolwright.bench.mending import FEWEST
from spoolwright.bench.unreadable import NeedsAnswer, Question, Unreadable

SLOWEST_TURN = 8.0
"""Seconds for one turn above which (with misses) no spool is measured: 1 rad/s takes 6.3 s."""

Times = NDArray[np.float64]

_ACCEPTED = "one column of tick times, rising, one tick for each turn of the spool"


def read_csv(
    data: bytes, *, name: str = "", time_unit: str = "", time_column: str = "", marks: int = 1
) -> Times:
    """Tick times from a file of one tick a row.

    Parameters
    ----------
    data : bytes
        The whole file [-].
    name : str
        What the file is called [-]; only for messages.
    time_unit : str
        "s", "ms", "us" or another unit of time [-]; empty: as the header says, else as only one unit fits.
    time_column : str
        Title or number, counted from 1, of the column of ticks [-]; empty: find out.
    marks : int
        Marks on the spool [-], 1 or more: so many ticks to a turn.

    Returns
    -------
    array
        Tick times [s], shape (n,), rising, n >= 8.

    Raises
    ------
    Unreadable
        No text, no numbers, a pull trace, times that fall, fewer than eight ticks.
    NeedsAnswer
        More than one column that may be the ticks, a unit that is none of time.

    Notes
    -----
    Where the file names no unit the speed tells: a spool turns once in 0.01 to 8 s, so a usual interval
    below 8 is seconds, from 8 to 8000 milliseconds, above it microseconds. These ranges do not overlap. The
    usual interval is the lower quartile: a slow spool's last turns are longer than any of these.

    Source
    ------
    Our own rule; speeds of spools 1 to 600 rad/s.

    Examples
    --------
    >>> read_csv(b"0\\n200\\n401\\n603\\n806\\n1010\\n1215\\n1421\\n")[1]
    np.float64(0.2)
    """
    text, _ = file_text.decode(data, name)
    table = delimited.read(text, name=name)
    column = _named(table, time_column) if time_column else _tick_column(table)
    times = table.column(column.index)
    _check_order(times, table)
    if len(times) < FEWEST:
        raise Unreadable(f"the file holds {len(times)} ticks", name, f"{FEWEST} ticks or more")
    times = times * _unit(time_unit or column.time_unit, times, name, marks)
    return times[np.concatenate(([True], np.diff(times) > 0))]


def _named(table: Table, asked: str) -> Column:
    """The column that was asked for by its title or its number."""
    found = columns(table)
    for column in found:
        if asked.strip().lower() in (column.title.lower(), str(column.index + 1)):
            return column
    shown = ", ".join(column.shown for column in found)
    raise Unreadable(f"there is no column of numbers called “{asked}”", table.name, f"column {shown}")


def _tick_column(table: Table) -> Column:
    found = columns(table)
    if any(column.force_unit and not _counts(table, column) for column in found):
        raise Unreadable(
            "this is a pull trace: it has a column of force", table.name, f"{_ACCEPTED}; see pull"
        )
    rising = [column for column in found if np.all(np.diff(table.column(column.index)) >= 0)]
    rising = [column for column in rising if len(rising) == 1 or not _counts(table, column)]
    named = [column for column in rising if column.says_time] or rising
    if len(named) == 1 or (named and len(found) == 1):
        _refuse_samples(table, named[0], found)
        return named[0]
    if len(found) == 1:
        return found[0]
    if not named:
        raise Unreadable("no column in the file rises from row to row", table.name, _ACCEPTED)
    choices = ", ".join(column.shown for column in named)
    raise NeedsAnswer((Question("time_column", "Which column holds the ticks?", choices),), table.name)


def _counts(table: Table, column: Column) -> bool:
    """Whether a column numbers its rows."""
    return bool(np.all(np.diff(table.column(column.index)) == 1.0))


def _refuse_samples(table: Table, time: Column, found: tuple[Column, ...]) -> None:
    """Evenly spaced times beside another signal are samples of it, not ticks."""
    steps = np.diff(table.column(time.index))
    even = len(steps) > 30 and np.ptp(steps[1:]) < 0.02 * abs(float(np.median(steps)))
    others = [column for column in found if column is not time and not _counts(table, column)]
    if even and others:
        reason = f"the times are evenly spaced beside column {others[0].shown}: a trace, not ticks"
        raise Unreadable(reason, table.name, f"{_ACCEPTED}; a pull trace is read by pull")


def _check_order(times: Times, table: Table) -> None:
    steps = np.diff(times)
    if np.any(steps < 0):
        row = int(np.argmax(steps < 0)) + 1
        reason = f"the ticks run backwards, from {times[row - 1]:g} to {times[row]:g}"
        raise Unreadable(reason, table.where(row), _ACCEPTED)


def _unit(unit: str, times: Times, name: str, marks: int) -> float:
    if unit:
        known = known_unit(unit, "time")
        if not known:
            raise NeedsAnswer((Question("time_unit", f"“{unit}” is no unit of time.", TIME_UNITS),), name)
        return factor(known, "time")
    usual = marks * float(np.percentile(np.diff(times), 25.0))
    if usual <= 0:
        raise Unreadable("the ticks stand still", name, _ACCEPTED)
    return 1.0 if usual < SLOWEST_TURN else 1e-3 if usual < 1e3 * SLOWEST_TURN else 1e-6
