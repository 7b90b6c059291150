"""Moment of inertia from a spool's sizes and its mass: drawn as a tube between two discs."""

from __future__ import annotations

from collections.abc import Mapping

from spoolwright.bench.inertia_reading import RESULT, InertiaReading, loose
from spoolwright.bench.propagation import Known, propagate
from spoolwright.bench.uncertainty import Measured
from spoolwright.bench.unreadable import Unreadable
from spoolwright.mechanics import spool

LIKENESS = Known("a tube between two discs is not the spool itself", Measured(1.0, 0.05, "ratio"))
"""How far the drawing may be off for holes, rims and a bore of its own: judgement prior."""

_DENSITY = 2700.0
"""Any one [kg/m^3]: it drops out."""


def read(inputs: Mapping[str, Known]) -> InertiaReading:
    """The inertia of a bare spool from caliper and scale.

    Parameters
    ----------
    inputs : mapping of str to Known
        `mass` [kg], `arbor` and `flange` diameter, `width` between the flanges, `wall` thickness [m];
        `likeness` of the drawing to the spool [-] if it is known better than by default.

    Returns
    -------
    InertiaReading
        Inertia [kg m^2] with its standard uncertainty.

    Raises
    ------
    Unreadable
        Sizes that make no spool: a wall thicker than the arbor, flanges smaller than it.

    Notes
    -----
    J = m J1 / m1 with J1 and m1 those of the drawing in any one material: the density drops out.

    Source
    ------
    `mechanics.spool`; budget by JCGM 100:2008, 5.1.2.

    Examples
    --------
    >>> from spoolwright.bench.typed_quantity import read as typed
    >>> given = {"mass": ("18.0 g", "mass"), "arbor": ("25.0 mm", "length"), "flange": ("49.0 mm", "length")}
    >>> given |= {"width": ("24.5 mm", "length"), "wall": ("1.2 mm", "length")}
    >>> found = read({name: typed(name, text, kind) for name, (text, kind) in given.items()})
    >>> 4e-6 < found.inertia.value < 5e-6, 0.04 < found.inertia.uncertainty / found.inertia.value < 0.06
    (True, True)
    """
    known = {"likeness": LIKENESS, **inputs}
    at = {name: one.measured.value for name, one in known.items()}
    if not 2 * at["wall"] < at["arbor"] < at["flange"]:
        accepted = "a wall thinner than half the arbor, flanges larger than the arbor"
        raise Unreadable("these sizes make no spool", "The sizes", accepted)
    inertia, rows = propagate(RESULT, "inertia", _inertia, known)
    return InertiaReading(inertia, known, rows, None, loose(inertia))


def _inertia(at: Mapping[str, float]) -> float:
    sizes = (at["arbor"] / 2, at["flange"] / 2, at["width"], at["wall"], _DENSITY)
    per_mass = spool.spool_inertia(*sizes) / spool.spool_mass(*sizes)
    return float(at["likeness"] * at["mass"] * per_mass)
