"""The part of a recording in which the spool was left to itself, and what was cut off before and after it."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from spoolwright.bench import coast_ends
from spoolwright.bench.coast_fit import TURN
from spoolwright.bench.mending import FEWEST, Mended
from spoolwright.bench.unreadable import Unreadable

SLOWEST_SPEED, FASTEST_SPEED = 1.0, 600.0
"""Speeds of a spool in rad/s between which ticks are believed."""

_SLOW_EDGE, _FAST_EDGE = 1.25, 1.1
"""How far beyond: of a slow spool the middle of its first five turns lies well below its first speed."""
_THUMB, _THUMB_OF, _THUMB_SPEED = 3, 30, 0.15


@dataclass(frozen=True)
class CutOff:
    """Speeds that were left out of the fit: times [s from the start of the coast] and speeds [rad/s].

    `before` while a hand was still driving, `after` from the first touch on; `touched` is when that was.
    """

    before: tuple[tuple[float, float], ...] = ()
    after: tuple[tuple[float, float], ...] = ()
    touched: float | None = None


@dataclass(frozen=True)
class FreePart:
    """The first free tick (its index), the count up to the last free one, and whether a touch ended it."""

    first: int
    counted: Mended
    touched: bool


def find(mended: Mended, marks: int) -> FreePart:
    """The coast that nobody drove or touched.

    Parameters
    ----------
    mended : Mended
        Counted ticks [s] of the whole recording, n >= 8.
    marks : int
        Marks on the spool [-], 1 or more.

    Returns
    -------
    FreePart
        Where it begins, and the count up to its end.

    Raises
    ------
    Unreadable
        Fewer than eight ticks in it, or a speed that no spool has.

    Notes
    -----
    Where the sound ends while the spool still has 15 % of its speed, three ticks are left out: a quick thumb
    leaves no more of its own.

    Source
    ------
    Our own rule; the shares are judgement priors.

    Examples
    --------
    >>> turns = np.arange(0, 30)
    >>> find(Mended(20 - np.sqrt(400 - 4 * np.pi * turns / 5), turns, 0, 0), 1).first
    0
    """
    if len(mended.times) < FEWEST:
        raise Unreadable(f"there are {len(mended.times)} ticks", "", f"{FEWEST} ticks or more")
    _check_speed(TURN / marks * coast_ends.highest_speed(mended.times, mended.turns))
    first, last = coast_ends.let_go(mended.times, mended.turns)
    if np.count_nonzero(mended.heard < mended.times[first]) > coast_ends.AT_ONCE >= first:
        first += coast_ends.AT_ONCE  # a hand whose ticks fit no count; its last push may reach into these
    if last + 1 - first < FEWEST:
        reason = f"only {last + 1 - first} ticks follow the fastest moment"
        raise Unreadable(reason, "", f"{FEWEST} ticks or more")
    touch = coast_ends.touched(mended.times[first : last + 1], mended.turns[first : last + 1])
    if touch is not None:
        return FreePart(first, _until(mended, first + touch.last), True)
    ends_early = _speed_near(mended, last) > _THUMB_SPEED * _speed_near(mended, first + FEWEST // 2)
    hand = last < len(mended.times) - 1
    close = mended.turns[last] - mended.turns[last - _THUMB] <= 2 * _THUMB
    if (ends_early or hand) and close and last - first > _THUMB_OF:
        last -= _THUMB  # a quick thumb leaves no more than two or three ticks of its own
    return FreePart(first, _until(mended, last), hand)


def _speed_near(mended: Mended, tick: int) -> float:
    """Marks a second over the few ticks up to one."""
    few = max(tick - FEWEST // 2, 0)
    return float(mended.turns[tick] - mended.turns[few]) / max(
        float(mended.times[tick] - mended.times[few]), 1e-9
    )


def _until(mended: Mended, last: int) -> Mended:
    """The same count, ended with a tick; what was heard after the very last one may still fall on turns."""
    if last == len(mended.times) - 1:
        return mended
    end = mended.times[last]
    heard = mended.heard[mended.heard <= end]
    return replace(mended, times=mended.times[: last + 1], turns=mended.turns[: last + 1], heard=heard)


def cut_off(mended: Mended, part: FreePart, end: float, marks: int) -> CutOff:
    """Speeds before and after the part that was used; ticks that fit no count are taken as one step each.

    Parameters
    ----------
    mended : Mended
        Counted ticks [s] of the whole recording.
    part : FreePart
        As `find` found it [s, -].
    end : float
        The last tick that was used [s], on the recording's clock.
    marks : int
        Marks on the spool [-], 1 or more.

    Returns
    -------
    CutOff
        Speeds [rad/s] at times from the start of the coast [s].

    Source
    ------
    Our own bookkeeping.

    Examples
    --------
    >>> counted = Mended(np.arange(12.0), np.arange(12), 0, 0)
    >>> len(cut_off(counted, FreePart(2, counted, True), 8.0, 1).after)
    3
    """
    first, touch = part.first, part.touched
    start = float(mended.times[first])
    middle = 0.5 * (mended.times[1:] + mended.times[:-1]) - start
    speed = TURN / marks * np.diff(mended.turns) / np.maximum(np.diff(mended.times), 1e-9)
    later = mended.heard[mended.heard >= end]
    heard = TURN / marks / np.maximum(np.diff(later), 1e-9)
    believed = heard < speed[-1]
    after = 0.5 * (later[1:] + later[:-1])[believed] - start, heard[believed]
    if end < mended.times[-1]:
        after = middle[middle > end - start], speed[middle > end - start]
    before = zip(middle[:first].tolist(), speed[:first].tolist(), strict=True)
    kept = zip(after[0].tolist(), after[1].tolist(), strict=True)
    return CutOff(tuple(before), tuple(kept), end - start if touch else None)


def _check_speed(first: float) -> None:
    if not SLOWEST_SPEED / _SLOW_EDGE <= first <= FASTEST_SPEED * _FAST_EDGE:
        reason = f"the ticks would mean {first:.3g} rad/s at the start"
        accepted = (
            f"{SLOWEST_SPEED:g} to {FASTEST_SPEED:g} rad/s; is the unit of time right, and one tick a turn?"
        )
        raise Unreadable(reason, "", accepted)
