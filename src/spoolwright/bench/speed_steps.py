"""Does the speed of a coasting spool fall in steps? Sudden losses, beyond the ticks' scatter."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]

FALSE_ALARM = 0.005
"""Chance that even scatter passes the limit once in a whole spin, up or down."""

FEWEST = 24
"""Ticks below which no step is looked for."""

SLOWEST = 8.0
"""How many times as long as the shortest turn a turn may be: the last turns of any bearing are not even."""

_HALVES = (3, 4, 6)
_MARGIN = 1.25
_AROUND = 15
_PIECES = 16
_TAIL = 3.0


@dataclass(frozen=True)
class Step:
    """One sudden change: when [s from the start of the coast] and by how much the speed changed [rad/s]."""

    time: float
    change: float
    times_limit: float


@dataclass(frozen=True)
class Steps:
    """Sudden losses and gains of speed beyond the limit, and the chance that scatter alone shows one.

    `looked` is False where there were too few ticks to look; `smallest` is about the least change of speed
    that would have been seen [rad/s].
    """

    losses: tuple[Step, ...]
    gains: tuple[Step, ...]
    false_alarm: float
    smallest: float
    looked: bool = True


NOT_LOOKED = Steps((), (), FALSE_ALARM, float("inf"), looked=False)
"""Too few ticks, or a hum, which shows no single turns."""


def look(time: Array, residual: Array) -> Steps:
    """Find steps of the speed in what the law of the coast-down leaves over at each tick.

    Parameters
    ----------
    time : array
        Times of the used ticks from the start of the coast [s], shape (n,), rising.
    residual : array
        Turned angle less fitted angle at each [rad], shape (n,).

    Returns
    -------
    Steps
        Losses and gains in the order of time [s, rad/s].

    Raises
    ------
    ValueError
        Times and residuals of different lengths.

    Notes
    -----
    A step of the speed is a kink of the angle: straight lines through 3, 4 or 6 ticks before and after each
    place differ in slope. The difference is divided by what even scatter gives (the scatter of the ticks near
    it, from their third differences, which a kink hardly moves); its running median over 31 places is taken
    off, because a law that misses a little bends everywhere, a step only once. The limit is Bonferroni's for
    all places and widths, widened by a quarter because the scatter is itself found from the ticks. Single
    ticks off by more than three times the scatter are drawn in first.

    Source
    ------
    Change of slope by least squares: Quandt, J. Am. Stat. Assoc. 53 (1958); Bonferroni's inequality, any text
    on statistics (both from memory). The widths and the quarter are judgement priors.

    Examples
    --------
    >>> t, noise = np.arange(100.0), np.random.default_rng(1).normal(0, 0.01, 100)
    >>> kinked = noise - 0.05 * np.maximum(t - 50, 0)
    >>> [round(step.time) for step in look(t, kinked).losses], look(t, noise).losses
    ([50], ())
    """
    if len(time) != len(residual):
        raise ValueError(f"residual must have the length of time, {len(time)}; came {len(residual)}")
    quick = _quick(time)
    if quick < FEWEST:
        return NOT_LOOKED
    time, residual = time[:quick], residual[:quick]
    spread = _scatter(residual)
    residual = _drawn_in(residual, spread)
    limit = _limit(quick)
    scores, halves = _scores(residual, spread)
    found = [_step(time, spread, scores, halves, k, limit) for k in _peaks(scores, halves, limit)]
    losses = tuple(step for step in found if step.change < 0)
    gains = tuple(step for step in found if step.change > 0)
    return Steps(losses, gains, FALSE_ALARM, _smallest(time, spread, limit))


def _quick(time: Array) -> int:
    """How many ticks there are before the turns take eight times as long as at their shortest."""
    period = np.diff(time)
    if not len(period):
        return 0
    usual = np.median(np.lib.stride_tricks.sliding_window_view(np.pad(period, 2, mode="edge"), 5), axis=1)
    slow = np.flatnonzero(usual > SLOWEST * usual.min())
    return int(slow[0]) + 1 if len(slow) else len(time)


def _drawn_in(residual: Array, spread: Array) -> Array:
    """Single ticks far from the median of five around them, brought back to the edge of the scatter."""
    padded = np.pad(residual, 2, mode="reflect")
    middle = np.median(np.lib.stride_tricks.sliding_window_view(padded, 5), axis=1)
    near: Array = np.clip(residual, middle - _TAIL * spread, middle + _TAIL * spread)
    near[:2], near[-2:] = residual[:2], residual[-2:]
    return near


def _scatter(residual: Array) -> Array:
    """Standard deviation of each tick from third differences, robust, smooth along the record."""
    third = np.abs(np.diff(residual, 3)) / np.sqrt(20.0)
    pieces = max(1, min(_PIECES, len(third) // 20))
    edges = np.linspace(0, len(third), pieces + 1).astype(np.int64)
    levels = [_level(third[a:b]) for a, b in zip(edges[:-1], edges[1:], strict=True)]
    middles = 0.5 * (edges[1:] + edges[:-1]) + 1.5
    spread: Array = np.interp(np.arange(len(residual)), middles, np.maximum(levels, 1e-9))
    return spread


def _level(third: Array) -> float:
    """Root mean square of third differences, the largest drawn in; tails count, a kink hardly."""
    robust = 1.4826 * float(np.median(third))
    return float(np.sqrt(np.mean(np.minimum(third, _TAIL * robust) ** 2)))


def _weights(half: int) -> tuple[Array, float]:
    """Weights that give the change of slope in scatters, and the change of slope a tick of one such [-]."""
    x = np.arange(half) - 0.5 * (half - 1)
    row = np.concatenate((-x, x)) / float(x @ x)
    length = float(np.linalg.norm(row))
    return row / length, length


def _scores(angle: Array, spread: Array) -> tuple[Array, NDArray[np.int64]]:
    """Largest change of slope between each tick and the next, and the width that showed it."""
    best = np.zeros(len(angle) - 1)
    which = np.full(len(best), _HALVES[0], dtype=np.int64)
    for half in _HALVES:
        found = np.correlate(angle, _weights(half)[0], mode="valid")
        padded = np.pad(found, _AROUND, mode="reflect" if len(found) > _AROUND else "edge")
        around = np.lib.stride_tricks.sliding_window_view(padded, 2 * _AROUND + 1)
        place = slice(half - 1, half - 1 + len(found))
        found = (found - np.median(around, axis=1)) / spread[place]
        larger = np.abs(found) > np.abs(best[place])
        best[place] = np.where(larger, found, best[place])
        which[place] = np.where(larger, half, which[place])
    return best, which


def _limit(ticks: int) -> float:
    from scipy.stats import norm

    return _MARGIN * float(norm.isf(FALSE_ALARM / 2 / (len(_HALVES) * ticks)))


def _peaks(scores: Array, halves: NDArray[np.int64], limit: float) -> list[int]:
    """Changes beyond the limit, the largest first taken; what lies within its own width belongs to it."""
    left, kept = np.abs(scores), list[int]()
    while True:
        k = int(np.argmax(left))
        if left[k] <= limit:
            return sorted(kept)
        kept.append(k)
        near = int(halves[k])
        left[max(0, k - near) : k + near + 1] = 0.0


def _step(time: Array, spread: Array, scores: Array, halves: NDArray[np.int64], k: int, limit: float) -> Step:
    half = int(halves[k])
    low, high = max(0, k + 1 - half), min(len(time) - 1, k + half)
    period = float(time[high] - time[low]) / (high - low)
    change = float(scores[k]) * _weights(half)[1] * float(spread[k]) / period
    return Step(0.5 * float(time[k] + time[k + 1]), change, abs(float(scores[k])) / limit)


def _smallest(time: Array, spread: Array, limit: float) -> float:
    """About the least change of speed that would be seen in the middle of the spin [rad/s]."""
    period = np.diff(time)
    return float(np.median(limit * _weights(_HALVES[-1])[1] * spread[1:] / np.maximum(period, 1e-12)))
