"""Ball bearings: what one carries standing still, and the ratings that follow from its balls."""

from __future__ import annotations

import numpy as np

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number

# ISO 76 table 1, radial ball bearings: f0 at Dw / Dpw = 0.00, 0.01 ... 0.40.
_STATIC = (
    *(14.7, 14.9, 15.1, 15.3, 15.5, 15.7, 15.9, 16.1, 16.3, 16.5),
    *(16.4, 16.1, 15.9, 15.6, 15.4, 15.2, 14.9, 14.7, 14.4, 14.2),
    *(14.0, 13.7, 13.5, 13.2, 13.0, 12.8, 12.5, 12.3, 12.1, 11.8),
    *(11.6, 11.4, 11.2, 10.9, 10.7, 10.5, 10.3, 10.0, 9.8, 9.6, 9.4),
)
# ISO 281 table 2, single-row deep groove: Dw / Dpw, then fc.
_PLACES = (*(k / 100 for k in range(1, 11)), *(k / 100 for k in range(12, 42, 2)))
_DYNAMIC = (
    *(29.1, 35.8, 40.3, 43.8, 46.7, 49.1, 51.1, 52.8, 54.3, 55.5),
    *(57.5, 58.8, 59.6, 59.9, 59.9, 59.6, 59.0, 58.2, 57.1, 56.0, 54.6, 53.2, 51.7, 50.0, 48.4),
)
_BM = 1.3
LARGEST_BALL = 25.4e-3
"""Above this the exponent of the ball in the dynamic rating changes."""


def static_load(radial: Number, axial: Number) -> Number:
    """Radial load that would dent a deep-groove ball bearing as its radial and axial loads do together.

    Parameters
    ----------
    radial : Number
        Radial load [N], zero or more.
    axial : Number
        Axial load [N], zero or more.

    Returns
    -------
    Number
        Static equivalent load P0 [N], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    P0 = max(Fr, 0.6 Fr + 0.5 Fa).

    Source
    ------
    ISO 76, deep-groove ball bearings (opened in a bearing catalogue, table p. B24).

    Examples
    --------
    >>> static_load(100.0, 200.0)
    160.0
    """
    arguments.not_negative(radial=radial, axial=axial)
    return arguments.plain(np.maximum(radial, 0.6 * radial + 0.5 * axial))


def static_safety(static_rating: Number, radial: Number, axial: Number) -> Number:
    """How far a ball bearing that stands or turns slowly is from being dented.

    Parameters
    ----------
    static_rating : Number
        Static load rating C0 [N], above zero.
    radial : Number
        Radial load [N], zero or more.
    axial : Number
        Axial load [N], zero or more; not both loads zero.

    Returns
    -------
    Number
        Static safety s0 [-], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range, or no load at all.

    Notes
    -----
    s0 = C0 / P0. At C0 the hardest pressed spot takes 4200 MPa and keeps a dent of a ten-thousandth of
    the ball. Handbooks ask for 2 where it shall run quietly, 1 for normal turning, 1.5 with knocks, and let
    0.5 pass where noise does not matter. For a hybrid bearing use C0 times `hybrid(...)["static_rating"]`.

    Source
    ------
    ISO 76 (definition opened on a bearing handbook's page on static load ratings); guide values as in two
    handbooks (opened).

    Examples
    --------
    >>> static_safety(218.0, 100.0, 50.0)
    2.18
    """
    arguments.positive(static_rating=static_rating)
    load = static_load(radial, axial)
    arguments.positive(load=load)
    return static_rating / load


def static_rating(balls: Number, ball_diameter: Number, pitch_diameter: Number) -> Number:
    """Static load rating of a deep-groove ball bearing from its balls.

    Parameters
    ----------
    balls : Number
        Number of balls [-], a whole number of 1 or more.
    ball_diameter : Number
        Diameter of a ball [m], above zero, at most 0.4 of pitch_diameter.
    pitch_diameter : Number
        Diameter of the circle of ball centres [m].

    Returns
    -------
    Number
        Static load rating C0 [N], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    C0 = f0 Z Dw^2, Dw in mm, f0 from the table at Dw / Dpw, linear between rows. Steel balls; stainless steel
    is often rated at 0.8 of it by its makers.

    Source
    ------
    ISO 76, table 1 (from memory; it gives the published ratings of 6208, 608 and 684 within 0.2 %).

    Examples
    --------
    >>> round(static_rating(7, 3.969e-3, 15e-3))
    1368
    """
    place = _place(balls, ball_diameter, pitch_diameter)
    factor = np.interp(place, np.arange(len(_STATIC)) / 100, _STATIC)
    return arguments.plain(factor * balls * (ball_diameter * 1e3) ** 2)


def dynamic_rating(balls: Number, ball_diameter: Number, pitch_diameter: Number) -> Number:
    """Dynamic load rating of a deep-groove ball bearing from its balls.

    Parameters
    ----------
    balls : Number
        Number of balls [-], a whole number of 1 or more.
    ball_diameter : Number
        Diameter of a ball [m], above zero, at most 25.4e-3 and 0.4 of pitch_diameter.
    pitch_diameter : Number
        Diameter of the circle of ball centres [m].

    Returns
    -------
    Number
        Dynamic load rating C [N], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    C = 1.3 fc Z^(2/3) Dw^1.8, Dw in mm, fc from the table at Dw / Dpw, linear between rows, held at its ends.

    Source
    ------
    ISO 281:2007, table 2 (from memory; it gives the published ratings of 6208, 608 and 684 within 1 %).

    Examples
    --------
    >>> round(dynamic_rating(7, 3.969e-3, 15e-3))
    3296
    """
    place = _place(balls, ball_diameter, pitch_diameter)
    arguments.above_up_to(0.0, LARGEST_BALL, ball_diameter=ball_diameter)
    factor = np.interp(place, _PLACES, _DYNAMIC)
    return arguments.plain(_BM * factor * np.cbrt(balls) ** 2 * (ball_diameter * 1e3) ** 1.8)


def _place(balls: Number, ball_diameter: Number, pitch_diameter: Number) -> Number:
    arguments.whole(1, balls=balls)
    arguments.positive(ball_diameter=ball_diameter, pitch_diameter=pitch_diameter)
    arguments.at_most("ball_diameter", ball_diameter, "0.4 of pitch_diameter", 0.4 * pitch_diameter)
    return ball_diameter / pitch_diameter
