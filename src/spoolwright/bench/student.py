"""How much wider an interval must be when its scatter was learned from few readings."""

from __future__ import annotations

from collections.abc import Sequence
from math import sqrt
from statistics import stdev

PROBABILITY = 0.9545
"""What k = 2 covers of a normal distribution (JCGM 100:2008, table G.1)."""


def widening(freedom: float) -> float:
    """Factor on a standard uncertainty so that k = 2 still covers 95 % with few degrees of freedom.

    Parameters
    ----------
    freedom : float
        Degrees of freedom behind the scatter [-], above zero; may be endless.

    Returns
    -------
    float
        Student's factor for 95.45 % over the normal one [-], 1 or more.

    Raises
    ------
    ValueError
        Nothing to learn a scatter from.

    Source
    ------
    JCGM 100:2008, G.3.2 and table G.2.

    Examples
    --------
    >>> round(2 * widening(5), 2), round(widening(1e9), 3)
    (2.65, 1.0)
    """
    if not freedom > 0:
        raise ValueError(f"freedom must be above zero; came {freedom}")
    from scipy.special import ndtri, stdtrit

    tail = 0.5 + PROBABILITY / 2
    return float(stdtrit(min(freedom, 1e9), tail) / ndtri(tail))


def of_mean(values: Sequence[float]) -> float:
    """What the scatter of a few readings leaves open of their mean, widened for how few they are.

    Parameters
    ----------
    values : sequence of float
        Two readings or more of one thing [any unit].

    Returns
    -------
    float
        Type A uncertainty of the mean, to be taken k = 2 times like every other [same unit], 0 or more.

    Raises
    ------
    ValueError
        Fewer than two readings.

    Notes
    -----
    u = w(n - 1) s / sqrt n; w = 6.98 for two, 2.26 for three, 1.66 for four. Each such part is widened before
    the squares are added, not their sum by effective degrees of freedom (JCGM 100:2008, G.4): so the interval
    covers no less than it says whatever normal part is added to it, while by that formula it covers 88 %
    where two readings stand beside a part of a third of their mean's scatter (our own draws, in its test).
    Tries that differ by no more than one step of the display are widened like all others. With the step's
    u = step / sqrt 12 in place of their scatter, beside the step itself, k = 2 would cover 89 % of pairs and
    96 % of threes where the true scatter is anything from none to a step, and 77 and 91 % at a whole step.
    Widened it covers 93 and 98 %: what pairs lack are those that the display shows equal (draws as above).

    Source
    ------
    JCGM 100:2008, 4.2.3 and G.3.2. That sums of squares so widened cover enough: Banerjee, Biometrika 48
    (1961), from memory.

    Examples
    --------
    >>> round(of_mean([1.0, 2.0, 3.0]), 2), of_mean([2.0, 2.0])
    (1.31, 0.0)
    """
    if len(values) < 2:
        raise ValueError(f"a scatter needs two readings or more; came {len(values)}")
    spread = stdev(float(value) for value in values)
    return widening(len(values) - 1) * spread / sqrt(len(values)) if spread else 0.0
