"""A spool of line: how much goes on, how far it fills, what the line pulls, how heavily it turns."""

from __future__ import annotations

from math import pi

import numpy as np

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number
from spoolwright.mechanics.mixed_line import backing_length, line_per_turn, mixed_fill, radius_at_line_out

__all__ = [
    "backing_length",
    "fill_radius",
    "line_inertia",
    "line_length",
    "line_per_turn",
    "line_pull",
    "mixed_fill",
    "radius_at_line_out",
    "spool_inertia",
    "spool_mass",
]


def line_length(
    arbor_radius: Number, fill_radius: Number, width: Number, line_diameter: Number, packing: Number = 1.0
) -> Number:
    """Length of line that fills a straight spool from the arbor up to a radius.

    Parameters
    ----------
    arbor_radius : Number
        Radius of the bare arbor [m], above zero.
    fill_radius : Number
        Radius up to which the line comes [m], arbor_radius or more.
    width : Number
        Width between the flanges [m], above zero.
    line_diameter : Number
        Measured diameter of the line [m], above zero.
    packing : Number
        Volume of line per volume of spool [-], above zero, at most 1; turns laid side by side in square
        order give pi/4 = 0.785, nested ones up to 0.907, a level wind's open lay less.

    Returns
    -------
    Number
        Length of line [m], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range, or a fill below the arbor.

    Notes
    -----
    L = 4 packing (R^2 - r^2) w / d^2: line volume over line section.

    Source
    ------
    Geometry; wire rope handbooks print it for drums as (A + B) A C 0.2618 / d^2 feet (from memory).

    Examples
    --------
    >>> round(line_length(0.0125, 0.0235, 0.0245, 0.40e-3, packing=0.7))
    170
    """
    arguments.positive(
        arbor_radius=arbor_radius, fill_radius=fill_radius, width=width, line_diameter=line_diameter
    )
    arguments.above_up_to(0.0, 1.0, packing=packing)
    arguments.at_least("fill_radius", fill_radius, "arbor_radius", arbor_radius)
    layer = (fill_radius - arbor_radius) * (fill_radius + arbor_radius)
    return 4 * packing * layer * width / line_diameter**2


def fill_radius(
    arbor_radius: Number, line_length: Number, width: Number, line_diameter: Number, packing: Number = 1.0
) -> Number:
    """Radius up to which a length of line fills a straight spool.

    Parameters
    ----------
    arbor_radius : Number
        Radius of the bare arbor [m], above zero.
    line_length : Number
        Length of line on the spool [m], zero or more.
    width : Number
        Width between the flanges [m], above zero.
    line_diameter : Number
        Measured diameter of the line [m], above zero.
    packing : Number
        Volume of line per volume of spool [-], above zero, at most 1.

    Returns
    -------
    Number
        Fill radius [m], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    R = sqrt(r^2 + L d^2 / (4 packing w)): the inverse of line_length. The flange is not asked: whoever
    calls compares the answer with the lip.

    Source
    ------
    As line_length.

    Examples
    --------
    >>> round(fill_radius(0.0125, 170.0, 0.0245, 0.40e-3, packing=0.7) * 1000, 1)
    23.5
    """
    arguments.positive(arbor_radius=arbor_radius, width=width, line_diameter=line_diameter)
    arguments.not_negative(line_length=line_length)
    arguments.above_up_to(0.0, 1.0, packing=packing)
    section = line_length * line_diameter**2 / (4 * packing * width)
    return arguments.plain(np.sqrt(arbor_radius**2 + section))


def line_pull(drag_torque: Number, gear_ratio: Number, radius: Number) -> Number:
    """Pull of the line at which the drag slips.

    Parameters
    ----------
    drag_torque : Number
        Torque at which the drag slips [N m], zero or more.
    gear_ratio : Number
        Turns of the spool per turn of the member that carries the drag [-], above zero: main teeth over
        pinion teeth for a drag on the main gear, 1 where the drag acts on the spool.
    radius : Number
        Radius where the line leaves the spool [m], above zero.

    Returns
    -------
    Number
        Pull [N], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    F = T / (ratio r), without the friction of gears, bearings, level wind and rings, which adds to it.

    Source
    ------
    Statics.

    Examples
    --------
    >>> round(line_pull(0.599, 1.0, 0.0235) / 9.80665, 2)
    2.6
    """
    arguments.not_negative(drag_torque=drag_torque)
    arguments.positive(gear_ratio=gear_ratio, radius=radius)
    return drag_torque / (gear_ratio * radius)


def spool_mass(
    arbor_radius: Number,
    flange_radius: Number,
    width: Number,
    wall: Number,
    density: Number,
    bore_radius: Number = 0.0,
) -> Number:
    """Mass of a bare spool drawn as a tube between two discs, to set beside the one on the scale.

    Parameters
    ----------
    arbor_radius : Number
        Outer radius of the tube [m], above zero, more than wall.
    flange_radius : Number
        Outer radius of the discs [m], above arbor_radius.
    width : Number
        Length of the tube between the discs [m], above zero.
    wall : Number
        Thickness of tube and discs [m], above zero.
    density : Number
        Density of the spool's material [kg/m^3], above zero.
    bore_radius : Number
        Radius of the hole through the discs [m], zero or more, less than flange_radius.

    Returns
    -------
    Number
        Mass [kg], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range, or radii in the wrong order.

    Notes
    -----
    m = pi density [w (ra^2 - (ra - s)^2) + 2 s (rf^2 - rb^2)].

    Source
    ------
    Geometry.

    Examples
    --------
    >>> round(spool_mass(0.0125, 0.0245, 0.0245, 1.2e-3, 2700.0, 0.004) * 1000, 1)
    17.8
    """
    _check_spool(arbor_radius, flange_radius, width, wall, density, bore_radius)
    tube = width * (arbor_radius**2 - (arbor_radius - wall) ** 2)
    discs = 2 * wall * (flange_radius**2 - bore_radius**2)
    return pi * density * (tube + discs)


def spool_inertia(
    arbor_radius: Number,
    flange_radius: Number,
    width: Number,
    wall: Number,
    density: Number,
    bore_radius: Number = 0.0,
) -> Number:
    """Moment of inertia of a bare spool drawn as a tube between two discs.

    Parameters
    ----------
    arbor_radius : Number
        Outer radius of the tube [m], above zero, more than wall.
    flange_radius : Number
        Outer radius of the discs [m], above arbor_radius.
    width : Number
        Length of the tube between the discs [m], above zero.
    wall : Number
        Thickness of tube and discs [m], above zero.
    density : Number
        Density of the spool's material [kg/m^3], above zero.
    bore_radius : Number
        Radius of the hole through the discs [m], zero or more, less than flange_radius.

    Returns
    -------
    Number
        Moment of inertia about the shaft [kg m^2], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range, or radii in the wrong order.

    Notes
    -----
    J = pi density / 2 [w (ra^4 - (ra - s)^4) + 2 s (rf^4 - rb^4)]. A weighed spool is better served by
    scaling: J times the mass on the scale over spool_mass with the same sizes.

    Source
    ------
    Polar moments of tubes and discs, any dynamics text.

    Examples
    --------
    >>> round(spool_inertia(0.0125, 0.0245, 0.0245, 1.2e-3, 2700.0, 0.004) * 1e6, 2)
    4.51
    """
    _check_spool(arbor_radius, flange_radius, width, wall, density, bore_radius)
    tube = width * (arbor_radius**4 - (arbor_radius - wall) ** 4)
    discs = 2 * wall * (flange_radius**4 - bore_radius**4)
    return pi * density / 2 * (tube + discs)


def line_inertia(
    arbor_radius: Number, fill_radius: Number, width: Number, density: Number, packing: Number = 1.0
) -> Number:
    """Moment of inertia of the line on a spool.

    Parameters
    ----------
    arbor_radius : Number
        Radius of the bare arbor [m], above zero.
    fill_radius : Number
        Radius up to which the line comes [m], arbor_radius or more.
    width : Number
        Width between the flanges [m], above zero.
    density : Number
        Density of the line's material [kg/m^3], above zero.
    packing : Number
        Volume of line per volume of spool [-], above zero, at most 1.

    Returns
    -------
    Number
        Moment of inertia about the shaft [kg m^2], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range, or a fill below the arbor.

    Notes
    -----
    J = pi packing density w (R^4 - r^4) / 2. Wet line carries water as well.

    Source
    ------
    Polar moment of a tube, any dynamics text.

    Examples
    --------
    >>> round(line_inertia(0.0125, 0.0235, 0.0245, 1140.0, 0.7) * 1e6, 2)
    8.62
    """
    arguments.positive(arbor_radius=arbor_radius, fill_radius=fill_radius, width=width, density=density)
    arguments.above_up_to(0.0, 1.0, packing=packing)
    arguments.at_least("fill_radius", fill_radius, "arbor_radius", arbor_radius)
    return pi / 2 * packing * density * width * (fill_radius**4 - arbor_radius**4)


def _check_spool(
    arbor: Number, flange: Number, width: Number, wall: Number, density: Number, bore: Number
) -> None:
    arguments.positive(arbor_radius=arbor, flange_radius=flange, width=width, wall=wall, density=density)
    arguments.not_negative(bore_radius=bore)
    arguments.less("wall", wall, "arbor_radius", arbor)
    arguments.less("arbor_radius", arbor, "flange_radius", flange)
    arguments.less("bore_radius", bore, "flange_radius", flange)
