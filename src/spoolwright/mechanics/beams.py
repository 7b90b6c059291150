"""Shafts and bars on two supports: how far they bend, and the speed at which they whip."""

from __future__ import annotations

import numpy as np

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number


def simply_supported_point(
    force: Number, position: Number, span: Number, youngs_modulus: Number, second_moment: Number, at: Number
) -> Number:
    """Deflection of a beam on two supports under one force.

    Parameters
    ----------
    force : Number
        Force across the beam [N], any sign.
    position : Number
        Where it acts, from the left support [m], zero to span.
    span : Number
        Distance of the supports [m], above zero.
    youngs_modulus : Number
        Young's modulus [Pa], above zero.
    second_moment : Number
        Second moment of area [m^4], above zero; pi d^4 / 64 for a round shaft.
    at : Number
        Where the deflection is asked for, from the left support [m], zero to span.

    Returns
    -------
    Number
        Deflection [m], positive with the load, broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range, or a place beyond the supports.

    Notes
    -----
    With l the lesser of the two places and r the distance of the greater from the right support:
    F l r (L^2 - l^2 - r^2) / (6 E I L), which says at once that force and place may be exchanged. Shear
    is left out: below a span of ten diameters a shaft bends a few per cent more.

    Source
    ------
    Shigley's Mechanical Engineering Design, 9th ed., table A-9-6 (from memory); worked examples of Bansal and
    Sarkar opened.

    Examples
    --------
    >>> round(simply_supported_point(100.0, 0.025, 0.05, 207e9, 1.2566e-11, at=0.025) * 1e3, 4)
    0.1001
    """
    _check_beam(span, youngs_modulus, second_moment)
    arguments.finite(force=force)
    _check_place("position", position, span)
    _check_place("at", at, span)
    near = np.minimum(position, at)
    far = span - np.maximum(position, at)
    shape = near * far * (span**2 - near**2 - far**2)
    return arguments.plain(force * shape / (6 * youngs_modulus * second_moment * span))


def simply_supported_uniform(
    load_per_length: Number, span: Number, youngs_modulus: Number, second_moment: Number, at: Number
) -> Number:
    """Deflection of a beam on two supports under a load spread evenly from one to the other.

    Parameters
    ----------
    load_per_length : Number
        Load for each metre [N/m], any sign.
    span : Number
        Distance of the supports [m], above zero.
    youngs_modulus : Number
        Young's modulus [Pa], above zero.
    second_moment : Number
        Second moment of area [m^4], above zero.
    at : Number
        Where the deflection is asked for, from the left support [m], zero to span.

    Returns
    -------
    Number
        Deflection [m], positive with the load, broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range, or a place beyond the supports.

    Notes
    -----
    w x (L - x) (L^2 + x (L - x)) / (24 E I): the usual w x (L^3 - 2 L x^2 + x^3) / (24 E I), factored.

    Source
    ------
    Shigley's Mechanical Engineering Design, 9th ed., table A-9-7 (from memory); worked example of Bansal
    opened.

    Examples
    --------
    >>> round(simply_supported_uniform(2000.0, 0.05, 207e9, 1.2566e-11, at=0.025) * 1e6, 1)
    62.6
    """
    _check_beam(span, youngs_modulus, second_moment)
    arguments.finite(load_per_length=load_per_length)
    _check_place("at", at, span)
    both_ways = at * (span - at)
    return load_per_length * both_ways * (span**2 + both_ways) / (24 * youngs_modulus * second_moment)


def critical_speed(
    masses: Number, positions: Number, span: Number, youngs_modulus: Number, second_moment: Number
) -> Number:
    """First critical speed of a light shaft on two supports that carries masses.

    Parameters
    ----------
    masses : Number
        Masses along the last axis [kg], each above zero; one mass may be a plain number.
    positions : Number
        Their places from the left support along the last axis [m], between the supports.
    span : Number
        Distance of the supports [m], above zero.
    youngs_modulus : Number
        Young's modulus [Pa], above zero.
    second_moment : Number
        Second moment of area [m^4], above zero.

    Returns
    -------
    Number
        Critical speed [rad/s], broadcast shape of span, youngs_modulus, second_moment and of masses and
        positions without their last axis.

    Raises
    ------
    ValueError
        A value outside its range, or a mass that does not hang between the supports.

    Notes
    -----
    Rayleigh: w^2 = g sum(m y) / sum(m y^2), y the sag under all the weights together; g cancels. Always at
    or above the true value, by 1 or 2 % for a few masses. Supports that give and a bent shaft lower it.

    Source
    ------
    Shigley's Mechanical Engineering Design, 9th ed., eq. 7-23 (from memory); worked example of Sarkar
    opened.

    Examples
    --------
    >>> round(critical_speed(100.0, 0.3, 0.9, 200e9, 6.3617e-7) / 6.2832, 1)
    51.8
    """
    _check_beam(span, youngs_modulus, second_moment)
    arguments.positive(masses=masses, positions=positions)
    m, x = np.broadcast_arrays(np.atleast_1d(masses), np.atleast_1d(positions))
    length, modulus, moment = (np.asarray(v)[..., None] for v in (span, youngs_modulus, second_moment))
    arguments.less("positions", x, "span", length)
    pairs = (x[..., None, :], length[..., None], modulus[..., None], moment[..., None], x[..., :, None])
    sag = np.sum(m[..., None, :] * simply_supported_point(1.0, *pairs), axis=-1)
    return arguments.plain(np.sqrt(np.sum(m * sag, axis=-1) / np.sum(m * sag**2, axis=-1)))


def _check_beam(span: Number, youngs_modulus: Number, second_moment: Number) -> None:
    arguments.positive(span=span, youngs_modulus=youngs_modulus, second_moment=second_moment)


def _check_place(name: str, place: Number, span: Number) -> None:
    arguments.not_negative(**{name: place})
    arguments.at_most(name, place, "span", span)
