"""A log of spin times over kinds of bearing: what differs between kinds, what between spins."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import combinations

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench.unreadable import Unreadable

LEVEL = 0.95
"""Of every interval, and 1 - the chance that any difference that is said to be shown is chance."""

Array = NDArray[np.float64]

_ACCEPTED = "spin times above zero, of two kinds or more, at least two spins in all of one of them"


@dataclass(frozen=True)
class Spin:
    """One spin: kind of bearing, what it was spun in (a reel), which side was up, seconds."""

    kind: str
    unit: str
    side: str
    time: float


@dataclass(frozen=True)
class KindMean:
    """Usual spin time of a kind (geometric mean) with its 95 % interval [s], and what it rests on."""

    kind: str
    middle: float
    low: float
    high: float
    spins: int
    units: int


@dataclass(frozen=True)
class Pair:
    """How many times as long the first kind spins as the second, with Tukey's interval and chance."""

    longer: str
    shorter: str
    ratio: float
    low: float
    high: float
    chance: float

    @property
    def shown(self) -> bool:
        return self.chance < 1 - LEVEL


@dataclass(frozen=True)
class Part:
    """Scatter from one cause: standard deviation of the logarithm of the time."""

    name: str
    deviation: float


@dataclass(frozen=True)
class SpinLog:
    """Kinds from the longest spin down, pairs, scatter by cause, and what the comparison rests on.

    `fisher` and `chance`: F of the kinds and its chance; `freedom` of its error. `basis` says against what
    scatter kinds were compared: "kind and reel" (every reel had every kind), "reels", or "spins" only.
    `turned_over` is the ratio of one side to the other with its interval, None where no side was told.
    """

    kinds: tuple[KindMean, ...]
    pairs: tuple[Pair, ...]
    parts: tuple[Part, ...]
    fisher: float
    chance: float
    freedom: int
    basis: str
    turned_over: tuple[float, float, float] | None
    spins: int


def analyse(spins: Iterable[Spin]) -> SpinLog:
    """Compare kinds of bearing by their spin times.

    Parameters
    ----------
    spins : iterable of Spin
        Single spins [s], two kinds or more.

    Returns
    -------
    SpinLog
        Times [s], ratios [-], scatter of the logarithm [-].

    Raises
    ------
    Unreadable
        Times that are not above zero, one kind only, no scatter to compare with.

    Notes
    -----
    On the logarithm of the time, because spins scatter in proportion. Spins of one side and sides of one reel
    are averaged first: six spins of one bearing are one bearing. Kinds are then compared with the scatter
    from reel to reel: kind by reel where every reel had every kind, else reels within kinds; where each kind
    was in one reel only, with the scatter of spins, which speaks of these very bearings and of no others.
    Pairs by Tukey and Kramer, so that 5 % is the chance of any false one among them all. Components of
    variance by the method of moments, those below zero set to zero.

    Source
    ------
    Montgomery, Design and Analysis of Experiments, 14.1 (nested) and 5.2 (crossed, one observation a cell);
    Tukey-Kramer: the same, 3.5.7 (all from memory); scipy.stats.studentized_range.

    Examples
    --------
    >>> times = (("a", "1", 9.0), ("a", "2", 10.0), ("b", "3", 30.0), ("b", "4", 33.0))
    >>> found = analyse(Spin(kind, reel, "", time) for kind, reel, time in times)
    >>> found.kinds[0].kind, round(found.pairs[0].ratio, 1), found.pairs[0].shown
    ('b', 3.3, True)
    """
    rows = list(spins)
    _check(rows)
    sides = _sides(rows)
    cells = {cell: float(np.mean(list(of.values()))) for cell, of in _grouped(sides).items()}
    kinds = sorted({kind for kind, _ in cells})
    means = {k: float(np.mean([v for (kind, _), v in cells.items() if kind == k])) for k in kinds}
    basis, error, freedom, counts = _error(rows, cells, means, sides)
    between = sum(counts[k] * (means[k] - _weighted(means, counts)) ** 2 for k in kinds) / (len(kinds) - 1)
    from scipy.stats import f

    fisher = float(between / error)
    return SpinLog(
        kinds=tuple(_kind_means(rows, means, counts, error, freedom)),
        pairs=tuple(_pairs(means, counts, error, freedom)),
        parts=tuple(_parts(sides, rows, error, basis)),
        fisher=fisher,
        chance=float(f.sf(fisher, len(kinds) - 1, freedom)),
        freedom=freedom,
        basis=basis,
        turned_over=_turned_over(sides),
        spins=len(rows),
    )


def _check(rows: Sequence[Spin]) -> None:
    bad = next((row for row in rows if not (np.isfinite(row.time) and row.time > 0)), None)
    if bad is not None:
        raise Unreadable(f"a spin time of {bad.time:g} s cannot be", "", _ACCEPTED)
    kinds = {row.kind for row in rows}
    if len(kinds) < 2:
        raise Unreadable(f"there is {len(kinds) or 'no'} kind of bearing in the log", "", _ACCEPTED)


def _sides(rows: Sequence[Spin]) -> dict[tuple[str, str, str], Array]:
    """Logarithms of the times of each side of each reel."""
    found: dict[tuple[str, str, str], list[float]] = {}
    for row in rows:
        found.setdefault((row.kind, row.unit, row.side), []).append(float(np.log(row.time)))
    return {key: np.array(values) for key, values in found.items()}


def _grouped(sides: dict[tuple[str, str, str], Array]) -> dict[tuple[str, str], dict[str, float]]:
    found: dict[tuple[str, str], dict[str, float]] = {}
    for (kind, unit, side), values in sides.items():
        found.setdefault((kind, unit), {})[side] = float(values.mean())
    return found


def _error(
    rows: Sequence[Spin],
    cells: dict[tuple[str, str], float],
    means: dict[str, float],
    sides: dict[tuple[str, str, str], Array],
) -> tuple[str, float, int, dict[str, int]]:
    """What kinds are compared with: its name, mean square, freedom, and observations of each kind."""
    kinds, units = sorted(means), sorted({unit for _, unit in cells})
    counts = {k: sum(kind == k for kind, _ in cells) for k in kinds}
    if len(units) > 1 and len(cells) == len(kinds) * len(units):
        table = np.array([[cells[k, u] for u in units] for k in kinds])
        rest = table - table.mean(axis=1, keepdims=True) - table.mean(axis=0) + table.mean()
        freedom = (len(kinds) - 1) * (len(units) - 1)
        basis, square = "kind and reel", float(np.sum(rest**2))
    elif len(cells) > len(kinds):
        freedom = len(cells) - len(kinds)
        basis, square = "reels", sum((v - means[k]) ** 2 for (k, _), v in cells.items())
    else:
        freedom = len(rows) - len(sides)
        basis, square = "spins", sum(float(np.sum((v - v.mean()) ** 2)) for v in sides.values())
        counts = {k: sum(row.kind == k for row in rows) for k in kinds}
    if freedom < 1 or square <= 0:
        raise Unreadable("there is no scatter to compare the kinds with", "", _ACCEPTED)
    return basis, square / freedom, freedom, counts


def _weighted(means: dict[str, float], counts: dict[str, int]) -> float:
    return float(np.average(list(means.values()), weights=[counts[k] for k in means]))


def _kind_means(
    rows: Sequence[Spin], means: dict[str, float], counts: dict[str, int], error: float, freedom: int
) -> Iterable[KindMean]:
    from scipy.stats import t

    reach = float(t.ppf(0.5 + LEVEL / 2, freedom))
    for kind in sorted(means, key=lambda k: -means[k]):
        half = reach * float(np.sqrt(error / counts[kind]))
        low, middle, high = (float(np.exp(means[kind] + shift)) for shift in (-half, 0.0, half))
        own = [row for row in rows if row.kind == kind]
        yield KindMean(kind, middle, low, high, len(own), len({row.unit for row in own}))


def _pairs(means: dict[str, float], counts: dict[str, int], error: float, freedom: int) -> Iterable[Pair]:
    from scipy.stats import studentized_range

    reach = float(studentized_range.ppf(LEVEL, len(means), freedom))
    for longer, shorter in combinations(sorted(means, key=lambda k: -means[k]), 2):
        apart = means[longer] - means[shorter]
        spread = float(np.sqrt(error / 2 * (1 / counts[longer] + 1 / counts[shorter])))
        chance = float(studentized_range.sf(apart / spread, len(means), freedom))
        low, high = (float(np.exp(apart + sign * reach * spread)) for sign in (-1, 1))
        yield Pair(longer, shorter, float(np.exp(apart)), low, high, chance)


def _parts(
    sides: dict[tuple[str, str, str], Array], rows: Sequence[Spin], error: float, basis: str
) -> Iterable[Part]:
    """Scatter from reel to reel, from side to side, from spin to spin."""
    free = len(rows) - len(sides)
    spin = sum(float(np.sum((v - v.mean()) ** 2)) for v in sides.values()) / free if free else 0.0
    each = len(rows) / len(sides)
    grouped = _grouped(sides)
    turned = [np.var(list(of.values()), ddof=1) for of in grouped.values() if len(of) > 1]
    side = max(float(np.mean(turned)) - spin / each, 0.0) if turned else 0.0
    per_cell = len(sides) / len(grouped)
    if basis != "spins":
        reel = max(error - side / per_cell - spin / (each * per_cell), 0.0)
        yield Part("from reel to reel", float(np.sqrt(reel)))
    if turned:
        yield Part("after turning over", float(np.sqrt(side)))
    if free:
        yield Part("from spin to spin", float(np.sqrt(spin)))


def _turned_over(sides: dict[tuple[str, str, str], Array]) -> tuple[float, float, float] | None:
    """Ratio of the second side (in the order of its name) to the first over all reels, with its interval."""
    names = sorted({side for _, _, side in sides})
    if len(names) != 2:
        return None
    apart = [of[names[1]] - of[names[0]] for of in _grouped(sides).values() if len(of) == 2]
    if len(apart) < 3:
        return None
    from scipy.stats import ttest_1samp

    within = ttest_1samp(apart, 0.0).confidence_interval(LEVEL)
    return tuple(float(np.exp(v)) for v in (np.mean(apart), within.low, within.high))  # type: ignore[return-value]
