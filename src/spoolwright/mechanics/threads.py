"""A screw pulled up with a torque: the star on its shaft, a cap, a frame screw."""

from __future__ import annotations

from math import pi, radians

import numpy as np

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number

METRIC_FLANK = radians(30)
"""Flank angle of metric and unified threads, half of the 60 degrees between two flanks."""


def tightening_torque(
    axial_force: Number,
    pitch: Number,
    pitch_diameter: Number,
    thread_friction: Number,
    flank_angle: Number = METRIC_FLANK,
    bearing_radius: Number = 0.0,
    bearing_friction: Number = 0.0,
) -> Number:
    """Torque that a screw asks for while it builds up an axial force.

    Parameters
    ----------
    axial_force : Number
        Force along the screw [N], zero or more.
    pitch : Number
        Advance of the nut in one turn [m], above zero; the lead, where there are several starts.
    pitch_diameter : Number
        Mean diameter of the thread [m], above zero.
    thread_friction : Number
        Friction coefficient in the thread [-], zero or more.
    flank_angle : Number
        Angle between a flank and a plane square to the screw [rad], zero (square thread) or more, below
        a right angle; 30 degrees for metric and unified threads.
    bearing_radius : Number
        Mean radius where the turning head or star rubs [m], zero or more.
    bearing_friction : Number
        Friction coefficient there [-], zero or more.

    Returns
    -------
    Number
        Torque [N m], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range, or a thread so steep and rough that no torque drives it.

    Notes
    -----
    T = F dm/2 (l + pi f dm sec a) / (pi dm - f l sec a) + F fb rb, with l the lead and a the flank angle
    (sec a taken in the axial plane, which is right within 1 % for lead angles below 8 degrees).
    The share that stretches is small: of a dry metric screw's torque about a tenth does the clamping.

    Source
    ------
    Shigley's Mechanical Engineering Design, 9th ed., eqs 8-1, 8-5 and 8-6 (from memory).

    Examples
    --------
    >>> round(tightening_torque(600.0, 0.75e-3, 5.5e-3, 0.12), 3)
    0.302
    """
    arguments.not_negative(axial_force=axial_force)
    return axial_force * _torque_per_force(
        pitch, pitch_diameter, thread_friction, flank_angle, bearing_radius, bearing_friction
    )


def axial_force(
    torque: Number,
    pitch: Number,
    pitch_diameter: Number,
    thread_friction: Number,
    flank_angle: Number = METRIC_FLANK,
    bearing_radius: Number = 0.0,
    bearing_friction: Number = 0.0,
) -> Number:
    """Force along a screw that a torque builds up: how hard a hand on the star clamps the stack.

    Parameters
    ----------
    torque : Number
        Torque on the screw or nut [N m], zero or more.
    pitch : Number
        Advance of the nut in one turn [m], above zero; the lead, where there are several starts.
    pitch_diameter : Number
        Mean diameter of the thread [m], above zero.
    thread_friction : Number
        Friction coefficient in the thread [-], zero or more.
    flank_angle : Number
        Angle between a flank and a plane square to the screw [rad], zero or more, below a right angle.
    bearing_radius : Number
        Mean radius where the turning head or star rubs [m], zero or more.
    bearing_friction : Number
        Friction coefficient there [-], zero or more.

    Returns
    -------
    Number
        Axial force [N], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        As tightening_torque.

    Notes
    -----
    The inverse of tightening_torque, which is proportional to the force.

    Source
    ------
    As tightening_torque.

    Examples
    --------
    >>> round(axial_force(0.302, 0.75e-3, 5.5e-3, 0.12))
    600
    """
    arguments.not_negative(torque=torque)
    return torque / _torque_per_force(
        pitch, pitch_diameter, thread_friction, flank_angle, bearing_radius, bearing_friction
    )


def _torque_per_force(
    lead: Number, mean_diameter: Number, friction: Number, flank: Number, radius: Number, collar: Number
) -> Number:
    arguments.positive(pitch=lead, pitch_diameter=mean_diameter)
    arguments.not_negative(thread_friction=friction, bearing_radius=radius, bearing_friction=collar)
    arguments.from_up_to_below(0.0, pi / 2, flank_angle=flank)
    cosine = arguments.plain(np.cos(flank))
    around = pi * mean_diameter
    arguments.less("thread_friction", friction, "the value at which the thread locks", around * cosine / lead)
    wedged = friction / cosine
    return mean_diameter / 2 * (lead + wedged * around) / (around - wedged * lead) + collar * radius
