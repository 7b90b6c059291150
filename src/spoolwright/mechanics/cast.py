"""A cast from the release to the water: how far it goes, what the spool does, where the energy stays.

The motion is integrated by cast_kernel.py, which is compiled on first use (some seconds, once, then kept) and
is imported only when a cast is asked for. The algebra is in docs/derivations/cast.md.
"""

from __future__ import annotations

from math import inf
from typing import Any

import numpy as np

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number
from spoolwright.mechanics.cast_cases import VARIANTS, Array, Cases
from spoolwright.mechanics.cast_result import Casts, Trace

__all__ = ["VARIANTS", "Casts", "Trace", "simulate", "trace", "warm"]

CHUNK = 4096
FIRST_LINES = 4096


def simulate(
    *,
    payload_mass: Number,
    payload_drag_area: Number,
    release_speed: Number,
    release_angle: Number,
    release_height: Number = 2.0,
    wind: Number = 0.0,
    air_density: Number = 1.225,
    spool_inertia: Number,
    full_radius: Number,
    arbor_radius: Number,
    spool_width: Number,
    packing: Number,
    line_diameter: Number,
    line_density: Number,
    line_length: Number,
    line_drag: Number = 0.0,
    bearing_constant: Number = 0.0,
    bearing_viscous: Number = 0.0,
    bearing_quadratic: Number = 0.0,
    windage: Number = 0.0,
    brake_magnetic: Number = 0.0,
    brake_centrifugal: Number = 0.0,
    brake_engages: Number = 0.0,
    level_wind_torque: Number = 0.0,
    thumb_force: Number = 0.0,
    slack_limit: Number = inf,
    rtol: Number = 1e-6,
    lip_friction: Number = 0.0,
    variant: str = "multiplier",
) -> Casts:
    """Cast a payload: distance, time, line out, slack, spool speed, and where the energy went.

    Parameters
    ----------
    payload_mass : Number
        Mass of what is cast [kg], above zero.
    payload_drag_area : Number
        Its drag coefficient times its frontal area [m^2], zero or more.
    release_speed : Number
        Speed once the spool is in step with the line [m/s], above zero.
    release_angle : Number
        Angle of release above the horizon [rad], -pi/2 to pi/2.
    release_height : Number
        Height of the rod tip above the water at release [m], zero or more.
    wind : Number
        Wind along the cast [m/s]; above zero from behind.
    air_density : Number
        Density of the air [kg/m^3], zero or more.
    spool_inertia : Number
        Moment of inertia of the bare spool [kg m^2], zero or more; the line is added.
    full_radius : Number
        Radius of the line on the spool at release, and of the rim that a thumb presses [m], above
        arbor_radius.
    arbor_radius : Number
        Radius of the bare arbor [m], above zero.
    spool_width : Number
        Width between the flanges [m], above zero.
    packing : Number
        Volume of line per volume of spool [-], above zero, at most 1.
    line_diameter : Number
        Diameter of the line [m], zero or more.
    line_density : Number
        Density of the line [kg/m^3], zero or more.
    line_length : Number
        Line that may leave the spool [m], above zero; what does not fit between arbor_radius and full_radius
        is not there.
    line_drag : Number
        Skin friction coefficient of the line in the air, on its wetted area [-], zero or more.
    bearing_constant : Number
        Torque of the bearings at any speed [N m], zero or more.
    bearing_viscous : Number
        Torque of the bearings per speed [N m s], zero or more.
    bearing_quadratic : Number
        Torque of the bearings per speed squared [N m s^2], zero or more.
    windage : Number
        Air torque on the spool per speed to the power 1.5 [N m s^1.5], zero or more.
    brake_magnetic : Number
        Torque of a magnetic brake per speed [N m s], zero or more.
    brake_centrifugal : Number
        Torque of brake blocks per speed squared above brake_engages squared [N m s^2], zero or more.
    brake_engages : Number
        Spool speed above which the blocks touch [rad/s], zero or more.
    level_wind_torque : Number
        Torque of a level wind that runs along [N m], zero or more.
    thumb_force : Number
        Friction of a thumb at the rim while the slack is over slack_limit [N], zero or more.
    slack_limit : Number
        Slack that the thumb lets stand [m], zero or more; infinite for no thumb.
    rtol : Number
        Relative error allowed in one step [-], 1e-13 to 0.01.
    lip_friction : Number
        Friction of the line at the lip of a fixed spool [N], zero or more.
    variant : str
        "multiplier"; "ideal thumb", where a thumb keeps the line from ever going slack; "fixed spool", where
        the line leaves at rest and the spool does not turn [-].

    Returns
    -------
    Casts
        Each field the broadcast shape of the inputs, units beside its name in `Casts` [m, s, J, rad/s].

    Raises
    ------
    ValueError
        A value outside its range, named; an arbor that is not below the full radius.
    ArithmeticError
        A cast that is not over after 100,000 steps, because a torque is far too large for its spool.

    Notes
    -----
    Tight: (m + mu s + I/r^2) v' = m a.t - skin - mu g (y - h) - I c v^2/(2 r^4) - M(w)/r, r w = v, with
    r^2 = R^2 - c L, c = d^2/(4 packing width), mu = line mass per length and t the direction of flight;
    M(w) = constant + viscous w + quadratic w^2 + windage w^1.5 + magnetic w + centrifugal
    max(w^2 - engages^2, 0) + level wind. Slack where the tension that this needs is below zero: then no
    tension, I w' = -M - thumb, slack grows at r w - v, and where it is used up payload and spool join with
    their momentum kept. Skin = 1/2 rho line_drag pi d s u |u|, u the speed less the wind along the path.
    Dormand and Prince's pair, each change located. Left out: the rod, guides, stretch, belly and lift of the
    line, a tumbling payload, start-up of the spool before release; slack line is taken to keep pace.

    Source
    ------
    Newton's laws for a string that follows the path of its end, derivation in the house. J. R. Dormand and
    P. J. Prince, J. Comput. Appl. Math. 6 (1980) 19 (coefficients; L. F. Shampine's interpolant, Math. Comp.
    46 (1986) 135), from memory and equal to those of SciPy's RK45.

    Examples
    --------
    >>> reel = dict(spool_inertia=2e-5, full_radius=0.022, arbor_radius=0.013, spool_width=0.042, packing=0.7)
    >>> line = dict(line_diameter=0.31e-3, line_density=1140, line_length=385, line_drag=0.0045)
    >>> sinker = dict(payload_mass=0.15, payload_drag_area=1.6e-4, release_speed=60, release_angle=0.7)
    >>> far = simulate(**sinker, **reel, **line, brake_magnetic=[2e-6, 6e-6])
    >>> bool(far.distance[0] > far.distance[1]), bool(far["peak_slack"][0] > far["peak_slack"][1])
    (True, True)
    """
    given = dict(locals())  # the names above, all of them, exactly as they were given
    variant = given.pop("variant")
    asked = Cases.of(given, variant)
    return Casts.of(_fly(asked), asked.shape, _kernel())


def trace(*, points: float = 6, variant: str = "multiplier", **cast: float) -> Trace:
    """Follow one cast against time: where the payload is, what the spool does, how much slack there is.

    Parameters
    ----------
    points : float
        Lines of the trace in each step of the integration [-], a whole number of 1 or more.
    variant : str
        As for `simulate` [-].
    **cast : float
        The arguments of `simulate`, one number each [SI units].

    Returns
    -------
    Trace
        Arrays of one length, from release to landing [s, m, m/s, rad/s, N]; where line and spool join, a time
        stands twice, before and after. `summary` holds what `simulate` gives.

    Raises
    ------
    ValueError
        A value outside its range, or more than one value for a name.

    Notes
    -----
    As `simulate`. Between the steps the interpolant of the method, of fourth order.

    Source
    ------
    As `simulate`.

    Examples
    --------
    >>> reel = dict(spool_inertia=2e-5, full_radius=0.022, arbor_radius=0.013, spool_width=0.042, packing=0.7)
    >>> line = dict(line_diameter=0.31e-3, line_density=1140, line_length=385)
    >>> sinker = dict(payload_mass=0.15, payload_drag_area=0, release_speed=40, release_angle=0.7)
    >>> flown = trace(**sinker, **reel, **line)
    >>> round(float(flown.time[0]), 1), round(float(flown.spool_speed[0]), 1)
    (0.0, 1818.2)
    """
    arguments.whole(1, points=points)
    asked = Cases.of(_with_defaults(cast), variant)
    if asked.size != 1:
        raise ValueError(f"trace follows one cast; came {asked.size}")
    kernel = _kernel()
    (_, case), *_ = asked.blocks(kernel, 1)
    results, lines = np.zeros((1, kernel.RESULTS)), np.zeros((FIRST_LINES, kernel.NOTED))
    noted = _run(case, results, lines, int(points))
    if noted > len(lines):
        lines = np.zeros((noted, kernel.NOTED))
        _run(case, results, lines, int(points))
    return Trace.of(lines[:noted], case[0], Casts.of(results, (), kernel), kernel)


def warm() -> None:
    """Have the cast compiled, or fetched from where it was kept, before somebody waits for it.

    Returns
    -------
    None

    Notes
    -----
    Compiling takes some seconds on a new machine; fetching less than one.

    Source
    ------
    None: it calculates nothing.

    Examples
    --------
    >>> warm()
    """
    _kernel()


def _kernel() -> Any:
    from spoolwright.mechanics import cast_kernel

    return cast_kernel


def _with_defaults(cast: dict[str, float]) -> dict[str, Any]:
    """Every argument of a cast, by name: simulate's own defaults where nothing was given."""
    known = simulate.__kwdefaults__ or {}
    wanted = [name for name in simulate.__annotations__ if name not in ("return", "variant")]
    if strange := sorted(set(cast) - set(wanted)):
        raise TypeError(f"a cast has no {strange[0]}; it has {', '.join(wanted)}")
    if missing := [name for name in wanted if name not in cast and name not in known]:
        raise TypeError(f"a cast needs {', '.join(missing)}")
    return {name: cast.get(name, known.get(name)) for name in wanted}


def _fly(asked: Cases) -> Array:
    kernel = _kernel()
    results = np.zeros((asked.size, kernel.RESULTS))
    no_trace = np.zeros((0, kernel.NOTED))
    for piece, block in asked.blocks(kernel, CHUNK):
        _run(block, results[piece], no_trace, 0)
    return results


def _run(block: Array, results: Array, lines: Array, points: int) -> int:
    kernel = _kernel()
    noted = int(kernel.fly(block, results, lines, points))
    if np.any(results[:, kernel.STATUS] == kernel.GAVE_UP):
        raise ArithmeticError(
            f"a cast is not over after {kernel.STEPS} steps: its torques are far too large for its spool"
        )
    return noted
