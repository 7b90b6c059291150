"""How sure is a reading together with what was expected before it? What a pass that is wrong rests on."""

from __future__ import annotations

from dataclasses import dataclass

from spoolwright.bench.uncertainty import Measured


@dataclass(frozen=True)
class Expected:
    """What was expected of a reading before it was taken: middle and standard deviation, SI."""

    middle: float
    deviation: float


def joined(measured: Measured, expected: Expected | None) -> Measured:
    """A reading and what was expected before it, each weighed by how sure it is.

    Parameters
    ----------
    measured : Measured
        The reading with its standard uncertainty **[SI unit of its dimension]**.
    expected : Expected or None
        What was expected **[same unit]**; None, or no spread at all: nothing, and the reading stands alone.

    Returns
    -------
    Measured
        Where the true value lies **[same unit]**.

    Notes
    -----
    Precisions 1/u^2 add, and the middle is their weighed mean. Without an expectation every true value is as
    likely as another, and the reading's own normal is left.

    Source
    ------
    JCGM 106:2012, clause 6 and its example of a normal prior and a normal reading (from memory); Gelman and
    others, Bayesian Data Analysis, 3rd edition, 2.5.

    Examples
    --------
    >>> told = joined(Measured(32.0, 3.0, "ratio"), Expected(30.0, 4.0))
    >>> round(told.value, 2), round(told.uncertainty, 2)
    (31.28, 2.4)
    """
    if expected is None or not expected.deviation > 0 or measured.uncertainty == 0:
        return measured
    own, other = measured.uncertainty**-2, expected.deviation**-2
    middle = (own * measured.value + other * expected.middle) / (own + other)
    return Measured(middle, float((own + other) ** -0.5), measured.dimension)
