"""A rotor left to itself: how fast, how far and how long it turns against three kinds of drag.

All five functions read inertia dw/dt = -(constant + viscous w + quadratic w^2), which riccati.py solves in
closed form; the algebra is in docs/derivations/coastdown.md.
"""

from __future__ import annotations

import numpy as np

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number
from spoolwright.mechanics.riccati import Slowing

NEWTON_STEPS = 200


def speed(
    time: Number,
    initial_speed: Number,
    inertia: Number,
    constant: Number,
    viscous: Number = 0.0,
    quadratic: Number = 0.0,
) -> Number:
    """Speed of a coasting rotor after a time; zero once it has stopped.

    Parameters
    ----------
    time : Number
        Time since it was left to itself [s], zero or more.
    initial_speed : Number
        Speed at time zero [rad/s], zero or more.
    inertia : Number
        Moment of inertia [kg m^2], above zero; 1 where the drags are given per unit inertia.
    constant : Number
        Drag torque that does not depend on speed [N m], zero or more.
    viscous : Number
        Drag torque per speed [N m s], zero or more.
    quadratic : Number
        Drag torque per speed squared [N m s^2], zero or more.

    Returns
    -------
    Number
        Speed [rad/s], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A negative or unreadable value.

    Notes
    -----
    w = (w0 G' - a G) / (G' + (b + e w0) G), with a, b, e the drags per inertia and G the impulse response
    of u'' + b u' + a e u = 0. Bearings start to drag more just before they stop; the law does not know it.

    Source
    ------
    Riccati's equation made linear, any text on differential equations; derivation in the house.

    Examples
    --------
    >>> round(speed(5.0, 100.0, 1e-5, 1e-4), 6)
    50.0
    """
    rotor = _rotor(initial_speed, inertia, constant, viscous, quadratic)
    arguments.not_negative(time=time)
    stop = rotor.stop_time()
    moving = rotor.speed(np.minimum(time, stop))
    return arguments.plain(np.where(time >= stop, 0.0, moving))


def stop_time(
    initial_speed: Number,
    inertia: Number,
    constant: Number,
    viscous: Number = 0.0,
    quadratic: Number = 0.0,
) -> Number:
    """Time that a coasting rotor takes to come to rest.

    Parameters
    ----------
    initial_speed : Number
        Speed at time zero [rad/s], zero or more.
    inertia : Number
        Moment of inertia [kg m^2], above zero; 1 where the drags are given per unit inertia.
    constant : Number
        Drag torque that does not depend on speed [N m], zero or more.
    viscous : Number
        Drag torque per speed [N m s], zero or more.
    quadratic : Number
        Drag torque per speed squared [N m s^2], zero or more.

    Returns
    -------
    Number
        Time [s], broadcast shape of the inputs; infinite where constant is zero, because the other two
        drags fade with the speed. Zero for a rotor that does not turn.

    Raises
    ------
    ValueError
        A negative or unreadable value.

    Notes
    -----
    The integral of inertia dw / (constant + viscous w + quadratic w^2) from zero to initial_speed.

    Source
    ------
    Separation of variables, any text on differential equations; derivation in the house.

    Examples
    --------
    >>> round(stop_time(100.0, 1e-5, 1e-4), 6)
    10.0
    """
    rotor = _rotor(initial_speed, inertia, constant, viscous, quadratic)
    return arguments.plain(rotor.stop_time())


def time_at_speed(
    slower: Number,
    initial_speed: Number,
    inertia: Number,
    constant: Number,
    viscous: Number = 0.0,
    quadratic: Number = 0.0,
) -> Number:
    """Time at which a coasting rotor has slowed down to a speed: the inverse of `speed`.

    Parameters
    ----------
    slower : Number
        Speed to wait for [rad/s], zero or more, at most initial_speed.
    initial_speed : Number
        Speed at time zero [rad/s], zero or more.
    inertia : Number
        Moment of inertia [kg m^2], above zero; 1 where the drags are given per unit inertia.
    constant : Number
        Drag torque that does not depend on speed [N m], zero or more.
    viscous : Number
        Drag torque per speed [N m s], zero or more.
    quadratic : Number
        Drag torque per speed squared [N m s^2], zero or more.

    Returns
    -------
    Number
        Time [s], broadcast shape of the inputs; infinite where that speed is never reached.

    Raises
    ------
    ValueError
        A negative or unreadable value, a speed above initial_speed.

    Notes
    -----
    As stop_time, integrated from slower to initial_speed.

    Source
    ------
    As stop_time.

    Examples
    --------
    >>> round(time_at_speed(50.0, 100.0, 1e-5, 1e-4), 6)
    5.0
    """
    rotor = _rotor(initial_speed, inertia, constant, viscous, quadratic)
    arguments.not_negative(slower=slower)
    arguments.at_most("slower", slower, "initial_speed", initial_speed)
    return arguments.plain(rotor.time_down_to(np.minimum(slower, initial_speed)))


def angle(
    time: Number,
    initial_speed: Number,
    inertia: Number,
    constant: Number,
    viscous: Number = 0.0,
    quadratic: Number = 0.0,
) -> Number:
    """Angle through which a coasting rotor has turned after a time; it stays once the rotor has stopped.

    Parameters
    ----------
    time : Number
        Time since it was left to itself [s], zero or more.
    initial_speed : Number
        Speed at time zero [rad/s], zero or more.
    inertia : Number
        Moment of inertia [kg m^2], above zero; 1 where the drags are given per unit inertia.
    constant : Number
        Drag torque that does not depend on speed [N m], zero or more.
    viscous : Number
        Drag torque per speed [N m s], zero or more.
    quadratic : Number
        Drag torque per speed squared [N m s^2], zero or more.

    Returns
    -------
    Number
        Angle [rad], broadcast shape of the inputs; divide by 2 pi for turns.

    Raises
    ------
    ValueError
        A negative or unreadable value.

    Notes
    -----
    angle = ln(1 + e y) / e with y = w0 G - a (integral of G), letters as in speed; y itself where e is
    zero.

    Source
    ------
    As speed.

    Examples
    --------
    >>> round(angle(5.0, 100.0, 1e-5, 1e-4), 6)
    375.0
    """
    rotor = _rotor(initial_speed, inertia, constant, viscous, quadratic)
    arguments.not_negative(time=time)
    return arguments.plain(rotor.angle(np.minimum(time, rotor.stop_time())))


def time_at_angle(
    angle: Number,
    initial_speed: Number,
    inertia: Number,
    constant: Number,
    viscous: Number = 0.0,
    quadratic: Number = 0.0,
) -> Number:
    """Time at which a coasting rotor has turned through an angle: the inverse of `angle`, for tick times.

    Parameters
    ----------
    angle : Number
        Angle to wait for [rad], zero or more.
    initial_speed : Number
        Speed at time zero [rad/s], zero or more.
    inertia : Number
        Moment of inertia [kg m^2], above zero; 1 where the drags are given per unit inertia.
    constant : Number
        Drag torque that does not depend on speed [N m], zero or more.
    viscous : Number
        Drag torque per speed [N m s], zero or more.
    quadratic : Number
        Drag torque per speed squared [N m s^2], zero or more.

    Returns
    -------
    Number
        Time [s], broadcast shape of the inputs; infinite where the rotor stops before.

    Raises
    ------
    ValueError
        A negative or unreadable value.

    Notes
    -----
    Newton's method on `angle` from zero: the curve bends down all the way, so every step falls short of
    the answer and none passes it. Within a thousandth of a turn of the stop the time is as uncertain as
    the stop itself.

    Source
    ------
    As speed.

    Examples
    --------
    >>> round(time_at_angle(375.0, 100.0, 1e-5, 1e-4), 6)
    5.0
    """
    rotor = _rotor(initial_speed, inertia, constant, viscous, quadratic)
    arguments.not_negative(angle=angle)
    whole = rotor.whole_angle()
    target = np.where(angle <= whole, angle, 0.0)
    t = np.zeros(np.broadcast(target, whole).shape)
    for _ in range(NEWTON_STEPS):
        now = rotor.speed(t)
        short = np.maximum(target - rotor.angle(t), 0.0)
        further = t + short / np.where(now > 0, now, np.inf)
        if np.array_equal(further, t):
            break
        t = further
    return arguments.plain(np.where(angle <= whole, t, np.inf))


def _rotor(
    initial_speed: Number, inertia: Number, constant: Number, viscous: Number, quadratic: Number
) -> Slowing:
    arguments.not_negative(
        initial_speed=initial_speed, constant=constant, viscous=viscous, quadratic=quadratic
    )
    arguments.positive(inertia=inertia)
    a, b, e = (np.asarray(torque / inertia) for torque in (constant, viscous, quadratic))
    return Slowing(np.asarray(initial_speed, dtype=float), a, b, e)
