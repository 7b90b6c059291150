"""Line as a round rod: how thick it is from its weight, how stiff from its modulus, when it breaks."""

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


def break_load(strength: Number, diameter: Number) -> Number:
    """Pull at which a line breaks away from any knot.

    Parameters
    ----------
    strength : Number
        Tensile strength over the round that a caliper reads [Pa], zero or more.
    diameter : Number
        That diameter [m], above zero.

    Returns
    -------
    Number
        Breaking pull [N], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    strength pi d^2 / 4. Diameters on spools are often nominal, strengths too: a pull to the break on a
    gauge is worth more. Wet nylon keeps about nine tenths.

    Source
    ------
    Definition of stress; strengths in sheets.lines with their marks.

    Examples
    --------
    >>> round(break_load(700e6, 0.40e-3), 1)
    88.0
    """
    arguments.not_negative(strength=strength)
    arguments.positive(diameter=diameter)
    return strength * pi * diameter**2 / 4


def strength_from_tenacity(tenacity: Number, density: Number) -> Number:
    """Strength or modulus as a stress from what fibre tables give for the weight of a length.

    Parameters
    ----------
    tenacity : Number
        Force for each weight of a length [N/tex], zero or more; 1 cN/dtex is 0.1 N/tex.
    density : Number
        Density of the fibre [kg/m^3], above zero.

    Returns
    -------
    Number
        Stress on the solid fibre [Pa], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    One newton a tex on one kilogram a cubic metre is a million pascal.

    Source
    ------
    Definition of tex (ISO 1144).

    Examples
    --------
    >>> round(strength_from_tenacity(0.66, 1140.0) / 1e6)
    752
    """
    arguments.not_negative(tenacity=tenacity)
    arguments.positive(density=density)
    return tenacity * density / KILOGRAMS_PER_METRE_PER_TEX


def with_knots(break_load: Number, kept: Number) -> Number:
    """Pull at which a line with knots in it breaks: the weakest of them decides.

    Parameters
    ----------
    break_load : Number
        Breaking pull of the line alone [N], zero or more, shape (...,).
    kept : Number
        Share of it that each knot keeps, along the last axis [-], zero to 1; one may be a plain number.

    Returns
    -------
    Number
        Breaking pull [N], shape of break_load and of kept without its last axis.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    break_load min(kept, 1). Losses do not add up or multiply: a chain is as strong as its weakest link, and
    two knots of 15 % each leave 85 %.

    Source
    ------
    Statics of a chain (own reasoning of the collection of references, which warns of a page that adds
    losses up).

    Examples
    --------
    >>> with_knots(100.0, np.array([0.85, 0.85]))
    85.0
    """
    arguments.not_negative(break_load=break_load)
    arguments.between(0.0, 1.0, kept=kept)
    return arguments.plain(break_load * np.min(np.atleast_1d(kept), axis=-1))
