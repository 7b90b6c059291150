"""Ball bearings: the rates at which a damaged one knocks."""

from __future__ import annotations

from math import pi
from typing import TypedDict

import numpy as np

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number


class DefectFrequencies(TypedDict):
    """Rates of a bearing's knocks, all in Hz."""

    outer: Number
    inner: Number
    ball: Number
    cage: Number


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
