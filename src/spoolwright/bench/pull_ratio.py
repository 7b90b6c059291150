"""One pull over another that shares its gauge: the interval that their ratio lies in."""

from __future__ import annotations

from math import inf, sqrt

from spoolwright.bench.pull_reading import PullReading
from spoolwright.bench.uncertainty import COVERAGE_FACTOR, Measured

SHARED = ("scale of the gauge", "zero of the gauge", "line's angle and pulley", "zero that was taken off")
"""Rows in which both pulls of one trace are off together."""


def interval(
    top: Measured, bottom: Measured, correlation: float = 0.0, factor: float = COVERAGE_FACTOR
) -> tuple[float, float]:
    """Between which ends the ratio lies, also where the lower value is poorly known.

    Parameters
    ----------
    top : Measured
        What stands above the line, with its standard uncertainty [any unit].
    bottom : Measured
        What stands below it [same unit], above zero.
    correlation : float
        How far the two are off together [-], -1 to 1.
    factor : float
        Coverage factor [-], above zero; 2 covers about 95 %.

    Returns
    -------
    tuple of float
        Lower and upper end [1]; both endless where the lower value may be nothing.

    Raises
    ------
    ValueError
        Nothing below the line, a correlation outside -1 to 1, two kinds of quantity, a factor not above zero.

    Notes
    -----
    Fieller: all r with (a - r b)^2 <= k^2 (u1^2 - 2 r c + r^2 u2^2), c = rho u1 u2; a quadratic in r. It
    covers exactly for normal errors, and is lopsided: more room above than below.

    Source
    ------
    Fieller, Journal of the Royal Statistical Society B 16 (1954) 175 (from memory).

    Examples
    --------
    >>> low, high = interval(Measured(12.0, 0.3, "force"), Measured(10.0, 0.3, "force"))
    >>> round(low, 3), round(high, 3)
    (1.11, 1.298)
    """
    _check(top, bottom, correlation)
    if not factor > 0:
        raise ValueError(f"factor must be above zero; came {factor}")
    a, b = top.value, bottom.value
    k2 = factor**2
    shared = correlation * top.uncertainty * bottom.uncertainty
    square = b**2 - k2 * bottom.uncertainty**2
    if square <= 0:
        return -inf, inf
    half = a * b - k2 * shared
    rest = a**2 - k2 * top.uncertainty**2
    root = sqrt(max(half**2 - square * rest, 0.0))
    return (half - root) / square, (half + root) / square


def ratio_interval(read: PullReading) -> tuple[float, float]:
    """Between which ends the start-up ratio of one pull lies.

    Parameters
    ----------
    read : PullReading
        One pull with the rows of its uncertainty [N].

    Returns
    -------
    tuple of float
        Lower and upper end at k = 2 [1].

    Notes
    -----
    What both pulls share (scale, zero, the line's way) makes them go up and down
    together: rho = sum of u1 u2 over the shared rows / (u1 u2).

    Source
    ------
    JCGM 100:2008, F.1.2.3 (covariance of quantities that share an influence); Fieller as in `interval`.

    Examples
    --------
    >>> import numpy as np
    >>> from spoolwright.bench import pull_reading
    >>> from spoolwright.bench.gauge import Gauge
    >>> from spoolwright.bench.trace import Found, PullTrace
    >>> t = np.arange(0.0, 5.0, 0.01)
    >>> force = np.clip(40 * (t - 0.5), 0, 20) * (t < 4)
    >>> trace = PullTrace(t, force, Found("utf-8", "comma", "point", (), "", "", "s", "N", 100.0, 500))
    >>> low, high = ratio_interval(pull_reading.analyse(trace, Gauge()))
    >>> low <= 1.0 <= high
    True
    """
    start = {row.source: row.uncertainty for row in read.budget if row.result == "start_up"}
    running = {row.source: row.uncertainty for row in read.budget if row.result == "running"}
    shared = sum(
        start[source] * running[source] for source in SHARED if source in start and source in running
    )
    both = read.start_up.uncertainty * read.running.uncertainty
    return interval(read.start_up, read.running, min(shared / both, 1.0) if both > 0 else 0.0)


def _check(top: Measured, bottom: Measured, correlation: float) -> None:
    if top.dimension != bottom.dimension:
        raise ValueError(f"two of one kind are needed; came {top.dimension} and {bottom.dimension}")
    if not bottom.value > 0:
        raise ValueError(f"bottom must be above zero; came {bottom.value}")
    if not -1 <= correlation <= 1:
        raise ValueError(f"correlation must lie between -1 and 1; came {correlation}")
