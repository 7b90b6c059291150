"""Slow and fast pulls of the same drag: does it stick and slip, and from which line speed is it smooth?"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from math import sqrt

import numpy as np

from spoolwright.bench import pulls
from spoolwright.bench.pulls import PRIOR_FREEDOM, PULL_TO_PULL, OnePull
from spoolwright.bench.student import widening
from spoolwright.bench.uncertainty import Measured
from spoolwright.bench.unreadable import Unreadable

FEWEST = 3
ACCEPTED = "three pulls or more at two line speeds or more, the fastest twice the slowest or faster"
SMOOTH = 0.08
"""Judder up to which a drag counts as smooth, as in the limits of the readings: judgement prior."""

STICKS, SMOOTH_ALL, ROUGH_ALL, CANNOT_TELL = (
    "sticks and slips when slow",
    "smooth at every speed tried",
    "judders at every speed tried",
    "cannot tell",
)


@dataclass(frozen=True)
class PullSpeed:
    """How the pull changes with the speed at which line is drawn.

    per_tenfold: change of the running pull for ten times the speed, as a share [-]. rough_up_to and
    smooth_from: the fastest speed that juddered and the slowest from which all were smooth [m/s].
    """

    pulls: tuple[OnePull, ...]
    per_tenfold: Measured
    start_up_ratio: Measured | None
    rough_up_to: float | None
    smooth_from: float | None
    verdict: str
    notes: tuple[str, ...]


def fit(taken: Sequence[OnePull]) -> PullSpeed:
    """Running pull and judder against line speed, and the speed above which the drag is smooth.

    Parameters
    ----------
    taken : sequence of OnePull
        Pulls [N] with `at` the line speed [m/s] and `judder` [1] where it is known.

    Returns
    -------
    PullSpeed
        Change of pull [1] with its standard uncertainty, speeds [m/s], and the verdict.

    Raises
    ------
    Unreadable
        Fewer than three pulls, one speed only, a speed that is not above zero.

    Notes
    -----
    Running pull against the logarithm of speed, a straight line; the scale of the gauge cancels. From which
    speed a drag is smooth depends on the length of line out, so what was seen holds for this length only.

    Source
    ------
    Least squares, JCGM 100:2008, H.3.

    Examples
    --------
    >>> slow = [OnePull(v, 30.0, 36.0, judder=0.3 if v < 0.1 else 0.04) for v in (0.02, 0.05, 0.2, 0.5)]
    >>> found = fit(slow)
    >>> found.verdict, found.rough_up_to, found.smooth_from
    ('sticks and slips when slow', 0.05, 0.2)
    """
    pulls.check(taken, FEWEST, ACCEPTED)
    speed = np.array([p.at for p in taken])
    if not (np.all(np.isfinite(speed)) and speed.min() > 0 and speed.max() >= 2 * speed.min()):
        raise Unreadable("the line speeds are too much alike, or not above zero", "", ACCEPTED)
    rough, smooth = _bracket(taken)
    return PullSpeed(
        pulls=tuple(taken),
        per_tenfold=_per_tenfold(taken, speed),
        start_up_ratio=pulls.start_up_ratio(taken),
        rough_up_to=rough,
        smooth_from=smooth,
        verdict=_verdict(taken, rough, smooth),
        notes=tuple(_notes(taken)),
    )


def _per_tenfold(taken: Sequence[OnePull], speed: np.typing.NDArray[np.float64]) -> Measured:
    pull = np.array([p.running for p in taken])
    x = np.log10(speed) - np.mean(np.log10(speed))
    share = pull / pull.mean()
    square = float(np.sum(x**2))
    slope = float(np.sum(x * share)) / square
    residual = share - 1 - slope * x
    freedom = PRIOR_FREEDOM + len(taken) - 2
    variance = (PRIOR_FREEDOM * PULL_TO_PULL**2 + float(np.sum(residual**2))) / freedom
    return Measured(slope, sqrt(variance / square) * widening(freedom), "ratio")


def _bracket(taken: Sequence[OnePull]) -> tuple[float | None, float | None]:
    """The fastest speed that juddered, and the slowest above it that did not."""
    known = [(p.at, p.judder) for p in taken if p.judder is not None]
    rough = max((speed for speed, shaken in known if shaken > SMOOTH), default=None)
    beyond = [speed for speed, shaken in known if shaken <= SMOOTH and (rough is None or speed > rough)]
    return rough, min(beyond, default=None)


def _verdict(taken: Sequence[OnePull], rough: float | None, smooth: float | None) -> str:
    known = {p.at for p in taken if p.judder is not None}
    if len(known) < 2:
        return CANNOT_TELL
    if rough is None:
        return SMOOTH_ALL
    if smooth is None:
        return ROUGH_ALL
    slowest = min(known)
    calm_below = any(p.judder <= SMOOTH and p.at < rough for p in taken if p.judder is not None)
    return STICKS if not calm_below and rough >= slowest else CANNOT_TELL


def _notes(taken: Sequence[OnePull]) -> Iterable[str]:
    if any(p.judder is None for p in taken):
        yield "Judder comes from a trace; pulls that were only read off a scale say nothing of it."
    yield "The speed holds for this length of line: longer line is softer, and judders up to higher ones."
