"""A record of something that swings and dies away: its period, how fast it dies, how well that fits."""

from __future__ import annotations

from dataclasses import dataclass
from math import pi, sqrt

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench import scatter
from spoolwright.bench.uncertainty import Measured
from spoolwright.bench.unreadable import Unreadable

CLOCK = 1e-4
"""Standard uncertainty of a logger's or phone's clock, as a share: judgement prior (quartz is far better;
what an app says of its rate is not)."""

FEWEST_SWINGS, FEWEST_A_SWING = 3.0, 8.0
WORST_FIT = 0.35
"""Residual over the fitted swing, both as root mean square, above which it is no swing of one pace."""

MOST_SAMPLES = 60_000

Array = NDArray[np.float64]


@dataclass(frozen=True, eq=False)
class Swing:
    """One swing that dies away: A exp(-decay t) cos(w t + phase) + level.

    `period` [s] is that of the swing as it is, 2 pi / w; `decay` [1/s]; `damping` the ratio decay over the
    undamped angular rate [-]; `swings` how many were seen; `relative_rms` what the fit leaves over, as a
    share of the swing. `time` [s from the first sample], `signal` and `fitted` in the unit of the record.
    """

    period: Measured
    decay: Measured
    damping: Measured
    swings: float
    relative_rms: float
    time: Array
    signal: Array
    fitted: Array
    notes: tuple[str, ...]


def fit(time: Array, signal: Array) -> Swing:
    """Period and decay of a swing, from an angle or an angular velocity against time.

    Parameters
    ----------
    time : array
        Moments that rise [s], shape (n,), n >= 30.
    signal : array
        Angle or its rate at them [any unit], shape (n,).

    Returns
    -------
    Swing
        Period [s], decay [1/s] and damping ratio [-] with standard uncertainties.

    Raises
    ------
    Unreadable
        Too few samples or swings, a signal that stands still, one that no single swing fits.

    Notes
    -----
    Five numbers by least squares: amplitude, phase, level, angular rate and decay; the start from the highest
    line of the spectrum. The covariance is widened by the correlation of the residuals, and the period by the
    clock's. Angle and rate of a swing have the same period and decay, so either will do.

    Source
    ------
    Damped oscillator, any dynamics text; JCGM 100:2008, H.3 (least squares).

    Examples
    --------
    >>> t = np.arange(0, 3, 0.01)
    >>> found = fit(t, 0.2 + np.exp(-0.3 * t) * np.cos(2 * np.pi * t / 0.4))
    >>> round(found.period.value, 5), round(found.decay.value, 4)
    (0.4, 0.3)
    """
    _check(time, signal)
    moments = time - time[0]
    scale = float(np.std(signal))
    values, covariance, residual = _solved(moments, (signal - np.mean(signal)) / scale)
    rate, decay = float(values[3]), float(values[4])
    period = 2 * pi / rate
    fitted = _swing(moments, values) * scale + float(np.mean(signal))
    swings = float(moments[-1]) / period
    rms = _left_over(residual, moments, values)
    _check_fit(swings, len(moments) / max(swings, 1e-9), rms)
    spread = period / rate * sqrt(max(float(covariance[3, 3]), 0.0))
    undamped = sqrt(rate**2 + decay**2)
    unsure = sqrt(max(float(covariance[4, 4]), 0.0))
    return Swing(
        Measured(period, sqrt(spread**2 + (CLOCK * period) ** 2), "time"),
        Measured(decay, unsure, "frequency"),
        Measured(decay / undamped, unsure / undamped, "ratio"),
        swings=swings,
        relative_rms=rms,
        time=moments,
        signal=signal,
        fitted=fitted,
        notes=tuple(_notes(swings, decay, unsure)),
    )


def _check(time: Array, signal: Array) -> None:
    if len(time) < 30:
        raise Unreadable(f"there are {len(time)} samples", "", "30 samples or more")
    if len(time) > MOST_SAMPLES:
        raise Unreadable(f"there are {len(time)} samples", "", f"at most {MOST_SAMPLES}: cut the record")
    if not np.all(np.diff(time) > 0):
        raise Unreadable("the moments do not rise from row to row", "", "one row for each moment")
    if not np.std(signal) > 1e-12 * max(1.0, float(np.max(np.abs(signal)))):
        raise Unreadable("the signal stands still", "", "a record of a swing")


def _check_fit(swings: float, samples: float, rms: float) -> None:
    if swings < FEWEST_SWINGS:
        raise Unreadable(
            f"only {swings:.1f} swings are in the record", "", f"{FEWEST_SWINGS:g} swings or more"
        )
    if samples < FEWEST_A_SWING:
        raise Unreadable(
            f"there are only {samples:.1f} samples to a swing",
            "",
            f"{FEWEST_A_SWING:g} samples to a swing or more",
        )
    if rms > WORST_FIT:
        reason = f"no single swing explains this record: {rms:.0%} of it is left over"
        raise Unreadable(reason, "", "a record from after the release to before it is stopped")


def _swing(time: Array, values: Array) -> Array:
    a, b, level, rate, decay = values
    shape: Array = np.exp(-decay * time) * (a * np.cos(rate * time) + b * np.sin(rate * time)) + level
    return shape


def _first_guess(time: Array, signal: Array) -> Array:
    """The highest line of the spectrum on an even clock, and how the second half compares with the first."""
    even = np.linspace(0.0, time[-1], len(time))
    on_it = np.interp(even, time, signal)
    padded = 8 * len(even)
    power = np.abs(np.fft.rfft((on_it - on_it.mean()) * np.hanning(len(even)), padded))
    power[:8] = 0.0
    rate = 2 * pi * float(np.argmax(power)) / (padded * float(even[1]))
    half = len(even) // 2
    first, second = float(np.std(on_it[:half])), float(np.std(on_it[half:]))
    decay = max(np.log(max(first, 1e-12) / max(second, 1e-12)), 0.0) / (0.5 * float(time[-1]))
    shapes = np.exp(-decay * time)
    columns = np.stack(
        [shapes * np.cos(rate * time), shapes * np.sin(rate * time), np.ones_like(time)], axis=1
    )
    a, b, level = np.linalg.lstsq(columns, signal, rcond=None)[0]
    return np.array([a, b, level, rate, decay])


def _solved(time: Array, signal: Array) -> tuple[Array, Array, Array]:
    from scipy.optimize import least_squares

    def left_over(values: Array) -> Array:
        return _swing(time, values) - signal

    def slopes(values: Array) -> Array:
        return _slopes(time, values)

    start = _first_guess(time, signal)
    steps = np.array([1.0, 1.0, 1.0, max(start[3], 1e-6), 1.0 / float(time[-1])])
    found = least_squares(left_over, start, jac=slopes, x_scale=steps, method="lm")
    values: Array = np.asarray(found.x, dtype=np.float64)
    columns, residual = slopes(values), left_over(values)
    norms = np.maximum(np.linalg.norm(columns, axis=0), 1e-300)
    inverse = np.linalg.pinv((columns / norms).T @ (columns / norms), rcond=1e-14, hermitian=True)
    variance = float(np.sum(residual**2)) / max(len(time) - 5, 1)
    together = scatter.correlation_samples(residual) if variance > 1e-20 else 1.0
    return values, inverse * variance * together / np.outer(norms, norms), residual


def _slopes(time: Array, values: Array) -> Array:
    a, b, _, rate, decay = values
    shape, cosine, sine = np.exp(-decay * time), np.cos(rate * time), np.sin(rate * time)
    swing = shape * (a * cosine + b * sine)
    turned = shape * time * (b * cosine - a * sine)
    return np.stack([shape * cosine, shape * sine, np.ones_like(time), turned, -time * swing], axis=1)


def _left_over(residual: Array, time: Array, values: Array) -> float:
    alone = _swing(time, values) - values[2]
    return float(np.sqrt(np.mean(residual**2)) / max(float(np.sqrt(np.mean(alone**2))), 1e-12))


def _notes(swings: float, decay: float, unsure: float) -> list[str]:
    said = []
    if decay < -2 * unsure:
        said.append("The swing grows instead of dying away: something drives it.")
    if swings < 8:
        said.append(f"Only {swings:.0f} swings are in the record; more of them make the period surer.")
    return said
