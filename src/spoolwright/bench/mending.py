"""Tick times to counted turns: drops what is heard twice or by chance, counts in what was not heard."""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench.unreadable import Unreadable

FEWEST = 8
"""Ticks below which a coast-down says nothing."""

MOST = 12_000
"""Ticks beyond which no spool's coast goes: ten minutes at twenty turns a second."""

Times = NDArray[np.float64]
Turns = NDArray[np.int64]

_ACCEPTED = f"{FEWEST} ticks or more, one a turn, from a spool that slows down by itself"
_MANY = f"at most {MOST} ticks: one a turn, or fewer marks"
_SEEDS = 6
_ALIKE = 0.06
_SLOWING = 0.3
_DOUBT_AFTER, _LOST_AFTER = 3, 8
_DOUBTED = 3
_UNHEARD = 0.02
_SHORT_BASE, _LONG_BASE = 10, 60
_SILENCE, _LOOK_AHEAD, _EVEN, _MUCH_SLOWER = 6.0, 9, 0.03, 0.4
_MAY_BE_LONELY, _LONELY = 5, 2
_LEAST_NOISE, _FIRST_NOISE = 0.003, 0.008
_UNEVEN, _UNEVEN_GROWTH = 0.05, 0.35


@dataclass(frozen=True, eq=False)
class Mended:
    """Ticks that belong to counted turns.

    times [s] and turns (whole turns from the first kept tick), both of shape (n,); `doubles` ticks were
    dropped, `misses` turns were counted in without a tick, `mended` is their sum. `heard` holds all ticks, so
    that they can be counted again once the law of the coast-down is known.
    """

    times: Times
    turns: Turns
    doubles: int
    misses: int
    heard: Times = field(default_factory=lambda: np.empty(0))

    @property
    def mended(self) -> int:
        return self.doubles + self.misses


def mend(times: Times, *, marks: int = 1) -> Mended:
    """Count the turns of a spool that slows down, from ticks of which some are doubled, stray or missing.

    Parameters
    ----------
    times : array
        Tick times [s], shape (n,), never falling, n >= 8.
    marks : int
        Marks on the spool [-], 1 or more; several are taken as unevenly spaced, by a twentieth of a step.

    Returns
    -------
    Mended
        Kept ticks [s] with their turn numbers [-].

    Raises
    ------
    Unreadable
        Too few ticks, times that fall, ticks that follow no steady turning.

    Notes
    -----
    Where neighbouring intervals are alike the count begins. From there, in both directions, the turn number
    of the next tick is foretold by a parabola through the last kept ticks; a tick close to a whole number is
    kept with that number, one far from it is dropped, and of two at the same number the better is kept. Of
    several beginnings the one that explains most ticks with fewest unheard turns is taken. Up to five first
    ticks that stand alone, with more than twice the usual silence after them, are dropped again.

    Source
    ------
    Our own rule; the parabola is exact for a constant drag.

    Examples
    --------
    >>> ticks = np.array([0.0, 1.0, 2.0, 2.1, 3.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0])
    >>> result = mend(ticks)
    >>> result.turns.tolist(), result.doubles, result.misses
    ([0, 1, 2, 3, 5, 6, 7, 8, 9, 10], 1, 1)
    """
    _check(times)
    counts: list[_Count] = []
    uneven = _UNEVEN if marks > 1 else 0.0
    for seed in _beginnings(times, _UNEVEN_GROWTH if marks > 1 else _ALIKE):
        counts.append(_both_ways(times, seed, uneven))
        if counts[-1].explains(len(times)):
            break
    if not counts:
        raise Unreadable("no two neighbouring ticks are alike, so no turning can be seen", "", _ACCEPTED)
    best = max(counts, key=lambda count: count.worth)
    if len(best.kept) < FEWEST:
        reason = f"only {len(best.kept)} of {len(times)} ticks follow a steady turning"
        raise Unreadable(reason, "", _ACCEPTED)
    kept, turns = _without_lonely_first(best)
    inside = int(kept[-1] - kept[0]) + 1
    return Mended(times[kept], turns, inside - len(turns), int(turns[-1]) + 1 - len(turns), times)


@dataclass
class _Count:
    """Ticks kept so far, their turn numbers, how far off each was, and what each adds to the count's worth.

    A tick that was foretold to within a slack s would be there by chance with probability 2 s, so keeping it
    is worth -log(2 s); a turn that was not heard costs a little. Ticks before `base` foretell nothing: a long
    silence parts them from the others.
    """

    kept: list[int]
    turns: list[int]
    off: list[float]
    worths: list[float]
    base: int = 0
    uneven: float = 0.0

    @property
    def worth(self) -> float:
        return sum(self.worths)

    def explains(self, heard: int) -> bool:
        """Whether nearly every tick is in its place and the count was never lost: no other one is tried."""
        unheard = self.turns[-1] - self.turns[0] + 1 - len(self.turns)
        kept = len(self.kept) > 0.85 * heard and unheard < 0.1 * heard
        return kept and min(self.worths, default=0.0) > 0

    def keep(self, tick: int, turn: int, off: float, slack: float) -> None:
        self.worths.append(-float(np.log(2 * slack)) - _UNHEARD * (turn - self.turns[-1] - 1))
        self.kept.append(tick)
        self.turns.append(turn)
        self.off.append(off)

    def without(self, last: int) -> _Count:
        """The same count before its last ticks."""
        cut = slice(0, -last)
        fewer = _Count(self.kept[cut], self.turns[cut], self.off[cut], self.worths[cut], uneven=self.uneven)
        fewer.base = self.base if self.base + 3 <= len(fewer.kept) else 0
        return fewer

    def take(self, times: Times, tick: int) -> bool:
        """Keep this tick if it falls on a turn, or let it stand for the last one; False for a stranger."""
        since = max(self.base, len(self.kept) - _LONG_BASE)
        kept, turns = self.kept[since:], self.turns[since:]
        foretold, slack = _foretell(times, kept, turns, float(times[tick]), self.uneven)
        turn = round(foretold)
        off = abs(foretold - turn)
        if turn > self.turns[-1] and off < slack:
            self.keep(tick, turn, off, slack)
            return True
        if turn == self.turns[-1] and off < self.off[-1]:
            self.kept[-1], self.off[-1] = tick, off
            return True
        return False


def _without_lonely_first(count: _Count) -> tuple[Turns, Turns]:
    """Kept ticks and their turns; a knock long before the first turn may fall on a whole number by chance."""
    kept, turns = np.array(count.kept, dtype=np.int64), np.array(count.turns, dtype=np.int64)
    gaps = np.diff(turns)
    first = 0
    for i in range(min(_MAY_BE_LONELY, len(turns) - FEWEST)):
        if gaps[i] > _LONELY * np.median(gaps[i + 1 : i + 11]):
            first = i + 1
    return kept[first:], turns[first:] - turns[first]


def _check(times: Times) -> None:
    if len(times) < FEWEST:
        raise Unreadable(f"there are {len(times)} ticks", "", _ACCEPTED)
    if len(times) > MOST:
        raise Unreadable(f"there are {len(times)} ticks, more than any coast of a spool has", "", _MANY)
    if not np.all(np.isfinite(times)) or np.any(np.diff(times) < 0):
        raise Unreadable("the tick times do not follow one another", "", "times in the order they were heard")


def _beginnings(times: Times, alike_to: float) -> list[int]:
    """The most even place in each of the longest stretches whose intervals grow by little."""
    steps = np.maximum(np.diff(times), 1e-12)
    growth = np.log(steps[1:] / steps[:-1])
    alike = (growth > -alike_to) & (growth < max(alike_to, _SLOWING))
    edges = np.flatnonzero(np.diff(np.concatenate(([False], alike, [False])).astype(np.int8)))
    runs = list(zip(edges[::2].tolist(), edges[1::2].tolist(), strict=True))
    longest = sorted(runs, key=lambda run: (-min(run[1] - run[0], 12), run[0]))[:_SEEDS]
    return [first + _most_even(growth[first:last]) for first, last in longest]


def _most_even(growth: Times) -> int:
    return int(np.argmin(np.abs(np.diff(growth)))) if len(growth) > 1 else 0


def _both_ways(times: Times, seed: int, uneven: float) -> _Count:
    onward = _follow(times[seed:], relock=True, uneven=uneven)
    mirrored = (times[seed + 2] - times[: seed + 3])[::-1]
    back = _follow(mirrored, relock=False, uneven=uneven)
    earlier = [
        (seed + 2 - tick, 2 - turn) for tick, turn in zip(back.kept, back.turns, strict=True) if tick > 2
    ]
    kept = [tick for tick, _ in earlier[::-1]] + [seed + tick for tick in onward.kept]
    turns = [turn for _, turn in earlier[::-1]] + onward.turns
    return _Count(kept, turns, [], onward.worths + back.worths)


def _follow(times: Times, *, relock: bool, uneven: float) -> _Count:
    """Keep and number the ticks that follow the first three, which are taken as turns 0, 1 and 2."""
    count = _Count([0, 1, 2], [0, 1, 2], [0.0, 0.0, 0.0], [], uneven=uneven)
    lost = 0
    for i in range(3, len(times)):
        if i <= count.kept[-1] or (relock and _resume(times, count, i)):
            continue
        lost = 0 if count.take(times, i) else lost + 1
        if lost == _DOUBT_AFTER or (lost and i == len(times) - 1):
            count, lost = _think_again(times, count, i, lost)
        if lost >= _LOST_AFTER:
            if not relock or not _find_again(times, count, i):
                break
            lost = 0
    return count


def _resume(times: Times, count: _Count, i: int) -> bool:
    """After a long silence: begin anew with three even ticks; the speeds beside it tell how long it was."""
    gap = float(times[i] - times[count.kept[-1]])
    rate = _rate(times, count)
    usual = float(
        np.max(np.diff(times[count.kept[max(count.base, len(count.kept) - _SHORT_BASE) :]]), initial=0.0)
    )
    if gap * rate < _SILENCE or gap < _SILENCE / 2 * usual:
        return False
    steps = np.maximum(np.diff(times[i : i + _LOOK_AHEAD]), 1e-12)
    growth = np.log(steps[1:] / steps[:-1])
    even = np.flatnonzero((growth > -_EVEN) & (growth < _SLOWING))
    if not len(even):
        return False
    first, step = i + int(even[0]), float(steps[even[0]])
    unheard = max(1, round(step * _rate_then(times, count, float(times[first]), step, rate)))
    slower = unheard / step
    if not _MUCH_SLOWER < slower / rate < 1.1:
        return False
    gap = float(times[first] - times[count.kept[-1]])
    turn = count.turns[-1] + max(1, round(gap * 0.5 * (rate + slower)))
    count.base = len(count.kept)
    for later in range(3):
        count.keep(first + later, turn + later * unheard, 0.5, 0.5)
    return True


def _rate_then(times: Times, count: _Count, at: float, step: float, rate: float) -> float:
    """Turns a second that the ticks before a silence foretell for after it."""
    kept, turns = count.kept[count.base :], count.turns[count.base :]
    begin, end = (_foretell(times, kept, turns, moment)[0] for moment in (at, at + step))
    return min(max((end - begin) / step, _MUCH_SLOWER * rate), rate)


def _rate(times: Times, count: _Count) -> float:
    """Turns a second over the last kept ticks."""
    few = min(5, len(count.kept) - count.base)
    took = float(times[count.kept[-1]] - times[count.kept[-few]])
    return (count.turns[-1] - count.turns[-few]) / max(took, 1e-12)


def _think_again(times: Times, count: _Count, i: int, lost: int) -> tuple[_Count, int]:
    """A run of strangers may mean that a tick kept just before was one itself: try without the last ones."""
    best, best_lost = count, lost
    for last in range(1, min(_DOUBTED, len(count.worths)) + 1):
        other = count.without(last)
        doubted = count.kept[-last:]
        still = 0
        for tick in range(other.kept[-1] + 1, i + 1):
            if tick not in doubted:
                still = 0 if other.take(times, tick) else still + 1
        if other.worth > best.worth:
            best, best_lost = other, still
    return best, best_lost


def _foretell(
    times: Times, kept: list[int], turns: list[int], at: float, uneven: float = 0.0
) -> tuple[float, float]:
    """Turn number at a time by the parabola through the last kept ticks, and how far off a tick may be."""
    last = float(times[kept[-1]])
    count = min(_SHORT_BASE, len(kept))
    while count < min(_LONG_BASE, len(kept)) and last - times[kept[-count]] < 2 * (at - last):
        count += 1
    t = times[kept[-count:]] - last
    scale = max(float(-t[0]), 1e-12)
    x = t / scale
    n = np.array(turns[-count:], dtype=np.float64) - turns[-1]
    base = np.stack([np.ones(count), x, x * x])
    inverse = np.linalg.inv(base @ base.T + 1e-12 * np.eye(3))
    fit = inverse @ (base @ n)
    rest = n - fit @ base
    least = max(uneven, _LEAST_NOISE if count > 5 else _FIRST_NOISE)
    noise = max(float(np.sqrt(rest @ rest / max(count - 3, 1))), least)
    reach = (at - last) / scale
    here = np.array([1.0, reach, reach * reach])
    spread = noise * float(np.sqrt(1.0 + here @ inverse @ here))
    foretold = float(here @ fit)
    top = -fit[1] / (2 * fit[2]) if fit[2] < 0 else np.inf
    if reach > top:
        foretold = float(fit[0] + fit[1] * top / 2)
    return foretold + turns[-1], min(max(0.03 + 4.0 * spread, 0.05), 0.3)


def _find_again(times: Times, count: _Count, i: int) -> bool:
    """After a run of strangers: if they are alike among themselves, go on counting with them."""
    steps = np.diff(times[i - _LOST_AFTER + 1 : i + 1])
    step = float(np.median(steps))
    if np.count_nonzero(np.abs(steps - step) < _ALIKE * step) < _LOST_AFTER // 2:
        return False
    before = float(times[count.kept[-1]] - times[count.kept[-2]]) / (count.turns[-1] - count.turns[-2])
    period = step / max(1, round(step / before))
    if not 0.7 < period / before < 2.5:
        return False
    gap = float(times[i] - times[count.kept[-1]])
    count.keep(i, count.turns[-1] + max(1, round(gap / (0.5 * (period + before)))), 0.5, 0.5)
    return True
