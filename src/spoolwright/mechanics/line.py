"""Line as a round rod: how thick it is from its weight, how stiff it is from its modulus."""

from __future__ import annotations

from math import pi

import numpy as np

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number

KILOGRAMS_PER_METRE_PER_TEX = 1e-6


def diameter_from_tex(tex: Number, density: Number) -> Number:
    """Diameter of a solid round line from its weight per length.

    Parameters
    ----------
    tex : Number
        Weight per length [tex = g/km], above zero.
    density : Number
        Density of the material [kg/m^3], above zero.

    Returns
    -------
    Number
        Diameter [m], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value that is not above zero and finite.

    Notes
    -----
    d = sqrt(4 m' / (pi density)). A braid is not solid: what is returned is the diameter its fibres would
    have without air, the measured one is larger by about the square root of 1 / fill.

    Source
    ------
    Definition of tex (ISO 1144); textile handbooks write 11.28 sqrt(dtex / density) micrometres
    (from memory).

    Examples
    --------
    >>> round(diameter_from_tex(81.0, 1140.0) * 1000, 3)
    0.301
    """
    arguments.positive(tex=tex, density=density)
    return arguments.plain(np.sqrt(4 * KILOGRAMS_PER_METRE_PER_TEX * tex / (pi * density)))


def stiffness(modulus: Number, diameter: Number, length: Number) -> Number:
    """Pull per stretch of a length of line.

    Parameters
    ----------
    modulus : Number
        Young's modulus of the line [Pa], above zero.
    diameter : Number
        Diameter of the line [m], above zero.
    length : Number
        Length that stretches [m], above zero.

    Returns
    -------
    Number
        Stiffness [N/m], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value that is not above zero and finite.

    Notes
    -----
    k = E pi d^2 / (4 l). Line of nylon softens when wet and stiffens when pulled fast: the modulus carries
    that, the formula does not.

    Source
    ------
    Hooke's law for a round bar, any strength of materials text (from memory).

    Examples
    --------
    >>> round(stiffness(2.0e9, 0.40e-3, 50.0), 2)
    5.03
    """
    arguments.positive(modulus=modulus, diameter=diameter, length=length)
    return modulus * pi * diameter**2 / (4 * length)
