"""Ball bearings: how long one lasts, what turning it costs, and the rates at which a damaged one ticks."""

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


# ISO 281 table 3, single-row deep groove, normal clearance: f0 Fa / C0, then e and Y.
_RELATIVE_AXIAL = (0.172, 0.345, 0.689, 1.03, 1.38, 2.07, 3.45, 5.17, 6.89)
_E = (0.19, 0.22, 0.26, 0.28, 0.30, 0.34, 0.38, 0.42, 0.44)
_Y = (2.30, 1.99, 1.71, 1.55, 1.45, 1.31, 1.15, 1.04, 1.00)
_X = 0.56


class DefectFrequencies(TypedDict):
    """Rates of a bearing's knocks, all in Hz."""

    outer: Number
    inner: Number
    ball: Number
    cage: Number


def equivalent_load(radial: Number, axial: Number, static_rating: Number, f0: Number = 12.3) -> Number:
    """Radial load that would tire a deep-groove ball bearing as its radial and axial loads do together.

    Parameters
    ----------
    radial : Number
        Radial load [N], zero or more.
    axial : Number
        Axial load [N], zero or more.
    static_rating : Number
        Static load rating C0 [N], above zero.
    f0 : Number
        Calculation factor of the bearing's inside [-], above zero: about 12 for miniature sizes, 14 for
        6208; the maker's catalogue has it.

    Returns
    -------
    Number
        Equivalent dynamic load [N], broadcast shape of the inputs, never below radial.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    P = Fr where Fa / Fr is e or less, else 0.56 Fr + Y Fa; e and Y from the table at f0 Fa / C0, linear
    between rows, held at the ends. Where the second falls below Fr by the table's rounding, Fr stands.

    Source
    ------
    ISO 281:2007, table 3, normal clearance (table opened in two bearing handbooks).

    Examples
    --------
    >>> round(equivalent_load(500.0, 400.0, 4450.0))
    891
    """
    arguments.not_negative(radial=radial, axial=axial)
    arguments.positive(static_rating=static_rating, f0=f0)
    place = f0 * axial / static_rating
    limit, factor = np.interp(place, _RELATIVE_AXIAL, _E), np.interp(place, _RELATIVE_AXIAL, _Y)
    together = np.maximum(radial, _X * radial + factor * axial)
    return arguments.plain(np.where(axial > limit * radial, together, radial))


def rating_life(dynamic_rating: Number, load: Number, exponent: Number = 3.0) -> Number:
    """Turns that nine of ten bearings outlive.

    Parameters
    ----------
    dynamic_rating : Number
        Dynamic load rating C [N], above zero.
    load : Number
        Equivalent dynamic load P [N], above zero.
    exponent : Number
        3 for balls, 10/3 for rollers [-], above zero.

    Returns
    -------
    Number
        Basic rating life [10^6 revolutions], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value that is not above zero and finite.

    Notes
    -----
    L10 = (C / P)^p. Fatigue only: in a reel, salt and dirt end a bearing long before.

    Source
    ------
    ISO 281:2007, basic rating life (from memory); worked examples of three handbooks opened.

    Examples
    --------
    >>> round(rating_life(630.0, 63.0))
    1000
    """
    arguments.positive(dynamic_rating=dynamic_rating, load=load, exponent=exponent)
    return arguments.plain((dynamic_rating / load) ** exponent)


def reference_viscosity(speed_rpm: Number, pitch_diameter: Number) -> Number:
    """Viscosity that a bearing's oil needs at running temperature for a full film.

    Parameters
    ----------
    speed_rpm : Number
        Speed [rpm], above zero.
    pitch_diameter : Number
        Diameter of the circle of ball centres, or the mean of bore and outside [m], above zero.

    Returns
    -------
    Number
        Reference kinematic viscosity [m^2/s], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value that is not above zero and finite.

    Notes
    -----
    In mm2/s with Dpw in mm: 45000 n^-0.83 Dpw^-0.5 below 1000 rpm, 4500 n^-0.5 Dpw^-0.5 from there on. Charts
    in some catalogues lie 12 to 19 % below the equation; the equation stands.

    Source
    ------
    ISO 281:2007, reference kinematic viscosity (equation opened in a bearing handbook).

    Examples
    --------
    >>> round(reference_viscosity(2000.0, 0.015) * 1e6, 2)
    25.98
    """
    arguments.positive(speed_rpm=speed_rpm, pitch_diameter=pitch_diameter)
    slow, fast = 45000.0 * speed_rpm**-0.83, 4500.0 * speed_rpm**-0.5
    centistokes = np.where(np.less(speed_rpm, 1000.0), slow, fast) / np.sqrt(pitch_diameter * 1e3)
    return arguments.plain(centistokes * CST)


def life_factor_iso(kappa: Number, contamination: Number, fatigue_limit: Number, load: Number) -> Number:
    """Factor by which oil film and dirt lengthen or shorten the life of a radial ball bearing.

    Parameters
    ----------
    kappa : Number
        Viscosity over reference viscosity [-], 0.1 or more; above 4 it counts as 4.
    contamination : Number
        Contamination factor eC [-], zero (filthy) to 1 (clean).
    fatigue_limit : Number
        Fatigue load limit Cu [N], above zero; about C0 / 22 for ball bearings.
    load : Number
        Equivalent dynamic load P [N], above zero.

    Returns
    -------
    Number
        Life modification factor [-], 0.1 to 50, broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range; the standard says nothing below a kappa of 0.1.

    Notes
    -----
    0.1 [1 - (2.5671 - A / kappa^B)^0.83 (eC Cu / P)^(1/3)]^-9.3 with A, B = 2.2649, 0.054381 below kappa 0.4;
    1.9987, 0.19087 below 1; 1.9987, 0.071739 from 1; at most 50.

    Source
    ------
    ISO 281:2007, eqs 31 to 33 (from memory; part of the coefficients opened in a public program, whose
    0.053481 is a slip for 0.054381: only that joins the branches at 0.4).

    Examples
    --------
    >>> round(life_factor_iso(2.0, 0.5, 10.0, 100.0), 2)
    1.7
    """
    arguments.from_up(0.1, kappa=kappa)
    arguments.positive(fatigue_limit=fatigue_limit, load=load)
    arguments.between(0.0, 1.0, contamination=contamination)
    film = np.minimum(kappa, 4.0)
    thin, middling = film < 0.4, film < 1.0
    a = np.where(thin, 2.2649, 1.9987)
    b = np.where(thin, 0.054381, np.where(middling, 0.19087, 0.071739))
    relief = (2.5671 - a * film**-b) ** 0.83 * np.cbrt(contamination * fatigue_limit / load)
    left = np.maximum(1 - relief, 0.1)  # far past the cap of 50, and safe from a negative base
    return arguments.plain(np.minimum(0.1 * left**-9.3, 50.0))


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
