"""A handle under the hand: its arm, the stud of its knob, the shaft that it turns."""

from __future__ import annotations

from math import pi

import numpy as np

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number


def arm_stress(force: Number, length: Number, width: Number, thickness: Number) -> Number:
    """Bending stress where a flat arm of a handle leaves its boss.

    Parameters
    ----------
    force : Number
        Force of the hand, square to the arm and in the plane in which it turns [N], zero or more.
    length : Number
        From the knob to that place [m], zero or more.
    width : Number
        Width of the arm in the plane in which it turns [m], above zero.
    thickness : Number
        Its thickness along the shaft [m], above zero.

    Returns
    -------
    Number
        Bending stress [Pa], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    6 F l / (thickness width^2). The knob stands off the arm and twists it as well, which adds a few per cent
    to a flat arm; a cranked arm has its corner in the worst place.

    Source
    ------
    Bending of a rectangular bar, any strength of materials text (from memory).

    Examples
    --------
    >>> round(arm_stress(60.0, 0.035, 9e-3, 3e-3) / 1e6, 1)
    51.9
    """
    arguments.not_negative(force=force, length=length)
    arguments.positive(width=width, thickness=thickness)
    return 6 * force * length / (thickness * width**2)


def shaft_stress(bending_moment: Number, torque: Number, diameter: Number) -> Number:
    """Stress of a round shaft that is bent and twisted at once, to be held against the yield strength.

    Parameters
    ----------
    bending_moment : Number
        Bending moment [N m], any sign.
    torque : Number
        Torque [N m], any sign.
    diameter : Number
        Diameter, across the flats where it has some [m], above zero.

    Returns
    -------
    Number
        Equivalent stress [Pa], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    sqrt(s^2 + 3 t^2), s = 32 M / (pi d^3), t = 16 T / (pi d^3): the distortion energy rule for ductile metal.
    A shaft yields through only at 1.7 times that in bending and 1.33 times in torsion.

    Source
    ------
    Von Mises; Shigley's Mechanical Engineering Design, eqs 5-14 and 5-15 (from memory).

    Examples
    --------
    >>> round(shaft_stress(1.0, 2.0, 6e-3) / 1e6, 1)
    94.3
    """
    arguments.finite(bending_moment=bending_moment, torque=torque)
    arguments.positive(diameter=diameter)
    bent, twisted = 32 * bending_moment / (pi * diameter**3), 16 * torque / (pi * diameter**3)
    return arguments.plain(np.sqrt(bent**2 + 3 * twisted**2))


def stud_stress(force: Number, overhang: Number, diameter: Number) -> Number:
    """Bending stress where a knob's stud stands in the arm.

    Parameters
    ----------
    force : Number
        Force of the hand on the knob [N], zero or more.
    overhang : Number
        From the middle of the knob to the arm [m], zero or more.
    diameter : Number
        Diameter of the stud, of its thread's core where it is screwed in [m], above zero.

    Returns
    -------
    Number
        Bending stress [Pa], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    32 F e / (pi d^3). A riveted stud works loose in its hole before this is reached.

    Source
    ------
    Bending of a round bar, any strength of materials text (from memory).

    Examples
    --------
    >>> round(stud_stress(60.0, 0.015, 4e-3) / 1e6)
    143
    """
    arguments.not_negative(force=force, overhang=overhang)
    arguments.positive(diameter=diameter)
    return 32 * force * overhang / (pi * diameter**3)
