"""A worm that moves a guide along: what presses on its pawl, what it costs to turn, what is lost."""

from __future__ import annotations

from math import pi

import numpy as np

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number


def pawl_force(
    side_force: Number, worm_lead: Number, worm_diameter: Number, friction: Number, flank_angle: Number = 0.0
) -> Number:
    """Force between pawl and groove that moves the guide along.

    Parameters
    ----------
    side_force : Number
        Force along the worm that the guide needs [N], zero or more.
    worm_lead : Number
        Way of the pawl for one turn of the worm [m], above zero.
    worm_diameter : Number
        Diameter of the worm where the pawl bears on it [m], above zero.
    friction : Number
        Coefficient of friction of pawl on worm [-], zero or more.
    flank_angle : Number
        Slope of the groove's flank from square [rad], zero or more, below a right angle.

    Returns
    -------
    Number
        Force square to the flank [N], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range, or so much friction that the pawl jams.

    Notes
    -----
    N = F / (cos a cos l - mu sin l), tan l = lead / (pi d), the worm driving.

    Source
    ------
    Forces at a worm's tooth, any machine design text.

    Examples
    --------
    >>> round(pawl_force(1.0, 7e-3, 5e-3, 0.15), 3)
    1.173
    """
    arguments.not_negative(side_force=side_force)
    across, _ = _flank(worm_lead, worm_diameter, friction, flank_angle)
    return arguments.plain(side_force / across)


def worm_torque(
    side_force: Number, worm_lead: Number, worm_diameter: Number, friction: Number, flank_angle: Number = 0.0
) -> Number:
    """Torque that turns the worm against a guide that needs so much force.

    Parameters
    ----------
    side_force : Number
        Force along the worm that the guide needs [N], zero or more.
    worm_lead : Number
        Way of the pawl for one turn of the worm [m], above zero.
    worm_diameter : Number
        Diameter of the worm where the pawl bears on it [m], above zero.
    friction : Number
        Coefficient of friction of pawl on worm [-], zero or more.
    flank_angle : Number
        Slope of the groove's flank from square [rad], zero or more, below a right angle.

    Returns
    -------
    Number
        Torque on the worm [N m], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range, or so much friction that the pawl jams.

    Notes
    -----
    T = F d / 2 (cos a sin l + mu cos l) / (cos a cos l - mu sin l). Bushes and cogs come on top.

    Source
    ------
    Forces at a worm's tooth, as a worked example of V. Jindal, Machine Design, ex. 28-3 (opened as a
    companion notebook).

    Examples
    --------
    >>> round(worm_torque(1.0, 7e-3, 5e-3, 0.15) * 1e3, 2)
    1.6
    """
    arguments.not_negative(side_force=side_force)
    across, around = _flank(worm_lead, worm_diameter, friction, flank_angle)
    return arguments.plain(side_force * np.divide(worm_diameter, 2) * around / across)


def worm_efficiency(
    worm_lead: Number, worm_diameter: Number, friction: Number, flank_angle: Number = 0.0
) -> Number:
    """Share of the worm's work that arrives at the guide.

    Parameters
    ----------
    worm_lead : Number
        Way of the pawl for one turn of the worm [m], above zero.
    worm_diameter : Number
        Diameter of the worm where the pawl bears on it [m], above zero.
    friction : Number
        Coefficient of friction of pawl on worm [-], zero or more.
    flank_angle : Number
        Slope of the groove's flank from square [rad], zero or more, below a right angle.

    Returns
    -------
    Number
        Efficiency [-], zero to 1, broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range, or so much friction that the pawl jams.

    Notes
    -----
    (cos a - mu tan l) / (cos a + mu / tan l), tan l = lead / (pi d).

    Source
    ------
    V. Jindal, Machine Design, ex. 28-4 (opened as a companion notebook).

    Examples
    --------
    >>> round(worm_efficiency(7e-3, 5e-3, 0.15), 2)
    0.7
    """
    across, around = _flank(worm_lead, worm_diameter, friction, flank_angle)
    return arguments.plain(np.divide(worm_lead, pi * worm_diameter) * across / around)


def _flank(
    worm_lead: Number, worm_diameter: Number, friction: Number, flank_angle: Number
) -> tuple[Number, Number]:
    """Parts of a unit flank force along the worm and around it, friction taken in."""
    arguments.positive(worm_lead=worm_lead, worm_diameter=worm_diameter)
    arguments.not_negative(friction=friction)
    arguments.from_up_to_below(0.0, pi / 2, flank_angle=flank_angle)
    lead = np.arctan(worm_lead / (pi * worm_diameter))
    across = np.cos(flank_angle) * np.cos(lead) - friction * np.sin(lead)
    arguments.positive(**{"what is left of the flank force after friction": across})
    return across, np.cos(flank_angle) * np.sin(lead) + friction * np.cos(lead)
