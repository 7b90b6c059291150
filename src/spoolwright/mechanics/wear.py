"""Wear of faces that slide: how deep, and how long until a part is at its limit."""

from __future__ import annotations

from typing import TypedDict

import numpy as np

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number


def archard_depth(wear_rate: Number, pressure: Number, sliding_distance: Number) -> Number:
    """Depth worn off a face that slides under a steady pressure.

    Parameters
    ----------
    wear_rate : Number
        Volume worn for each load and distance [m^2/N = m^3/(N m)], zero or more; 1 mm^3/(N m) is 1e-9.
    pressure : Number
        Pressure on the face [Pa], zero or more.
    sliding_distance : Number
        Distance slid [m], zero or more.

    Returns
    -------
    Number
        Depth [m], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value that is negative or not finite.

    Notes
    -----
    h = k p s. Rates are known to a factor of ten at best and change by more where grease fails or grit
    comes in: a depth from this is an order of magnitude until the shop has measured its own.

    Source
    ------
    J. F. Archard, J. Appl. Phys. 24 (1953) 981 (from memory).

    Examples
    --------
    >>> round(archard_depth(1e-16, 5e6, 1e4) * 1e6, 6)
    5.0
    """
    arguments.not_negative(wear_rate=wear_rate, pressure=pressure, sliding_distance=sliding_distance)
    return wear_rate * pressure * sliding_distance


def specific_rate(coefficient: Number, hardness: Number, shape: float = 3.0) -> Number:
    """Wear rate of archard_depth from a book's dimensionless coefficient.

    Parameters
    ----------
    coefficient : Number
        Archard's K [-], zero or more.
    hardness : Number
        Indentation hardness of the softer face [Pa], above zero; a Brinell number times 9.80665e6.
    shape : float
        What stands beside the hardness [-], above zero: 3 where the table was made with V = K F s / (3 H), 1
        where it was made with V = K F s / H.

    Returns
    -------
    Number
        Wear rate [m^2/N], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    k = K / (shape H). Tables mix both conventions; ask which before using one.

    Source
    ------
    Definition; J. F. Archard, J. Appl. Phys. 24 (1953) 981 (from memory).

    Examples
    --------
    >>> round(specific_rate(7e-3, 1.176e9) * 1e9, 6)
    0.001984
    """
    arguments.not_negative(coefficient=coefficient)
    arguments.positive(hardness=hardness, shape=shape)
    return coefficient / (shape * hardness)


def track_depth(
    wear_rate: Number, load: Number, sliding_distance: Number, width: Number, length: Number
) -> Number:
    """Depth of a track along which a small slider goes over and over.

    Parameters
    ----------
    wear_rate : Number
        Wear rate of the track's face [m^2/N], zero or more.
    load : Number
        Force of the slider on the track [N], zero or more.
    sliding_distance : Number
        Distance slid, all passes together [m], zero or more.
    width : Number
        Width of the track [m], above zero.
    length : Number
        Length of the track [m], above zero.

    Returns
    -------
    Number
        Depth, even along the track [m], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    h = k F s / (width length). The slider is worn all the time, each spot of its track only while it passes:
    a worm outlives its pawl by the track's length over the pawl's. Where the slider knocks, as at a
    crossing, the track is worn deeper than this.

    Source
    ------
    Archard's law with the volume spread over the track.

    Examples
    --------
    >>> round(track_depth(1e-15, 2.0, 1e5, 0.7e-3, 0.2) * 1e6, 2)
    1.43
    """
    arguments.not_negative(wear_rate=wear_rate, load=load, sliding_distance=sliding_distance)
    arguments.positive(width=width, length=length)
    return wear_rate * load * sliding_distance / (width * length)


def life(
    reject_depth: Number, wear_rate: Number, pressure: Number, sliding_per_use: Number, worn: Number = 0.0
) -> Number:
    """How many uses a face lasts until it is worn to its limit.

    Parameters
    ----------
    reject_depth : Number
        Depth at which the part is rejected [m], above zero.
    wear_rate : Number
        Wear rate [m^2/N], zero or more.
    pressure : Number
        Pressure on the face [Pa], zero or more.
    sliding_per_use : Number
        Distance slid in one use: a cast, a week, a metre of line [m], zero or more.
    worn : Number
        Depth already worn off [m], zero or more.

    Returns
    -------
    Number
        Uses left [-], broadcast shape of the inputs; zero where it is past its limit, infinite where nothing
        wears it.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    n = (limit - worn) / (k p s). Linear: a new part beds in faster, and a notch grows faster at its end.

    Source
    ------
    Archard's law; bush lives of machine design texts are found so.

    Examples
    --------
    >>> round(life(0.2e-3, 1e-15, 1e6, 300.0))
    667
    """
    arguments.positive(reject_depth=reject_depth)
    arguments.not_negative(worn=worn)
    each = archard_depth(wear_rate, pressure, sliding_per_use)
    left = np.maximum(np.subtract(reject_depth, worn), 0.0)
    with np.errstate(divide="ignore", invalid="ignore"):
        uses = np.divide(left, each)
    return arguments.plain(np.where(left > 0, uses, 0.0))


class Life(TypedDict):
    """Uses that 95, 50 and 5 of a hundred such parts outlast."""

    low: Number
    middle: Number
    high: Number


def life_band(
    reject_depth: Number,
    rate_low: Number,
    rate_high: Number,
    pressure: Number,
    sliding_per_use: Number,
    worn: Number = 0.0,
) -> Life:
    """Life of a face whose wear rate is only known to lie between two ends.

    Parameters
    ----------
    reject_depth : Number
        Depth at which the part is rejected [m], above zero.
    rate_low : Number
        Least wear rate [m^2/N], above zero.
    rate_high : Number
        Greatest wear rate [m^2/N], rate_low or more.
    pressure : Number
        Pressure on the face [Pa], above zero.
    sliding_per_use : Number
        Distance slid in one use [m], above zero.
    worn : Number
        Depth already worn off [m], zero or more.

    Returns
    -------
    Life
        Mapping: low, middle, high uses left [-], each of the broadcast shape of the inputs: 90 % lie between
        low and high.

    Raises
    ------
    ValueError
        A value outside its range, or ends in the wrong order.

    Notes
    -----
    The logarithm of the rate is taken as even between its ends, so that each power of ten is as likely as
    the next: quantile q of the life has the rate high^(1-q) low^q.

    Source
    ------
    A rectangular distribution of the logarithm, JCGM 101:2008, 6.4.2; wear rates are listed by powers of ten.

    Examples
    --------
    >>> found = life_band(0.2e-3, 1e-16, 1e-14, 1e6, 300.0)
    >>> round(found["low"]), round(found["middle"]), round(found["high"])
    (84, 667, 5296)
    """
    arguments.positive(rate_low=rate_low, rate_high=rate_high)
    arguments.positive(pressure=pressure, sliding_per_use=sliding_per_use)
    arguments.at_least("rate_high", rate_high, "rate_low", rate_low)
    span = rate_low / rate_high
    low, middle, high = (
        life(reject_depth, rate_high * span**share, pressure, sliding_per_use, worn)
        for share in (0.05, 0.5, 0.95)
    )
    return Life(low=low, middle=middle, high=high)
