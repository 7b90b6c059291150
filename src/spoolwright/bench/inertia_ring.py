"""Moment of inertia from a ring of known inertia: the same movement with it and without it."""

from __future__ import annotations

from collections.abc import Mapping

from spoolwright.bench.inertia_reading import RESULT, InertiaReading, loose
from spoolwright.bench.propagation import Known, propagate
from spoolwright.bench.unreadable import Unreadable

FALLS, SWINGS, COASTS = "ring-fall", "ring-swing", "ring-coast"
METHODS = (FALLS, SWINGS, COASTS)
"""Ids of `sheets.inertia_methods`."""


def ring_inertia(at: Mapping[str, float]) -> float:
    """Moment of inertia of a plain ring about its own axis.

    Parameters
    ----------
    at : mapping of str to float
        `ring_mass` [kg], `ring_outer` and `ring_inner` diameter [m], the inner one smaller.

    Returns
    -------
    float
        Inertia [kg m^2].

    Notes
    -----
    m (D^2 + d^2) / 8.

    Source
    ------
    Polar moment of a tube, any dynamics text.

    Examples
    --------
    >>> round(ring_inertia({"ring_mass": 0.012, "ring_outer": 0.04, "ring_inner": 0.03}) * 1e6, 3)
    3.75
    """
    return at["ring_mass"] * (at["ring_outer"] ** 2 + at["ring_inner"] ** 2) / 8


def read(
    method: str, inputs: Mapping[str, Known], together: Mapping[tuple[str, str], float] | None = None
) -> InertiaReading:
    """The inertia of a spool from how much longer everything takes with a ring on it.

    Parameters
    ----------
    method : str
        FALLS, SWINGS or COASTS [-].
    inputs : mapping of str to Known
        `ring_mass` [kg], `ring_outer`, `ring_inner` [m], `time_bare`, `time_ring` [s]; for FALLS also `mass`
        [kg] of the weight and `radius` [m] to the middle of the thread.
    together : mapping of pairs of names to float or None
        Correlation of two inputs [-], such as that of two times by one hand.

    Returns
    -------
    InertiaReading
        Inertia of the spool without the ring [kg m^2] with its standard uncertainty.

    Raises
    ------
    Unreadable
        A ring whose inner side is the larger, or a movement that took no longer with it.
    ValueError
        A method that is none of the three.

    Notes
    -----
    FALLS, the same weight over the same height: t^2 goes with J + m r^2, whatever a constant friction takes,
    so J = Jr t0^2 / (t1^2 - t0^2) - m r^2. SWINGS, so many swings on the same spring, threads or wire: t^2
    goes with J, so J = Jr t0^2 / (t1^2 - t0^2). COASTS, from one speed down to another, both the same with
    and without: the time goes with J whatever the law of the drag, so J = Jr t0 / (t1 - t0).
    All three hold only as far as the ring's weight does not change the friction: it should be light, and run
    true about the axis. For air the ring should lie flat on the spool.

    Source
    ------
    Newton's second law, any dynamics text; budget by JCGM 100:2008, 5.1.2.

    Examples
    --------
    >>> from spoolwright.bench.typed_quantity import read as typed
    >>> given = {"ring_mass": ("12.0 g", "mass"), "ring_outer": ("40.0 mm", "length")}
    >>> given |= {"ring_inner": ("30.0 mm", "length"), "time_bare": ("10.0 s", "time")}
    >>> given |= {"time_ring": ("13.8 s", "time")}
    >>> found = read(COASTS, {name: typed(name, text, kind) for name, (text, kind) in given.items()})
    >>> round(found.inertia.value * 1e6, 2)
    9.87
    """
    if method not in METHODS:
        raise ValueError(f"method is {method!r}; accepted: {', '.join(METHODS)}")
    at = {name: one.measured.value for name, one in inputs.items()}
    _check(at)
    inertia, rows = propagate(RESULT, "inertia", _FORMULAS[method], inputs, together)
    if inertia.value <= 0:
        accepted = "the weight and the radius of the falls that were timed"
        raise Unreadable("these falls would mean an inertia below zero", "The falls", accepted)
    share = ring_inertia(at) / inertia.value
    notes = (f"The ring has {share:.0%} of the spool's inertia; near 100 % the result is best known.",)
    return InertiaReading(inertia, inputs, rows, None, (*notes, *loose(inertia)))


def _check(at: Mapping[str, float]) -> None:
    if at["ring_inner"] >= at["ring_outer"]:
        accepted = "an inner diameter smaller than the outer one"
        raise Unreadable("the ring's inner side is as large as its outer side", "The ring", accepted)
    if at["time_ring"] <= at["time_bare"]:
        reason = "with the ring it took no longer than without"
        raise Unreadable(reason, "The times", "a longer time with the ring, or a heavier ring")


def _squares(at: Mapping[str, float]) -> float:
    return ring_inertia(at) * at["time_bare"] ** 2 / (at["time_ring"] ** 2 - at["time_bare"] ** 2)


def _falls(at: Mapping[str, float]) -> float:
    return _squares(at) - at["mass"] * at["radius"] ** 2


def _coasts(at: Mapping[str, float]) -> float:
    return ring_inertia(at) * at["time_bare"] / (at["time_ring"] - at["time_bare"])


_FORMULAS = {FALLS: _falls, SWINGS: _squares, COASTS: _coasts}
