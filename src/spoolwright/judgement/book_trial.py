"""Does the book keep its word? Invented shops with a known truth: how many new proofs fall where it says."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from spoolwright.judgement.book_fit import NINETY, Floats, nothing_seen, posterior
from spoolwright.judgement.book_kinds import Kind

AFTER = (0, 3, 8, 20, 50)
"""Numbers of proofs after which a shop's book is tried."""
SHOPS, NEW = 40, 10
EXPECTED = 0.055
"""Scatter of a proof by sheet and reading, on the log scale: that of a pull with springs, day and gauge."""
SPREADS = (0.09, 0.10, 0.12, 0.15, 0.20, 0.09)


@dataclass(frozen=True)
class Tried:
    """How the 90 % intervals held after so many proofs; `width` is their mean width over the sheet's."""

    after: int
    proofs: int
    held: int
    width: float

    @property
    def share(self) -> float:
        return self.held / self.proofs


def trial(
    *, shops: int = SHOPS, new: int = NEW, after: Sequence[int] = AFTER, seed: int = 1
) -> tuple[Tried, ...]:
    """Try the book on invented shops: truth drawn from the sheets' ranges, scatter not as expected.

    Parameters
    ----------
    shops : int
        How many shops **[-]**, 1 or more.
    new : int
        New proofs of each shop at each stage **[-]**, 1 or more.
    after : sequence of int
        After how many proofs **[-]**, rising.
    seed : int
        Start of the generator **[-]**.

    Returns
    -------
    tuple of Tried
        One for each stage: 40 shops, 10 new proofs and five stages are 2,000 new proofs **[-]**.

    Raises
    ------
    ValueError
        No shop or no proof is asked for.

    Notes
    -----
    A shop's coefficients share half of their variance; its true scatter is the expected one times a
    log-normal of 0.25. Neither is told to the book.

    Source
    ------
    Calibration of predictive intervals by simulation (Cook, Gelman and Rubin 2006, from memory).

    Examples
    --------
    >>> [stage.proofs for stage in trial(shops=2, new=5, after=(0, 4))]
    [10, 10]
    """
    if shops < 1 or new < 1:
        raise ValueError(f"shops and new: 1 or more are accepted; got {shops} and {new}")
    kinds = tuple(Kind(f"k{n}", "friction", f"k{n}", 1.0, s, 0.5, 2.0) for n, s in enumerate(SPREADS))
    held, widths = np.zeros(len(after), dtype=int), np.zeros(len(after))
    generator = np.random.default_rng(seed)
    for _ in range(shops):
        truth, scatter = _shop(generator)
        stats = nothing_seen(len(kinds))
        for stage, count in enumerate(after):
            while stats.proofs < count:
                row, log = _proof(generator, truth, scatter)
                stats = stats.plus(row, log, EXPECTED**2)
            believed = posterior(kinds, stats)
            for _ in range(new):
                row, log = _proof(generator, truth, scatter)
                mean, deviation = believed.of(row, EXPECTED**2)
                held[stage] += abs(log - mean) <= NINETY * deviation
                widths[stage] += deviation / np.hypot(row @ np.array(SPREADS), EXPECTED)
    tried = shops * new
    return tuple(
        Tried(count, tried, int(inside), float(width / tried))
        for count, inside, width in zip(after, held, widths, strict=True)
    )


def _shop(generator: np.random.Generator) -> tuple[Floats, float]:
    shared = generator.normal()
    own = generator.normal(size=len(SPREADS))
    truth = np.array(SPREADS) * (np.sqrt(0.5) * shared + np.sqrt(0.5) * own)
    return truth, EXPECTED * float(np.exp(generator.normal(0.0, 0.25)))


def _proof(generator: np.random.Generator, truth: Floats, scatter: float) -> tuple[Floats, float]:
    row = np.zeros(len(SPREADS))
    row[generator.integers(len(SPREADS))] = 1.0
    return row, float(row @ truth + generator.normal(0.0, scatter))
