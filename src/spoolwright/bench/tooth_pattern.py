"""Several marks on one spool are never evenly spaced: where each of them stands, found from its own ticks."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench import coast_fit
from spoolwright.bench.coast_fit import TURN, CoastFit

Array = NDArray[np.float64]
Turns = NDArray[np.int64]

TICKS_A_MARK = 3
"""Ticks of one mark below which its place is not told from scatter."""

_PASSES = 3
_FARTHEST = 0.45


def places(time: Array, turns: Turns, found: CoastFit, marks: int) -> tuple[Array, CoastFit]:
    """The count with each mark where it stands, and the law fitted again to it.

    Parameters
    ----------
    time : array
        Tick times [s], shape (n,).
    turns : array
        Which mark passed, counted on over all turns [-], shape (n,).
    found : CoastFit
        The law with all marks taken as evenly spaced [rad, rad/s, drag per unit inertia].
    marks : int
        Marks on the spool [-], 1 or more.

    Returns
    -------
    tuple
        Count with a part of a step added for each mark [-], shape (n,), and the law [as before].

    Notes
    -----
    The place of a mark is the median of what the law leaves over at its ticks, less the median over all
    marks; law and places are found in turns. With fewer than three ticks a mark all stay evenly spaced.

    Source
    ------
    Our own rule; back-fitting, Hastie and Tibshirani, Generalized Additive Models, 4 (from memory).

    Examples
    --------
    >>> t = 20 - np.sqrt(400 - 4 * np.pi * (np.arange(60) + 0.2 * (np.arange(60) % 2)) / 10)
    >>> count, _ = places(t, np.arange(60), coast_fit.fit(t, np.arange(60)), 2)
    >>> round(float(count[1] - count[0]), 2)
    1.2
    """
    even = turns.astype(np.float64)
    if marks < 2 or len(turns) < TICKS_A_MARK * marks:
        return even, found
    which = turns % marks
    count = even
    for _ in range(_PASSES):
        over = (TURN * even - coast_fit.angle_at(time, found.values)) / TURN
        own = np.array([_middle(over[which == k]) for k in range(marks)])
        shift = np.clip(own - np.median(own), -_FARTHEST, _FARTHEST)
        count = even - shift[which]
        found = coast_fit.fit(time, count)
    return count, found


def _middle(values: Array) -> float:
    return float(np.median(values)) if len(values) else 0.0
