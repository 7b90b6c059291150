"""A rotor left to itself: how fast, how far and how long it turns against three kinds of drag.

All five functions solve inertia dw/dt = -(constant + viscous w + quadratic w^2) in closed form. They are
written so that any of the three drags may be small or zero without losing digits; the algebra is in
docs/derivations/coastdown.md.
"""

from __future__ import annotations

from typing import Any, NamedTuple

import numpy as np
from numpy.typing import NDArray

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number

Array = NDArray[np.float64]
SERIES_REACH = 3.0
SERIES_TERMS = 28
NEWTON_STEPS = 200


class _Drag(NamedTuple):
    """The three drags per inertia: a, b and e of dw/dt = -(a + b w + e w^2)."""

    a: Array
    b: Array
    e: Array


class _Answer(NamedTuple):
    """G, the answer of u'' + b u' + a e u = 0 to a knock: its slope and itself, both over `decay`."""

    rate: Array
    reach: Array
    decay: Array
    p: Array
    d: Array


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
    drag, w0 = _read(initial_speed, inertia, constant, viscous, quadratic)
    arguments.not_negative(time=time)
    stop = _time_between(w0, np.zeros(()), drag)
    moving = _speed(_respond(np.minimum(time, stop), drag), w0, drag)
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
    drag, w0 = _read(initial_speed, inertia, constant, viscous, quadratic)
    return arguments.plain(_time_between(w0, np.zeros(()), drag))


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
    drag, w0 = _read(initial_speed, inertia, constant, viscous, quadratic)
    arguments.not_negative(slower=slower)
    arguments.at_most("slower", slower, "initial_speed", initial_speed)
    return arguments.plain(_time_between(w0, np.minimum(slower, w0), drag))


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
    drag, w0 = _read(initial_speed, inertia, constant, viscous, quadratic)
    arguments.not_negative(time=time)
    t = np.minimum(time, _time_between(w0, np.zeros(()), drag))
    return arguments.plain(_angle(t, _respond(t, drag), w0, drag))


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
    drag, w0 = _read(initial_speed, inertia, constant, viscous, quadratic)
    arguments.not_negative(angle=angle)
    whole = _whole_angle(w0, drag)
    target = np.where(angle <= whole, angle, 0.0)
    t = np.zeros(np.broadcast(target, w0, drag.a, drag.b, drag.e).shape)
    for _ in range(NEWTON_STEPS):
        g = _respond(t, drag)
        short = np.maximum(target - _angle(t, g, w0, drag), 0.0)
        now = _speed(g, w0, drag)
        further = t + short / np.where(now > 0, now, np.inf)
        if np.array_equal(further, t):
            break
        t = further
    return arguments.plain(np.where(angle <= whole, t, np.inf))


def _read(
    initial_speed: Number, inertia: Number, constant: Number, viscous: Number, quadratic: Number
) -> tuple[_Drag, Array]:
    arguments.not_negative(
        initial_speed=initial_speed, constant=constant, viscous=viscous, quadratic=quadratic
    )
    arguments.positive(inertia=inertia)
    drag = _Drag(*(np.asarray(torque / inertia) for torque in (constant, viscous, quadratic)))
    return drag, np.asarray(initial_speed, dtype=float)


def _time_between(fast: Array, slow: Array, drag: _Drag) -> Array:
    """Time from one speed down to another: the arctangent or the logarithm, by the sign of b^2 - 4 a e."""
    a, b, e = drag
    lost = fast - slow
    square = b * b - 4 * a * e
    swings = square < 0
    root = np.sqrt(np.abs(square))
    mean = 2 * a + b * (fast + slow) + 2 * e * fast * slow
    less_root = _ratio(4 * a * e, b + root, 0.0)
    tilted = 2 * a + less_root * fast + (b + root) * slow + 2 * e * fast * slow
    step = _ratio(2 * lost, np.where(swings, mean, tilted), np.inf)
    x = root * np.where(np.isfinite(step), step, 0.0)
    bent = np.where(swings, _ratio(np.arctan(x / 2), x / 2, 1.0), _ratio(np.log1p(x), x, 1.0))
    return np.where(lost > 0, step * bent, 0.0)


def _respond(t: Array, drag: _Drag) -> _Answer:
    p, d = drag.b * t, drag.a * drag.e * t * t
    square = p * p - 4 * d
    swings = square < 0
    root = np.sqrt(np.abs(square))
    less = _ratio(2 * d, p + root, 0.0)
    bulk = np.where(swings, np.sinc(root / (2 * np.pi)), _fading(root))
    rate = np.where(swings, np.cos(root / 2) - p / 2 * bulk, np.exp(-root) - less * bulk)
    return _Answer(rate, bulk * t, np.exp(-np.where(swings, p / 2, less)), p, d)


def _speed(g: _Answer, w0: Array, drag: _Drag) -> Array:
    slower = (w0 * g.rate - drag.a * g.reach) / (g.rate + (drag.b + drag.e * w0) * g.reach)
    return np.clip(slower, 0.0, w0)


def _angle(t: Array, g: _Answer, w0: Array, drag: _Drag) -> Array:
    y = w0 * g.reach * g.decay - drag.a * t * t * _second_integral(t, g)
    return y * _ratio(np.log1p(drag.e * y), drag.e * y, 1.0)


def _second_integral(t: Array, g: _Answer) -> Array:
    """Integral of G from 0 to t over t^2, by whichever of three equal forms keeps its digits."""
    near = g.p + 2 * np.sqrt(g.d) < SERIES_REACH
    answer = _series(np.where(near, g.p, 0.0), np.where(near, g.d, 0.0))
    even = 8 * g.d >= g.p**2
    closed = 1 - g.decay * (g.rate + g.p * _ratio(g.reach, t, 1.0))
    root = np.sqrt(np.maximum(g.p**2 - 4 * g.d, 0.0))
    less = _ratio(2 * g.d, g.p + root, 0.0)
    apart = _ratio(_fading(less) - _fading(less + root), root, 0.5)
    return np.where(near, answer, np.where(even, _ratio(closed, g.d, 0.5), apart))


def _series(p: Array, d: Array) -> Array:
    """Sum of (-1)^n h_n / (n + 2)!, where h_n = p h_(n-1) - d h_(n-2) and h_0 = 1."""
    total: Array = np.zeros(np.broadcast(p, d).shape)
    before, term, scale = np.zeros_like(total), np.ones_like(total), 0.5
    for n in range(SERIES_TERMS):
        total = total + scale * term
        before, term = term, p * term - d * before
        scale = -scale / (n + 3)
    return total


def _whole_angle(w0: Array, drag: _Drag) -> Array:
    """Angle until rest; where no constant drag ends it, the limit that viscous drag sets, else no limit."""
    stop = _time_between(w0, np.zeros(()), drag)
    t = np.where(np.isfinite(stop), stop, 0.0)
    ended = _angle(t, _respond(t, drag), w0, drag)
    fading = _ratio(w0, drag.b, np.inf)
    grown = drag.e * np.where(np.isfinite(fading), fading, 0.0)
    return np.where(np.isfinite(stop), ended, fading * _ratio(np.log1p(grown), grown, 1.0))


def _fading(x: Array) -> Array:
    """(1 - e^-x) / x, which is 1 at zero."""
    return _ratio(-np.expm1(-x), x, 1.0)


def _ratio(above: Any, below: Any, at_zero: float) -> Array:
    """above / below, with a stated value where below is zero."""
    zero = np.equal(below, 0)
    with np.errstate(over="ignore"):  # a drag of 1e-320 stands for none, and its time for infinity
        answer: Array = np.where(zero, at_zero, above / np.where(zero, 1.0, below))
    return answer
