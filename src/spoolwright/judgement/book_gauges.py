"""Does one of the shop's instruments read high or low? Its proofs would lean to one side of the others."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import erfc, exp, sqrt
from statistics import NormalDist

import numpy as np

from spoolwright.judgement.book_chapter import Chapter, as_counted
from spoolwright.judgement.book_fit import APART, SCATTERS, Floats, Seen, design

FALSE_ALARM = 0.05
"""Chance that, of all instruments together, a single sound one is blamed."""
ENOUGH = 3
"""Proofs that an instrument needs before anything is said of it."""
FREELY = 0.5
"""How freely an instrument already named may be off, on the log scale: wide on purpose."""


@dataclass(frozen=True)
class Leaning:
    """How far the proofs of one instrument lean: `share` high (negative: low), with its 95 % interval.

    `mean_residual` is the mean of its standardised residuals, `named` whether that is beyond the threshold
    for so many instruments; `alone` that no other instrument read the same things, so that it cannot be
    told from the coefficient itself.
    """

    instrument: str
    proofs: int
    share: float
    low: float
    high: float
    mean_residual: float
    chance: float
    named: bool
    alone: bool = False

    @property
    def words(self) -> str:
        """What it says, in a sentence."""
        way = "high" if self.share > 0 else "low"
        span = f"{_signed(self.low)} to {_signed(self.high)}"
        if self.named:
            return (
                f"{self.instrument} reads about {100 * abs(self.share):.0f} % {way} "
                f"({span}, 19 times in 20), judged by {self.proofs} proofs: check it before it is used again."
            )
        said = f"{self.instrument}: {self.proofs} proofs lean {_signed(self.share)} ({span})"
        if self.alone:
            return f"{said}; no other instrument read the same, so it cannot be told from the coefficient."
        return f"{said}; no more than chance among so many instruments."


def _signed(share: float) -> str:
    return f"{100 * share:+.0f} %".replace("-", "−")


def leanings(chapter: Chapter) -> tuple[Leaning, ...]:
    """How far each instrument of a family's proofs leans, the one that leans most first.

    Parameters
    ----------
    chapter : Chapter
        A family with its proofs **[-]**.

    Returns
    -------
    tuple of Leaning
        Shares **[-]**; only instruments with three proofs or more.

    Notes
    -----
    Generalised least squares: b'C^-1 z / b'C^-1 b with C the covariance of all proofs, their coefficients'
    doubt counted in, and b the instrument's gains. Threshold: 5 % over all instruments together (Bonferroni).
    The worst is named first and then let free, so that it does not make the others lean the other way.

    Source
    ------
    Generalised least squares (Gelman and others, Bayesian Data Analysis, 3rd edition, 14.7), Bonferroni;
    from memory.

    Examples
    --------
    >>> from spoolwright.judgement.book_chapter import read
    >>> leanings(read((), ()))
    ()
    """
    seen = [as_counted(one) for one in chapter.weighed]
    counts = {one.instrument: 0 for one in seen if one.instrument}
    for one in seen:
        if one.instrument:
            counts[one.instrument] += 1
    names = [name for name, count in counts.items() if count >= ENOUGH]
    if not names:
        return ()
    spread = _spread_of(chapter, seen)
    named: dict[str, Leaning] = {}
    while True:
        rest = [name for name in names if name not in named]
        found = {name: _leaning(name, seen, spread, len(names), len(counts) == 1) for name in rest}
        worst = min(found.values(), key=lambda one: one.chance, default=None)
        if worst is None or not worst.named:
            break
        named[worst.instrument] = worst
        spread = spread.with_column(_gains(worst.instrument, seen), FREELY**2)
    return (*named.values(), *sorted(found.values(), key=lambda one: one.chance))


@dataclass(frozen=True)
class _Spread:
    """Covariance of all proofs: `noise` of each, and `columns` of what they share with its `prior`.

    Solved through the few columns, never as a whole: proofs may be many.
    """

    noise: Floats
    columns: Floats
    prior: Floats

    def solve(self, one: Floats) -> Floats:
        weighed = self.columns / self.noise[:, np.newaxis]
        inner = np.linalg.inv(self.prior) + weighed.T @ self.columns
        return np.asarray(one / self.noise - weighed @ np.linalg.solve(inner, weighed.T @ one))

    def with_column(self, column: Floats, variance: float) -> _Spread:
        """The same with one thing more that is not known."""
        count = len(self.prior)
        prior = np.zeros((count + 1, count + 1))
        prior[:count, :count], prior[count, count] = self.prior, variance
        return _Spread(self.noise, np.column_stack([self.columns, column]), prior)


def _spread_of(chapter: Chapter, seen: Sequence[Seen]) -> _Spread:
    """At the likeliest scatter and likeness."""
    best = int(np.argmax(chapter.held.weights))
    apart = float(APART[best // len(SCATTERS)])
    spreads = np.array([kind.spread for kind in chapter.held.kinds])
    prior = np.outer(spreads, spreads) * ((1 - apart) + apart * np.eye(len(spreads)))
    noise = np.array([one.variance for one in seen]) * float(chapter.held.scatters[best]) ** 2
    return _Spread(noise, design(chapter.kinds, seen), prior)


def _gains(name: str, seen: Sequence[Seen]) -> Floats:
    return np.array([one.gain if one.instrument == name else 0.0 for one in seen])


def _leaning(name: str, seen: Sequence[Seen], spread: _Spread, instruments: int, alone: bool) -> Leaning:
    gains, logs = _gains(name, seen), np.array([one.log for one in seen])
    solved = spread.solve(gains)
    weight = float(gains @ solved)
    lean, deviation = float(solved @ logs) / weight, 1 / sqrt(weight)
    reach = NormalDist().inv_cdf(0.975) * deviation
    chance = erfc(abs(lean) / deviation / sqrt(2))
    return Leaning(
        name,
        int(np.count_nonzero(gains)),
        exp(lean) - 1,
        exp(lean - reach) - 1,
        exp(lean + reach) - 1,
        lean / deviation / sqrt(float(np.count_nonzero(gains))),
        chance,
        chance < FALSE_ALARM / instruments and not alone,
        alone,
    )
