"""A fitted coast-down as measured values: speed, three drags, time to rest, what makes them unsure."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench import budget
from spoolwright.bench.budget import Contribution
from spoolwright.bench.coast_fit import CoastFit
from spoolwright.bench.uncertainty import Measured
from spoolwright.mechanics import coastdown

Array = NDArray[np.float64]

_TORQUES = ("torque", "viscous_drag", "quadratic_drag")
_PER_INERTIA = ("deceleration", "frequency", "ratio")
_DRAGS = ("constant", "viscous", "quadratic")


@dataclass(frozen=True)
class CoastValues:
    """First speed, constant, viscous and quadratic drag, time to rest; and the rows behind them."""

    measured: tuple[Measured, Measured, Measured, Measured, Measured]
    budget: tuple[Contribution, ...]


def values(found: CoastFit, inertia: Measured | None) -> CoastValues:
    """The values of a coast-down with their standard uncertainties.

    Parameters
    ----------
    found : CoastFit
        The fitted law [rad/s, drag per unit inertia], its constant drag above zero.
    inertia : Measured or None
        Moment of inertia of all that turns [kg m^2]; None: drags stay per unit inertia.

    Returns
    -------
    CoastValues
        Values [rad/s, N m or rad/s^2 and so on, s].

    Notes
    -----
    Time to rest: uncertainty from the covariance, first order.

    Source
    ------
    JCGM 100:2008, 5.2.2 (correlated inputs).

    Examples
    --------
    >>> law = np.array([0.0, 100.0, 5.0, 0.0, 0.0])
    >>> found = CoastFit(law, 1e-6 * np.eye(5), np.ones(0, dtype=bool), np.zeros(0))
    >>> round(values(found, None).measured[4].value, 6)
    20.0
    """
    rows = tuple(_rows(found, inertia))
    scale, names = (1.0, _PER_INERTIA) if inertia is None else (inertia.value, _TORQUES)
    constant, viscous, quadratic = (
        budget.measured(float(value) * scale, dimension, [row for row in rows if row.result == key])
        for key, value, dimension in zip(_DRAGS, found.values[2:], names, strict=True)
    )
    speed = Measured(float(found.values[1]), float(found.deviations[1]), "rotation")
    return CoastValues((speed, constant, viscous, quadratic, _stop_time(found)), rows)


def _rows(found: CoastFit, inertia: Measured | None) -> Iterable[Contribution]:
    yield Contribution("initial_speed", "scatter of the ticks", "A", float(found.deviations[1]))
    scale = 1.0 if inertia is None else inertia.value
    for key, value, spread in zip(_DRAGS, found.values[2:], found.deviations[2:], strict=True):
        yield Contribution(key, "scatter of the ticks", "A", scale * float(spread))
        if inertia is not None:
            yield Contribution(key, "inertia", "B", float(value) * inertia.uncertainty)


def _stop_time(found: CoastFit) -> Measured:
    """Time to rest, with the slope in each direction of the covariance taken over a small step."""
    stop = _rest(found.values)
    slopes = np.zeros(5)
    for i in range(1, 5):
        step = max(
            1e-3 * float(found.values[i]), 1e-3 * min(float(found.deviations[i]), _least_step(found, i))
        )
        moved = found.values.copy()
        moved[i] += step
        slopes[i] = (_rest(moved) - stop) / step
    variance = float(slopes @ found.covariance @ slopes)
    return Measured(stop, float(np.sqrt(max(variance, 0.0))), "time")


def _least_step(found: CoastFit, i: int) -> float:
    """A drag of zero is moved by a thousandth of what would matter beside the constant drag."""
    speed = float(found.values[1])
    return float(found.values[2]) / speed ** max(i - 2, 0)


def _rest(values: Array) -> float:
    return float(coastdown.stop_time(float(values[1]), 1.0, *(float(drag) for drag in values[2:])))
