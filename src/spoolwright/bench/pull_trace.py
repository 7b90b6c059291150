"""A force gauge's file to time and pull: whatever its encoding, delimiter, decimal mark, header and units."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench import delimited, file_text, trace_columns
from spoolwright.bench.delimited import Table
from spoolwright.bench.gauge import Gauge
from spoolwright.bench.pull_reading import PullReading, analyse
from spoolwright.bench.trace import Found, PullTrace, TraceForm
from spoolwright.bench.trace_columns import Picked
from spoolwright.bench.unreadable import NeedsAnswer, Question, Unreadable

__all__ = ["FEWEST", "Found", "Gauge", "PullReading", "PullTrace", "TraceForm", "analyse", "read"]

FEWEST = 20
"""Samples below which nothing can be said about a pull."""

_MOST_REPEATED = 0.2
"""Share of samples that may carry the time of the one before; more, and the clock is too coarse to use."""

_ACCEPTED = "a recording of one pull from before the line comes tight until it is let go"


def read(data: bytes, *, name: str = "", form: TraceForm | None = None) -> PullTrace:
    """The pull against time in a gauge's file.

    Parameters
    ----------
    data : bytes
        The whole file [-].
    name : str
        What the file is called [-]; only for messages.
    form : TraceForm or None
        Answers to what the file does not say [-]; None: find everything out.

    Returns
    -------
    PullTrace
        Time [s], counted from the first sample, and pull [N], both of shape (n,), n >= 20.

    Raises
    ------
    NeedsAnswer
        A unit, a column or the sample rate that is neither in the file nor in the form.
    Unreadable
        No text, no numbers, fewer than 20 samples, a value that is no number, time running backwards.

    Notes
    -----
    A gauge that shows a pull as negative is turned round, and the notes say so. Nothing is smoothed, sorted
    or left out.

    Source
    ------
    Our own rules; encodings and units as `file_text` and `quantities` describe them.

    Examples
    --------
    >>> rows = "".join(f"{i / 10:.1f};{min(i, 20) / 4:.2f}\\n" for i in range(40))
    >>> trace = read(("time [s];pull [kg]\\n" + rows).encode())
    >>> round(float(trace.force[-1]), 2)
    49.03
    """
    answers = form or TraceForm()
    text, encoding = file_text.decode(data, name)
    table = delimited.read(text, name=name, delimiter=answers.delimiter, decimal=answers.decimal)
    picked = trace_columns.pick(table, answers)
    time, force = trace_columns.values(table, picked)
    _check(time, table, picked)
    turned, notes = _upright(force)
    if picked.only_fits:
        notes += (f"The file names no unit of time; only {picked.time_unit} makes it as long as a pull.",)
    time = time - time[0]
    rate = (len(time) - 1) / float(time[-1])
    return PullTrace(time, turned, _found(table, picked, encoding, rate), notes)


def _check(time: NDArray[np.float64], table: Table, picked: Picked) -> None:
    if len(time) < FEWEST:
        raise Unreadable(f"the file holds {len(time)} samples", table.name, f"{FEWEST} samples or more")
    steps = np.diff(time)
    if np.any(steps < 0):
        row = int(np.argmax(steps < 0)) + 1
        reason = f"time runs backwards, from {time[row - 1]:g} s to {time[row]:g} s"
        raise Unreadable(reason, table.where(row), "rows in the order in which they were taken")
    if np.mean(steps == 0) > _MOST_REPEATED:
        words = "The clock in the file stands still between samples. How many samples a second were taken?"
        raise NeedsAnswer((Question("rate", words, "a number such as 100 Hz"),), table.name)
    _check_rate(time, table, picked)


def _check_rate(time: NDArray[np.float64], table: Table, picked: Picked) -> None:
    rate = (len(time) - 1) / float(time[-1] - time[0])
    if not trace_columns.SLOWEST <= rate <= trace_columns.FASTEST:
        reason = f"with time in {picked.time_unit} the gauge would take {rate:.3g} samples a second"
        usual = f"{trace_columns.SLOWEST:g} to {trace_columns.FASTEST:g} samples a second"
        raise Unreadable(reason, table.name, f"{usual}; is the unit of time right?")


def _upright(force: NDArray[np.float64]) -> tuple[NDArray[np.float64], tuple[str, ...]]:
    if force.max() == force.min():
        raise Unreadable(f"the gauge shows the same value throughout ({force[0]:.3g} N)", "", _ACCEPTED)
    if -force.min() > 2 * abs(force.max()):
        return -force, ("The gauge shows the pull as negative; it was turned round.",)
    return force, ()


def _found(table: Table, picked: Picked, encoding: str, rate: float) -> Found:
    return Found(
        encoding=encoding,
        delimiter=next(key for key, mark in delimited.DELIMITERS.items() if mark == table.delimiter),
        decimal=next(key for key, mark in delimited.DECIMALS.items() if mark == table.decimal),
        header=tuple(line.strip() for line in table.above),
        time_column=picked.time.shown if picked.time and picked.rate is None else "",
        force_column=picked.force.shown,
        time_unit=picked.time_unit,
        force_unit=picked.force_unit,
        rate=rate,
        rows=len(table.rows),
    )
