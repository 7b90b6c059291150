"""Where a spool is left to itself: after the last push of the hand, before anything touches it."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]
Turns = NDArray[np.int64]

STILL_FASTEST = 0.98
"""Share of the highest speed from which on the spool is taken as let go."""

TOUCHED = 2.0
"""How many times as fast as before a spool must slow down to be taken as touched: judgement prior."""

LOWEST_TOUCH = 0.08
"""Share of the first speed below which a bearing's last turns are not told from a touch: judgement prior."""

AT_ONCE = 2
"""Ticks within which a spool that nobody was heard driving is at its fastest."""

_RISE, _RISE_OF_TOP, _STAYS = 1.25, 0.1, 5
_FEWEST = 12
_CANDIDATES = 48
_SURELY = 40.0
_LEAST_AFTER = 2


@dataclass(frozen=True)
class Touch:
    """The last free tick (its index), and how many times as fast the spool slowed down after it [-]."""

    last: int
    times_as_fast: float


def let_go(times: Array, turns: Turns) -> tuple[int, int]:
    """First and last tick of the longest time in which nobody pushed the spool.

    Parameters
    ----------
    times : array
        Tick times [s], shape (n,), rising, n >= 6.
    turns : array
        Turn numbers [-], shape (n,), rising.

    Returns
    -------
    tuple of int
        Index of the first tick at which the spool is as fast as it gets, and of the last tick before it is
        pushed again [-].

    Notes
    -----
    A push is a rise of the running median of the speed by a quarter and by a tenth of the highest speed that
    stays for five ticks. Between pushes the spool coasts; the coast with most turns is taken.

    Source
    ------
    Our own rule; the shares are judgement priors.

    Examples
    --------
    >>> up = np.cumsum(0.5 * 0.9 ** np.arange(20))
    >>> coast = up[-1] + np.cumsum(0.07 * 1.01 ** np.arange(40))
    >>> first, last = let_go(np.r_[up, coast], np.arange(60))
    >>> 18 <= first <= 21, last
    (True, 59)
    """
    smooth = _smooth_speed(times, turns)
    edges = [0, *_pushes(smooth), len(smooth)]
    coasts = [
        (low + _fastest(smooth[low:high]), high) for low, high in zip(edges[:-1], edges[1:], strict=True)
    ]
    return max(coasts, key=lambda coast: (int(turns[coast[1]] - turns[coast[0]]), -coast[0]))


def highest_speed(times: Array, turns: Turns) -> float:
    """Highest speed that lasts for more than a tick or two.

    Parameters
    ----------
    times : array
        Tick times [s], shape (n,), rising, n >= 6.
    turns : array
        Turn numbers [-], shape (n,).

    Returns
    -------
    float
        Speed [1/s], in steps of the turn number a second.

    Source
    ------
    Running median of five intervals, Tukey, Exploratory Data Analysis, 7 (from memory).

    Examples
    --------
    >>> highest_speed(np.arange(10) / 2, np.arange(10))
    2.0
    """
    smooth = _smooth_speed(times, turns)
    return float(smooth[min(AT_ONCE, len(smooth) - 1) :].max())


def touched(times: Array, turns: Turns | Array) -> Touch | None:
    """Where a coasting spool was touched and so slowed down at once much faster than before.

    Parameters
    ----------
    times : array
        Tick times from the moment the spool was let go [s], shape (n,), rising.
    turns : array
        Turn numbers [-], shape (n,).

    Returns
    -------
    Touch or None
        The last free tick; None where the spool was left alone, as far as can be seen.

    Notes
    -----
    The speeds up to a tick follow the law of a coast-down (speed = w0 - a t - b angle - c integral of w^2,
    linear in all four), those after it a parabola. The tick at which both together leave least over is a
    touch if they leave far less over than one law for all (F above 40), if the spool then slows down twice as
    fast or more as the law foretells at those speeds, and if it still had 8 % of its first speed.

    Source
    ------
    Change point by least squares: Quandt, J. Am. Stat. Assoc. 53 (1958) (from memory); limits are judgement
    priors.

    Examples
    --------
    >>> free = np.cumsum(0.07 * 1.005 ** np.arange(60))
    >>> thumb = free[-1] + np.cumsum(free[-1] - free[-2] + 0.03 * np.arange(1, 9))
    >>> abs(touched(np.r_[free, thumb], np.arange(68)).last - 59) < 3
    True
    >>> touched(free, np.arange(60)) is None
    True
    """
    if len(times) < _FEWEST + _LEAST_AFTER + 1:
        return None
    one = _Speeds.of(times, turns)
    whole = one.left_over_law(0, len(one.speed))
    best, cut = min((one.parted(cut), cut) for cut in _grid(_FEWEST, len(one.speed) - _LEAST_AFTER))
    near = len(one.speed) // _CANDIDATES + 1
    low, high = max(_FEWEST, cut - near), min(len(one.speed) - _LEAST_AFTER, cut + near)
    best, cut = min((one.parted(c), c) for c in range(low, high + 1))
    freedom = len(one.speed) - 8
    if freedom < 1 or (whole - best) / 4 < _SURELY * max(best, 1e-12) / freedom:
        return None
    factor = one.times_as_fast(cut)
    start = float(one.speed[: _FEWEST // 2].max())
    if factor < TOUCHED or one.speed[cut] < LOWEST_TOUCH * start:
        return None
    return Touch(cut, factor)


def _smooth_speed(times: Array, turns: Turns | Array) -> Array:
    speed = np.diff(turns) / np.maximum(np.diff(times), 1e-9)
    padded = np.pad(speed, 2, mode="edge")
    smooth: Array = np.median(np.lib.stride_tricks.sliding_window_view(padded, 5), axis=1)
    return smooth


def _fastest(smooth: Array) -> int:
    """The first tick near the highest speed; where a hand was at work before, the one after its last push."""
    near = int(np.argmax(smooth >= STILL_FASTEST * smooth.max()))
    if near <= AT_ONCE:
        return near
    return min(int(np.argmax(smooth)) + AT_ONCE, len(smooth) - 1)


def _pushes(smooth: Array) -> list[int]:
    """Where the speed begins to rise again after it had fallen."""
    found: list[int] = []
    top, since = float(smooth.max()), 0
    i = 1
    while i < len(smooth) - _STAYS:
        low = since + int(np.argmin(smooth[since : i + 1]))
        least = float(smooth[low])
        stays = float(smooth[i : i + _STAYS].min())
        falls_before = float(smooth[since : low + 1].max()) > _RISE * least
        if falls_before and stays > _RISE * least and stays - least > _RISE_OF_TOP * top:
            found.append(low)
            since = i
        i += 1
    return found


def _grid(low: int, high: int) -> list[int]:
    return sorted({int(c) for c in np.linspace(low, high, _CANDIDATES)})


@dataclass(frozen=True, eq=False)
class _Speeds:
    """Speeds between ticks with what the law needs of them; weighed by one over the speed."""

    time: Array
    speed: Array
    columns: Array
    weight: Array

    @staticmethod
    def of(times: Array, turns: Turns | Array) -> _Speeds:
        middle = 0.5 * (times[1:] + times[:-1]) - times[0]
        speed = np.diff(turns) / np.maximum(np.diff(times), 1e-9)
        smooth = _smooth_speed(times, turns)
        speed = np.where(speed / smooth < 1.5, speed, smooth)
        turned = 0.5 * (turns[1:] + turns[:-1]) - turns[0]
        squared = np.concatenate(
            ([0.0], np.cumsum(0.5 * np.diff(middle) * (smooth[1:] ** 2 + smooth[:-1] ** 2)))
        )
        columns = np.stack([np.ones_like(middle), -middle, -turned, -squared], axis=1)
        return _Speeds(middle, speed, columns, 1.0 / np.maximum(smooth, 1e-3 * smooth.max()))

    def law(self, first: int, last: int) -> Array:
        from scipy.optimize import nnls

        part, weight = slice(first, last), self.weight[first:last, None]
        columns = self.columns[part] * weight
        scale = np.maximum(np.linalg.norm(columns, axis=0), 1e-300)
        found, _ = nnls(columns / scale, self.speed[part] * weight[:, 0])
        law: Array = found / scale
        return law

    def left_over_law(self, first: int, last: int) -> float:
        rest = self.speed[first:last] - self.columns[first:last] @ self.law(first, last)
        return float(np.sum((rest * self.weight[first:last]) ** 2))

    def parted(self, cut: int) -> float:
        """What the law up to a tick and a parabola after it leave over."""
        time = self.time[cut:] - self.time[cut]
        scale = max(float(time[-1]), 1e-9)
        columns = np.stack([np.ones_like(time), time / scale, (time / scale) ** 2], axis=1)
        weight = self.weight[cut:]
        solved = np.linalg.lstsq(columns * weight[:, None], self.speed[cut:] * weight, rcond=None)[0]
        rest = (self.speed[cut:] - columns @ solved) * weight
        return self.left_over_law(0, cut) + float(rest @ rest)

    def times_as_fast(self, cut: int) -> float:
        """Slowing down after a tick over what the law before it foretells at the same speeds."""
        _, constant, viscous, quadratic = self.law(0, cut)
        speed = np.maximum(self.speed[cut:], 0.0)
        after = float(np.median(self.speed[cut : cut + 2]) - np.median(self.speed[-2:]))
        seen = after / max(float(self.time[-1] - self.time[cut]), 1e-9)
        foretold = float(np.mean(constant + viscous * speed + quadratic * speed**2))
        return seen / max(foretold, 1e-9)
