"""A screw pulled up with a torque: the star on its shaft, a cap, a frame screw; and what it bears."""

from __future__ import annotations

from math import pi, radians

import numpy as np

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number

METRIC_FLANK = radians(30)
"""Flank angle of metric and unified threads, half of the 60 degrees between two flanks."""

NUT_FACTOR = 0.2
"""Torque over force and diameter of a screw as it comes, neither greased nor dry."""


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


def stress_area(diameter: Number, pitch: Number) -> Number:
    """Area of a metric screw that counts in tension.

    Parameters
    ----------
    diameter : Number
        Nominal diameter [m], above zero.
    pitch : Number
        Pitch [m], above zero, less than the diameter.

    Returns
    -------
    Number
        Stress area [m^2], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    pi / 4 (d - 0.9382 p)^2, the mean of the circles of pitch and core.

    Source
    ------
    ISO 898-1, 9.1.6 (from memory).

    Examples
    --------
    >>> round(stress_area(3e-3, 0.5e-3) * 1e6, 2)
    5.03
    """
    arguments.positive(diameter=diameter, pitch=pitch)
    arguments.less("pitch", pitch, "diameter", diameter)
    return pi / 4 * (diameter - 0.9382 * pitch) ** 2


def proof_load(diameter: Number, pitch: Number, proof_stress: Number) -> Number:
    """Force along a screw up to which it does not stretch for good.

    Parameters
    ----------
    diameter : Number
        Nominal diameter [m], above zero.
    pitch : Number
        Pitch [m], above zero, less than the diameter.
    proof_stress : Number
        Proof or yield stress of the screw [Pa], zero or more: class 4.8 310 MPa, 8.8 580, A2-70 450.

    Returns
    -------
    Number
        Force [N], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    stress_area proof_stress, pulled straight. While it is being turned the same screw yields at about 0.8
    of that, since it is twisted too; short threads in soft metal strip before: see strip_force.

    Source
    ------
    ISO 898-1, tables of proof loads; ISO 3506-1 (from memory).

    Examples
    --------
    >>> round(proof_load(4e-3, 0.7e-3, 580e6))
    5092
    """
    arguments.not_negative(proof_stress=proof_stress)
    return stress_area(diameter, pitch) * proof_stress


def strip_force(diameter: Number, engagement: Number, shear_strength: Number) -> Number:
    """Force along a screw at which a soft thread around it strips.

    Parameters
    ----------
    diameter : Number
        Nominal diameter of the screw [m], above zero.
    engagement : Number
        Length of thread in touch [m], zero or more.
    shear_strength : Number
        Shear strength of the metal round the screw [Pa], zero or more; 0.6 of its tensile strength.

    Returns
    -------
    Number
        Force [N], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    0.75 pi d l tau: of the cylinder round the crests three quarters is metal of the nut. Worn, shallow or
    drilled-out threads hold less. The rule of one diameter in steel and two in aluminium says the same.

    Source
    ------
    VDI 2230, shear area of an internal thread, for usual clearances (from memory).

    Examples
    --------
    >>> round(strip_force(3e-3, 6e-3, 130e6))
    5513
    """
    arguments.positive(diameter=diameter)
    arguments.not_negative(engagement=engagement, shear_strength=shear_strength)
    return 0.75 * pi * diameter * engagement * shear_strength


def nut_torque(axial_force: Number, diameter: Number, factor: Number = NUT_FACTOR) -> Number:
    """Torque for a force along a small screw by the rule of thumb of the workshop charts.

    Parameters
    ----------
    axial_force : Number
        Force along the screw [N], zero or more.
    diameter : Number
        Nominal diameter [m], above zero.
    factor : Number
        Nut factor [-], above zero: 0.2 as it comes, 0.15 oiled, 0.12 greased.

    Returns
    -------
    Number
        Torque [N m], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    K d F: tightening_torque with a friction of about 0.15 in thread and head, without asking for either.

    Source
    ------
    Workshop charts of small-screw torques (opened); Shigley's Mechanical Engineering Design, eq. 8-27 (from
    memory).

    Examples
    --------
    >>> round(nut_torque(proof_load(3e-3, 0.5e-3, 210e6), 3e-3), 2)
    0.63
    """
    arguments.not_negative(axial_force=axial_force)
    arguments.positive(diameter=diameter, factor=factor)
    return factor * diameter * axial_force


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
