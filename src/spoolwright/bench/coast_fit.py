"""Least squares of a coast-down with three kinds of drag, none of them negative, straight on tick times."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench import scatter
from spoolwright.mechanics import coastdown

Array = NDArray[np.float64]

TURN = 2 * np.pi

_STEPS = 40
_OUTLIER = 5.0
_NOT_STRAY = 0.1
_NAMES = ("phase", "initial_speed", "constant", "viscous", "quadratic")


@dataclass(frozen=True, eq=False)
class CoastFit:
    """Phase [rad], speed at time zero [rad/s] and drag per unit inertia, with their covariance.

    `used` marks the ticks that were kept; `residual` [rad] is turned angle less fitted angle at those.
    """

    values: Array
    covariance: Array
    used: NDArray[np.bool_]
    residual: Array

    @property
    def deviations(self) -> Array:
        return np.sqrt(np.maximum(np.diag(self.covariance), 0.0))


def angle_at(time: Array, values: Array) -> Array:
    """Turned angle at a time for fitted values.

    Parameters
    ----------
    time : array
        Times since the first tick [s], zero or more, shape (n,).
    values : array
        Phase [rad], initial speed [rad/s], constant, viscous and quadratic drag per unit inertia, shape (5,).

    Returns
    -------
    array
        Angle [rad], shape (n,).

    Source
    ------
    `mechanics.coastdown.angle` with an inertia of one.

    Examples
    --------
    >>> float(angle_at(np.array([5.0]), np.array([0.0, 100.0, 10.0, 0.0, 0.0]))[0])
    375.0
    """
    turned = coastdown.angle(time, float(values[1]), 1.0, *(float(drag) for drag in values[2:]))
    return float(values[0]) + np.asarray(turned, dtype=np.float64)


def speed_at(time: Array, values: Array) -> Array:
    """Speed at a time for fitted values.

    Parameters
    ----------
    time : array
        Times since the first tick [s], zero or more, shape (n,).
    values : array
        As for `angle_at` [rad, rad/s, and drag per unit inertia], shape (5,).

    Returns
    -------
    array
        Speed [rad/s], shape (n,).

    Source
    ------
    `mechanics.coastdown.speed` with an inertia of one.

    Examples
    --------
    >>> float(speed_at(np.array([5.0]), np.array([0.0, 100.0, 10.0, 0.0, 0.0]))[0])
    50.0
    """
    now = coastdown.speed(time, float(values[1]), 1.0, *(float(drag) for drag in values[2:]))
    return np.asarray(now, dtype=np.float64)


def fit(
    time: Array,
    turns: NDArray[np.int64] | Array,
    free: tuple[bool, bool, bool] = (True, True, True),
    least_constant: float = 0.0,
) -> CoastFit:
    """Fit speed and drag to ticks at whole turns.

    Parameters
    ----------
    time : array
        Tick times from the first tick on [s], shape (n,), n >= 8.
    turns : array
        Turn numbers [-], shape (n,); no whole numbers where marks are known to stand unevenly.
    free : tuple of bool
        Which of constant, viscous and quadratic drag may differ from zero [-].
    least_constant : float
        Lowest constant drag per unit inertia that is considered [rad/s^2], zero or more.

    Returns
    -------
    CoastFit
        Values [rad, rad/s, 1/s^2 and so on] and covariance; stray ticks left out.

    Notes
    -----
    A tick is left out where it is off from its neighbours, not where the law is off from all of them.
    Gauss-Newton; each step is a linear least squares with the bounds constant, viscous, quadratic >= 0. A
    tick scatters by a part of a turn (the mark) and by a time (the clock), so var = p^2 + (q w)^2, p and q
    from the residuals. The covariance is the one without bounds, widened by the correlation of the residuals.

    Source
    ------
    JCGM 100:2008, H.3 (least squares); Bard, Nonlinear Parameter Estimation, 5 (from memory).

    Examples
    --------
    >>> t = 20 - np.sqrt(400 - 4 * np.pi * np.arange(0, 30) / 5)
    >>> np.round(fit(t, np.arange(30)).values[1:3], 6).tolist()
    [100.0, 5.0]
    """
    angle = TURN * turns.astype(np.float64)
    used = np.ones(len(time), dtype=np.bool_)
    weight = np.ones(len(time))
    least = np.array([-np.inf, 1e-3, least_constant, 0.0, 0.0])
    values = np.maximum(_first_guess(time, angle, free), least)
    for again in range(5):
        values = _solve(time[used], angle[used], weight[used], values, least, free)
        residual = angle - angle_at(time, values)
        weight = 1.0 / _spread(residual, used, speed_at(time, values))
        keep = ~_stray(time, values, weight, residual, used)
        if again >= 2 and np.array_equal(keep, used):
            break
        used = keep if np.count_nonzero(keep) >= 8 else used
    residual = (angle - angle_at(time, values))[used]
    return CoastFit(values, _covariance(time[used], weight[used], values, residual), used, residual)


def _stray(
    time: Array, values: Array, weight: Array, residual: Array, used: NDArray[np.bool_]
) -> NDArray[np.bool_]:
    """Ticks far from their neighbours; one that draws the fit to itself is judged as if it were left out."""
    lonely = residual - neighbourhood(residual)
    columns = weight[:, None] * jacobian(time, values)
    columns = columns / np.maximum(np.linalg.norm(columns[used], axis=0), 1e-300)
    inverse = np.linalg.pinv(columns[used].T @ columns[used], rcond=1e-14, hermitian=True)
    apart = np.clip(1.0 - np.einsum("ij,jk,ik->i", columns, inverse, columns), 0.05, 1.0)
    limit = _OUTLIER * _spread(lonely, used, speed_at(time, values)) / np.sqrt(apart)
    far: NDArray[np.bool_] = np.abs(lonely) / apart > np.maximum(limit, _NOT_STRAY)
    return far


def neighbourhood(residual: Array) -> Array:
    """Median of the nine values around each: what the law misses goes along with them, a stray tick does not.

    Parameters
    ----------
    residual : array
        One value a tick [any unit], shape (n,), n >= 5.

    Returns
    -------
    array
        Medians [unit of the values], shape (n,).

    Source
    ------
    Running median, Tukey, Exploratory Data Analysis, 7 (from memory).

    Examples
    --------
    >>> neighbourhood(np.array([0.0, 0.0, 9.0, 0.0, 0.0, 0.0])).tolist()
    [0.0, 0.0, 0.0, 0.0, 0.0, 0.0]
    """
    padded = np.pad(residual, 4, mode="reflect")
    around: Array = np.median(np.lib.stride_tricks.sliding_window_view(padded, 9), axis=1)
    return around


def _first_guess(time: Array, angle: Array, free: tuple[bool, bool, bool]) -> Array:
    """w = w0 - a t - b angle - c (integral of w^2) is linear in all four; w comes from the intervals."""
    middle = 0.5 * (time[1:] + time[:-1])
    speed = np.diff(angle) / np.maximum(np.diff(time), 1e-9)
    turned = 0.5 * (angle[1:] + angle[:-1])
    squared = np.concatenate(([0.0], np.cumsum(0.5 * np.diff(middle) * (speed[1:] ** 2 + speed[:-1] ** 2))))
    columns = np.stack([np.ones_like(middle), -middle, -turned, -squared], axis=1)
    found = _bounded(columns, speed, np.array([0.0, 0.0, 0.0, 0.0]), (True, *free))
    return np.array([0.0, max(found[0], 1e-3), *np.maximum(found[1:], 0.0)])


def _bounded(columns: Array, wanted: Array, lowest: Array, free: tuple[bool, ...]) -> Array:
    """Linear least squares with lower bounds; a column that is not free stays at its bound."""
    from scipy.optimize import lsq_linear

    chosen = np.array(free)
    scale = np.maximum(np.linalg.norm(columns, axis=0), 1e-300)
    low = (lowest * scale)[chosen]
    solved = lsq_linear((columns / scale)[:, chosen], wanted, bounds=(low, np.inf), method="bvls")
    out = np.where(np.isfinite(lowest), lowest, 0.0)
    out[chosen] = solved.x / scale[chosen]
    return out


def jacobian(time: Array, values: Array) -> Array:
    """Change of the angle with each value, by small steps away from the bounds.

    Parameters
    ----------
    time : array
        Times since the first tick [s], zero or more, shape (n,).
    values : array
        As for `angle_at` [rad, rad/s, and drag per unit inertia], shape (5,).

    Returns
    -------
    array
        Change of the angle per change of each value [rad over the unit of the value], shape (n, 5).

    Source
    ------
    Forward differences.

    Examples
    --------
    >>> np.round(jacobian(np.array([5.0]), np.array([0.0, 100.0, 10.0, 0.0, 0.0]))[0, :3], 2).tolist()
    [1.0, 5.0, -12.5]
    """
    base = angle_at(time, values)
    span = max(float(time[-1]), 1e-9)
    steps = 1e-6 * np.array([1.0, values[1], values[1] / span, 1.0 / span, 1.0 / (span * values[1])])
    columns = [np.ones_like(time)]
    for i in range(1, 5):
        moved = values.copy()
        moved[i] += steps[i]
        columns.append((angle_at(time, moved) - base) / steps[i])
    return np.stack(columns, axis=1)


def _solve(
    time: Array, angle: Array, weight: Array, values: Array, least: Array, free: tuple[bool, bool, bool]
) -> Array:
    best = _cost(time, angle, weight, values)
    for _ in range(_STEPS):
        wanted = weight * (angle - angle_at(time, values))
        columns = weight[:, None] * jacobian(time, values)
        step = _bounded(columns, wanted, least - values, (True, True, *free))
        values, cost = _halved(time, angle, weight, values, least, step, best)
        done = best - cost <= 1e-10 * best
        best = cost
        if done:
            break
    return values


def _halved(
    time: Array, angle: Array, weight: Array, values: Array, least: Array, step: Array, best: float
) -> tuple[Array, float]:
    """Take the step, or half of it and so on, until the fit is no worse."""
    for _ in range(12):
        tried = np.maximum(values + step, least)
        cost = _cost(time, angle, weight, tried)
        if cost <= best:
            return tried, cost
        step = step / 2
    return values, best


def _cost(time: Array, angle: Array, weight: Array, values: Array) -> float:
    return float(np.sum((weight * (angle - angle_at(time, values))) ** 2))


def _spread(residual: Array, used: NDArray[np.bool_], speed: Array) -> Array:
    """Standard deviation of each tick's angle: p^2 + (q w)^2 through the squares of the residuals."""
    seen = residual[used]
    robust = max(1.4826 * float(np.median(np.abs(seen - np.median(seen)))), 1e-9)
    calm = np.abs(seen) < _OUTLIER * robust
    squares, w = seen[calm] ** 2, speed[used][calm]
    if len(squares) < 20:
        return np.full(len(residual), max(float(np.sqrt(np.mean(squares))), robust))
    columns = np.stack([np.ones_like(w), w**2], axis=1)
    fixed, moving = _bounded(columns, squares, np.zeros(2), (True, True))
    least = (0.3 * robust) ** 2
    spread: Array = np.sqrt(np.maximum(fixed + moving * speed**2, least))
    return spread


def _covariance(time: Array, weight: Array, values: Array, residual: Array) -> Array:
    columns = weight[:, None] * jacobian(time, values)
    scale = np.maximum(np.linalg.norm(columns, axis=0), 1e-300)
    inverse = np.linalg.pinv((columns / scale).T @ (columns / scale), rcond=1e-14, hermitian=True)
    unit = weight * residual
    variance = float(np.sum(unit**2)) / max(len(time) - len(_NAMES), 1)
    together = scatter.correlation_samples(unit)
    answer: Array = inverse * variance * together * _few(len(time) - len(_NAMES)) / np.outer(scale, scale)
    return answer


def _few(freedom: int) -> float:
    """What a variance from few ticks has to grow by so that k = 2 still covers 95 %: (Student's t / 2)^2.

    Abramowitz and Stegun, 26.7.5, at z = 2 (from memory).
    """
    v = max(freedom, 1)
    return (1 + 1.25 / v + 1.53 / v**2 + 1.43 / v**3) ** 2
