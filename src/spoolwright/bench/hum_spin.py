"""The falling hum of a spool to what its coast-down says: the law fitted to speeds instead of ticks."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench import coast_ends, coast_fit, coast_values, scatter
from spoolwright.bench.coast_fit import TURN, CoastFit
from spoolwright.bench.free_part import CutOff
from spoolwright.bench.hum import Hum
from spoolwright.bench.spin_down import LEAST_LOSS, WORST_FIT, SpinDown
from spoolwright.bench.uncertainty import Measured
from spoolwright.bench.unreadable import Unreadable

FEWEST = 12
"""Windows with the tone below which a coast-down says nothing."""

Array = NDArray[np.float64]

_PASSES = 4
_OUTLIER = 4.0
_MEAN_OF_HALF = float(np.sqrt(2 / np.pi))
_ACCEPTED = "a hum that falls as the spool slows down by itself"


def fit(hum: Hum, inertia: Measured | None = None, *, orders: float = 1.0) -> SpinDown:
    """Read a coast-down from a falling hum.

    Parameters
    ----------
    hum : Hum
        Times [s] and tone [Hz].
    inertia : Measured or None
        Moment of inertia of all that turns [kg m^2]; None: drags per unit inertia.
    orders : float
        Waves of the tone to one turn of the spool [-], above zero.

    Returns
    -------
    SpinDown
        As from ticks [rad/s, N m or rad/s^2 and so on, s]; `residuals` are empty, because no turn is seen.

    Raises
    ------
    Unreadable
        Fewer than twelve windows, a tone that no drag explains, or that hardly falls.

    Notes
    -----
    Least squares of w(t) with constant, viscous, quadratic drag >= 0; windows off by four times the scatter
    are left out. The scatter is widened by its own correlation, since windows overlap.

    Source
    ------
    JCGM 100:2008, H.3; `mechanics.coastdown` for the law.

    Examples
    --------
    >>> t = np.arange(60) / 10
    >>> found = fit(Hum(t, (100 - 5 * t) / (2 * np.pi), 0.1))
    >>> round(found.initial_speed.value, 2), round(found.stop_time.value, 1)
    (100.0, 20.0)
    """
    speed = TURN * hum.tone / orders
    first, last, touch = _free(hum.time, speed)
    if last - first < FEWEST:
        raise Unreadable(f"the hum is heard in {last - first} windows only", "", _ACCEPTED)
    start = float(hum.time[first])
    time, seen = hum.time[first:last] - start, speed[first:last]
    found = _law(time, seen)
    _check(time, found)
    said = coast_values.values(found, inertia)
    fitted = coast_fit.speed_at(time[found.used], found.values)
    rms = float(np.sqrt(np.mean(found.residual**2))) / float(found.values[1])
    points = tuple(zip((hum.time - start).tolist(), speed.tolist(), strict=True))
    return SpinDown(
        *said.measured,
        ticks_used=int(np.count_nonzero(found.used)),
        ticks_mended=int(np.count_nonzero(~found.used)),
        relative_rms=rms,
        start=start,
        time=time[found.used],
        speed=seen[found.used],
        fitted=fitted,
        turns=np.ones(int(np.count_nonzero(found.used)), dtype=np.int64),
        residuals=np.empty(0),
        per_inertia=inertia is None,
        budget=said.budget,
        notes=_notes(found, time, orders, touch),
        cut_off=CutOff(points[:first], points[last:], float(time[-1]) if touch else None),
        heard_as="hum",
    )


def _free(time: Array, speed: Array) -> tuple[int, int, bool]:
    """From where the tone is highest to where something touches the spool."""
    padded = np.pad(speed, 2, mode="edge")
    smooth = np.median(np.lib.stride_tricks.sliding_window_view(padded, 5), axis=1)
    first = int(np.argmax(smooth))
    turned = np.concatenate(([0.0], np.cumsum(0.5 * (smooth[1:] + smooth[:-1]) * np.diff(time)))) / TURN
    touch = coast_ends.touched(time[first:], turned[first:])
    return (first, len(time), False) if touch is None else (first, first + touch.last, True)


def _law(time: Array, seen: Array) -> CoastFit:
    used = np.ones(len(time), dtype=np.bool_)
    values = np.array([0.0, float(seen[:3].mean()), 0.0, 0.0, 0.0])
    values[2] = max(float(seen[0] - seen[-1]) / float(time[-1]), 1e-6)
    for _ in range(_PASSES):
        values = _solved(time[used], seen[used], values)
        rest = seen - coast_fit.speed_at(time, values)
        spread = max(1.4826 * float(np.median(np.abs(rest[used]))), 1e-6 * float(values[1]))
        keep = np.abs(rest) < _OUTLIER * spread
        if np.array_equal(keep, used) or np.count_nonzero(keep) < FEWEST:
            break
        used = keep
    rest = (seen - coast_fit.speed_at(time, values))[used]
    covariance = _covariance(time[used], values, rest)
    slowing = float(values[1] * values[3] + values[1] ** 2 * values[4])
    hidden = max(_MEAN_OF_HALF * float(np.sqrt(covariance[2, 2])), 1e-6 * slowing)
    if values[2] < 0.05 * hidden:
        values[2] = hidden
    return CoastFit(values, covariance, used, rest)


def _solved(time: Array, seen: Array, values: Array) -> Array:
    from scipy.optimize import least_squares

    top, span = float(seen.max()), float(time[-1])
    scale = np.array([top, top / span, 1 / span, 1 / (span * top)])

    def off(x: Array) -> Array:
        return np.asarray(coast_fit.speed_at(time, np.concatenate(([0.0], x * scale))) - seen)

    start = np.maximum(values[1:] / scale, [0.1, 1e-3, 1e-3, 1e-3])
    solved = least_squares(off, start, bounds=(0.0, np.inf), x_scale=1.0)
    return np.concatenate(([0.0], solved.x * scale))


def _covariance(time: Array, values: Array, rest: Array) -> Array:
    span = max(float(time[-1]), 1e-9)
    steps = 1e-5 * np.array([values[1], values[1] / span, 1 / span, 1 / (span * values[1])])
    base = coast_fit.speed_at(time, values)
    columns = []
    for i, step in enumerate(steps, start=1):
        moved = values.copy()
        moved[i] += step
        columns.append((coast_fit.speed_at(time, moved) - base) / step)
    matrix = np.stack(columns, axis=1)
    size = np.maximum(np.linalg.norm(matrix, axis=0), 1e-300)
    inverse = np.linalg.pinv((matrix / size).T @ (matrix / size), rcond=1e-12, hermitian=True)
    variance = float(rest @ rest) / max(len(rest) - 4, 1) * scatter.correlation_samples(rest)
    whole = np.zeros((5, 5))
    whole[1:, 1:] = inverse * variance / np.outer(size, size)
    return whole


def _check(time: Array, found: CoastFit) -> None:
    rms = float(np.sqrt(np.mean(found.residual**2))) / float(found.values[1])
    if rms > WORST_FIT:
        raise Unreadable(f"no drag explains this hum: off by {rms:.0%} of the first speed", "", _ACCEPTED)
    last = float(coast_fit.speed_at(time[-1:], found.values)[0]) / float(found.values[1])
    if last > 1 - 4 * LEAST_LOSS:
        reason = f"the hum hardly falls: {last:.1%} of the first speed is left at the end"
        raise Unreadable(reason, "", _ACCEPTED)


def _notes(found: CoastFit, time: Array, orders: float, touch: bool) -> tuple[str, ...]:
    last = float(coast_fit.speed_at(time[-1:], found.values)[0]) / float(found.values[1])
    waves = "one wave" if orders == 1 else f"{orders:g} waves"
    notes = [
        f"Read from a hum, with {waves} to a turn: with another number all speeds change in proportion.",
        "In a hum no single turn is seen, so it is not looked for steps of the speed.",
    ]
    if touch:
        notes.append(f"Left out from {time[-1]:.2f} s after the start on: the spool was touched there.")
    if last > 0.25:
        notes.append(
            f"The hum ends at {last:.0%} of the first speed; the time to rest is foretold, not seen."
        )
    return tuple(notes)
