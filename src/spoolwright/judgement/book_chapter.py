"""One family of the shop book: every proof weighed, outliers named, and how a coefficient moved."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from math import exp, sqrt
from statistics import NormalDist

import numpy as np

from spoolwright.judgement.book_fit import (
    NINETY,
    Posterior,
    Seen,
    add_up,
    design,
    left_out,
    nothing_seen,
    posterior,
)
from spoolwright.judgement.book_kinds import Kind

OUTLIER = 0.01
"""A proof as improbable as this or more, judged by all the others, is named."""
EDGE = NormalDist().inv_cdf(1 - OUTLIER / 2)
AGREEING = 4
"""Proofs of its own that it takes to overrule the range of a sheet: judgement prior."""


@dataclass(frozen=True)
class Weighed:
    """A proof with what the others say of it: `chance` of one so far out, `out` the same in deviations.

    `weight` is the part of its weight that a named one keeps; 1 for all others.
    """

    seen: Seen
    chance: float
    out: float
    weight: float = 1.0

    @property
    def is_outlier(self) -> bool:
        return self.chance < OUTLIER


@dataclass(frozen=True)
class Chapter:
    """A family: its coefficients, its proofs as they count, and what is believed after them.

    `overruled` are coefficients whose proofs lie so far outside the sheet's range that it was widened.
    """

    kinds: tuple[Kind, ...]
    weighed: tuple[Weighed, ...]
    held: Posterior
    overruled: tuple[str, ...] = ()

    def kind(self, key: str) -> Kind | None:
        """The coefficient of that key, or None."""
        return next((kind for kind in self.kinds if kind.key == key), None)

    def of(self, key: str) -> tuple[Weighed, ...]:
        """The proofs that speak of a coefficient, oldest first."""
        return tuple(one for one in self.weighed if key in dict(one.seen.shares))

    @property
    def outliers(self) -> tuple[Weighed, ...]:
        return tuple(one for one in self.weighed if one.is_outlier)


@dataclass(frozen=True)
class Interval:
    """A coefficient with the ends of its 90 % interval, in its own unit; `deviation` is of the logarithm."""

    middle: float
    low: float
    high: float
    deviation: float


def read(kinds: Sequence[Kind], seen: Sequence[Seen]) -> Chapter:
    """Weigh the proofs of a family and learn its coefficients.

    Parameters
    ----------
    kinds : sequence of Kind
        Its coefficients **[-]**.
    seen : sequence of Seen
        Its proofs, oldest first **[-]**.

    Returns
    -------
    Chapter
        What is believed, and each proof with how improbable it is.

    Notes
    -----
    An outlier is named and kept; its weight falls until it would stand just at the edge of one in a hundred,
    (2.58 / |t|)^2, so that it cannot drag a coefficient alone. Nothing is dropped: only a hand sets aside.
    Where four proofs or more of a coefficient lie where its sheet's range makes them less than one in a
    hundred, the sheet is overruled: the prior's spread becomes the distance.

    Source
    ------
    Weights of Huber's kind (Huber and Ronchetti, Robust Statistics, from memory); the edge: judgement prior.

    Examples
    --------
    >>> kind = Kind("k", "friction", "k", 0.15, 0.1, 0.12, 0.19)
    >>> good = [Seen((("k", 1.0),), 0.02 * (n % 3), 0.003) for n in range(9)]
    >>> odd = read((kind,), [*good, Seen((("k", 1.0),), 0.7, 0.003)])
    >>> [one.seen.log for one in odd.outliers]
    [0.7]
    """
    wide = [_widened(kind, seen) for kind in kinds]
    held = posterior(wide, add_up(wide, seen))
    weighed = [_weighed(one, chance) for one, chance in zip(seen, left_out(held, wide, seen), strict=True)]
    if any(one.is_outlier for one in weighed):
        held = posterior(wide, add_up(wide, [as_counted(one) for one in weighed]))
    overruled = tuple(kind.key for kind, one in zip(kinds, wide, strict=True) if one is not kind)
    return Chapter(tuple(kinds), tuple(weighed), held, overruled)


def _widened(kind: Kind, seen: Sequence[Seen]) -> Kind:
    """The coefficient with a wider prior, where its own proofs and the sheet's range cannot both be right."""
    own = [one for one in seen if dict(one.shares).get(kind.key, 0.0) > 0.5]
    if len(own) < AGREEING:
        return kind
    weights = np.array([1 / one.variance for one in own])
    logs = np.array([one.log for one in own])
    mean = float(weights @ logs / weights.sum())
    scatter = max(1.0, float(np.sqrt(weights @ (logs - mean) ** 2 / (len(own) - 1))))
    if abs(mean) < EDGE * np.hypot(kind.spread, scatter / np.sqrt(weights.sum())):
        return kind
    return replace(kind, spread=abs(mean))


def _weighed(one: Seen, chance: float) -> Weighed:
    out = abs(NormalDist().inv_cdf(max(chance, 1e-300) / 2))
    return Weighed(one, chance, out, (EDGE / out) ** 2 if chance < OUTLIER else 1.0)


def as_counted(one: Weighed) -> Seen:
    """A proof with the weight that it keeps.

    Parameters
    ----------
    one : Weighed
        A proof **[-]**.

    Returns
    -------
    Seen
        With a wider variance where it is an outlier **[-]**.

    Source
    ------
    Our own bookkeeping.

    Examples
    --------
    >>> as_counted(Weighed(Seen((), 0.5, 0.01), 1e-6, 4.9, 0.25)).variance
    0.04
    """
    return one.seen if one.weight == 1 else replace(one.seen, variance=one.seen.variance / one.weight)


def before(kind: Kind) -> Interval:
    """What the sheets say of a coefficient, before any proof.

    Parameters
    ----------
    kind : Kind
        The coefficient **[-]**.

    Returns
    -------
    Interval
        In the coefficient's own unit.

    Source
    ------
    materials.toml, works.toml and free_spin, each with its mark.

    Examples
    --------
    >>> round(before(Kind("k", "friction", "k", 0.155, 0.0938, 0.12, 0.19)).low, 3)
    0.133
    """
    return interval(kind, 0.0, kind.spread)


def now(chapter: Chapter, kind: Kind) -> Interval:
    """What the book believes of a coefficient.

    Parameters
    ----------
    chapter : Chapter
        Its family **[-]**.
    kind : Kind
        The coefficient **[-]**.

    Returns
    -------
    Interval
        In the coefficient's own unit.

    Source
    ------
    book_fit.

    Examples
    --------
    >>> kind = Kind("k", "friction", "k", 0.155, 0.0938, 0.12, 0.19)
    >>> now(read((kind,), ()), kind) == before(kind)
    True
    """
    if not chapter.weighed:
        return before(kind)
    return interval(kind, *chapter.held.believed(kind.key))


def interval(kind: Kind, mean: float, deviation: float) -> Interval:
    """Mean and deviation of a logarithm as a value with its 90 % interval.

    Parameters
    ----------
    kind : Kind
        Whose value **[-]**.
    mean, deviation : float
        Of the logarithm over the middle **[-]**.

    Returns
    -------
    Interval
        In the coefficient's own unit.

    Source
    ------
    The log-normal's median and quantiles, any text on statistics.

    Examples
    --------
    >>> interval(Kind("k", "friction", "k", 2.0, 0.1, 1.0, 3.0), 0.0, 0.0).middle
    2.0
    """
    middle = kind.middle * exp(mean)
    reach = exp(NINETY * deviation)
    return Interval(middle, middle / reach, middle * reach, deviation)


def how_it_moved(chapter: Chapter, kind: Kind) -> tuple[Interval, ...]:
    """Where a coefficient stood at first and after each of its own proofs, its relatives' proofs counted in.

    Parameters
    ----------
    chapter : Chapter
        Its family, proofs oldest first **[-]**.
    kind : Kind
        The coefficient **[-]**.

    Returns
    -------
    tuple of Interval
        One more than it has proofs, the last being what is believed now.

    Notes
    -----
    Each proof counts with the weight that it has today, so the last step agrees with the page.

    Source
    ------
    book_fit.

    Examples
    --------
    >>> kind = Kind("k", "friction", "k", 0.155, 0.0938, 0.12, 0.19)
    >>> steps = how_it_moved(read((kind,), [Seen((("k", 1.0),), 0.1, 0.003)]), kind)
    >>> len(steps), steps[1].middle > steps[0].middle
    (2, True)
    """
    counted = [as_counted(one) for one in chapter.weighed]
    spoken = {key for one in counted for key, _ in one.shares} | {kind.key}
    active = [k for k in chapter.held.kinds if k.key in spoken]
    stats, steps = nothing_seen(len(active)), [before(kind)]
    for row, one in zip(design(active, counted), counted, strict=True):
        stats = stats.plus(row, one.log, one.variance)
        if kind.key in dict(one.shares):
            steps.append(interval(kind, *posterior(active, stats).believed(kind.key)))
    return tuple(steps)


def next_proof(chapter: Chapter, shares: dict[str, float], variance: float) -> tuple[float, float]:
    """Ends of the 90 % interval of the logarithm of the next proof over what the sheet expects.

    Parameters
    ----------
    chapter : Chapter
        The family **[-]**.
    shares : dict of str to float
        Which coefficients the proof will speak of, with their parts **[-]**.
    variance : float
        How far it may lie from them by sheet and reading **[-]**, more than 0.

    Returns
    -------
    tuple of float
        Low and high end **[-]**.

    Source
    ------
    The posterior predictive (Gelman and others, Bayesian Data Analysis, 3rd edition, 2.5), from memory.

    Examples
    --------
    >>> kind = Kind("k", "friction", "k", 0.155, 0.3, 0.12, 0.19)
    >>> low, high = next_proof(read((kind,), ()), {"k": 1.0}, 0.0016)
    >>> bool(low == -high and 0.4 < high < 0.6)
    True
    """
    mean, deviation = chapter.held.of(chapter.held.row(shares), variance)
    return float(mean - NINETY * deviation), float(mean + NINETY * deviation)


def usual_scatter(chapter: Chapter, key: str) -> float:
    """How far the proofs of a coefficient lie from it by sheet and reading, before any learning.

    Parameters
    ----------
    chapter : Chapter
        Its family **[-]**.
    key : str
        Its key **[-]**.

    Returns
    -------
    float
        Standard deviation of the logarithm **[-]**; 0 without proofs of its own.

    Source
    ------
    Our own bookkeeping.

    Examples
    --------
    >>> usual_scatter(read((), ()), "k")
    0.0
    """
    variances = [one.seen.variance for one in chapter.of(key)]
    return sqrt(float(np.mean(variances))) if variances else 0.0
