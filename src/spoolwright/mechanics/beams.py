"""Shafts and bars on two supports: how far they bend, and the speed at which they whip."""

from __future__ import annotations

from math import pi
from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number
from spoolwright.mechanics.bent_line import BentLine

LUMPS = 24
"""Pieces into which a cylinder's own weight is cut for its critical speed."""


class BentShaft(NamedTuple):
    """What a shaft does at the places asked for; `reactions` are the two bearings' forces on the shaft."""

    deflection: Number
    slope: Number
    moment: Number
    bending_stress: Number
    reactions: NDArray[np.float64]


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
    masses: ArrayLike, positions: ArrayLike, span: Number, youngs_modulus: Number, second_moment: Number
) -> Number:
    """First critical speed of a light shaft on two supports that carries masses.

    Parameters
    ----------
    masses : ArrayLike
        Masses along the last axis [kg], each above zero; a list will do, one mass may be a plain number.
    positions : ArrayLike
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
    >>> round(critical_speed([60.0, 40.0], [0.3, 0.3], 0.9, 200e9, 6.3617e-7) / 6.2832, 1)
    51.8
    """
    _check_beam(span, youngs_modulus, second_moment)
    m, x = np.broadcast_arrays(*(np.atleast_1d(np.asarray(v, float)) for v in (masses, positions)))
    arguments.positive(masses=m, positions=x)
    length, modulus, moment = (np.asarray(v)[..., None] for v in (span, youngs_modulus, second_moment))
    arguments.less("positions", x, "span", length)
    pairs = (x[..., None, :], length[..., None], modulus[..., None], moment[..., None], x[..., :, None])
    sag = np.sum(m[..., None, :] * simply_supported_point(1.0, *pairs), axis=-1)
    return arguments.plain(np.sqrt(np.sum(m * sag, axis=-1) / np.sum(m * sag**2, axis=-1)))


def stepped_shaft(
    forces: ArrayLike,
    positions: ArrayLike,
    lengths: ArrayLike,
    diameters: ArrayLike,
    youngs_modulus: float,
    supports: ArrayLike,
    at: ArrayLike,
) -> BentShaft:
    """How a stepped round shaft on two bearings bends under forces across it.

    Parameters
    ----------
    forces : ArrayLike
        Forces across the shaft along the last axis [N], any sign; one force may be a plain number.
    positions : ArrayLike
        Where each acts, from the left end of the shaft [m], same last axis.
    lengths : ArrayLike
        Lengths of the cylinders from the left end [m], shape (n,), each above zero.
    diameters : ArrayLike
        Their diameters [m], shape (n,), each above zero.
    youngs_modulus : float
        Young's modulus [Pa], above zero.
    supports : ArrayLike
        Places of the two bearings from the left end [m], rising; the shaft may overhang either.
    at : ArrayLike
        Places asked for, from the left end, along the last axis [m]; a plain number gives plain numbers.

    Returns
    -------
    BentShaft
        Deflection [m], slope [rad], moment [N m] and bending stress [Pa] at each place, shape of forces
        without its last axis and then of at; reactions [N] with a last axis of 2. Deflection is positive
        with the force, moment where it bends the middle that way.

    Raises
    ------
    ValueError
        A value outside its range, or a force, bearing or place off the shaft.

    Notes
    -----
    y'' = -M / (E I) integrated in closed form from break to break, two constants from y = 0 at the bearings.
    At a step the stress is that of the thinner side, without the notch of its corner (1.5 to 2.5 times for
    a sharp one). Bearings give no moment; shear is left out as in simply_supported_point.

    Source
    ------
    Double integration of the beam equation; Shigley's Mechanical Engineering Design, 9th ed., ch. 4 and
    example 7-3 (opened), whose shaft the tests hold.

    Examples
    --------
    >>> bent = stepped_shaft(100.0, 0.025, [0.05], [0.004], 207e9, [0.0, 0.05], at=0.025)
    >>> round(bent.deflection * 1e3, 4), round(bent.bending_stress / 1e6)
    (0.1001, 199)
    """
    ends, widths = _cylinders(lengths, diameters)
    arguments.positive(youngs_modulus=youngs_modulus)
    left, right = _bearings(supports, ends[-1])
    f, x = np.broadcast_arrays(*(np.atleast_1d(np.asarray(v, float)) for v in (forces, positions)))
    arguments.finite(forces=f)
    places = np.atleast_1d(np.asarray(at, dtype=float))
    for name, where in (("positions", x), ("at", places)):
        arguments.not_negative(**{name: where})
        arguments.at_most(name, where, "the shaft's length", ends[-1])
    away = np.sum(f * (x - left), axis=-1, keepdims=True) / (right - left)
    bearings = np.concatenate([np.sum(f, axis=-1, keepdims=True) - away, away], axis=-1)
    loads = np.concatenate([f, -bearings], axis=-1)
    points = np.concatenate([x, np.broadcast_to([left, right], bearings.shape)], axis=-1)
    shape = (*f.shape[:-1], len(places))
    asked = np.broadcast_to(places, shape)
    curve = BentLine(loads, points, ends, widths, youngs_modulus, asked)
    moment, slope, deflection = curve.of(asked, (left, right))
    beside = np.stack([np.searchsorted(ends[:-1], places, side) for side in ("left", "right")])
    thinner = np.min(widths[beside], axis=0)
    stress = 32 * np.abs(moment) / (pi * thinner**3)
    if np.ndim(at) > 0:
        return BentShaft(deflection, slope, moment, stress, bearings)
    one = [arguments.plain(row[..., 0]) for row in (deflection, slope, moment, stress)]
    return BentShaft(one[0], one[1], one[2], one[3], bearings)


def stepped_critical_speed(
    masses: ArrayLike,
    positions: ArrayLike,
    lengths: ArrayLike,
    diameters: ArrayLike,
    youngs_modulus: float,
    supports: ArrayLike,
    density: float = 0.0,
) -> float:
    """First critical speed of a stepped shaft on two bearings that carries masses.

    Parameters
    ----------
    masses : ArrayLike
        Masses on the shaft, shape (m,) [kg], each above zero; one mass may be a plain number.
    positions : ArrayLike
        Their places from the left end, shape (m,) [m]; a mass in a bearing counts for nothing.
    lengths : ArrayLike
        Lengths of the cylinders from the left end [m], shape (n,), each above zero.
    diameters : ArrayLike
        Their diameters [m], shape (n,), each above zero.
    youngs_modulus : float
        Young's modulus [Pa], above zero.
    supports : ArrayLike
        Places of the two bearings from the left end [m], rising.
    density : float
        Density of the shaft [kg/m^3], zero or more; zero leaves its own weight out.

    Returns
    -------
    float
        Critical speed [rad/s].

    Raises
    ------
    ValueError
        A value outside its range, or a mass or bearing off the shaft.

    Notes
    -----
    Largest eigenvalue of (bend per unit force) times (mass): exact for the masses; the shaft's own weight in
    24 lumps each cylinder, which is within 0.1 %. Gyroscopic stiffening and giving bearings are left out.

    Source
    ------
    Influence coefficients, Shigley's Mechanical Engineering Design, 9th ed., eqs 7-24 to 7-30 (from
    memory); Sarkar's worked examples opened.

    Examples
    --------
    >>> round(stepped_critical_speed(100.0, 0.3, [0.9], [0.06], 200e9, [0.0, 0.9]) / 6.2832, 1)
    51.8
    """
    m, x = np.broadcast_arrays(*(np.atleast_1d(np.asarray(v, float)) for v in (masses, positions)))
    arguments.positive(masses=m)
    arguments.not_negative(density=density)
    ends, widths = _cylinders(lengths, diameters)
    if density > 0:
        steps = np.diff(ends, prepend=0.0)
        lumps = (np.arange(LUMPS) + 0.5) / LUMPS
        own = np.repeat(density * pi / 4 * widths**2 * steps / LUMPS, LUMPS)
        m = np.concatenate([m, own])
        x = np.concatenate([x, (ends - steps)[:, None] + steps[:, None] * lumps], axis=None)
    give = stepped_shaft(np.ones((len(x), 1)), x[:, None], lengths, diameters, youngs_modulus, supports, x)
    root = np.sqrt(m)
    largest = np.linalg.eigvalsh(root[:, None] * np.asarray(give.deflection) * root)[-1]
    return float(1 / np.sqrt(largest))


def _cylinders(lengths: ArrayLike, diameters: ArrayLike) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    steps, widths = np.atleast_1d(np.asarray(lengths, float)), np.atleast_1d(np.asarray(diameters, float))
    arguments.positive(lengths=steps, diameters=widths)
    if steps.shape != widths.shape or steps.ndim != 1:
        raise ValueError(f"diameters must be one for each of the {steps.size} lengths; came {widths.size}")
    return np.cumsum(steps), widths


def _bearings(supports: ArrayLike, length: float) -> tuple[float, float]:
    places = np.asarray(supports, dtype=float)
    if places.shape != (2,):
        raise ValueError(f"supports must be two places; came {places.size}")
    arguments.not_negative(supports=places)
    arguments.at_most("supports", places, "the shaft's length", length)
    arguments.less("supports", float(places[0]), "the second of them", float(places[1]))
    return float(places[0]), float(places[1])


def _check_beam(span: Number, youngs_modulus: Number, second_moment: Number) -> None:
    arguments.positive(span=span, youngs_modulus=youngs_modulus, second_moment=second_moment)


def _check_place(name: str, place: Number, span: Number) -> None:
    arguments.not_negative(**{name: place})
    arguments.at_most(name, place, "span", span)
