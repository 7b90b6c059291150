"""Wear of faces that slide."""

from __future__ import annotations

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number


def archard_depth(wear_rate: Number, pressure: Number, sliding_distance: Number) -> Number:
    """Depth worn off a face that slides under a steady pressure.

    Parameters
    ----------
    wear_rate : Number
        Volume worn for each load and distance [m^2/N = m^3/(N m)], zero or more; 1 mm^3/(N m) is 1e-9.
    pressure : Number
        Pressure on the face [Pa], zero or more.
    sliding_distance : Number
        Distance slid [m], zero or more.

    Returns
    -------
    Number
        Depth [m], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value that is negative or not finite.

    Notes
    -----
    h = k p s. Rates are known to a factor of ten at best and change by more where grease fails or grit
    comes in: a depth from this is an order of magnitude until the shop has measured its own.

    Source
    ------
    J. F. Archard, J. Appl. Phys. 24 (1953) 981 (from memory).

    Examples
    --------
    >>> round(archard_depth(1e-16, 5e6, 1e4) * 1e6, 6)
    5.0
    """
    arguments.not_negative(wear_rate=wear_rate, pressure=pressure, sliding_distance=sliding_distance)
    return wear_rate * pressure * sliding_distance
