"""What a size taken by hand says of a part, in a sentence: accepted, rejected, or too close to call."""

from __future__ import annotations

import math

from spoolwright import quantities
from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.guard_band import Call, Limits
from spoolwright.judgement.proof import chance_said

TITLES = {"accept": "Accepted", "reject": "Rejected", "too close to call": "Too close to call"}


def limits_said(limits: Limits, dimension: str, system: str = "metric") -> str:
    """Limits as the bench says them.

    Parameters
    ----------
    limits : Limits
        Where a part is good **[SI unit of the dimension]**.
    dimension : str
        Key of `quantities.DIMENSIONS` **[-]**.
    system : str
        "metric" or "imperial" **[-]**.

    Returns
    -------
    str
        Such as "at least 0.68 mm is asked for" **[-]**.

    Source
    ------
    Our own wording.

    Examples
    --------
    >>> limits_said(Limits(low=0.68e-3), "length")
    'at least 0.68 mm is asked for'
    >>> limits_said(Limits(high=1e-4, reject_high=2e-4), "length")
    'good is at most 0.1 mm, rejected is what is above 0.2 mm'
    """
    low, high = limits.outer
    beyond = [f"below {_shown(low, dimension, system)}"] if math.isfinite(low) else []
    beyond += [f"above {_shown(high, dimension, system)}"] if math.isfinite(high) else []
    asked = _range(limits.low, limits.high, dimension, system)
    if (low, high) == (limits.low, limits.high):
        return f"{asked} is asked for"
    return f"good is {asked}, rejected is what is {' or '.join(beyond)}"


def call_said(call: Call, measured: Measured, limits: Limits, system: str = "metric") -> str:
    """The verdict with what it rests on and how likely it is to be wrong.

    Parameters
    ----------
    call : Call
        What was said of the part **[-]**.
    measured : Measured
        Its size **[SI unit of its dimension]**.
    limits : Limits
        What it was held against **[same unit]**.
    system : str
        "metric" or "imperial" **[-]**.

    Returns
    -------
    str
        One or two sentences **[-]**.

    Source
    ------
    Our own wording of JCGM 106:2012, clauses 7 and 8.

    Examples
    --------
    >>> from spoolwright.judgement.guard_band import call
    >>> size, limit = Measured(0.70e-3, 0.01e-3, "length"), Limits(low=0.68e-3)
    >>> call_said(call(size, limit), size, limit)
    'Accepted: at least 0.68 mm is asked for. The chance that this is wrong is 2.3 %.'
    """
    held = limits_said(limits, measured.dimension, system)
    if call.chance_wrong is not None:
        wrong = chance_said(call.chance_wrong)
        return f"{TITLES[call.verdict]}: {held}. The chance that this is wrong is {wrong}."
    good = f"{100 * call.chance_good:.0f} %"
    more = "Measure again, or with a finer instrument; where it matters, fit a new one."
    return f"{TITLES[call.verdict]}: {held}; the chance that it is good is {good}. {more}"


def _range(low: float, high: float, dimension: str, system: str) -> str:
    if math.isinf(low):
        return f"at most {_shown(high, dimension, system)}"
    if math.isinf(high):
        return f"at least {_shown(low, dimension, system)}"
    return f"from {_shown(low, dimension, system)} to {_shown(high, dimension, system)}"


def _shown(value: float, dimension: str, system: str) -> str:
    return quantities.show_stated(value, dimension, system)
