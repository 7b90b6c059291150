"""A bearing's inside, and the rates at which each of its parts knocks when it is damaged."""

from __future__ import annotations

from dataclasses import dataclass

from spoolwright.mechanics.rolling import defect_frequencies

OUTER, INNER, BALL, CAGE, SOUND, CANNOT_TELL = "outer", "inner", "ball", "cage", "sound", "cannot tell"
VERDICTS = (OUTER, INNER, BALL, CAGE, SOUND, CANNOT_TELL)
PARTS = (OUTER, INNER, BALL, CAGE)

MULTIPLES = {OUTER: 5, INNER: 5, BALL: 5, CAGE: 6}
"""How many multiples of each rate are looked at."""


@dataclass(frozen=True)
class Bearing:
    """What the rates need: count of balls, their diameter and their circle's [m], contact angle [rad]."""

    balls: int
    ball_diameter: float
    pitch_diameter: float
    contact_angle: float = 0.0


def rates(bearing: Bearing, turns: float) -> dict[str, float]:
    """Rates of the knocks of each part at a speed.

    Parameters
    ----------
    bearing : Bearing
        Number of balls [-], ball and pitch diameter [m], contact angle [rad].
    turns : float
        Turns of the inner ring against the outer a second [Hz]; 1 gives knocks a turn.

    Returns
    -------
    dict
        Rate [Hz], or knocks a turn [1], of outer ring, inner ring, ball and cage.

    Source
    ------
    `mechanics.rolling.defect_frequencies`.

    Examples
    --------
    >>> round(rates(Bearing(9, 7.94e-3, 39.04e-3), 1.0)["outer"], 2)
    3.58
    """
    found = defect_frequencies(
        60 * turns, bearing.balls, bearing.ball_diameter, bearing.pitch_diameter, bearing.contact_angle
    )
    return {
        OUTER: float(found["outer"]),
        INNER: float(found["inner"]),
        BALL: float(found["ball"]),
        CAGE: float(found["cage"]),
    }


def highest(found: dict[str, float]) -> float:
    """How far a spectrum must go for every multiple that is looked at.

    Parameters
    ----------
    found : dict
        Rate of each part [Hz].

    Returns
    -------
    float
        Frequency [Hz], half a rate above the last multiple.

    Source
    ------
    Common practice.

    Examples
    --------
    >>> highest({"outer": 3.0, "inner": 5.0, "ball": 4.0, "cage": 0.4})
    32.5
    """
    return (max(MULTIPLES.values()) + 0.5) * max(found[INNER], found[BALL])
