"""How sure a mean, a slope or a span is when neighbouring samples are not independent."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

Samples = NDArray[np.float64]


def correlation_samples(residual: Samples) -> float:
    """How many neighbouring samples say the same thing: 1 for white noise, more for anything slower.

    Parameters
    ----------
    residual : array
        Samples less their mean or trend [any unit], shape (n,), n >= 2.

    Returns
    -------
    float
        Integrated correlation [samples], between 1 and n.

    Notes
    -----
    1 + 2 sum of the autocorrelation up to the first lag at which it is no longer positive. Stopping there
    leaves out the negative part of a ripple, so the answer errs towards a larger uncertainty.

    Source
    ------
    Priestley, Spectral Analysis and Time Series, 5.3 (variance of the mean of a correlated series; from
    memory); the stopping rule after Geyer, Statistical Science 7 (1992), section 3.3 (from memory).

    Examples
    --------
    >>> correlation_samples(np.array([1.0, -1.0] * 50))
    1.0
    """
    n = len(residual)
    centred = residual - residual.mean()
    spectrum = np.fft.rfft(centred, 2 * n)
    power = np.fft.irfft(spectrum * np.conj(spectrum))[: n // 2 + 1]
    if power[0] <= 0:
        return 1.0
    rho = power / power[0]
    stop = int(np.argmax(rho <= 0)) if np.any(rho <= 0) else len(rho)
    return float(min(max(1.0, 1.0 + 2.0 * rho[1:stop].sum()), n))


def error_of_mean(residual: Samples) -> float:
    """Standard uncertainty of the mean of samples that hang together.

    Parameters
    ----------
    residual : array
        Samples less their trend [any unit], shape (n,), n >= 2.

    Returns
    -------
    float
        Standard uncertainty [unit of the samples].

    Notes
    -----
    s sqrt(tau / n), s with n - 2 degrees of freedom (level and slope are taken out).

    Source
    ------
    JCGM 100:2008, 4.2.3, with the number of independent samples n / tau (Priestley as above).

    Examples
    --------
    >>> round(error_of_mean(np.array([1.0, -1.0] * 50)), 3)
    0.101
    """
    n = len(residual)
    spread = float(np.sqrt(np.sum(residual**2) / max(n - 2, 1)))
    return spread * float(np.sqrt(correlation_samples(residual) / n))


def line_through(time: Samples, values: Samples) -> tuple[float, float, Samples]:
    """The straight line through samples: level at the middle, slope, and what is left over.

    Parameters
    ----------
    time : array
        Times [s], shape (n,), n >= 3.
    values : array
        Samples [any unit], shape (n,).

    Returns
    -------
    tuple
        Level [unit of values], slope [unit of values per s], residuals of shape (n,).

    Source
    ------
    Least squares, JCGM 100:2008, H.3.

    Examples
    --------
    >>> level, slope, rest = line_through(np.arange(3.0), np.array([1.0, 2.0, 3.0]))
    >>> round(level, 9), round(slope, 9)
    (2.0, 1.0)
    """
    centred = time - time.mean()
    level = float(values.mean())
    slope = float(np.sum(centred * values) / np.sum(centred**2))
    return level, slope, values - level - slope * centred


def error_of_slope(time: Samples, residual: Samples) -> float:
    """Standard uncertainty of the slope of a straight line through samples that hang together.

    Parameters
    ----------
    time : array
        Times [s], shape (n,), n >= 3.
    residual : array
        What the line leaves over [any unit], shape (n,).

    Returns
    -------
    float
        Standard uncertainty [unit of the samples per s].

    Source
    ------
    JCGM 100:2008, H.3, with the scatter widened by the correlation as in `error_of_mean`.

    Examples
    --------
    >>> error_of_slope(np.arange(100.0), np.array([1.0, -1.0] * 50)) < 0.004
    True
    """
    centred = time - time.mean()
    return error_of_mean(residual) * float(np.sqrt(len(time) / np.sum(centred**2)))


def span(values: Samples, low: float = 5.0, high: float = 95.0) -> float:
    """Distance between two percentiles.

    Parameters
    ----------
    values : array
        Samples [any unit], shape (n,).
    low, high : float
        The two percentiles [%], 0 to 100.

    Returns
    -------
    float
        Their distance [unit of the samples].

    Source
    ------
    Percentiles by linear interpolation, as numpy has them.

    Examples
    --------
    >>> span(np.arange(101.0))
    90.0
    """
    below, above = np.percentile(values, (low, high))
    return float(above - below)


def error_of_span(values: Samples, *, draws: int = 200, most: int = 4000, seed: int = 1) -> float:
    """Standard uncertainty of the distance from the 5th to the 95th percentile, by redrawing whole stretches.

    Parameters
    ----------
    values : array
        Samples [any unit], shape (n,), n >= 8.
    draws : int
        How often the record is drawn again [-], 20 or more.
    most : int
        Samples kept; a longer record is thinned evenly first [-].
    seed : int
        Start of the drawing [-], fixed so that a trace always gives the same answer.

    Returns
    -------
    float
        Standard uncertainty [unit of the samples].

    Notes
    -----
    Moving blocks of five correlation lengths, at most a quarter of the record.

    Source
    ------
    Kunsch, Annals of Statistics 17 (1989), moving block bootstrap (from memory).

    Examples
    --------
    >>> rng = np.random.default_rng(3)
    >>> 0.05 < error_of_span(rng.normal(size=2000)) < 0.12
    True
    """
    thinned = values[:: max(1, len(values) // most)]
    n = len(thinned)
    block = int(np.clip(5 * correlation_samples(thinned - thinned.mean()), 1, max(1, n // 4)))
    rng = np.random.default_rng(seed)
    starts = rng.integers(0, n - block + 1, size=(draws, -(-n // block)))
    index = (starts[:, :, None] + np.arange(block)).reshape(draws, -1)[:, :n]
    below, above = np.percentile(thinned[index], (5.0, 95.0), axis=1)
    return float(np.std(above - below, ddof=1))
