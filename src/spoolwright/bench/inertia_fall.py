"""Moment of inertia from a weight that falls on a thread: two weights part inertia from friction."""

from __future__ import annotations

from collections.abc import Mapping

from spoolwright.bench.inertia_reading import FRICTION, GRAVITY, RESULT, InertiaReading, loose
from spoolwright.bench.propagation import Known, propagate
from spoolwright.bench.unreadable import Unreadable

_CLEAR = 2.0
"""Standard uncertainties below zero from which a friction cannot be nothing: k = 2, as everywhere."""


def read(
    inputs: Mapping[str, Known], together: Mapping[tuple[str, str], float] | None = None
) -> InertiaReading:
    """The inertia of a spool, and the torque that holds it, from the falls of two weights.

    Parameters
    ----------
    inputs : mapping of str to Known
        `mass_1`, `mass_2` [kg], `time_1`, `time_2` [s] from rest over the same `height` [m], `radius` [m]
        from the axis to the middle of the thread; `gravity` [m/s^2] if it is known better than by default.
    together : mapping of pairs of names to float or None
        Correlation of two inputs [-], such as that of two masses from one scale.

    Returns
    -------
    InertiaReading
        Inertia [kg m^2] and friction torque [N m] with standard uncertainties.

    Raises
    ------
    Unreadable
        A fall as fast as a free one, a heavier weight that falls no faster, friction clearly below zero.

    Notes
    -----
    a = 2 h / t^2 and J a / r + M = m (g - a) r for each of the two weights, so
    J = r^2 [m2 (g - a2) - m1 (g - a1)] / (a2 - a1) and M = m1 (g - a1) r - J a1 / r.
    The torque M is taken as constant; what grows with speed goes into J, so the falls should be slow. The
    thread's own mass is left out: it should be thin, wound in one layer.

    Source
    ------
    Newton's second law for weight and spool, any dynamics text; budget by JCGM 100:2008, 5.1.2.

    Examples
    --------
    >>> from spoolwright.bench.typed_quantity import read as typed
    >>> given = {"mass_1": ("2.00 g", "mass"), "mass_2": ("5.00 g", "mass"), "time_1": ("1.589 s", "time")}
    >>> given |= {"time_2": ("1.016 s", "time"), "height": ("0.800 m", "length")}
    >>> given |= {"radius": ("20.0 mm", "length")}
    >>> found = read({name: typed(name, text, kind) for name, (text, kind) in given.items()})
    >>> 0.9e-5 < found.inertia.value < 1.1e-5, 0 < found.friction.value < 3e-4
    (True, True)
    """
    known = {"gravity": GRAVITY, **inputs}
    at = {name: one.measured.value for name, one in known.items()}
    _check(at)
    inertia, rows = propagate(RESULT, "inertia", _inertia, known, together)
    friction, friction_rows = propagate(FRICTION, "torque", _friction, known, together)
    _check_result(inertia.value, friction.value, friction.uncertainty)
    notes = (*_held(friction.value, at), *loose(inertia))
    return InertiaReading(inertia, known, (*rows, *friction_rows), friction, notes)


def _accelerations(at: Mapping[str, float]) -> tuple[float, float]:
    return 2 * at["height"] / at["time_1"] ** 2, 2 * at["height"] / at["time_2"] ** 2


def _inertia(at: Mapping[str, float]) -> float:
    first, second = _accelerations(at)
    drive = at["mass_2"] * (at["gravity"] - second) - at["mass_1"] * (at["gravity"] - first)
    return at["radius"] ** 2 * drive / (second - first)


def _friction(at: Mapping[str, float]) -> float:
    first, _ = _accelerations(at)
    return at["mass_1"] * (at["gravity"] - first) * at["radius"] - _inertia(at) * first / at["radius"]


def _check(at: Mapping[str, float]) -> None:
    first, second = _accelerations(at)
    if max(first, second) >= at["gravity"]:
        reason = "a weight fell as fast as a free one, so the thread did not drive the spool"
        raise Unreadable(reason, "The falls", "longer times, or a smaller height")
    if (second - first) * (at["mass_2"] - at["mass_1"]) <= 0:
        reason = "the heavier weight did not fall faster than the lighter one"
        raise Unreadable(reason, "The falls", "two weights that differ, the heavier with the shorter time")


def _check_result(inertia: float, friction: float, spread: float) -> None:
    if inertia <= 0:
        raise Unreadable(
            "these falls would mean an inertia below zero", "The falls", "times and masses in pairs"
        )
    if friction < -_CLEAR * spread:
        reason = "these falls would mean a friction that drives the spool"
        raise Unreadable(reason, "The falls", "the same height, radius and start for both weights")


def _held(friction: float, at: Mapping[str, float]) -> tuple[str, ...]:
    """What the spool's own friction takes off the lighter weight's pull."""
    share = max(friction, 0.0) / (at["mass_1"] * at["gravity"] * at["radius"])
    return (f"Friction takes {share:.0%} of the lighter weight's pull; both falls together part it off.",)
