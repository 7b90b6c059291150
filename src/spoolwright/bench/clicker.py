"""The clicker as a tachometer: its clicks over the teeth of its wheel are the spool's turns."""

from __future__ import annotations

from math import pi, sqrt

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench.uncertainty import Measured
from spoolwright.bench.unreadable import Unreadable

FEWEST_CLICKS = 12

_AS_DEVIATION = 1.4826


def speed(clicks: NDArray[np.float64], teeth: int) -> Measured:
    """Mean speed of the spool from the moments of its clicks.

    Parameters
    ----------
    clicks : array
        Moments of the clicks [s], rising, shape (n,).
    teeth : int
        Teeth of the clicker's wheel [-], 2 or more.

    Returns
    -------
    Measured
        Speed [rad/s] with its standard uncertainty.

    Raises
    ------
    Unreadable
        Fewer than twelve clicks, a wheel of fewer than two teeth.

    Notes
    -----
    2 pi / (teeth times the middle interval), so that a click that is missed or heard twice does not count.
    Scatter: median of the deviations from it, as a standard deviation, over the root of their number.

    Source
    ------
    Kinematics; median deviation times 1.4826: Huber, Robust Statistics (1981) (from memory).

    Examples
    --------
    >>> found = speed(np.arange(50) * 0.01, 20)
    >>> round(found.value, 2)
    31.42
    """
    if teeth < 2:
        raise Unreadable(f"a wheel of {teeth} teeth does not click", "teeth", "2 or more")
    if len(clicks) < FEWEST_CLICKS:
        reason = f"there are {len(clicks)} clicks"
        raise Unreadable(reason, "", f"{FEWEST_CLICKS} clicks or more at one speed")
    steps = np.diff(np.asarray(clicks, dtype=np.float64))
    middle = float(np.median(steps))
    spread = _AS_DEVIATION * float(np.median(np.abs(steps - middle))) / sqrt(len(steps))
    turning = 2 * pi / (teeth * middle)
    return Measured(turning, turning * spread / middle, "rotation")
