"""How many turns went by in a long silence: the whole number with which one law fits before and after it."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench import coast_fit
from spoolwright.bench.coast_fit import TURN, CoastFit

Times = NDArray[np.float64]
Turns = NDArray[np.int64]

LONG = 5
"""Turns between two ticks from which on the count may have slipped."""

FEWEST_BESIDE = 6
"""Ticks without such a silence that there must be on either side of it."""

_CLEARLY = 0.7
_MOST = 0.75
_PASSES = 6


def settle(time: Times, turns: Turns) -> Turns:
    """The turn numbers, those after each long silence moved to where the law of the coast-down wants them.

    Parameters
    ----------
    time : array
        Ticks counted so far [s], shape (n,).
    turns : array
        Their turn numbers [-], shape (n,).

    Returns
    -------
    array
        Turn numbers [-], shape (n,).

    Notes
    -----
    A slip on one side of a silence bends the law. The slips are fitted as steps of the angle together with
    the law, rounded to whole turns, and believed if the law then leaves clearly less over.

    Source
    ------
    Our own rule.

    Examples
    --------
    >>> t = 20 - np.sqrt(400 - 4 * np.pi * np.arange(0, 60) / 5)
    >>> heard = np.r_[0:20, 30:60]
    >>> slipped = heard - np.where(heard >= 30, 2, 0)
    >>> bool(np.array_equal(settle(t[heard], slipped), heard))
    True
    """
    joins = _joins(turns)
    if not joins:
        return turns
    after = np.arange(len(turns))[:, None] >= np.array(joins)
    first = found = coast_fit.fit(time, turns)
    moved = turns
    for _ in range(_PASSES):
        shift = np.round(_slips(time, moved, found, after.astype(np.float64))).astype(np.int64)
        if not shift.any() or np.any(np.diff(moved + after @ shift) < 1):
            break
        moved = moved + after @ shift
        found = coast_fit.fit(time, moved)
    return moved if _left_over(found) < _CLEARLY * _left_over(first) else turns


def dense(turns: Turns) -> int:
    """How many ticks there are before the sparse last ones, whose count nothing nearby confirms.

    Parameters
    ----------
    turns : array
        Turn numbers [-], shape (n,).

    Returns
    -------
    int
        Number of ticks [-]: all where none is sparse, or where more than a quarter would be.

    Source
    ------
    Our own rule.

    Examples
    --------
    >>> dense(np.r_[0:40, 47, 48, 55, 61, 70])
    40
    """
    long = np.flatnonzero(np.diff(turns) >= LONG) + 1
    ends = np.append(long[1:], len(turns))
    sparse = long[ends - long < FEWEST_BESIDE]
    first = int(sparse[0]) if len(sparse) else len(turns)
    return first if first >= _MOST * len(turns) else len(turns)


def _joins(turns: Turns) -> list[int]:
    """Indices of the first tick after each long silence that has enough ticks on either side."""
    firsts = [0, *(np.flatnonzero(np.diff(turns) >= LONG) + 1).tolist(), len(turns)]
    wide = np.diff(firsts) >= FEWEST_BESIDE
    return [firsts[i] for i in range(1, len(firsts) - 1) if wide[i - 1] and wide[i]]


def _slips(time: Times, turns: Turns, found: CoastFit, after: Times) -> Times:
    """Turns by which the ticks after each join are off, found together with the law."""
    from scipy.optimize import lsq_linear

    wanted = TURN * turns - coast_fit.angle_at(time, found.values)
    columns = np.hstack([coast_fit.jacobian(time, found.values), -TURN * after])
    scale = np.linalg.norm(columns, axis=0)
    lowest = np.concatenate(([-np.inf], -found.values[1:], np.full(after.shape[1], -np.inf)))
    solved = lsq_linear(columns / scale, wanted, bounds=(lowest * scale - 1e-12, np.inf), method="bvls")
    slips: Times = (solved.x / scale)[len(found.values) :]
    return slips


def _left_over(found: CoastFit) -> float:
    """Mean square of what the law leaves over; a tick that it had to leave out counts as half a turn off."""
    left_out = float(np.count_nonzero(~found.used)) * np.pi**2
    return (float(np.sum(found.residual**2)) + left_out) / len(found.used)
