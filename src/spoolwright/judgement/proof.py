"""Was the promise kept? Promised beside measured, under a decision rule that is printed with the answer."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Literal

from spoolwright import quantities
from spoolwright.bench.uncertainty import COVERAGE_FACTOR, Measured
from spoolwright.judgement.wrong_pass import Expected, joined

Outcome = Literal["shown", "not shown", "failed"]


@dataclass(frozen=True)
class Promise:
    """What was promised: at least `low`, at most `high`, either or both, in the SI unit of `dimension`."""

    low: float | None
    high: float | None
    dimension: str


@dataclass(frozen=True)
class Decision:
    """Shown, not shown, or failed; the rule; the chance that the true value lies outside the promise.

    `words` say what was promised and measured, and why; `why` is their last sentence alone.
    """

    kind: Outcome
    words: str
    rule: str
    chance_outside: float
    why: str = ""

    @property
    def chance_of_wrong_pass(self) -> float | None:
        """The chance that "shown" is wrong; None where nothing was shown."""
        return self.chance_outside if self.kind == "shown" else None


def chance_outside(promised: Promise, measured: Measured, expected: Expected | None = None) -> float:
    """Chance that the true value lies outside the promise, given the reading and its uncertainty.

    Parameters
    ----------
    promised : Promise
        Lowest and highest promised value **[SI unit of its dimension]**.
    measured : Measured
        The reading with its standard uncertainty **[same unit]**.
    expected : Expected or None
        What was expected of it before it was taken **[same unit]**; None: any true value is as likely as
        another.

    Returns
    -------
    float
        Probability **[-]**, from 0 to 1.

    Notes
    -----
    1 - (Phi((high - y) / u) - Phi((low - y) / u)); normal, y and u those of the reading joined with what was
    expected. Of a promise that is called kept this is the specific consumer's risk.

    Source
    ------
    JCGM 106:2012, clause 7 (conformance probability) and 9.3.2 (specific risk).

    Examples
    --------
    >>> round(chance_outside(Promise(None, -5.40, "ratio"), Measured(-5.47, 0.05, "ratio")), 2)
    0.08
    """
    believed = joined(measured, expected)
    y, u = believed.value, believed.uncertainty
    if u == 0:
        return 0.0 if _distance_inside(promised, y) >= 0 else 1.0
    above = 0.0 if promised.high is None else _normal_below((y - promised.high) / u)
    below = 0.0 if promised.low is None else _normal_below((promised.low - y) / u)
    return min(1.0, above + below)


def chance_said(chance: float) -> str:
    """A chance in per cent; what is rarer than one in a thousand is said to be so and no more.

    Parameters
    ----------
    chance : float
        Probability **[-]**, from 0 to 1.

    Returns
    -------
    str
        Text **[%]**.

    Source
    ------
    Our own wording: further figures of a normal tail say nothing of a real reel.

    Examples
    --------
    >>> chance_said(0.0228), chance_said(1e-9)
    ('2.3 %', 'less than 0.1 %')
    """
    return "less than 0.1 %" if chance < 0.001 else f"{100 * chance:.1f} %"


def wrong_pass_said(promised: Promise, measured: Measured, expected: Expected | None = None) -> str:
    """The chance that a pass is wrong, and beside it what the reading alone says where that is another.

    Parameters
    ----------
    promised : Promise
        The promise **[SI unit of its dimension]**.
    measured : Measured
        The reading **[same unit]**.
    expected : Expected or None
        What was expected of it before the work **[same unit]**.

    Returns
    -------
    str
        Text **[%]**.

    Source
    ------
    JCGM 106:2012, 9.3.2; the wording is ours.

    Examples
    --------
    >>> wrong_pass_said(Promise(None, 1.15, "ratio"), Measured(1.11, 0.02, "ratio"), Expected(1.09, 0.03))
    '0.3 % (2.3 % by the reading alone)'
    """
    together = chance_said(chance_outside(promised, measured, expected))
    alone = chance_said(chance_outside(promised, measured))
    return together if together == alone else f"{together} ({alone} by the reading alone)"


def decide(
    promised: Promise,
    measured: Measured,
    *,
    expected: Expected | None = None,
    guard_factor: float = COVERAGE_FACTOR,
    system: str = "metric",
) -> Decision:
    """Decide a promise against a reading, with a guard band.

    Parameters
    ----------
    promised : Promise
        Lowest and highest promised value **[SI unit of its dimension]**, at least one of them.
    measured : Measured
        The reading after the work, with its standard uncertainty **[same unit]**.
    expected : Expected or None
        What was expected of it before the work **[same unit]**; it moves the chance of a wrong pass and
        never the decision.
    guard_factor : float
        Guard band in standard uncertainties **[-]**, 0 or more; 2 keeps the wrong pass under 2.5 % a side by
        the reading alone.
    system : str
        "metric" or "imperial" **[-]**, for the words.

    Returns
    -------
    Decision
        Shown, not shown or failed; words; rule; chance outside **[-]**.

    Raises
    ------
    ValueError
        Nothing was promised, the promise is upside down, its dimension is another, or the guard is negative.

    Notes
    -----
    Shown: the reading lies inside the promise by the guard band or more. Failed: outside by the guard band
    or more. Between the two the reading cannot tell, and nothing is claimed.

    Source
    ------
    ILAC-G8:09/2019 4.2.2 (guard band w = U); ISO 14253-1 (factor 1.645 for a one-sided 95 %).

    Examples
    --------
    >>> decide(Promise(None, 1.10, "ratio"), Measured(1.07, 0.02, "ratio")).kind
    'not shown'
    >>> decide(Promise(None, 1.15, "ratio"), Measured(1.07, 0.02, "ratio")).kind
    'shown'
    """
    _refuse(promised, measured, guard_factor)
    guard = guard_factor * measured.uncertainty
    kind = _outcome(_distance_inside(promised, measured.value), guard, abs(measured.value))
    outside = chance_outside(promised, measured, expected)
    why = _why(kind, promised, guard, wrong_pass_said(promised, measured, expected))
    words = f"{_beside(kind, promised, measured, system)} {why}"
    return Decision(kind, words, _rule(guard_factor), outside, why)


def _refuse(promised: Promise, measured: Measured, guard_factor: float) -> None:
    if promised.low is None and promised.high is None:
        raise ValueError("promised: a lowest or a highest value, or both, is accepted; got neither")
    if promised.low is not None and promised.high is not None and promised.low > promised.high:
        raise ValueError(
            f"promised: the lowest may not exceed the highest; got {promised.low} > {promised.high}"
        )
    if promised.dimension != measured.dimension:
        raise ValueError(f"measured: a {promised.dimension} was promised; got a {measured.dimension}")
    if not guard_factor >= 0:
        raise ValueError(f"guard_factor: 0 or more is accepted; got {guard_factor}")


def _distance_inside(promised: Promise, value: float) -> float:
    above_low = math.inf if promised.low is None else value - promised.low
    below_high = math.inf if promised.high is None else promised.high - value
    return min(above_low, below_high)


def _outcome(inside: float, guard: float, size: float) -> Outcome:
    # Decimals as typed are not exact in binary: a reading right on the edge counts as on it.
    dust = 1e-9 * size
    if inside >= guard - dust:
        return "shown"
    return "failed" if -inside >= guard - dust else "not shown"


def _normal_below(z: float) -> float:
    return 0.5 * math.erfc(-z / math.sqrt(2.0))


RISK = (
    "The chance that a pass is wrong is the chance that the true value lies outside the promise: by the "
    "reading and what was expected before the work together, or by the reading alone where nothing was "
    "(JCGM 106)."
)


def _rule(guard_factor: float) -> str:
    if guard_factor == 0:
        return (
            "Simple acceptance: shown when the reading lies inside the promise. "
            f"At its very edge such a pass is wrong half of the time. {RISK}"
        )
    return (
        f"Guard band of {guard_factor:g} standard uncertainties: shown when the reading lies inside "
        f"the promise by that much, failed when it lies outside by that much, not shown in between. {RISK}"
    )


def _said(promised: Promise, system: str) -> str:
    def show(value: float) -> str:
        return quantities.show(value, promised.dimension, system)

    if promised.low is None:
        return f"at most {show(promised.high or 0.0)}"
    if promised.high is None:
        return f"at least {show(promised.low)}"
    return f"{show(promised.low)} to {show(promised.high)}"


def _beside(kind: Outcome, promised: Promise, measured: Measured, system: str) -> str:
    reading = quantities.show(measured.value, measured.dimension, system, uncertainty=measured.expanded)
    return f"Promised {_said(promised, system)}, measured {reading}: {kind}."


def _why(kind: Outcome, promised: Promise, guard: float, risk: str) -> str:
    wide = promised.low is not None and promised.high is not None and promised.high - promised.low < 2 * guard
    if kind == "shown":
        return f"Chance that this is wrong: {risk}."
    if kind == "failed":
        return "The reading lies outside by more than its uncertainty."
    if wide:
        return "The promise is narrower than this reading's uncertainty: no such reading could show it."
    return "The reading is too near the edge to tell; more readings would narrow it."
