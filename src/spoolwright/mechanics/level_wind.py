"""A level wind: how far apart it lays the turns, whether layers cross, and how far its pawl slides."""

from __future__ import annotations

from math import pi

import numpy as np

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number
from spoolwright.mechanics.worm_drive import pawl_force, worm_efficiency, worm_torque

__all__ = [
    "crossing_angle",
    "line_pitch",
    "pawl_force",
    "pawl_slide",
    "track_offset",
    "train_ratio",
    "turns_per_layer",
    "worm_efficiency",
    "worm_torque",
]


def train_ratio(drivers: Number, driven: Number) -> Number:
    """Turns of the last cog for one turn of the first.

    Parameters
    ----------
    drivers : Number
        Teeth of the driving cog of each pair [-], whole numbers of 1 or more, shape `(..., n)`.
    driven : Number
        Teeth of the driven cog of each pair [-], whole numbers of 1 or more, shape `(..., n)`.

    Returns
    -------
    Number
        Ratio [-], shape `(...)`.

    Raises
    ------
    ValueError
        Teeth that are not whole numbers above zero.

    Notes
    -----
    Product of driver teeth over driven teeth. An idler stands in two pairs, driven in one and driving in the
    next, and so drops out.

    Source
    ------
    Kinematics of gear trains, any machine design text.

    Examples
    --------
    >>> round(train_ratio([18, 24], [24, 34]), 4)
    0.5294
    """
    above, below = np.asarray(drivers, dtype=np.float64), np.asarray(driven, dtype=np.float64)
    arguments.whole(1, drivers=above, driven=below)
    return arguments.plain(np.prod(above / below, axis=-1))


def line_pitch(worm_lead: Number, ratio: Number) -> Number:
    """Distance along the spool from one turn of line to the next.

    Parameters
    ----------
    worm_lead : Number
        Way of the pawl for one turn of the worm [m], above zero.
    ratio : Number
        Turns of the worm for one turn of the spool [-], above zero.

    Returns
    -------
    Number
        Pitch [m per spool turn], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value that is not above zero and finite.

    Notes
    -----
    p = lead ratio. At the ends the pawl stands nearly still for a part of a turn.

    Source
    ------
    Kinematics of screws.

    Examples
    --------
    >>> round(line_pitch(7e-3, 0.5294) * 1e3, 2)
    3.71
    """
    arguments.positive(worm_lead=worm_lead, ratio=ratio)
    return worm_lead * ratio


def turns_per_layer(travel: Number, pitch: Number) -> Number:
    """Turns of the spool while the guide goes once from end to end.

    Parameters
    ----------
    travel : Number
        Way of the guide between its ends [m], above zero.
    pitch : Number
        Distance from turn to turn [m], above zero.

    Returns
    -------
    Number
        Turns [-], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value that is not above zero and finite.

    Notes
    -----
    n = travel / pitch, without the dwell at the ends.

    Source
    ------
    Geometry.

    Examples
    --------
    >>> round(turns_per_layer(43e-3, 3.706e-3), 1)
    11.6
    """
    arguments.positive(travel=travel, pitch=pitch)
    return travel / pitch


def crossing_angle(pitch: Number, radius: Number) -> Number:
    """Angle at which the turns of one layer cross those of the layer below.

    Parameters
    ----------
    pitch : Number
        Distance from turn to turn [m], zero or more.
    radius : Number
        Radius of the layer [m], above zero.

    Returns
    -------
    Number
        Angle [rad], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    2 atan(p / (2 pi r)): one layer goes to the right, the next to the left. It is widest on the bare arbor.

    Source
    ------
    Helix on a cylinder; the textile trade calls half of it the helix angle, its complement the coil angle.

    Examples
    --------
    >>> from math import degrees
    >>> round(degrees(crossing_angle(3.7e-3, 0.02)), 1)
    3.4
    """
    arguments.not_negative(pitch=pitch)
    arguments.positive(radius=radius)
    return arguments.plain(2 * np.arctan(pitch / (2 * pi * radius)))


def track_offset(travel: Number, pitch: Number) -> Number:
    """How far beside its own earlier track the line comes to lie after the guide has gone to and fro.

    Parameters
    ----------
    travel : Number
        Way of the guide between its ends [m], above zero.
    pitch : Number
        Distance from turn to turn [m], above zero.

    Returns
    -------
    Number
        Distance to the nearest turn of the same direction, one cycle earlier [m], zero to half a pitch,
        broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value that is not above zero and finite.

    Notes
    -----
    |N - round(N)| p with N = 2 travel / p turns a cycle. Where N is a whole number the line falls on its own
    track cycle after cycle, the layers stand on one another and the line locks in; where the offset is
    more than a line's diameter it falls between and the layers cross. The dwell at the ends adds a little
    to N that a sheet does not tell: count it on the reel before trusting a small offset.

    Source
    ------
    Wind ratio of the textile trade: a whole number of turns a double traverse gives ribbons (opened).

    Examples
    --------
    >>> round(track_offset(43e-3, 3.706e-3) * 1e3, 2)
    0.76
    """
    cycle = 2 * turns_per_layer(travel, pitch)
    return arguments.plain(np.abs(cycle - np.round(cycle)) * pitch)


def pawl_slide(ratio: Number, worm_lead: Number, worm_diameter: Number, radius: Number) -> Number:
    """Way that the pawl slides in the worm's groove for each metre of line.

    Parameters
    ----------
    ratio : Number
        Turns of the worm for one turn of the spool [-], above zero.
    worm_lead : Number
        Way of the pawl for one turn of the worm [m], above zero.
    worm_diameter : Number
        Diameter of the worm where the pawl bears on it [m], above zero.
    radius : Number
        Radius where the line lies on the spool [m], above zero.

    Returns
    -------
    Number
        Sliding distance per length of line [m/m], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value that is not above zero and finite.

    Notes
    -----
    ratio sqrt((pi d)^2 + lead^2) / (2 pi r): the groove's length over the line's. An emptier spool turns
    faster and costs the pawl more.

    Source
    ------
    Helix on a cylinder.

    Examples
    --------
    >>> round(pawl_slide(0.5294, 7e-3, 5e-3, 0.02), 4)
    0.0724
    """
    arguments.positive(ratio=ratio, worm_lead=worm_lead, worm_diameter=worm_diameter, radius=radius)
    return arguments.plain(ratio * np.hypot(pi * worm_diameter, worm_lead) / (2 * pi * radius))
