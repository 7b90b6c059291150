"""Ball bearings: how many turns one lasts, with its oil film, its dirt and the surety that is asked for."""

from __future__ import annotations

from collections.abc import Mapping
from math import log
from types import MappingProxyType

import numpy as np

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number

CLEANLINESS: Mapping[str, tuple[float, float]] = MappingProxyType(
    {
        "high": (0.0864, 0.6796),
        "normal": (0.0432, 1.141),
        "slight to typical": (0.0177, 1.887),
        "severe": (0.0115, 2.662),
        "very severe": (0.00617, 4.06),
    }
)
"""Constants c1 and c2 of ISO 281, annex A, for grease and a pitch diameter below half a metre."""
BALLS = 10 / 9
"""Weibull slope of ball bearings' lives."""


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


def contamination_factor(kappa: Number, pitch_diameter: Number, cleanliness: str = "normal") -> Number:
    """Contamination factor eC of a greased bearing, from how clean the grease is.

    Parameters
    ----------
    kappa : Number
        Viscosity over reference viscosity [-], above zero.
    pitch_diameter : Number
        Diameter of the circle of ball centres [m], above zero, below 0.5.
    cleanliness : str
        "high" (packed and sealed where it was made), "normal", "slight to typical", "severe" (dust and
        grit) or "very severe" [-].

    Returns
    -------
    Number
        eC [-], zero to 1, broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range, or a word that is not one of the five.

    Notes
    -----
    eC = a (1 - c2 / Dpw^(1/3)), a = c1 kappa^0.68 Dpw^0.55, at most 1, Dpw in mm. Small bearings suffer most:
    where the bracket falls below zero eC is zero, as for every reel bearing in sandy grease.

    Source
    ------
    ISO 281:2007, annex A, grease. Constants of "high" and "slight to typical" opened in a public program
    after NREL DG03, table 7; the others from memory.

    Examples
    --------
    >>> round(contamination_factor(1.0, 0.015, "high"), 3)
    0.278
    """
    arguments.positive(kappa=kappa, pitch_diameter=pitch_diameter)
    arguments.from_up_to_below(0.0, 0.5, pitch_diameter=pitch_diameter)
    arguments.one_of(tuple(CLEANLINESS), cleanliness=cleanliness)
    c1, c2 = CLEANLINESS[cleanliness]
    size = pitch_diameter * 1e3
    film = np.minimum(c1 * kappa**0.68 * size**0.55, 1.0)
    return arguments.plain(np.maximum(film * (1 - c2 / np.cbrt(size)), 0.0))


def reliability_factor(survival: Number) -> Number:
    """Factor by which life shortens where more than nine in ten bearings shall outlive it.

    Parameters
    ----------
    survival : Number
        Share that shall outlive it [-], 0.9 to 0.9995.

    Returns
    -------
    Number
        a1 [-], 1 at nine in ten, shape of the input.

    Raises
    ------
    ValueError
        A share outside its range.

    Notes
    -----
    a1 = 0.05 + 0.95 (ln(1/S) / ln(1/0.9))^(2/3): a Weibull law of slope 1.5 above a life that none fails
    to reach. The table of 1990 fell faster.

    Source
    ------
    ISO 281:2007, table of a1 (opened in a bearing handbook); its formula from memory.

    Examples
    --------
    >>> round(reliability_factor(0.95), 2)
    0.64
    """
    arguments.between(0.9, 0.9995, survival=survival)
    return arguments.plain(0.05 + 0.95 * (np.log(survival) / log(0.9)) ** (2 / 3))


def modified_life(
    dynamic_rating: Number,
    load: Number,
    kappa: Number,
    contamination: Number,
    fatigue_limit: Number,
    survival: Number = 0.9,
) -> Number:
    """Turns that a share of such ball bearings outlives, with their oil film and their dirt.

    Parameters
    ----------
    dynamic_rating : Number
        Dynamic load rating C [N], above zero.
    load : Number
        Equivalent dynamic load P [N], above zero.
    kappa : Number
        Viscosity over reference viscosity [-], 0.1 or more.
    contamination : Number
        Contamination factor eC [-], zero to 1.
    fatigue_limit : Number
        Fatigue load limit Cu [N], above zero; about C0 / 22.
    survival : Number
        Share that shall outlive it [-], 0.9 to 0.9995.

    Returns
    -------
    Number
        Life [10^6 revolutions], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    Lnm = a1 aISO (C / P)^3. Rust is not in it.

    Source
    ------
    ISO 281:2007, modified rating life (from memory).

    Examples
    --------
    >>> round(modified_life(630.0, 63.0, 2.0, 0.5, 10.0, 0.95))
    1917
    """
    factor = life_factor_iso(kappa, contamination, fatigue_limit, load)
    return reliability_factor(survival) * factor * rating_life(dynamic_rating, load)


def mean_load(loads: Number, speeds: Number, shares: Number, exponent: float = 3.0) -> Number:
    """One steady load that tires a bearing as a duty of several steps does.

    Parameters
    ----------
    loads : Number
        Equivalent load of each step [N], zero or more, shape `(..., n)`.
    speeds : Number
        Speed of each step [rpm], zero or more, shape `(..., n)`.
    shares : Number
        Share of time of each step [-], zero or more, shape `(..., n)`; they need not add up to one.
    exponent : float
        3 for balls, 10/3 for rollers [-], above zero.

    Returns
    -------
    Number
        Mean load [N], shape `(...)`.

    Raises
    ------
    ValueError
        A value outside its range, or a duty in which nothing turns.

    Notes
    -----
    Pm = (sum P^p n q / sum n q)^(1/p), over the last axis.

    Source
    ------
    ISO 281 duty-cycle rule as printed in a bearing handbook, eq. 4.23 (opened).

    Examples
    --------
    >>> round(mean_load([10.0, 20.0], [100.0, 100.0], [0.5, 0.5]), 2)
    16.51
    """
    loads, speeds, shares = (np.asarray(value, dtype=np.float64) for value in (loads, speeds, shares))
    arguments.not_negative(loads=loads, speeds=speeds, shares=shares)
    arguments.positive(exponent=exponent)
    turned = speeds * shares
    total = np.sum(turned + np.zeros_like(loads), axis=-1)
    arguments.positive(speeds=total)
    return arguments.plain((np.sum(loads**exponent * turned, axis=-1) / total) ** (1 / exponent))


def system_life(lives: Number, slope: float = BALLS) -> Number:
    """Life of several bearings together: that of the first one to go.

    Parameters
    ----------
    lives : Number
        Life of each, all in one unit [h, turns or metres], above zero, shape `(..., n)`.
    slope : float
        Weibull slope [-], above zero: 10/9 for balls, 9/8 for rollers.

    Returns
    -------
    Number
        Life that nine of ten such sets outlive [unit of lives], shape `(...)`.

    Raises
    ------
    ValueError
        A value that is not above zero and finite.

    Notes
    -----
    L = (sum L_i^-e)^(-1/e), over the last axis: always shorter than the shortest.

    Source
    ------
    Weibull's product of survivals as printed in a bearing handbook, eq. 3.3 (opened).

    Examples
    --------
    >>> round(system_life([1900.0, 7550.0], 9 / 8))
    1602
    """
    lives = np.asarray(lives, dtype=np.float64)
    arguments.positive(lives=lives, slope=slope)
    return arguments.plain(np.sum(lives**-slope, axis=-1) ** (-1 / slope))
