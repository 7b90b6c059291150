"""Numbers of a scale typed while it was pulled: one row a number, its second before it."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass

import numpy as np

from spoolwright.bench.trace import Found, PullTrace
from spoolwright.bench.unreadable import Unreadable
from spoolwright.quantities import NotAQuantity, Typed, read_typed

MOST = 500
"""Rows of one pull; more come from a gauge's file."""

_ACCEPTED = (
    "one row a number: the seconds since the start, a space, the number of the scale, such as “2.4 3.35”"
)
_APART = re.compile(r"[;\s]+")


@dataclass(frozen=True, eq=False)
class TypedTrace(PullTrace):
    """A pull trace of few numbers; `step` [N] is the display's, as the digits that were typed betray it.

    It is what the finest of their last digits is worth, because people leave out a last nought.
    """

    step: float = 0.0


def read(text: str, unit: str = "kg") -> TypedTrace:
    """The rows that were typed, as a pull trace of few samples.

    Parameters
    ----------
    text : str
        One row a number: seconds, then what the scale showed, parted by spaces or a semicolon [-]; a decimal
        comma counts as a point, empty rows are left out.
    unit : str
        Unit of numbers that carry none of their own [-], such as "kg".

    Returns
    -------
    TypedTrace
        Time [s] from the first row, and pull [N], both of shape (n,), 1 <= n <= 500, and the step [N].

    Raises
    ------
    Unreadable
        Nothing typed, a row that is not a time and a number, a pull below zero, time running backwards, too
        many rows; it says which row.

    Notes
    -----
    Nothing is sorted or left out.

    Source
    ------
    Our own rules; units as `quantities` describes them.

    Examples
    --------
    >>> typed = read("0,0 0,8\\n1.2 2.9\\n2.5 2.35")
    >>> typed.force.round(2).tolist(), round(typed.step / 9.80665, 6)
    ([7.85, 28.44, 23.05], 0.01)
    """
    rows = [(k, line.strip()) for k, line in enumerate(text.splitlines(), 1) if line.strip()]
    if not rows:
        raise Unreadable("no number was typed", "", _ACCEPTED)
    if len(rows) > MOST:
        raise Unreadable(f"{len(rows)} rows were typed", "", f"at most {MOST}")
    taken = [_row(number, line, unit) for number, line in rows]
    time = np.array([at for at, _ in taken])
    _check(time, [number for number, _ in rows])
    lasts = float(time[-1] - time[0])
    rate = (len(taken) - 1) / lasts if lasts > 0 else 0.0
    found = Found("typed", "space", "point", (), "1", "2", "s", unit, rate, len(taken))
    force = np.array([typed.value for _, typed in taken])
    return TypedTrace(time - time[0], force, found, step=min(typed.resolution for _, typed in taken))


def _row(number: int, line: str, unit: str) -> tuple[float, Typed]:
    where = f"row {number}, “{line[:40]}”"
    at, *rest = _APART.split(line, maxsplit=1)
    if not rest:
        raise Unreadable("there is one number where two are needed", where, _ACCEPTED)
    pull = rest[0].strip()
    bare = pull.replace(",", ".").replace(".", "", 1)
    try:
        seconds = float(at.replace(",", "."))
        typed = read_typed(f"{pull} {unit}" if bare.isdecimal() and bare.isascii() else pull, "force")
    except NotAQuantity as fault:
        raise Unreadable(f"the pull cannot be read: {fault.reason}", where, _ACCEPTED) from fault
    except ValueError as fault:
        raise Unreadable("the time is no number of seconds", where, _ACCEPTED) from fault
    if not (math.isfinite(seconds) and 0 <= seconds < 1e5):
        raise Unreadable("the time is no number of seconds", where, _ACCEPTED)
    if typed.value < 0:
        raise Unreadable("a pull below zero cannot be", where, "zero or more")
    return seconds, typed


def _check(time: np.typing.NDArray[np.float64], numbers: list[int]) -> None:
    back = np.flatnonzero(np.diff(time) < 0)
    if len(back):
        row = int(back[0]) + 1
        reason = f"time runs backwards, from {time[row - 1]:g} s to {time[row]:g} s"
        raise Unreadable(reason, f"row {numbers[row]}", "rows in the order in which they were typed")
