"""Judder: a spool held by its drag while the line, a spring, is pulled away at a steady speed."""

from __future__ import annotations

from dataclasses import dataclass
from functools import reduce
from typing import Any

import numpy as np
from numpy.typing import NDArray

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number
from spoolwright.mechanics.slip_motion import Slip, smooth_step

Array = NDArray[np.float64]

POINTS = 401
"""Points of a trace where no times are asked for."""


@dataclass(frozen=True)
class StickSlip:
    """What the line feels; floats for one case, arrays of the inputs' broadcast shape for many.

    `first_break`, `slip_time` and `stick_time` [s], the last two of the steady judder (zero where it runs
    smooth); `start_up_peak`, the highest pull of the start [N]; `highest_pull` and `lowest_pull`, between
    which it then swings [N]; `frequency` [Hz], zero where smooth; `runs_smooth`; `smooth_above` [m/s],
    infinite without damping: then no speed is smooth; `breaks`, how often it breaks away in the duration;
    `slack`: the reckoned pull falls below zero somewhere, where real line would go slack. The trace: `time`
    (n,) [s], `pull` [N], `stretch` [m], `speed` of the mass [m/s], each of the inputs' shape and (n,).
    """

    first_break: Number
    slip_time: Number
    stick_time: Number
    start_up_peak: Number
    highest_pull: Number
    lowest_pull: Number
    frequency: Number
    runs_smooth: bool | NDArray[np.bool_]
    smooth_above: Number
    breaks: Number
    slack: bool | NDArray[np.bool_]
    time: Array
    pull: Array
    stretch: Array
    speed: Array

    @property
    def swing(self) -> Number:
        """From the lowest to the highest pull of the steady judder [N]."""
        return self.highest_pull - self.lowest_pull


def stick_slip(
    mass: Number,
    stiffness: Number,
    pull_speed: Number,
    static_force: Number,
    kinetic_force: Number,
    duration: float,
    damping: Number = 0.0,
    times: Array | None = None,
) -> StickSlip:
    """How a drag starts and whether it judders, from event to event without any time steps.

    Parameters
    ----------
    mass : Number
        What is moved, seen from the line [kg], above zero; effective_mass gives it.
    stiffness : Number
        Stiffness of the line that is out [N/m], above zero; line.stiffness gives it.
    pull_speed : Number
        Speed at which the far end is pulled [m/s], above zero.
    static_force : Number
        Pull at which the drag lets go [N], kinetic_force or more.
    kinetic_force : Number
        Pull at which it slips [N], above zero.
    duration : float
        How long it is watched [s], above zero: for the trace and for `breaks`.
    damping : Number
        Force of the line's own damping over its stretching speed [N s/m], zero or more.
    times : array or None
        Moments of the trace [s], shape (n,), zero or more; None: 401 over the duration.

    Returns
    -------
    StickSlip
        Times [s], pulls [N], speeds [m/s], broadcast shape of the inputs; the trace with one more axis (n,).

    Raises
    ------
    ValueError
        A value outside its range, or a static force below the kinetic one.

    Notes
    -----
    From slack line at rest: the mass sticks until k s + c v = Fs, slips with m x'' = T - Fk,
    T = k s + c s', s' = v - x', and sticks again once x' = 0. Every later slip begins from the same state,
    so the motion repeats exactly. Undamped: T swings between Fk -+ sqrt((Fs - Fk)^2 + v^2 k m),
    slip (2 / w)(pi - atan((Fs - Fk) w / (k v))), stick 2 (Fs - Fk) / (k v), not Fs / (k v), which is only the
    first one. Leaves out: the fall of friction with speed, the rod, line that goes slack (`slack` says where
    that happens), the mass of the line in the air.

    Source
    ------
    Den Hartog, Mechanical Vibrations, and Thomsen & Fidlin 2003 (mass on a belt, from memory); derivation in
    the house.

    Examples
    --------
    >>> slow = stick_slip(1.0, 100.0, 1e-4, 4.0, 2.5, 1.0)
    >>> [round(float(pull), 3) for pull in (slow.start_up_peak, slow.highest_pull, slow.lowest_pull)]
    [4.0, 4.0, 1.0]
    >>> round(float(stick_slip(1.0, 100.0, 0.1, 4.0, 2.5, 1.0).slip_time), 5)
    0.43176
    """
    arguments.positive(mass=mass, stiffness=stiffness, pull_speed=pull_speed, kinetic_force=kinetic_force)
    arguments.positive(static_force=static_force, duration=duration)
    arguments.not_negative(damping=damping)
    arguments.at_least("static_force", static_force, "kinetic_force", kinetic_force)
    at = np.linspace(0.0, duration, POINTS) if times is None else np.asarray(times, dtype=np.float64)
    arguments.not_negative(times=at)
    given = (mass, stiffness, pull_speed, static_force, kinetic_force, damping)
    m, k, v, static, kinetic, c = np.broadcast_arrays(*(np.asarray(x, dtype=np.float64) for x in given))
    return _answers(_course(m, k, v, static, kinetic, c), float(duration), at)


@dataclass(frozen=True)
class _Course:
    """The first slip and all later ones, and how long each part takes; arrays of one shape."""

    first: Slip
    later: Slip
    stiffness: Array
    damping: Array
    first_break: Array
    first_slip: Array
    second_stick: Array
    slip: Array
    stick: Array

    @property
    def smooth(self) -> NDArray[np.bool_]:
        return np.asarray(np.isinf(self.first_slip) | np.isinf(self.slip))


def _course(m: Array, k: Array, v: Array, static: Array, kinetic: Array, c: Array) -> _Course:
    natural, decay = np.sqrt(k / m), c / (2 * m)
    first = Slip(m, natural, decay, v, kinetic, np.maximum(static, c * v))
    later = Slip(m, natural, decay, v, kinetic, static)
    slip = later.stops_after()
    first_slip = slip if np.array_equal(first.pull, static) else first.stops_after()
    breaks_at = (static - c * v) / k

    def rest(after: Slip, long: Array) -> Array:
        ended = after.stretch(np.where(np.isinf(long), 0.0, long))
        return np.where(np.isinf(long), 0.0, np.maximum((breaks_at - ended) / v, 0.0))

    first_break = np.maximum(breaks_at, 0.0) / v
    return _Course(
        first, later, k, c, first_break, first_slip, rest(first, first_slip), slip, rest(later, slip)
    )


def _answers(course: _Course, duration: float, at: Array) -> StickSlip:
    smooth, later = course.smooth, course.later
    kinetic = later.kinetic
    ending = np.where(np.isinf(course.slip), 0.0, course.slip)
    period = np.where(smooth, 1.0, ending + course.stick)
    trough = np.where(smooth, kinetic, later.trough(course.slip))
    lowest = np.minimum(trough, course.first.trough(course.first_slip))
    time, pull, stretch, speed = _trace(course, at)
    return StickSlip(
        first_break=arguments.plain(course.first_break),
        slip_time=arguments.plain(np.where(smooth, 0.0, ending)),
        stick_time=arguments.plain(np.where(smooth, 0.0, course.stick)),
        start_up_peak=arguments.plain(course.first.peak()),
        highest_pull=arguments.plain(np.where(smooth, kinetic, later.peak())),
        lowest_pull=arguments.plain(trough),
        frequency=arguments.plain(np.where(smooth, 0.0, 1.0 / period)),
        runs_smooth=_told(smooth),
        smooth_above=arguments.plain(_smooth_above(course)),
        breaks=arguments.plain(_breaks(course, duration)),
        slack=_told(lowest < 0),
        time=time,
        pull=pull,
        stretch=stretch,
        speed=speed,
    )


def _told(truth: Any) -> bool | NDArray[np.bool_]:
    return bool(truth) if np.ndim(truth) == 0 else np.asarray(truth)


def _smooth_above(course: _Course) -> Array:
    """Speed above which a slip never comes to rest: the step of friction over sqrt(k m) and the damping."""
    later = course.later
    impedance = later.mass * later.natural
    step = (later.pull - later.kinetic) / impedance
    least = smooth_step(np.asarray(later.decay / later.natural))
    return np.where(least > 0, step / np.where(least > 0, least, 1.0), np.inf)


def _breaks(course: _Course, duration: float) -> Array:
    """Break-aways at or before the end of the duration."""
    left = duration - course.first_break
    second = course.first_slip + course.second_stick
    period = np.where(course.smooth, np.inf, course.slip + course.stick)
    once = np.isinf(period) & np.isfinite(second) & (left >= second)
    many = np.floor(np.maximum(left - second, 0.0) / period) + 1
    more = np.where(once, 1.0, np.where(left >= second, many, 0.0))
    return np.where(left >= 0, 1.0 + more, 0.0)


def _trace(course: _Course, at: Array) -> tuple[Array, Array, Array, Array]:
    """Pull, stretch and speed of the mass at the moments asked for, each of shape (..., n)."""

    def wide(values: Array) -> Array:
        return np.asarray(values)[..., np.newaxis]

    def stuck(start: Array, since: Array) -> tuple[Array, Array, Array]:
        s = start + wide(course.later.speed) * since
        return wide(course.stiffness) * s + wide(course.damping * course.later.speed), s, np.zeros(s.shape)

    def slipping(slip: Slip, since: Array) -> tuple[Array, Array, Array]:
        one = Slip(*(wide(part) for part in vars(slip).values()))
        t = np.maximum(since, 0.0)
        return one.tension(t), one.stretch(t), wide(slip.speed) - one.stretch_rate(t)

    ends = [course.first.stretch(_finite(course.first_slip)), course.later.stretch(_finite(course.slip))]
    from_first = at - wide(course.first_break)
    from_second = from_first - wide(course.first_slip)
    from_third = _finite(from_second - wide(course.second_stick), otherwise=-1.0)
    period = wide(np.where(course.smooth, np.inf, course.slip + course.stick))
    phase = np.where(np.isinf(period), from_third, np.mod(from_third, _finite(period, otherwise=1.0)))
    parts = [
        (from_first < 0, stuck(wide(0 * course.first_break), at)),
        (from_second < 0, slipping(course.first, from_first)),
        (from_third < 0, stuck(wide(ends[0]), _finite(from_second))),
        (phase < wide(course.slip), slipping(course.later, phase)),
    ]
    last = stuck(wide(ends[1]), phase - wide(_finite(course.slip)))
    pull, stretch, speed = (
        reduce(lambda rest, part: np.where(part[0], part[1][n], rest), reversed(parts), last[n])
        for n in range(3)
    )
    return at, pull, stretch, np.maximum(speed, 0.0)


def _finite(values: Array, otherwise: float = 0.0) -> Array:
    return np.where(np.isfinite(values), values, otherwise)


def effective_mass(inertia: Number, radius: Number) -> Number:
    """What a turning spool weighs for the line that starts it.

    Parameters
    ----------
    inertia : Number
        Moment of inertia of all that turns with the spool [kg m^2], above zero.
    radius : Number
        Radius where the line leaves [m], above zero.

    Returns
    -------
    Number
        Mass [kg], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value that is not above zero and finite.

    Notes
    -----
    m = J / r^2. What turns slower through the gears adds its own inertia over the ratio squared.

    Source
    ------
    Kinetic energy J w^2 / 2 = m v^2 / 2 with v = w r, any mechanics text (from memory).

    Examples
    --------
    >>> round(effective_mass(1.2e-5, 0.020), 3)
    0.03
    """
    arguments.positive(inertia=inertia, radius=radius)
    return inertia / radius**2


def sliding_friction(
    speed: Number, static_force: Number, kinetic_force: Number, drop_speed: Number, viscous: Number = 0.0
) -> Number:
    """Friction that falls from static to kinetic as the slip gathers speed: what stick_slip leaves out.

    Parameters
    ----------
    speed : Number
        Speed of slip [m/s], zero or more.
    static_force : Number
        Friction at no speed [N], kinetic_force or more.
    kinetic_force : Number
        Friction at speed [N], zero or more.
    drop_speed : Number
        Speed in which the difference falls to 1/e [m/s], above zero.
    viscous : Number
        Friction that grows with speed [N s/m], zero or more.

    Returns
    -------
    Number
        Friction [N], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    F = Fk + (Fs - Fk) exp(-(v / vs)^2) + c v.

    Source
    ------
    Canudas de Wit, Olsson, Astrom, Lischinsky 1995, steady friction of their model (formula from memory).

    Examples
    --------
    >>> round(sliding_friction(0.001, 1.5, 1.0, 0.001, 0.4), 5)
    1.18434
    """
    arguments.not_negative(speed=speed, kinetic_force=kinetic_force, viscous=viscous)
    arguments.positive(drop_speed=drop_speed)
    arguments.at_least("static_force", static_force, "kinetic_force", kinetic_force)
    fallen = (static_force - kinetic_force) * np.exp(-((speed / drop_speed) ** 2))
    return arguments.plain(kinetic_force + fallen + viscous * speed)
