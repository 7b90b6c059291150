"""Hybrid bearings: what silicon nitride balls between steel rings change, and what they do not."""

from __future__ import annotations

from math import pi
from typing import TypedDict

import numpy as np

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number

NITRIDE_DENSITY, NITRIDE_MODULUS, NITRIDE_POISSON = 3240.0, 308e9, 0.26
STEEL_DENSITY, STEEL_MODULUS, STEEL_POISSON = 7830.0, 208e9, 0.30
"""A handbook's table of silicon nitride and bearing steel (opened; Poisson's ratios from memory)."""
FAST_FRICTION = 0.41
"""Factor of a newer catalogue model on the terms of friction that grow with speed through the balls' mass."""


class Hybrid(TypedDict):
    """A hybrid bearing beside the same one with steel balls; masses in kg, all else ratios to steel."""

    ball_set_mass: Number
    mass_saved: Number
    ball_mass: Number
    centrifugal_force: Number
    contact_pressure: Number
    contact_area: Number
    approach: Number
    static_rating: Number
    dynamic_rating: Number
    life_by_pressure: Number
    oil_friction: Number
    fast_friction: Number


def ball_pressure(
    force: Number,
    ball_diameter: Number,
    youngs_ball: Number = STEEL_MODULUS,
    poisson_ball: Number = STEEL_POISSON,
    youngs_ring: Number = STEEL_MODULUS,
    poisson_ring: Number = STEEL_POISSON,
) -> Number:
    """Highest pressure where a ball is pressed on a flat.

    Parameters
    ----------
    force : Number
        Force on the ball [N], zero or more.
    ball_diameter : Number
        Diameter of the ball [m], above zero.
    youngs_ball : Number
        Young's modulus of the ball [Pa], above zero; infinity for a rigid one.
    poisson_ball : Number
        Its Poisson's ratio [-], zero to 0.5.
    youngs_ring : Number
        Young's modulus of the flat [Pa], above zero; infinity for a rigid one.
    poisson_ring : Number
        Its Poisson's ratio [-], zero to 0.5.

    Returns
    -------
    Number
        Peak pressure [Pa], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range, or two rigid bodies.

    Notes
    -----
    a = (3 F R / 4 E*)^(1/3), p = 3 F / (2 pi a^2), 1/E* the sum of (1 - nu^2) / E. A groove that hugs the
    ball lowers p, by the same factor for steel and for ceramic balls, so ratios hold there too.

    Source
    ------
    Hertz, as in K. L. Johnson, Contact Mechanics, eqs 4.22 to 4.24 (from memory).

    Examples
    --------
    >>> round(ball_pressure(10.0, 3.969e-3, 210e9, 0.3, 210e9, 0.3) / 1e6)
    1870
    """
    arguments.not_negative(force=force)
    arguments.positive(ball_diameter=ball_diameter)
    compliance = _compliance(youngs_ball, poisson_ball) + _compliance(youngs_ring, poisson_ring)
    arguments.positive(**{"compliance of ball and ring": compliance})
    modulus = 1 / compliance
    squeezed = 6 * force * modulus**2 / (ball_diameter / 2) ** 2
    return arguments.plain(np.cbrt(squeezed) / pi)


def hybrid(
    balls: Number,
    ball_diameter: Number,
    density: Number = NITRIDE_DENSITY,
    youngs_modulus: Number = NITRIDE_MODULUS,
    poisson: Number = NITRIDE_POISSON,
) -> Hybrid:
    """Compare a bearing with ceramic balls in steel rings with the same one with steel balls.

    Parameters
    ----------
    balls : Number
        Number of balls [-], a whole number of 1 or more.
    ball_diameter : Number
        Diameter of a ball [m], above zero.
    density : Number
        Density of the balls [kg/m^3], above zero; silicon nitride 3200 to 3240.
    youngs_modulus : Number
        Young's modulus of the balls [Pa], above zero; silicon nitride 308e9 to 310e9.
    poisson : Number
        Poisson's ratio of the balls [-], zero to 0.5.

    Returns
    -------
    Hybrid
        Mapping: ball_set_mass and mass_saved [kg]; ratios to the steel bearing [-], each of the broadcast
        shape of the inputs. ball_mass and centrifugal_force; contact_pressure, contact_area and approach
        under one load; static_rating; dynamic_rating; life_by_pressure; oil_friction; fast_friction.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    Under one load pressure goes with E*^(2/3), area and approach with E*^(-2/3). static_rating: load at the
    pressure that dents the ring, (E*steel / E*)^2, so the stiff ball dents its ring at 0.72 of the load.
    life_by_pressure: that pressure to the power -9, what fatigue theory alone says. The standards leave the
    dynamic rating as it is, because the smaller contact and the unlike materials rub less and such bearings
    in practice last as long. oil_friction stays 1: Palmgren's formula knows no ball material, and the oil,
    the ends and the level wind make nearly all of a reel's drag. fast_friction is for terms that grow with
    the balls' inertia. What is not in it: hybrids stand poor lubrication better (catalogues count their kappa
    as 1 where it is less), the rings rust as before, and a knock dents the ring sooner. In one set of 84
    hand-spun times open steel bearings ran longer than hybrids.

    Source
    ------
    Hertz (from memory). Dynamic rating unchanged, static one reduced: summary of DIN ISO 281 supplement 5,
    now ISO 20056 (opened at dinmedia.de). Exponent 9: Lundberg and Palmgren (from memory). 0.41 and kappa 1:
    two bearing catalogues (opened). Spin times: public data set of spinners (opened).

    Examples
    --------
    >>> found = hybrid(7, 3.969e-3)
    >>> round(found["mass_saved"] * 1e3, 2), round(found["static_rating"], 2), found["dynamic_rating"]
    (1.05, 0.72, 1.0)
    """
    arguments.whole(1, balls=balls)
    arguments.positive(ball_diameter=ball_diameter, density=density, youngs_modulus=youngs_modulus)
    steel = _compliance(STEEL_MODULUS, STEEL_POISSON)
    stiffer = 2 * steel / (steel + _compliance(youngs_modulus, poisson))
    volume = balls * pi / 6 * ball_diameter**3
    mass = density / STEEL_DENSITY
    same = 0.0 * (volume * density * stiffer) + 1.0
    return Hybrid(
        ball_set_mass=volume * density * same,
        mass_saved=volume * (STEEL_DENSITY - density) * same,
        ball_mass=mass * same,
        centrifugal_force=mass * same,
        contact_pressure=arguments.plain(stiffer ** (2 / 3) * same),
        contact_area=arguments.plain(stiffer ** (-2 / 3) * same),
        approach=arguments.plain(stiffer ** (-2 / 3) * same),
        static_rating=stiffer**-2 * same,
        dynamic_rating=same,
        life_by_pressure=stiffer**-6 * same,
        oil_friction=same,
        fast_friction=FAST_FRICTION * same,
    )


def _compliance(youngs_modulus: Number, poisson: Number) -> Number:
    arguments.positive_or_infinite(youngs_modulus=youngs_modulus)
    arguments.between(0.0, 0.5, poisson=poisson)
    return (1 - poisson**2) / youngs_modulus
