"""The highest pull of the breakaway: what noise adds to the highest sample, what hides between samples."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench.budget import RECTANGLE

Samples = NDArray[np.float64]

# Mean and standard deviation of the highest of n standard normals, n = 1 to 10 (Harter, Order Statistics and
# their Use in Testing and Estimation, 1970, from memory; tests draw them again).
_HIGHEST_MEAN = (0.0, 0.5642, 0.8463, 1.0294, 1.1630, 1.2672, 1.3522, 1.4236, 1.4850, 1.5388)
_HIGHEST_SPREAD = (1.0, 0.8256, 0.7480, 0.7012, 0.6690, 0.6449, 0.6260, 0.6107, 0.5978, 0.5868)

_STEEPER = 3.0
"""How much steeper the fall just after the peak may be than the steepest fall between samples."""

_SLOW_STEP = 0.055
"""Seconds between samples from which on a gauge is too slow to see how the pull falls from its peak."""


@dataclass(frozen=True)
class Peak:
    """Best estimate of the highest pull [N], and the standard uncertainties of its two doubts [N]."""

    value: float
    from_noise: float
    between_samples: float


def highest(time: Samples, force: Samples, start: int, stop: int, noise: float) -> Peak:
    """The highest pull in a window, freed of what noise adds and of what falls between two samples.

    Parameters
    ----------
    time : array
        Times [s], shape (n,).
    force : array
        Pull [N], shape (n,).
    start, stop : int
        The window [samples], start included, stop not.
    noise : float
        Standard deviation of the gauge's noise [N], zero or more.

    Returns
    -------
    Peak
        Value and its two standard uncertainties [N].

    Notes
    -----
    m samples lie within two deviations of the highest one; the highest of m equal pulls reads e(m) deviations
    too much. Half of that is taken off, all of it is its limit. Between samples the pull cannot rise faster
    than it did on the way up nor fall more than three times as fast as it did on the way down; where those
    two lines meet is the upper limit, the sample the lower one, the middle is taken. A gauge slower than 20
    samples a second does not see the fall; for it only the first line counts.

    Source
    ------
    Order statistics of normals: Harter (1970), from memory. Limits as rectangles: JCGM 100:2008, 4.3.7.

    Examples
    --------
    >>> t = np.arange(0.0, 1.0, 0.1)
    >>> highest(t, np.full(10, 5.0), 3, 6, 0.0).value
    5.0
    """
    window = force[start:stop]
    top = start + int(np.argmax(window))
    near = int(np.count_nonzero(window >= force[top] - 2 * noise)) if noise > 0 else 1
    lift, spread = _of_highest(near)
    hidden = max(0.0, _meeting(time, force, top) - float(force[top]))
    value = float(force[top]) - 0.5 * lift * noise + 0.5 * hidden
    from_noise = noise * float(np.hypot(spread, 0.5 * lift * RECTANGLE))
    return Peak(value, from_noise, 0.5 * hidden * RECTANGLE)


def _of_highest(n: int) -> tuple[float, float]:
    if n <= len(_HIGHEST_MEAN):
        return _HIGHEST_MEAN[n - 1], _HIGHEST_SPREAD[n - 1]
    root = float(np.sqrt(2 * np.log(n)))
    return root - float(np.log(np.log(n) * 4 * np.pi)) / (2 * root), 1.2825 / root


def _meeting(time: Samples, force: Samples, top: int) -> float:
    """How high the lines up and down can meet in the two gaps beside the highest sample."""
    first, last = max(0, top - 3), min(len(force) - 1, top + 3)
    with np.errstate(divide="ignore", invalid="ignore"):
        slopes = np.nan_to_num(np.diff(force[first : last + 1]) / np.diff(time[first : last + 1]), posinf=0.0)
    up = max(0.0, float(slopes[: top - first].max(initial=0.0)))
    down = max(0.0, float(-slopes[top - first :].min(initial=0.0))) * _STEEPER
    if float(np.median(np.diff(time))) > _SLOW_STEP:
        down = 1e9
    gaps = [i for i in (top - 1, top) if 0 <= i < len(force) - 1]
    return max((_apex(time, force, i, up, down) for i in gaps), default=float(force[top]))


def _apex(time: Samples, force: Samples, i: int, up: float, down: float) -> float:
    width = float(time[i + 1] - time[i])
    if up + down <= 0 or width <= 0:
        return float(force[i])
    reach = (float(force[i + 1] - force[i]) + down * width) / (up + down)
    return float(force[i]) + up * min(max(reach, 0.0), width)
