"""Is a part inside its limit? Accept, reject, or too close to call, by guard band."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Literal

from spoolwright.bench.uncertainty import Measured

Verdict = Literal["accept", "reject", "too close to call"]

SURE = 0.95
"""Chance that is asked for before anything is said: the default of the newer edition of the standard."""
RULE = (
    "Accepted or rejected only where the chance of it being so is at least 95 %; anything between is too "
    "close to call (guard band as in ISO 14253-1:2017, from memory)."
)


@dataclass(frozen=True)
class Limits:
    """From where to where a part is accepted [SI], and beyond which ends it is rejected.

    The second pair is the same as the first unless a limit is itself known only from here to there.
    """

    low: float = -math.inf
    high: float = math.inf
    reject_low: float | None = None
    reject_high: float | None = None

    @property
    def outer(self) -> tuple[float, float]:
        low = self.low if self.reject_low is None else self.reject_low
        high = self.high if self.reject_high is None else self.reject_high
        return low, high


@dataclass(frozen=True)
class Call:
    """What is said of a part: the verdict, the chance that it is good, the chance that the verdict is wrong.

    `chance_wrong` of "too close to call" is None: nothing was said.
    """

    verdict: Verdict
    chance_good: float
    chance_wrong: float | None
    guard: float
    rule: str = RULE


def call(measured: Measured, limits: Limits) -> Call:
    """Hold a measured size against its limits.

    Parameters
    ----------
    measured : Measured
        The size with its standard uncertainty **[SI unit of its dimension]**.
    limits : Limits
        Where it is good and beyond where it is not **[same unit]**; an infinite end is no limit.

    Returns
    -------
    Call
        Verdict, chances **[-]**, and the width of the guard band **[same unit]**.

    Raises
    ------
    ValueError
        Limits in the wrong order.

    Notes
    -----
    Chance inside = Phi((high - y)/u) - Phi((low - y)/u). Accepted where the chance of being inside is at
    least 95 %, rejected where the chance of being outside is: with one limit in reach the guard band is
    1.645 u. The older edition asked for the whole interval y +- 2 u on one side, which is stricter.

    Source
    ------
    ISO 14253-1:2017 (default probability 95 %, from memory); JCGM 106:2012, clauses 7 and 8 (chance of
    conformance, guarded acceptance, from memory).

    Examples
    --------
    >>> washer = Measured(0.70e-3, 0.01e-3, "length")
    >>> call(washer, Limits(low=0.68e-3)).verdict
    'accept'
    >>> call(washer, Limits(low=0.69e-3)).verdict
    'too close to call'
    """
    outer = limits.outer
    if not (limits.low < limits.high and outer[0] <= limits.low and limits.high <= outer[1]):
        raise ValueError(f"limits have to lie in their order: {limits}")
    good = _chance_inside(measured, limits.low, limits.high)
    bad = 1.0 - _chance_inside(measured, *outer)
    guard = _factor() * measured.uncertainty
    if good >= SURE:
        return Call("accept", good, 1.0 - good, guard)
    if bad >= SURE:
        return Call("reject", good, 1.0 - bad, guard)
    return Call("too close to call", good, None, guard)


def _chance_inside(measured: Measured, low: float, high: float) -> float:
    y, u = measured.value, measured.uncertainty
    if u == 0:
        return 1.0 if low <= y <= high else 0.0
    # Tails, not their complement: what is far inside keeps its small chance of being wrong.
    above, below = _beyond((high - y) / u), _beyond((y - low) / u)
    return max(0.0, 1.0 - above - below)


def _beyond(z: float) -> float:
    """Chance of more than z deviations above the mean of a normal law."""
    return 0.5 * math.erfc(z / math.sqrt(2.0))


def _factor() -> float:
    """One-sided 95 % point of the normal law."""
    from statistics import NormalDist

    return NormalDist().inv_cdf(SURE)
