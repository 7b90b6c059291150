"""How much wider an interval must be when its scatter was learned from few readings."""

from __future__ import annotations

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
