"""A spool under its line: flanges pushed apart, and an arbor squeezed from outside."""

from __future__ import annotations

from math import pi

import numpy as np

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number

LOADS = ("falling", "even")


def flange_stress(
    force: Number,
    inner_radius: Number,
    outer_radius: Number,
    thickness: Number,
    poisson: Number = 0.3,
    load: str = "falling",
) -> Number:
    """Greatest bending stress of a flange that wound line pushes outwards: at its root on the arbor.

    Parameters
    ----------
    force : Number
        Force of the line on one flange [N], zero or more.
    inner_radius : Number
        Radius of the arbor, where the flange is held [m], above zero.
    outer_radius : Number
        Radius to which the line reaches [m], above inner_radius.
    thickness : Number
        Thickness of the flange [m], above zero.
    poisson : Number
        Poisson's ratio [-], zero to 0.5.
    load : str
        How the pressure lies [-]: "falling" evenly from the arbor to nothing at the top layer, or "even".

    Returns
    -------
    Number
        Bending stress [Pa], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range, or another load.

    Notes
    -----
    Thin ring plate, clamped inside and free outside: D d/dr(1/r d(r f)/dr) = W(r) / r, with f the slope and
    2 pi W the load outside r, in closed form; 6 M / t^2 with M at the clamp. The lip beyond the line is left
    out and helps a little; the corner's notch and the plate's stretching (once it spreads more than half its
    thickness) are left out too. Flanges on a spool of thin wall turn with it: more spread, less stress.

    Source
    ------
    Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells, art. 16 and 17 (from memory); Roark's
    Formulas for Stress and Strain, table 11.2, cases 2l and 3l, are the same plate.

    Examples
    --------
    >>> round(flange_stress(430.0, 0.010, 0.015, 1.5e-3) / 1e6)
    31
    """
    _check_flange(force, inner_radius, outer_radius, thickness, poisson, load)
    moment, _ = _ring_plate(inner_radius, outer_radius, poisson, load)
    return arguments.plain(6 * force * moment / thickness**2)


def flange_spread(
    force: Number,
    inner_radius: Number,
    outer_radius: Number,
    thickness: Number,
    youngs_modulus: Number,
    poisson: Number = 0.3,
    load: str = "falling",
) -> Number:
    """How far wound line pushes the edge of one flange outwards.

    Parameters
    ----------
    force : Number
        Force of the line on one flange [N], zero or more.
    inner_radius : Number
        Radius of the arbor [m], above zero.
    outer_radius : Number
        Radius to which the line reaches [m], above inner_radius.
    thickness : Number
        Thickness of the flange [m], above zero.
    youngs_modulus : Number
        Young's modulus [Pa], above zero.
    poisson : Number
        Poisson's ratio [-], zero to 0.5.
    load : str
        How the pressure lies [-]: "falling" or "even".

    Returns
    -------
    Number
        Outward movement at outer_radius [m], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        As flange_stress.

    Notes
    -----
    The slope of flange_stress integrated from the clamp; true while it stays below half the thickness.

    Source
    ------
    As flange_stress.

    Examples
    --------
    >>> round(flange_spread(430.0, 0.010, 0.015, 1.5e-3, 70e9) * 1e6, 1)
    2.4
    """
    _check_flange(force, inner_radius, outer_radius, thickness, poisson, load)
    arguments.positive(youngs_modulus=youngs_modulus)
    _, spread = _ring_plate(inner_radius, outer_radius, poisson, load)
    stiffness = youngs_modulus * thickness**3 / (12 * (1 - poisson**2))
    return arguments.plain(force * spread / stiffness)


def ring_stress(
    radius: Number,
    inner_radius: Number,
    outer_radius: Number,
    inner_pressure: Number = 0.0,
    outer_pressure: Number = 0.0,
) -> Number:
    """Stress around a thick ring that is pressed from inside, from outside, or both.

    Parameters
    ----------
    radius : Number
        Where it is asked for [m], inner_radius to outer_radius.
    inner_radius : Number
        Radius of the bore [m], above zero.
    outer_radius : Number
        Outer radius [m], above inner_radius.
    inner_pressure : Number
        Pressure in the bore [Pa], zero or more.
    outer_pressure : Number
        Pressure from outside [Pa], zero or more.

    Returns
    -------
    Number
        Hoop stress, tension positive [Pa], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    (p_i a^2 - p_o b^2) / (b^2 - a^2) + (p_i - p_o) a^2 b^2 / ((b^2 - a^2) r^2). Elastic, far from the ends.

    Source
    ------
    Lame's thick cylinder, Boresi & Schmidt, Advanced Mechanics of Materials, ch. 11 (worked examples opened).

    Examples
    --------
    >>> round(ring_stress(0.010, 0.010, 0.050, inner_pressure=300e6) / 1e6, 3)
    325.0
    """
    arguments.positive(inner_radius=inner_radius)
    arguments.less("inner_radius", inner_radius, "outer_radius", outer_radius)
    arguments.at_least("radius", radius, "inner_radius", inner_radius)
    arguments.at_most("radius", radius, "outer_radius", outer_radius)
    arguments.not_negative(inner_pressure=inner_pressure, outer_pressure=outer_pressure)
    a, b = inner_radius**2, outer_radius**2
    both = inner_pressure * a - outer_pressure * b
    return (both + (inner_pressure - outer_pressure) * a * b / radius**2) / (b - a)


def arbor_hoop_stress(pressure: Number, outer_radius: Number, wall: Number) -> Number:
    """Squeeze around the bore of an arbor that wound line presses from outside.

    Parameters
    ----------
    pressure : Number
        Pressure of the line on the arbor [Pa], zero or more.
    outer_radius : Number
        Radius of the arbor [m], above zero.
    wall : Number
        Thickness of its wall [m], above zero, less than outer_radius.

    Returns
    -------
    Number
        Compression around the bore, positive [Pa], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    2 p b^2 / (b^2 - a^2), a = b - wall: Lame at the bore, p b / wall for a thin one. Flanges, webs and a
    spool pressed on its shaft help; a keyway or a row of holes does not.

    Source
    ------
    Lame's thick cylinder, Boresi & Schmidt, Advanced Mechanics of Materials, ch. 11 (worked examples opened).

    Examples
    --------
    >>> round(arbor_hoop_stress(10e6, 0.010, 1.5e-3) / 1e6, 1)
    72.1
    """
    arguments.not_negative(pressure=pressure)
    arguments.positive(outer_radius=outer_radius, wall=wall)
    arguments.less("wall", wall, "outer_radius", outer_radius)
    bore = outer_radius - wall
    return 2 * pressure * outer_radius**2 / (outer_radius**2 - bore**2)


def arbor_buckling_pressure(
    outer_radius: Number, wall: Number, length: Number, youngs_modulus: Number, poisson: Number = 0.3
) -> Number:
    """Pressure from outside at which a thin arbor folds in.

    Parameters
    ----------
    outer_radius : Number
        Radius of the arbor [m], above zero.
    wall : Number
        Thickness of its wall [m], above zero, less than outer_radius.
    length : Number
        Length between its flanges [m], above zero.
    youngs_modulus : Number
        Young's modulus [Pa], above zero.
    poisson : Number
        Poisson's ratio [-], zero to 0.5.

    Returns
    -------
    Number
        Critical pressure [Pa], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    The greater of a tube without end, E (t / r)^3 / (4 (1 - nu^2)), and one held round at both ends,
    0.807 E t^2 / (l r) ((1 / (1 - nu^2))^3 t^2 / r^2)^(1/4); r to the middle of the wall. Perfectly round:
    take 0.8 of it. Line has stiffness of its own and does not follow as a fluid does, which helps.

    Source
    ------
    Bresse; Roark's Formulas for Stress and Strain, table 15.2, cases 19 and 20 (from memory).

    Examples
    --------
    >>> round(arbor_buckling_pressure(0.010, 1e-3, 0.034, 70e9) / 1e6, 1)
    60.9
    """
    arguments.positive(outer_radius=outer_radius, wall=wall, length=length, youngs_modulus=youngs_modulus)
    arguments.less("wall", wall, "outer_radius", outer_radius)
    arguments.between(0.0, 0.5, poisson=poisson)
    middle = outer_radius - wall / 2
    slender, sideways = wall / middle, 1 / (1 - poisson**2)
    endless = youngs_modulus * slender**3 * sideways / 4
    held = 0.807 * youngs_modulus * wall**2 / (length * middle) * (sideways**3 * slender**2) ** 0.25
    return arguments.plain(np.maximum(endless, held))


def _ring_plate(a: Number, b: Number, poisson: Number, load: str) -> tuple[Number, Number]:
    """Moment at the clamp and, times the plate's stiffness, movement of the edge, for a whole load of 1.

    Lengths are over the outer radius x = a / b; the load outside r is w(r) = c0 + c2 r^2 + c3 r^3 over 2 pi.
    """
    x = np.asarray(a / b, dtype=float)
    if load == "even":
        c0, c2, c3 = 1 / (1 - x**2), -1 / (1 - x**2), np.zeros_like(x)
    else:
        whole = 1 / 6 - x**2 / 2 + x**3 / 3
        c0, c2, c3 = 1 / (6 * whole), -1 / (2 * whole), 1 / (3 * whole)

    def slope(r: Number) -> Number:
        return c0 * (r * np.log(r) / 2 - r / 4) + c2 * r**3 / 8 + c3 * r**4 / 15

    def turn(r: Number) -> Number:
        return c0 * (np.log(r) / 2 + 1 / 4) + c2 * 3 * r**2 / 8 + c3 * 4 * r**3 / 15

    def sag(r: Number) -> Number:
        return c0 * (r**2 * np.log(r) / 4 - r**2 / 4) + c2 * r**4 / 32 + c3 * r**5 / 75

    # two constants, f = slope + k1 r / 2 + k2 / r: no slope at the clamp, no moment at the free edge
    free = turn(1.0) + poisson * slope(1.0)
    k2 = (free - (1 + poisson) * slope(x) / x) / ((1 - poisson) + (1 + poisson) / x**2)
    k1 = -2 * (slope(x) + k2 / x) / x
    moment = np.abs(turn(x) + k1 / 2 - k2 / x**2) / (2 * pi)
    edge = np.abs(sag(1.0) - sag(x) + k1 * (1 - x**2) / 4 - k2 * np.log(x)) / (2 * pi)
    return moment, edge * b**2


def _check_flange(
    force: Number, inner: Number, outer: Number, thickness: Number, poisson: Number, load: str
) -> None:
    arguments.not_negative(force=force)
    arguments.positive(inner_radius=inner, thickness=thickness)
    arguments.less("inner_radius", inner, "outer_radius", outer)
    arguments.between(0.0, 0.5, poisson=poisson)
    arguments.one_of(LOADS, load=load)
