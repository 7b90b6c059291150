"""What holds a free spool back in the cast: blocks thrown outwards, magnets, the air; and what it takes."""

from __future__ import annotations

from math import pi

import numpy as np

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number

LAMINAR_MOMENT = 0.616
"""Torque of both faces of a disc over pi rho R^4 sqrt(nu w^3): von Karman's flow, as Cochran solved it."""


def centrifugal(
    blocks: Number, block_mass: Number, centre_radius: Number, ring_radius: Number, friction: Number
) -> Number:
    """Braking of blocks that the turning spool throws against a ring: torque over speed squared.

    Parameters
    ----------
    blocks : Number
        Blocks that can move [-], zero or more.
    block_mass : Number
        Mass of one block [kg], zero or more.
    centre_radius : Number
        Radius at which a block's mass turns [m], zero or more.
    ring_radius : Number
        Radius of the ring's rubbing face [m], zero or more.
    friction : Number
        Friction of block on ring [-], zero or more.

    Returns
    -------
    Number
        k in torque = k (w^2 - engages^2) [N m s^2], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value that is negative or not finite.

    Notes
    -----
    k = z mu m r_g r_d. Blocks slide freely on their wires: springs that hold them back at low speed are the
    `engages` of the law. Without other drags a spool so braked slows as w0 / (1 + k w0 t / I).

    Source
    ------
    Centrifugal clutch, Shigley, Mechanical Engineering Design, chapter on clutches (from memory); a worked
    page was opened, see tests/reference/test_brakes.py.

    Examples
    --------
    >>> round(centrifugal(4, 3.7, 0.140, 0.165, 0.2) * (78.54**2 - 52.36**2), 2)
    234.32
    """
    arguments.not_negative(
        blocks=blocks,
        block_mass=block_mass,
        centre_radius=centre_radius,
        ring_radius=ring_radius,
        friction=friction,
    )
    return blocks * friction * block_mass * centre_radius * ring_radius


def eddy(
    field: Number,
    area: Number,
    thickness: Number,
    radius: Number,
    resistivity: Number,
    return_path: Number = 1.0,
) -> Number:
    """Braking of magnets beside a metal spool that turns: torque over speed.

    Parameters
    ----------
    field : Number
        Field in the metal under the magnets [T], zero or more.
    area : Number
        Area of all magnets' faces [m^2], zero or more.
    thickness : Number
        Thickness of the metal [m], zero or more.
    radius : Number
        Radius at which the magnets stand [m], zero or more.
    resistivity : Number
        Resistivity of the metal [ohm m], above zero: pure aluminium 2.65e-8, its alloys 3e-8 to 6e-8.
    return_path : Number
        Share that is left because the currents have to find their way back [-], from 0 to 1: 0.3 to 0.7 in
        a real spool (from memory).

    Returns
    -------
    Number
        c in torque = c w [N m s], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    c = kappa B^2 A t r^2 / rho. Only well below the critical speed, see `eddy_share`. Field and return path
    of a real reel are not known to better than a factor of a few: measure c on a spin-down instead.

    Source
    ------
    Law of the simple eddy brake, physics question page (opened); range of the return path from memory.

    Examples
    --------
    >>> force_at_20 = eddy(0.1, 1e-4, 1e-3, 1.0, 2.65e-8) * 20
    >>> round(force_at_20, 4)
    0.7547
    """
    arguments.not_negative(field=field, area=area, thickness=thickness, radius=radius)
    arguments.positive(resistivity=resistivity)
    arguments.between(0.0, 1.0, return_path=return_path)
    return return_path * field**2 * area * thickness * radius**2 / resistivity


def eddy_share(speed_over_critical: Number) -> Number:
    """What is left of the law "braking grows with speed" as the critical speed comes near.

    Parameters
    ----------
    speed_over_critical : Number
        Speed over the speed at which an eddy brake holds most [-], zero or more.

    Returns
    -------
    Number
        Braking over what `eddy` says [-], from 1 down to 0, broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value that is negative or not finite.

    Notes
    -----
    F = 2 F_max / (v / v_c + v_c / v), hence 1 / (1 + (v / v_c)^2) of the straight law: at a tenth of the
    critical speed it overstates by 1 %.

    Source
    ------
    W. R. Smythe 1942; J. H. Wouterse, IEE Proc. B 138 (1991) 153 (both from memory).

    Examples
    --------
    >>> round(eddy_share(0.1), 4), eddy_share(1.0)
    (0.9901, 0.5)
    """
    arguments.not_negative(speed_over_critical=speed_over_critical)
    return 1.0 / (1.0 + speed_over_critical**2)


def disc_windage(radius: Number, air_density: Number = 1.225, air_viscosity: Number = 1.46e-5) -> Number:
    """Air that a turning spool's two outer faces carry round: torque over speed to the power 1.5.

    Parameters
    ----------
    radius : Number
        Radius of the flanges [m], zero or more.
    air_density : Number
        Density of the air [kg/m^3], zero or more.
    air_viscosity : Number
        Kinematic viscosity of the air [m^2/s], zero or more; 1.46e-5 at 15 °C.

    Returns
    -------
    Number
        k in torque = k w^1.5 [N m s^1.5], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value that is negative or not finite.

    Notes
    -----
    k = 0.616 pi rho R^4 sqrt(nu), both faces of a thin smooth disc in free air, laminar while w R^2 / nu is
    below 3e5. Holes, ribs and the rim add to it, side plates close by change it: a factor of one to two.

    Source
    ------
    T. von Karman 1921, W. G. Cochran 1934, as Schlichting, Boundary-Layer Theory, and Bird, Stewart and
    Lightfoot print it (a problem with the formula was opened).

    Examples
    --------
    >>> round(disc_windage(0.024) * 3182**1.5 * 1e3, 2)
    0.54
    """
    arguments.not_negative(radius=radius, air_density=air_density, air_viscosity=air_viscosity)
    return arguments.plain(LAMINAR_MOMENT * pi * air_density * radius**4 * np.sqrt(air_viscosity))


def holding_torque(
    inertia: Number,
    speed: Number,
    deceleration: Number,
    radius: Number,
    line_diameter: Number,
    spool_width: Number,
    packing: Number,
) -> Number:
    """Torque on the spool that just keeps the line tight: less, and the spool runs ahead of the line.

    Parameters
    ----------
    inertia : Number
        Moment of inertia of all that turns [kg m^2], zero or more.
    speed : Number
        Speed of the line [m/s], zero or more.
    deceleration : Number
        How fast the payload slows [m/s^2].
    radius : Number
        Radius at which the line leaves [m], above zero.
    line_diameter : Number
        Diameter of the line [m], zero or more.
    spool_width : Number
        Width between the flanges [m], above zero.
    packing : Number
        Volume of line per volume of spool [-], above zero, at most 1.

    Returns
    -------
    Number
        Torque of all drags together [N m], zero where none is needed; broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    I (a / r - d^2 v^2 / (8 packing w r^3)): the first term is the payload slowing, the second the spool
    having to speed up as its radius falls, which helps. Leaving the second out overstates the brake by two
    thirds in a surf cast.

    Source
    ------
    Kinematics of r w = v with r^2 = r0^2 - L d^2 / (4 packing w); docs/derivations/cast_case.md.

    Examples
    --------
    >>> torque = holding_torque(2.03292e-5, 70.0, 9.97428, 0.022, 0.31e-3, 0.042, 0.7)
    >>> round(torque * 1e3, 2)
    5.39
    """
    arguments.not_negative(inertia=inertia, speed=speed, line_diameter=line_diameter)
    arguments.positive(radius=radius, spool_width=spool_width)
    arguments.finite(deceleration=deceleration)
    arguments.above_up_to(0.0, 1.0, packing=packing)
    falling = line_diameter**2 * speed**2 / (8 * packing * spool_width * radius**3)
    return arguments.plain(np.maximum(inertia * (deceleration / radius - falling), 0.0))
