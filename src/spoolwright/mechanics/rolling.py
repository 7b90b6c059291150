"""Ball bearings: what turning one costs, and the rates at which a damaged one ticks."""

from __future__ import annotations

from math import pi
from typing import TypedDict

import numpy as np

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number

CST = 1e-6
"""One centistoke, 1 mm2/s, in m2/s."""
SLOW = 2000.0
"""Speed times viscosity [rpm mm2/s] below which oil drag no longer falls."""


class DefectFrequencies(TypedDict):
    """Rates of a bearing's knocks, all in Hz."""

    outer: Number
    inner: Number
    ball: Number
    cage: Number


def friction_torque(
    speed_rpm: Number, viscosity: Number, pitch_diameter: Number, load: Number, f0: Number, f1: Number
) -> Number:
    """Torque that turns a lubricated rolling bearing.

    Parameters
    ----------
    speed_rpm : Number
        Speed [rpm], zero or more.
    viscosity : Number
        Kinematic viscosity of the oil, or of the grease's base oil, at running temperature [m^2/s],
        zero (dry) or more.
    pitch_diameter : Number
        Mean of bore and outside diameter [m], above zero.
    load : Number
        Load that counts for friction [N], zero or more: the larger of Fr and 3.3 Fa - 0.1 Fr for a
        deep-groove bearing.
    f0 : Number
        Factor of kind and lubrication [-], zero or more: deep-groove 1.1 to 1.5 with grease after running
        in, two to five times that freshly greased, 1.7 to 2.3 in an oil bath.
    f1 : Number
        Factor of load [-], zero or more: deep-groove 0.0005 to 0.0009 times (P0 / C0)^0.5.

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
    M = M0 + M1. M0 = 1e-7 f0 (v n)^(2/3) dm^3 N mm for v n of 2000 mm2/s rpm and more, else 160e-7 f0 dm^3;
    M1 = f1 P dm. Contact seals add their own torque. A miniature bearing with a drop of oil runs well
    below what the slow branch says; the shop's own spin-downs are the better witness.

    Source
    ------
    A. Palmgren, Ball and Roller Bearing Engineering, as printed with factors in a rolling bearing
    catalogue (opened; see tests/reference/test_rolling.py).

    Examples
    --------
    >>> round(friction_torque(2000.0, 30e-6, 0.015, 50.0, 1.1, 0.0007 * (50 / 1370) ** 0.5) * 1e3, 3)
    0.669
    """
    arguments.not_negative(speed_rpm=speed_rpm, viscosity=viscosity, load=load, f0=f0, f1=f1)
    arguments.positive(pitch_diameter=pitch_diameter)
    stir = viscosity / CST * speed_rpm
    millimetres = pitch_diameter * 1e3
    rate = np.where(stir < SLOW, 160.0, np.cbrt(np.square(stir)))
    drag = 1e-7 * f0 * rate * millimetres**3 * 1e-3
    return arguments.plain(drag + f1 * load * pitch_diameter)


def defect_frequencies(
    rpm: Number,
    balls: Number,
    ball_diameter: Number,
    pitch_diameter: Number,
    contact_angle: Number = 0.0,
) -> DefectFrequencies:
    """Rates at which a damaged ball bearing knocks, inner ring turning, outer ring still.

    Parameters
    ----------
    rpm : Number
        Speed of the inner ring [rpm], zero or more.
    balls : Number
        Number of balls [-], a whole number of 1 or more.
    ball_diameter : Number
        Diameter of a ball [m], above zero, less than pitch_diameter.
    pitch_diameter : Number
        Diameter of the circle of ball centres [m].
    contact_angle : Number
        Contact angle [rad], zero or more, below a right angle.

    Returns
    -------
    DefectFrequencies
        A mapping [Hz], each of the broadcast shape of the inputs it depends on. outer: balls passing a
        spot of the outer ring; inner: balls passing a spot of the inner ring; ball: a spot on a ball
        striking either ring, which is twice the ball's own spin; cage: turns of the cage.

    Raises
    ------
    ValueError
        A value outside its range, or balls larger than their circle.

    Notes
    -----
    g = (d / D) cos a, f = rpm / 60: outer z f (1 - g) / 2, inner z f (1 + g) / 2, ball f (D / d)(1 - g^2),
    cage f (1 - g) / 2. Balls slip a little: real knocks come 1 to 2 % away from these.

    Source
    ------
    Kinematics of rolling without slip; multiples as listed with a university's bearing recordings (opened).

    Examples
    --------
    >>> round(defect_frequencies(1797.0, 9, 7.94e-3, 39.04e-3)["outer"], 1)
    107.4
    """
    arguments.not_negative(rpm=rpm)
    arguments.whole(1, balls=balls)
    arguments.positive(ball_diameter=ball_diameter, pitch_diameter=pitch_diameter)
    arguments.less("ball_diameter", ball_diameter, "pitch_diameter", pitch_diameter)
    arguments.from_up_to_below(0.0, pi / 2, contact_angle=contact_angle)
    turns = rpm / 60
    g = ball_diameter / pitch_diameter * arguments.plain(np.cos(contact_angle))
    return DefectFrequencies(
        outer=balls * turns * (1 - g) / 2,
        inner=balls * turns * (1 + g) / 2,
        ball=turns * pitch_diameter / ball_diameter * (1 - g**2),
        cage=turns * (1 - g) / 2,
    )
