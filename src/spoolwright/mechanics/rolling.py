"""Ball bearings: how long one lasts, what turning it costs, and the rates at which a damaged one ticks."""

from __future__ import annotations

import numpy as np

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number
from spoolwright.mechanics.bearing_life import (
    contamination_factor,
    life_factor_iso,
    mean_load,
    modified_life,
    rating_life,
    reliability_factor,
    system_life,
)
from spoolwright.mechanics.bearing_ratings import dynamic_rating, static_load, static_rating, static_safety
from spoolwright.mechanics.defect_rates import DefectFrequencies, defect_frequencies
from spoolwright.mechanics.hybrid_balls import Hybrid, ball_pressure, hybrid

__all__ = [
    "DefectFrequencies",
    "Hybrid",
    "ball_pressure",
    "contamination_factor",
    "defect_frequencies",
    "dynamic_rating",
    "equivalent_load",
    "friction_load",
    "friction_torque",
    "hybrid",
    "life_factor_iso",
    "load_factor",
    "mean_load",
    "modified_life",
    "rating_life",
    "reference_viscosity",
    "reliability_factor",
    "static_load",
    "static_rating",
    "static_safety",
    "system_life",
]

CST = 1e-6
"""One centistoke, 1 mm2/s, in m2/s."""
SLOW = 2000.0
"""Speed times viscosity [rpm mm2/s] below which oil drag no longer falls."""


# ISO 281 table 3, single-row deep groove, normal clearance: f0 Fa / C0, then e and Y.
_RELATIVE_AXIAL = (0.172, 0.345, 0.689, 1.03, 1.38, 2.07, 3.45, 5.17, 6.89)
_E = (0.19, 0.22, 0.26, 0.28, 0.30, 0.34, 0.38, 0.42, 0.44)
_Y = (2.30, 1.99, 1.71, 1.55, 1.45, 1.31, 1.15, 1.04, 1.00)
_X = 0.56


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


def friction_load(radial: Number, axial: Number) -> Number:
    """Load that counts for the friction of a deep-groove ball bearing.

    Parameters
    ----------
    radial : Number
        Radial load [N], zero or more.
    axial : Number
        Axial load [N], zero or more.

    Returns
    -------
    Number
        The load of friction_torque [N], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    P1 = max(3.3 Fa - 0.1 Fr, Fr): thrust, as from a tight cast cap, costs three times what weight does.

    Source
    ------
    Factors of the friction equations in a rolling bearing catalogue, HR 1, pp. 55 to 60 (opened as a text
    copy).

    Examples
    --------
    >>> friction_load(20.0, 40.0)
    130.0
    """
    arguments.not_negative(radial=radial, axial=axial)
    return arguments.plain(np.maximum(3.3 * axial - 0.1 * radial, radial))


def load_factor(equivalent: Number, rating: Number, series: Number = 9e-4) -> Number:
    """Factor f1 of friction_torque for a deep-groove ball bearing.

    Parameters
    ----------
    equivalent : Number
        Static equivalent load P0 [N], zero or more.
    rating : Number
        Static load rating C0 [N], above zero.
    series : Number
        Factor of the series [-], zero or more: 5e-4 for 618, 7e-4 for 60 and 619, 9e-4 for 62 to 64.

    Returns
    -------
    Number
        f1 [-], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    f1 = series (P0 / C0)^0.5. The numbers of the series are those of larger bearings: 623 and 624 of a reel
    are of series 62.

    Source
    ------
    Table of typical f1 in a rolling bearing catalogue, HR 1, pp. 58 to 60 (opened as a text copy).

    Examples
    --------
    >>> round(load_factor(50.0, 1370.0, 7e-4), 6)
    0.000134
    """
    arguments.not_negative(equivalent=equivalent, series=series)
    arguments.positive(rating=rating)
    return arguments.plain(series * np.sqrt(equivalent / rating))
