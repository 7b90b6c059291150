"""What every way of finding a moment of inertia gives: a value, its budget, and what is to be said of it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from spoolwright.bench.budget import Contribution
from spoolwright.bench.propagation import Known
from spoolwright.bench.uncertainty import Measured

RESULT = "spool_inertia"
"""The reading kind of the result, and the name of its rows."""

FRICTION = "spool_friction"
"""The name of the rows of the friction torque, where a method separates it."""

GRAVITY = Known("gravity at the bench", Measured(9.80665, 0.015, "acceleration"))
"""Standard gravity, and how far a bench between equator and pole may be from it: 9.780 to 9.832 m/s^2 at sea
level (from memory, World Geodetic System), as a rectangle."""

LOOSE = 0.15
"""Relative standard uncertainty above which first order is only a rough guess: common practice, no source."""


@dataclass(frozen=True)
class InertiaReading:
    """A moment of inertia by one method; `friction` only where the method separates it."""

    inertia: Measured
    inputs: Mapping[str, Known]
    budget: tuple[Contribution, ...]
    friction: Measured | None = None
    notes: tuple[str, ...] = field(default=())


def loose(inertia: Measured) -> tuple[str, ...]:
    """What is said of a result that is not known well.

    Parameters
    ----------
    inertia : Measured
        The result [kg m^2].

    Returns
    -------
    tuple of str
        One sentence, or none.

    Source
    ------
    Limit: common practice, no source; JCGM 101:2008, 5.8 says that first order fails where it curves.

    Examples
    --------
    >>> loose(Measured(1.0, 0.01, "inertia"))
    ()
    >>> len(loose(Measured(1.0, 0.3, "inertia")))
    1
    """
    if inertia.uncertainty <= LOOSE * abs(inertia.value):
        return ()
    return (
        "The uncertainty is large beside the value, so it is itself only a rough guess: take more tries, or "
        "weights or rings that differ more.",
    )
