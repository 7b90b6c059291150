"""A run as the bench recorded it: time, line speed and pull, for the heat that it put into a drag."""

from __future__ import annotations

import re
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench import delimited, file_text, pull_trace
from spoolwright.bench.column_names import Column, columns
from spoolwright.bench.delimited import Table
from spoolwright.bench.trace import TraceForm
from spoolwright.bench.unreadable import NeedsAnswer, Question
from spoolwright.quantities import read as quantity

_SPEED = re.compile(
    r"\b(?:speed|velocity|geschwindigkeit|vitesse|velocidad|velocità|fart|hastighet|snelheid)\b",
    re.IGNORECASE,
)
_UNIT = re.compile(r"(?<![\w/])(m/s|mm/s|km/h|ft/s|mph)(?![\w/])", re.IGNORECASE)


@dataclass(frozen=True, eq=False)
class RunRecord:
    """Moments [s] from 0 that rise, line speed [m/s] and pull [N] at them, shape (m,), none below zero."""

    time: NDArray[np.float64]
    speed: NDArray[np.float64]
    pull: NDArray[np.float64]
    notes: tuple[str, ...] = ()


def read(
    data: bytes, *, name: str = "", speed: float | None = None, form: TraceForm | None = None
) -> RunRecord:
    """The run in a file: a gauge's file with a column of line speed, or with one speed for all of it.

    Parameters
    ----------
    data : bytes
        The whole file [-].
    name : str
        What the file is called [-]; only for messages.
    speed : float or None
        Speed of the line where the file has no column of it [m/s], above zero.
    form : TraceForm or None
        Answers to what the file does not say of time and pull [-].

    Returns
    -------
    RunRecord
        Time [s], line speed [m/s] and pull [N], shape (m,).

    Raises
    ------
    NeedsAnswer
        A speed that is neither in the file nor given, a unit that the file does not say.
    Unreadable
        As pull_trace.read.

    Notes
    -----
    Line that is wound in, and a gauge that shows a little less than nothing, count as zero: neither makes
    heat. Of several samples at one moment the last counts.

    Source
    ------
    Our own rules, as pull_trace.

    Examples
    --------
    >>> rows = "".join(f"{i};4.0;{20 + i}\\n" for i in range(25))
    >>> record = read(("time [s];speed [m/s];pull [N]\\n" + rows).encode())
    >>> float(record.time[-1]), float(record.speed[0]), float(record.pull[-1])
    (24.0, 4.0, 44.0)
    """
    trace = pull_trace.read(data, name=name, form=form)
    text, _ = file_text.decode(data, name)
    answers = form or TraceForm()
    table = delimited.read(text, name=name, delimiter=answers.delimiter, decimal=answers.decimal)
    found = next((column for column in columns(table) if _SPEED.search(column.title)), None)
    speeds, notes = _speeds(table, found, speed)
    last = np.append(np.diff(trace.time) > 0, True)
    pulls = np.maximum(trace.force, 0.0)
    return RunRecord(trace.time[last], speeds[last], pulls[last], (*trace.notes, *notes))


def _speeds(
    table: Table, found: Column | None, speed: float | None
) -> tuple[NDArray[np.float64], tuple[str, ...]]:
    if found is None:
        if speed is None:
            words = "The file has no column of line speed. How fast did the line run?"
            raise NeedsAnswer((Question("speed", words, "a speed such as 4 m/s"),), table.name)
        return np.full(len(table.rows), speed), ("One line speed was taken for the whole run.",)
    unit = _UNIT.search(found.title)
    if unit is None:
        words = f"In which unit is the line speed in column {found.shown}?"
        raise NeedsAnswer(
            (Question("speed_unit", words, "m/s, km/h, ft/s or mph above the column"),), table.name
        )
    values = table.column(found.index) * quantity(f"1 {unit[1].lower()}", "speed")
    wound = "Line that was wound in counts as no run." if np.any(values < 0) else ""
    return np.maximum(values, 0.0), (wound,) if wound else ()
