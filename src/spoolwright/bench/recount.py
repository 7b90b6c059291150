"""Counts the turns again with the fitted law: ticks lost at a long silence find their place."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench import coast_fit
from spoolwright.bench.coast_fit import TURN, CoastFit

Times = NDArray[np.float64]
Turns = NDArray[np.int64]

CLOSEST = 0.12
"""Part of a turn within which a tick belongs to the turn that the law foretells."""

_STANDING = 1e-3


def recount(heard: Times, time: Times, turns: Turns, found: CoastFit) -> tuple[Times, Turns]:
    """Number all heard ticks by the fitted law, bent to follow the ticks that were used.

    Parameters
    ----------
    heard : array
        All ticks from the first used one on [s], shape (m,).
    time : array
        Ticks counted so far [s], from the same zero, shape (n,).
    turns : array
        Their turn numbers [-], shape (n,).
    found : CoastFit
        The law fitted to them [rad, rad/s, drag per unit inertia].

    Returns
    -------
    tuple of arrays
        Tick times [s] and turn numbers [-] of the new count, at most one tick a turn.

    Notes
    -----
    What the law leaves over, less whole turns, is carried along from the nearest used ticks; so a wrong whole
    number in the first count does not come back. Ticks after the law has come to rest are left out.

    Source
    ------
    Our own rule.

    Examples
    --------
    >>> t = 20 - np.sqrt(400 - 4 * np.pi * np.arange(0, 30) / 5)
    >>> found = coast_fit.fit(t[:20], np.arange(20))
    >>> recount(t, t[:20], np.arange(20), found)[1][-1]
    np.int64(29)
    """
    law = coast_fit.angle_at(time, found.values) / TURN
    over = turns - law
    over = coast_fit.neighbourhood(over - np.round(over))
    moving = coast_fit.speed_at(heard, found.values) > _STANDING * found.values[1]
    heard = heard[moving]
    foretold = coast_fit.angle_at(heard, found.values) / TURN + np.interp(heard, time, over)
    number = np.round(foretold).astype(np.int64)
    off = np.abs(foretold - number)
    order = np.lexsort((off, number))
    first = np.concatenate(([True], np.diff(number[order]) > 0))
    best = np.sort(order[first & (off[order] < CLOSEST)])
    return heard[best], number[best]
