"""The highest pull of the breakaway: what noise adds to the highest sample, what hides between samples."""

from __future__ import annotations

from dataclasses import dataclass
from math import log, sqrt
from statistics import NormalDist

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench.budget import RECTANGLE

Samples = NDArray[np.float64]

_STEEPER = 3.0
"""How much steeper the fall just after the peak may be than the steepest fall between samples."""

_SLOW_STEP = 0.055
"""Seconds between samples from which on a gauge is too slow to see how the pull falls from its peak."""

_SHARE, _SHARE_SLOW = 0.35, 0.2
"""How far from the highest sample towards the upper limit the estimate goes, and for a slow gauge: a hand's
climb mostly ends nearer to the sample (judgement prior)."""


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
    too much, a peak that stands alone reads nothing too much. Half of e(m) is taken off, and half of it is
    the uncertainty, because it is one or the other. Between samples the pull cannot rise faster than it did
    on the way up nor fall more than three times as fast as on the way down, steps freed of noise; where those
    two lines meet is the upper limit, the sample the lower one; a third of the way is taken. A gauge slower
    than 20 samples a second does not see the fall; for it only the first line counts, and a fifth is taken.

    Source
    ------
    Highest of n normals: Blom, Statistical Estimates and Transformed Beta Variables (1958), and the limit law
    for its deviation, pi / sqrt 6 / sqrt(2 ln n), both from memory. Limits as rectangles: JCGM 100:2008,
    4.3.7.

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
    hidden = max(0.0, _meeting(time, force, top, noise) - float(force[top]))
    share = _SHARE_SLOW if _is_slow(time) else _SHARE
    value = float(force[top]) - 0.5 * lift * noise + share * hidden
    from_noise = noise * float(np.hypot(spread, 0.5 * lift))
    return Peak(value, from_noise, hidden * float(np.hypot(0.5 * RECTANGLE, 0.5 - share)))


def _is_slow(time: Samples) -> bool:
    return float(np.median(np.diff(time))) > _SLOW_STEP


def _of_highest(n: int) -> tuple[float, float]:
    """By how much the highest of n standard normals lies above their mean, and its standard deviation."""
    if n < 2:
        return 0.0, 1.0
    return NormalDist().inv_cdf((n - 0.375) / (n + 0.25)), min(1.0, 1.2825 / sqrt(2 * log(n)))


def _meeting(time: Samples, force: Samples, top: int, noise: float) -> float:
    """How high the lines up and down can meet in the two gaps beside the highest sample."""
    first, last = max(0, top - 3), min(len(force) - 1, top + 3)
    steps, widths = np.diff(force[first : last + 1]), np.diff(time[first : last + 1])
    clear = np.sign(steps) * np.sqrt(np.maximum(steps**2 - 8 * noise**2, 0.0))
    slopes = np.divide(clear, widths, out=np.zeros_like(clear), where=widths > 0)
    up = max(0.0, float(slopes[: top - first].max(initial=0.0)))
    down = max(0.0, float(-slopes[top - first :].min(initial=0.0))) * _STEEPER
    if _is_slow(time):
        down = 1e9
    gaps = [i for i in (top - 1, top) if 0 <= i < len(force) - 1]
    return max((_apex(time, force, i, up, down) for i in gaps), default=float(force[top]))


def _apex(time: Samples, force: Samples, i: int, up: float, down: float) -> float:
    width = float(time[i + 1] - time[i])
    if up + down <= 0 or width <= 0:
        return float(force[i])
    reach = (float(force[i + 1] - force[i]) + down * width) / (up + down)
    return float(force[i]) + up * min(max(reach, 0.0), width)
