"""A stack of flat friction faces: the torque at which it slips, the force it needs, the pressure it feels."""

from __future__ import annotations

from math import pi

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number

MODELS = ("uniform-wear", "uniform-pressure")


def effective_radius(outer_radius: Number, inner_radius: Number, model: str = "uniform-wear") -> Number:
    """Radius at which the whole friction force of a ring-shaped face may be thought to act.

    Parameters
    ----------
    outer_radius : Number
        Where the face ends [m], above zero.
    inner_radius : Number
        Where the face begins [m], zero or more, less than outer_radius.
    model : str
        "uniform-wear" (a face that has run in) or "uniform-pressure" (a new, flat, rigidly backed one) [-].

    Returns
    -------
    Number
        Effective radius [m], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A radius that is not a length, an inner radius that is not inside, an unknown model.

    Notes
    -----
    uniform wear: (ro + ri) / 2; uniform pressure: 2/3 (ro^3 - ri^3) / (ro^2 - ri^2), written here as
    2/3 (ro + ri - ro ri / (ro + ri)) so that narrow faces lose no digits. A ratio ri / ro of 0.5 makes
    the second 3.7 % larger, a ratio of 0.8 only 0.4 %; see docs/derivations/clutch.md.

    Source
    ------
    Shigley's Mechanical Engineering Design, ch. 16, plate clutches (from memory).

    Examples
    --------
    >>> round(effective_radius(0.0125, 0.0075), 6)
    0.01
    """
    arguments.positive(outer_radius=outer_radius)
    arguments.not_negative(inner_radius=inner_radius)
    arguments.less("inner_radius", inner_radius, "outer_radius", outer_radius)
    arguments.one_of(MODELS, model=model)
    if model == "uniform-wear":
        return (outer_radius + inner_radius) / 2
    both = outer_radius + inner_radius
    return (both - outer_radius * inner_radius / both) * 2 / 3


def friction_torque(
    clamp_force: Number,
    outer_radius: Number,
    inner_radius: Number,
    friction: Number,
    faces: Number = 1,
    model: str = "uniform-wear",
) -> Number:
    """Torque at which a stack of equal friction faces slips.

    Parameters
    ----------
    clamp_force : Number
        Force that presses the stack together [N], zero or more.
    outer_radius : Number
        Where the face ends [m], above zero.
    inner_radius : Number
        Where the face begins [m], zero or more, less than outer_radius.
    friction : Number
        Friction coefficient of the pair [-], zero or more.
    faces : Number
        Slipping pairs of faces, not washers [-], a whole number of 1 or more.
    model : str
        "uniform-wear" or "uniform-pressure" [-].

    Returns
    -------
    Number
        Slip torque [N m], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A negative or unreadable value, an inner radius that is not inside, an unknown model.

    Notes
    -----
    T = friction clamp_force faces effective_radius. Every pair feels the same clamp force; friction
    between a washer's ears or splines and its partner, which eats a few per cent of the force from pair
    to pair, is left out.

    Source
    ------
    Shigley's Mechanical Engineering Design, ch. 16; Khurmi & Gupta, Theory of Machines, ch. 10
    (from memory; worked examples of the second opened, see tests/reference/test_clutch.py).

    Examples
    --------
    >>> round(friction_torque(400.0, 0.0125, 0.0075, 0.15), 3)
    0.6
    """
    arguments.not_negative(clamp_force=clamp_force, friction=friction)
    arguments.whole(1, faces=faces)
    return clamp_force * friction * faces * effective_radius(outer_radius, inner_radius, model)


def clamp_force(
    torque: Number,
    outer_radius: Number,
    inner_radius: Number,
    friction: Number,
    faces: Number = 1,
    model: str = "uniform-wear",
) -> Number:
    """Force that must press the stack together for it to slip at a wanted torque.

    Parameters
    ----------
    torque : Number
        Slip torque wanted [N m], zero or more.
    outer_radius : Number
        Where the face ends [m], above zero.
    inner_radius : Number
        Where the face begins [m], zero or more, less than outer_radius.
    friction : Number
        Friction coefficient of the pair [-], above zero.
    faces : Number
        Slipping pairs of faces [-], a whole number of 1 or more.
    model : str
        "uniform-wear" or "uniform-pressure" [-].

    Returns
    -------
    Number
        Clamp force [N], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        As friction_torque; also a friction coefficient of zero.

    Notes
    -----
    clamp_force = torque / (friction faces effective_radius): the inverse of friction_torque.

    Source
    ------
    As friction_torque.

    Examples
    --------
    >>> round(clamp_force(0.6, 0.0125, 0.0075, 0.15), 3)
    400.0
    """
    arguments.not_negative(torque=torque)
    arguments.positive(friction=friction)
    arguments.whole(1, faces=faces)
    return torque / (friction * faces * effective_radius(outer_radius, inner_radius, model))


def peak_pressure(
    clamp_force: Number, outer_radius: Number, inner_radius: Number, model: str = "uniform-wear"
) -> Number:
    """Highest pressure anywhere on a face, to hold against the limit of its material.

    Parameters
    ----------
    clamp_force : Number
        Force that presses the face [N], zero or more.
    outer_radius : Number
        Where the face ends [m], above zero.
    inner_radius : Number
        Where the face begins [m], less than outer_radius; above zero for "uniform-wear".
    model : str
        "uniform-wear" or "uniform-pressure" [-].

    Returns
    -------
    Number
        Peak pressure [Pa], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        As effective_radius; also an inner radius of zero for "uniform-wear", where the pressure at the
        centre has no bound.

    Notes
    -----
    uniform wear: F / (2 pi ri (ro - ri)), at the inner edge; uniform pressure: F / (pi (ro^2 - ri^2)).
    Slots and oil grooves take area away and raise both.

    Source
    ------
    Khurmi & Gupta, Theory of Machines, ch. 10 (worked examples opened).

    Examples
    --------
    >>> round(peak_pressure(400.0, 0.0125, 0.0075))
    1697653
    """
    arguments.not_negative(clamp_force=clamp_force)
    arguments.one_of(MODELS, model=model)
    arguments.positive(outer_radius=outer_radius)
    if model == "uniform-wear":
        arguments.positive(inner_radius=inner_radius)
    else:
        arguments.not_negative(inner_radius=inner_radius)
    arguments.less("inner_radius", inner_radius, "outer_radius", outer_radius)
    width = outer_radius - inner_radius
    if model == "uniform-wear":
        return clamp_force / (2 * pi * inner_radius * width)
    return clamp_force / (pi * width * (outer_radius + inner_radius))
