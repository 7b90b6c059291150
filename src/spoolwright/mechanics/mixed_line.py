"""Two lines and more on one spool, and what a spool gives as its line runs off."""

from __future__ import annotations

from math import pi

import numpy as np

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number


def mixed_fill(
    arbor_radius: float, width: float, lengths: Number, line_diameters: Number, packing: Number = 1.0
) -> Number:
    """Radius of the spool after each of several lines, wound one on the other.

    Parameters
    ----------
    arbor_radius : float
        Radius of the bare arbor [m], above zero.
    width : float
        Width between the flanges [m], above zero.
    lengths : Number
        Length of each line, the innermost first [m], zero or more, shape `(..., n)`.
    line_diameters : Number
        Diameter of each [m], above zero, shape `(..., n)`.
    packing : Number
        Volume of line per volume of spool of each [-], above zero, at most 1, shape `(..., n)` or one for
        all.

    Returns
    -------
    Number
        Fill radius after each line [m], shape `(..., n)`.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    R_k = sqrt(r^2 + sum_1^k L d^2 / (4 packing w)). A thin top shot on soft backing beds in and lies a little
    lower. The flange is not asked.

    Source
    ------
    Geometry: the sum of L d^2 stays the same whatever the order, at one packing.

    Examples
    --------
    >>> [round(float(r) * 1e3, 1) for r in mixed_fill(0.011, 0.044, [200.0, 100.0], [0.3e-3, 0.4e-3], 0.7)]
    [16.3, 19.9]
    """
    arguments.positive(arbor_radius=arbor_radius, width=width)
    lengths, diameters = np.asarray(lengths, dtype=np.float64), np.asarray(line_diameters, dtype=np.float64)
    packing = np.asarray(packing, dtype=np.float64)
    arguments.not_negative(lengths=lengths)
    arguments.positive(line_diameters=diameters)
    arguments.above_up_to(0.0, 1.0, packing=packing)
    sections = lengths * diameters**2 / (4 * packing * width)
    return arguments.plain(np.sqrt(arbor_radius**2 + np.cumsum(np.atleast_1d(sections), axis=-1)))


def backing_length(
    arbor_radius: Number,
    fill_radius: Number,
    width: Number,
    backing_diameter: Number,
    top_length: Number,
    top_diameter: Number,
    packing: Number = 1.0,
) -> Number:
    """Backing that goes under a top shot so that both together fill the spool.

    Parameters
    ----------
    arbor_radius : Number
        Radius of the bare arbor [m], above zero.
    fill_radius : Number
        Radius up to which the line shall come [m], arbor_radius or more.
    width : Number
        Width between the flanges [m], above zero.
    backing_diameter : Number
        Diameter of the backing [m], above zero.
    top_length : Number
        Length of the top shot [m], zero or more.
    top_diameter : Number
        Diameter of the top shot [m], above zero.
    packing : Number
        Volume of line per volume of spool [-], above zero, at most 1.

    Returns
    -------
    Number
        Length of backing [m], broadcast shape of the inputs; zero where the top shot fills it alone, below
        zero where that is too long.

    Raises
    ------
    ValueError
        A value outside its range, or a fill below the arbor.

    Notes
    -----
    L = [4 packing w (R^2 - r^2) - Lt dt^2] / db^2.

    Source
    ------
    Geometry.

    Examples
    --------
    >>> round(backing_length(0.011, 0.0235, 0.044, 0.35e-3, 150.0, 0.40e-3, 0.7))
    238
    """
    arguments.positive(arbor_radius=arbor_radius, width=width, fill_radius=fill_radius)
    arguments.positive(backing_diameter=backing_diameter, top_diameter=top_diameter)
    arguments.not_negative(top_length=top_length)
    arguments.above_up_to(0.0, 1.0, packing=packing)
    arguments.at_least("fill_radius", fill_radius, "arbor_radius", arbor_radius)
    room = 4 * packing * width * (fill_radius - arbor_radius) * (fill_radius + arbor_radius)
    return (room - top_length * top_diameter**2) / backing_diameter**2


def radius_at_line_out(arbor_radius: Number, full_radius: Number, share_out: Number) -> Number:
    """Radius of the spool when a share of its line has run off.

    Parameters
    ----------
    arbor_radius : Number
        Radius of the bare arbor [m], above zero.
    full_radius : Number
        Radius of the full spool [m], arbor_radius or more.
    share_out : Number
        Share of the whole line that is out [-], zero to 1.

    Returns
    -------
    Number
        Radius [m], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range, or a full spool below the arbor.

    Notes
    -----
    sqrt(R^2 - f (R^2 - r^2)). Half of the line out is not half of the radius: at r = R / 2 it is 0.79 R, and
    the pull of an unchanged drag has grown by 1.26, not doubled.

    Source
    ------
    Geometry; the published slip of a doubled pull at half the line is tested the other way.

    Examples
    --------
    >>> round(radius_at_line_out(0.01, 0.02, 0.5) * 1e3, 2)
    15.81
    """
    arguments.positive(arbor_radius=arbor_radius, full_radius=full_radius)
    arguments.at_least("full_radius", full_radius, "arbor_radius", arbor_radius)
    arguments.between(0.0, 1.0, share_out=share_out)
    gone = share_out * (full_radius - arbor_radius) * (full_radius + arbor_radius)
    return arguments.plain(np.sqrt(full_radius**2 - gone))


def line_per_turn(radius: Number, gear_ratio: Number) -> Number:
    """Line won by one turn of the handle.

    Parameters
    ----------
    radius : Number
        Radius where the line lies on the spool [m], above zero.
    gear_ratio : Number
        Turns of the spool for one turn of the handle [-], above zero.

    Returns
    -------
    Number
        Line [m], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value that is not above zero and finite.

    Notes
    -----
    2 pi r i. Pages that multiply diameter by ratio have forgotten pi.

    Source
    ------
    Geometry.

    Examples
    --------
    >>> round(line_per_turn(0.025, 7.0), 2)
    1.1
    """
    arguments.positive(radius=radius, gear_ratio=gear_ratio)
    return 2 * pi * radius * gear_ratio
