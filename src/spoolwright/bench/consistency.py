"""Several measurements of one thing: whether they agree, which one does not, and their mean."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from math import sqrt

from spoolwright.bench.uncertainty import COVERAGE_FACTOR, Measured

LEAST_CHANCE = 0.05
"""Chance below which results scatter more than their uncertainties explain (5 %, as is usual)."""


@dataclass(frozen=True)
class Together:
    """The weighted mean; `chi_squared` with `freedom` one less than the results, and its `chance`.

    `birge` is the ratio of the scatter seen to that expected; where they do not agree the mean's uncertainty
    is widened by it. `apart` names, by its place, the result farthest from the others, `apart_by` how far as
    normalised error (1 is at the edge of both expanded uncertainties).
    """

    mean: Measured
    chi_squared: float
    freedom: int
    chance: float
    birge: float
    agree: bool
    apart: int
    apart_by: float


def normalised_error(first: Measured, second: Measured) -> float:
    """How far two results lie apart in units of their joint expanded uncertainty.

    Parameters
    ----------
    first, second : Measured
        Two results of one thing [same SI unit], not both known exactly.

    Returns
    -------
    float
        |x - y| / sqrt(U(x)^2 + U(y)^2) [-]; up to 1 they agree. 0 where both are exact and the same.

    Notes
    -----
    U is twice the standard uncertainty.

    Source
    ------
    ISO/IEC 17043:2010, B.3.1.3, the E_n number (from memory).

    Examples
    --------
    >>> normalised_error(Measured(10.0, 0.3, "mass"), Measured(11.0, 0.4, "mass"))
    1.0
    """
    joint = COVERAGE_FACTOR * sqrt(first.uncertainty**2 + second.uncertainty**2)
    gap = abs(first.value - second.value)
    if joint == 0:
        return 0.0 if gap == 0 else float("inf")
    return gap / joint


def combine(results: Sequence[Measured]) -> Together:
    """Independent results of one thing, weighed by how sure each is.

    Parameters
    ----------
    results : sequence of Measured
        Two or more [same SI unit], each with an uncertainty above zero.

    Returns
    -------
    Together
        Mean with its standard uncertainty [same SI unit], and whether the results agree.

    Raises
    ------
    ValueError
        Fewer than two results, or one that is said to be exact.

    Notes
    -----
    Weights 1 / u^2; chi^2 = sum ((x - mean) / u)^2; they agree where so much or more comes by chance in
    5 % of cases or oftener. Birge's ratio is sqrt(chi^2 / (n - 1)). Results that share a scale or a stopwatch
    are not quite independent: then the mean is a little less sure than is said.

    Source
    ------
    Bevington, Data Reduction, 4 (weighted mean, from memory); Birge, Physical Review 40 (1932) 207.

    Examples
    --------
    >>> two = [Measured(10.0, 0.3, "mass"), Measured(10.4, 0.4, "mass")]
    >>> found = combine(two)
    >>> round(found.mean.value, 3), round(found.mean.uncertainty, 2), found.agree
    (10.144, 0.24, True)
    """
    if len(results) < 2:
        raise ValueError(f"two results or more are needed; came {len(results)}")
    if min(one.uncertainty for one in results) <= 0:
        raise ValueError("each result needs an uncertainty above zero")
    mean, freedom = _mean(results), len(results) - 1
    chi_squared = sum(((one.value - mean.value) / one.uncertainty) ** 2 for one in results)
    chance, birge = _chance(chi_squared, freedom), sqrt(chi_squared / freedom)
    agree = chance >= LEAST_CHANCE
    stated = mean if agree else replace(mean, uncertainty=mean.uncertainty * max(birge, 1.0))
    farthest, by = _farthest(results)
    return Together(stated, chi_squared, freedom, chance, birge, agree, farthest, by)


def _chance(chi_squared: float, freedom: int) -> float:
    from scipy.special import gammaincc

    return float(gammaincc(freedom / 2, chi_squared / 2))


def _farthest(results: Sequence[Measured]) -> tuple[int, float]:
    """The result that lies farthest from the mean of all the others."""
    gaps = [normalised_error(one, _mean([*results[:k], *results[k + 1 :]])) for k, one in enumerate(results)]
    by = max(gaps)
    return gaps.index(by), by


def _mean(results: Sequence[Measured]) -> Measured:
    """The weighted mean of results that agree."""
    weights = [1 / one.uncertainty**2 for one in results]
    whole = sum(weights)
    value = sum(w * one.value for w, one in zip(weights, results, strict=True)) / whole
    return Measured(value, 1 / sqrt(whole), results[0].dimension)
