"""Heat of a slipping drag going into a washer."""

from __future__ import annotations

from math import pi

import numpy as np

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number


def semi_infinite_rise(
    heat_flux: Number, time: Number, conductivity: Number, density: Number, specific_heat: Number
) -> Number:
    """Rise of the surface temperature of a thick body while a steady heat flows into it.

    Parameters
    ----------
    heat_flux : Number
        Heat into the surface for each area [W/m^2], negative where it is drawn out.
    time : Number
        Time since the heat began [s], zero or more.
    conductivity : Number
        Heat conductivity of the body [W/(m K)], above zero.
    density : Number
        Density of the body [kg/m^3], above zero.
    specific_heat : Number
        Specific heat of the body [J/(kg K)], above zero.

    Returns
    -------
    Number
        Rise of temperature at the surface [K], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    2 q sqrt(t / (pi k rho c)). Holds until the far side feels it, about L^2 / (13 alpha) for half a
    thickness L: 0.05 s for 3 mm of steel. A thin washer is hotter after that.

    Source
    ------
    Carslaw & Jaeger, Conduction of Heat in Solids, 2.9 (from memory); worked example of Holman opened.

    Examples
    --------
    >>> round(semi_infinite_rise(3e5, 2.0, 54.0, 7833.0, 465.0), 1)
    34.1
    """
    arguments.finite(heat_flux=heat_flux)
    arguments.not_negative(time=time)
    arguments.positive(conductivity=conductivity, density=density, specific_heat=specific_heat)
    effusivity = conductivity * density * specific_heat
    return arguments.plain(2 * heat_flux * np.sqrt(time / (pi * effusivity)))
