"""Moment of inertia from a spool that swings: on a pin beside its axis, on two threads, or on a spring."""

from __future__ import annotations

from collections.abc import Mapping
from math import pi, sin

from spoolwright.bench.inertia_reading import GRAVITY, RESULT, InertiaReading, loose
from spoolwright.bench.propagation import Known, propagate
from spoolwright.bench.unreadable import Unreadable

PIN, THREADS, SPRING = "pin", "threads", "spring"
METHODS = (PIN, THREADS, SPRING)
"""Ids of `sheets.inertia_methods`."""

WIDEST = 0.6
"""Amplitude [rad] up to which the correction is trusted to a thousandth."""


def widened(amplitude: float) -> float:
    """How much longer a swing takes than an endlessly small one.

    Parameters
    ----------
    amplitude : float
        Greatest angle from rest [rad], 0 to 0.6.

    Returns
    -------
    float
        Period over the period of a very small swing [-].

    Notes
    -----
    1 + s^2/4 + 9 s^4/64 with s = sin(amplitude / 2), the first terms of the elliptic integral.

    Source
    ------
    Abramowitz and Stegun, 17.3.11; Landau and Lifshitz, Mechanics, 11, problem 1 (both from memory).

    Examples
    --------
    >>> round(widened(0.2), 6)
    1.002506
    """
    square = sin(amplitude / 2) ** 2
    return 1 + square / 4 + 9 * square**2 / 64


def read(
    method: str, inputs: Mapping[str, Known], together: Mapping[tuple[str, str], float] | None = None
) -> InertiaReading:
    """The inertia of a spool from the time of its swing.

    Parameters
    ----------
    method : str
        PIN, THREADS or SPRING [-].
    inputs : mapping of str to Known
        `period` [s]; for PIN `mass` [kg], `distance` from the pin to the axis [m], `amplitude` [rad]; for
        THREADS `mass` [kg], `spacing` of the two threads and their `length` [m], `amplitude` [rad]; for
        SPRING its `stiffness` in twist [N m/rad], and `decay` of the swing [1/s] if it is known.
    together : mapping of pairs of names to float or None
        Correlation of two inputs [-].

    Returns
    -------
    InertiaReading
        Inertia about the spool's own axis [kg m^2] with its standard uncertainty.

    Raises
    ------
    Unreadable
        An amplitude too wide, or a swing faster than the spool's mass alone would have.
    ValueError
        A method that is none of the three.

    Notes
    -----
    T0 = T / (1 + ...): the swing reduced to a very small one. PIN: J = m g d T0^2 / (4 pi^2) - m d^2; the
    axis has to lie level and the mass on it. THREADS: J = m g b^2 T0^2 / (4 pi^2 L) with b half the
    spacing; the axis upright in the middle between two parallel threads. SPRING:
    J = k / ((2 pi / T)^2 + decay^2).

    Source
    ------
    Physical, bifilar and torsion pendulum, any dynamics text; budget by JCGM 100:2008, 5.1.2.

    Examples
    --------
    >>> from spoolwright.bench.typed_quantity import read as typed
    >>> given = {"mass": ("30.0 g", "mass"), "spacing": ("40.0 mm", "length"), "length": ("500 mm", "length")}
    >>> given |= {"period": ("1.304 s", "time"), "amplitude": ("10 deg", "angle")}
    >>> found = read(THREADS, {name: typed(name, text, kind) for name, (text, kind) in given.items()})
    >>> round(found.inertia.value * 1e5, 2)
    1.01
    """
    if method not in METHODS:
        raise ValueError(f"method is {method!r}; accepted: {', '.join(METHODS)}")
    known = inputs if method == SPRING else {"gravity": GRAVITY, **inputs}
    at = {name: one.measured.value for name, one in known.items()}
    if at.get("amplitude", 0.0) > WIDEST:
        accepted = "small swings, up to 34 degrees from rest; 5 to 10 are better"
        raise Unreadable("the swing is too wide", "The amplitude", accepted)
    inertia, rows = propagate(RESULT, "inertia", _FORMULAS[method], known, together)
    if inertia.value <= 0:
        reason = "the swing is faster than the spool's mass alone, all of it on the axis, would swing"
        raise Unreadable(reason, "The pendulum", "mass, distance and period of the same swing")
    notes = (*(_on_pin(at, inertia.value) if method == PIN else ()), *loose(inertia))
    return InertiaReading(inertia, known, rows, None, notes)


def _small(at: Mapping[str, float]) -> float:
    """Square of the swing's period over 2 pi, reduced to a very small swing."""
    return (at["period"] / widened(at["amplitude"]) / (2 * pi)) ** 2


def _pin(at: Mapping[str, float]) -> float:
    return at["mass"] * at["distance"] * (at["gravity"] * _small(at) - at["distance"])


def _threads(at: Mapping[str, float]) -> float:
    return at["mass"] * at["gravity"] * (at["spacing"] / 2) ** 2 / at["length"] * _small(at)


def _spring(at: Mapping[str, float]) -> float:
    return at["stiffness"] / ((2 * pi / at["period"]) ** 2 + at.get("decay", 0.0) ** 2)


def _on_pin(at: Mapping[str, float], inertia: float) -> tuple[str, ...]:
    share = inertia / (inertia + at["mass"] * at["distance"] ** 2)
    return (
        f"Of what swings about the pin {share:.0%} is the spool's own inertia; the rest is its mass at that "
        "distance, so the distance counts twice.",
    )


_FORMULAS = {PIN: _pin, THREADS: _threads, SPRING: _spring}
