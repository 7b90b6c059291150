"""Oil and grease: viscosity at another temperature, how much it minds the cold, and what grease holds."""

from __future__ import annotations

from math import pi

import numpy as np
from numpy.typing import NDArray

from spoolwright.mechanics import arguments
from spoolwright.mechanics import viscosity_index_table as table
from spoolwright.mechanics.arguments import Number
from spoolwright.mechanics.rolling import reference_viscosity

CST = 1e-6
"""One centistoke, 1 mm2/s, in m2/s."""
T40 = 313.15
T100 = 373.15
THINNEST, THICKEST = 0.21, 2e7
"""Range of ASTM D341 in centistokes."""
NEWTON_STEPS = 5


def viscosity_at(temperature: Number, viscosity_40: Number, viscosity_100: Number) -> Number:
    """Kinematic viscosity of a mineral or like oil at a temperature, from its two printed values.

    Parameters
    ----------
    temperature : Number
        Temperature [K], above zero.
    viscosity_40 : Number
        Kinematic viscosity at 40 C [m^2/s], above viscosity_100.
    viscosity_100 : Number
        Kinematic viscosity at 100 C [m^2/s], 0.21e-6 or more.

    Returns
    -------
    Number
        Kinematic viscosity [m^2/s], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range, an oil that thickens when warm, a temperature at which the answer
        leaves the standard's 0.21 to 2e7 mm2/s.

    Notes
    -----
    log10 log10 Z = A - B log10 T with Z = v + 0.7 + exp(-1.47 - 1.84 v - 0.51 v^2), v in mm2/s, A and B from
    the two points. The way back from Z to v is solved, where the standard prints a fit, so that the
    curve runs through its own points. Not for the cold side of the pour point, nor for greases.

    Source
    ------
    ASTM D341, viscosity-temperature charts, the form with one exponential (from memory; its inverse fit
    and a worked 32/5.4 oil opened).

    Examples
    --------
    >>> round(viscosity_at(333.15, 68e-6, 8.7e-6) * 1e6, 1)
    28.7
    """
    arguments.positive(temperature=temperature, viscosity_40=viscosity_40)
    arguments.from_up(THINNEST * CST, viscosity_100=viscosity_100)
    arguments.less("viscosity_100", viscosity_100, "viscosity_40", viscosity_40)
    high, low = _walther(viscosity_40 / CST), _walther(viscosity_100 / CST)
    part = np.log(temperature / T40) / np.log(T100 / T40)
    with np.errstate(over="ignore", invalid="ignore"):
        v = _from_walther(high + (low - high) * part)
    held = (v >= THINNEST * (1 - 1e-9)) & (v <= THICKEST)
    if not np.all(held):
        low_t, high_t = float(np.min(temperature)), float(np.max(temperature))
        raise ValueError(
            f"temperature must keep the oil between {THINNEST} and {THICKEST:g} mm2/s; "
            f"came {low_t:g}" + (f" to {high_t:g}" if high_t > low_t else "") + " K"
        )
    return arguments.plain(v * CST)


def viscosity_index(viscosity_40: Number, viscosity_100: Number) -> Number:
    """Viscosity index: how little an oil thins as it warms.

    Parameters
    ----------
    viscosity_40 : Number
        Kinematic viscosity at 40 C [m^2/s], above viscosity_100.
    viscosity_100 : Number
        Kinematic viscosity at 100 C [m^2/s], 2e-6 or more.

    Returns
    -------
    Number
        Viscosity index [-], not rounded, broadcast shape of the inputs; below zero for oils that thin
        very fast.

    Raises
    ------
    ValueError
        An oil thinner than the table reaches, or one that thickens when warm.

    Notes
    -----
    Procedure A, where viscosity_40 is H or more: 100 (L - U) / (L - H). Procedure B, above 100:
    100 + (10^N - 1) / 0.00715, N = log(H / U) / log Y. L and H are read from the standard's table, linearly
    between its rows, up to Y = 70 mm2/s, and from its two equations beyond. The standard rounds the
    answer to a whole number.

    Source
    ------
    ASTM D2270, procedures A and B (from memory); its table as kept in the chemicals library, version 1.5.2.

    Examples
    --------
    >>> round(viscosity_index(73.30e-6, 8.86e-6))
    92
    >>> round(viscosity_index(22.83e-6, 5.05e-6))
    156
    """
    arguments.positive(viscosity_40=viscosity_40)
    arguments.from_up(2 * CST, viscosity_100=viscosity_100)
    arguments.less("viscosity_100", viscosity_100, "viscosity_40", viscosity_40)
    u, y = np.asarray(viscosity_40) / CST, np.asarray(viscosity_100) / CST
    beyond = y > table.Y[-1]
    low = np.where(beyond, (0.8353 * y + 14.67) * y - 216, np.interp(y, table.Y, table.L))
    high = np.where(beyond, (0.1684 * y + 11.85) * y - 97, np.interp(y, table.Y, table.H))
    below = 100 * (low - u) / (low - high)
    above = 100 + (10 ** (np.log(high / u) / np.log(y)) - 1) / 0.00715
    return arguments.plain(np.where(u >= high, below, above))


def _walther(v: Number) -> Number:
    """ln ln Z of the standard, v in mm2/s (natural logarithms only shift and scale the line)."""
    doubled: Number = np.log(np.log(v + 0.7 + np.exp(-1.47 - 1.84 * v - 0.51 * v**2)))
    return doubled


def _from_walther(doubled: Number) -> NDArray[np.float64]:
    """The v whose `_walther` is `doubled`: Newton from the standard's own fit of the way back."""
    y = np.asarray(np.exp(np.exp(doubled)) - 0.7)
    near = np.minimum(y, 10.0)
    v = y - np.where(y < 10, np.exp(-0.7487 - 3.295 * near + 0.6119 * near**2 - 0.3193 * near**3), 0.0)
    for _ in range(NEWTON_STEPS):
        bend = np.exp(-1.47 - 1.84 * v - 0.51 * np.square(np.minimum(v, 1e3)))
        v = v - (v + bend - y) / (1 - (1.84 + 1.02 * v) * bend)
    return v


def kappa(
    temperature: Number,
    viscosity_40: Number,
    viscosity_100: Number,
    speed_rpm: Number,
    pitch_diameter: Number,
) -> Number:
    """How far the oil film of a bearing carries at its speed and temperature.

    Parameters
    ----------
    temperature : Number
        Temperature of the bearing [K], above zero.
    viscosity_40 : Number
        Kinematic viscosity of the oil, or of the grease's base oil, at 40 C [m^2/s], above viscosity_100.
    viscosity_100 : Number
        The same at 100 C [m^2/s], 0.21e-6 or more.
    speed_rpm : Number
        Speed [rpm], above zero.
    pitch_diameter : Number
        Diameter of the circle of ball centres [m], above zero.

    Returns
    -------
    Number
        Viscosity over reference viscosity [-], broadcast shape of the inputs: 1 is a full film; below
        0.4 metal touches most of the time, above 4 nothing is gained.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    viscosity_at over rolling.reference_viscosity.

    Source
    ------
    ISO 281:2007, viscosity ratio (from memory).

    Examples
    --------
    >>> round(kappa(293.15, 10e-6, 2.7e-6, 10_000.0, 7e-3), 2)
    1.19
    """
    return viscosity_at(temperature, viscosity_40, viscosity_100) / reference_viscosity(
        speed_rpm, pitch_diameter
    )


def grease_yield_stress(penetration: Number) -> Number:
    """Shear stress below which a grease does not flow, from its consistency.

    Parameters
    ----------
    penetration : Number
        Worked penetration [m], 8.5e-3 to 47.5e-3; NLGI class 2 is 26.5e-3 to 29.5e-3.

    Returns
    -------
    Number
        Yield stress at 25 C [Pa], shape of the input.

    Raises
    ------
    ValueError
        A penetration outside the NLGI classes.

    Notes
    -----
    3e10 P^-3.17, P in tenths of a millimetre. Greases of one class differ by a factor of two and more, and a
    stiff one holds several times as much in the cold, which no formula says.

    Source
    ------
    Brunstrum and Sisko 1962, as quoted in books on grease lubrication (from memory). That penetration and
    yield go together, and not in proportion to the class: ASME WTC2005-64280 (abstract opened).

    Examples
    --------
    >>> round(grease_yield_stress(28e-3))
    524
    """
    arguments.between(8.5e-3, 47.5e-3, penetration=penetration)
    return arguments.plain(3e10 * (np.asarray(penetration) * 1e4) ** -3.17)


def grease_hold(yield_stress: Number, radius: Number, width: Number, share: Number = 1.0) -> Number:
    """Torque that a ring full of grease holds before it begins to turn.

    Parameters
    ----------
    yield_stress : Number
        Yield stress of the grease [Pa], zero or more.
    radius : Number
        Radius at which it is sheared [m], above zero.
    width : Number
        Width of the ring [m], above zero.
    share : Number
        Share of the circle in which grease bridges the gap [-], zero to 1.

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
    T = share tau 2 pi r^2 w: the drum of a rotating rheometer. A bearing that has run has pushed most of its
    grease aside; one that is packed full and still new holds nearly all of it.

    Source
    ------
    Shear on a cylinder, any fluid mechanics text.

    Examples
    --------
    >>> round(grease_hold(525.0, 3.5e-3, 4e-3) * 1e6)
    162
    """
    arguments.not_negative(yield_stress=yield_stress)
    arguments.positive(radius=radius, width=width)
    arguments.between(0.0, 1.0, share=share)
    return share * yield_stress * 2 * pi * radius**2 * width
