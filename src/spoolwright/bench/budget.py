"""The rows behind a stated uncertainty, so that a page can show what it is made of."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from math import sqrt

from spoolwright.bench.uncertainty import Measured

RECTANGLE = 1 / sqrt(3.0)
"""Half-width of a rectangular distribution to its standard deviation (JCGM 100:2008, 4.3.7)."""

ROUNDING = 1 / sqrt(12.0)
"""One step of a display to the standard uncertainty of its rounding (JCGM 100:2008, F.2.2.1)."""


@dataclass(frozen=True)
class Contribution:
    """One row: which result it belongs to, where it comes from, in what way it was found, how large it is.

    `way` is "A" where it comes from the scatter of the readings, "B" where it comes from what is known
    otherwise; `uncertainty` is a standard uncertainty in the SI unit of the result.
    """

    result: str
    source: str
    way: str
    uncertainty: float


def combined(rows: Iterable[Contribution]) -> float:
    """Root of the sum of squares of independent contributions to one result.

    Parameters
    ----------
    rows : iterable of Contribution
        All rows of one result [SI unit of that result].

    Returns
    -------
    float
        Combined standard uncertainty [SI unit of that result].

    Source
    ------
    JCGM 100:2008, 5.1.2, equation (10), sensitivities already multiplied in.

    Examples
    --------
    >>> combined([Contribution("x", "scatter", "A", 3.0), Contribution("x", "gauge", "B", 4.0)])
    5.0
    """
    return sqrt(sum(row.uncertainty**2 for row in rows))


def measured(value: float, dimension: str, rows: Iterable[Contribution]) -> Measured:
    """A value with the uncertainty that its rows add up to.

    Parameters
    ----------
    value : float
        Best estimate [SI unit of the dimension].
    dimension : str
        Key of `quantities.DIMENSIONS` [-].
    rows : iterable of Contribution
        All rows of this result [SI unit of the dimension].

    Returns
    -------
    Measured
        Value and combined standard uncertainty [SI unit of the dimension].

    Source
    ------
    JCGM 100:2008, 5.1.2.

    Examples
    --------
    >>> measured(2.0, "ratio", [Contribution("x", "scatter", "A", 0.1)]).expanded
    0.2
    """
    return Measured(float(value), combined(rows), dimension)
