"""Oil: its viscosity at another temperature, and how much it minds the cold."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from spoolwright.mechanics import arguments
from spoolwright.mechanics import viscosity_index_table as table
from spoolwright.mechanics.arguments import Number

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
