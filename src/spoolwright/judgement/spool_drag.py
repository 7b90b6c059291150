"""What drags on the free spool at the speeds of a cast? Bearings, end discs, level wind and air, as terms."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import pi, prod

import numpy as np

from spoolwright.judgement import free_spin
from spoolwright.judgement.monte_carlo import Distribution, Rectangular, Sample, Triangular
from spoolwright.judgement.reel_state import ReelState
from spoolwright.mechanics import brakes
from spoolwright.sheets.reel_sheet import ReelSheet

SPOOL_DRAWS: Mapping[str, Distribution] = {
    "windage_factor": Triangular(0.9, 1.9),
    "train_growth": Rectangular(0.0, 1.0),
    "carriage_mass": Triangular(1.5e-3, 5e-3),
    "reversal_loss": Rectangular(0.5, 1.0),
}
"""What is not known of a spool at speed: air over that of smooth discs (holes, rim, plates close by); how far
a level wind's drag grows with speed, from not at all to in proportion; the mass of its line guide [kg] and
how much of its energy each turning back costs. Judgement priors: nobody was found to have measured one."""

TRAIN_SPEED = 150.0
"""Speed of the spool [rad/s] at which a free spin tells what a level wind costs: about its middle."""

SLOWEST_SHARE = 0.35
NODES = 8
"""Speeds at which the bearings' law is fitted, from a third of the cast's top speed up."""

Terms = Mapping[str, Sample]


@dataclass(frozen=True)
class SpoolDrag:
    """Torque on the free spool without its brakes: constant + viscous w + quadratic w^2 + windage w^1.5.

    Arrays of shape `(n,)`; bearings with their end discs apart from the level wind.
    """

    bearing_constant: Sample
    bearing_viscous: Sample
    train_constant: Sample
    train_viscous: Sample
    train_quadratic: Sample
    windage: Sample

    def bearings_times(self, factor: float) -> SpoolDrag:
        """The same with the drag of bearings and end discs multiplied."""
        constant, viscous = self.bearing_constant * factor, self.bearing_viscous * factor
        rest = (self.train_constant, self.train_viscous, self.train_quadratic, self.windage)
        return SpoolDrag(constant, viscous, *rest)

    def without_train(self) -> SpoolDrag:
        """The same with no level wind."""
        none = np.zeros_like(self.train_constant)
        return SpoolDrag(self.bearing_constant, self.bearing_viscous, none, none, none, self.windage)

    def torque(self, speed: float) -> Sample:
        """All of it at one speed [N m]."""
        constant = self.bearing_constant + self.train_constant
        viscous = self.bearing_viscous + self.train_viscous
        return np.asarray(
            constant + speed * (viscous + speed * self.train_quadratic) + self.windage * speed**1.5
        )


def spool_drag(
    sheet: ReelSheet, state: ReelState, draws: Mapping[str, Sample], top_speed: float
) -> SpoolDrag:
    """The drag of a free spool as the terms that a cast is reckoned with.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    state : ReelState
        Lubricant of its spool bearings **[-]**.
    draws : mapping of str to array
        SPOOL_DRAWS, free_spin.SPIN_DRAWS, `bearing_condition`, `end_drag`, `train_drag`, shape `(n,)`
        **[SI]**.
    top_speed : float
        Fastest that the spool turns in the cast **[rad/s]**, above 0.

    Returns
    -------
    SpoolDrag
        Terms of shape `(n,)` in SI.

    Raises
    ------
    ValueError
        The top speed is not above 0.

    Notes
    -----
    Bearings: Palmgren's law goes with speed to the power two thirds; a constant and a viscous term are
    fitted to it by least squares from a third of the top speed up, off by less than 4 % there. End discs
    are constant. A driven level wind: its drag in a free spin stays or grows up to in proportion to speed
    (`train_growth`); on top, its line guide gives up energy each time it turns back, which grows with the
    square of speed: loss m (lead g)^3 / ((2 pi)^3 travel), g the worm's turns for one of the spool.

    Source
    ------
    Palmgren (mechanics.rolling), von Karman and Cochran (mechanics.brakes), kinematics of the worm.

    Examples
    --------
    >>> from spoolwright.judgement.monte_carlo import draw
    >>> from spoolwright.judgement.reel_state import as_built
    >>> from spoolwright.sheets import reel_sheet
    >>> sheet = reel_sheet.load("tarvak-58r")
    >>> ranges = {name: held.distribution for name, held in as_built(sheet).ranges.items()}
    >>> draws = draw({**SPOOL_DRAWS, **free_spin.SPIN_DRAWS, **ranges}, samples=200, seed=1)
    >>> drag = spool_drag(sheet, as_built(sheet), draws, 2400.0)
    >>> bool(1e-4 < np.median(drag.torque(2400.0)) < 3e-3)
    True
    """
    if not top_speed > 0:
        raise ValueError(f"top_speed: above 0 is accepted; got {top_speed}")
    constant, viscous = _bearings(sheet, state, draws, top_speed)
    train = _train(sheet, draws)
    air = brakes.disc_windage(sheet.spool.flange_diameter / 2) * draws["windage_factor"]
    return SpoolDrag(constant + draws["end_drag"], viscous, *train, np.asarray(air))


def _bearings(
    sheet: ReelSheet, state: ReelState, draws: Mapping[str, Sample], top_speed: float
) -> tuple[Sample, Sample]:
    speed = np.linspace(SLOWEST_SHARE, 1.0, NODES) * top_speed
    names = ("temperature", "oil_factor", "grease_factor", "bearing_condition")
    column = {name: draws[name][:, np.newaxis] for name in names}
    torque = free_spin.bearing_torque(sheet, state, column, speed[np.newaxis, :])
    torque = np.broadcast_to(torque, (len(draws["bearing_condition"]), NODES))
    design = np.stack([np.ones(NODES), speed], axis=1)
    constant, viscous = np.linalg.pinv(design) @ torque.T
    return np.maximum(constant, 0.0), np.maximum(viscous, 0.0)


def _train(sheet: ReelSheet, draws: Mapping[str, Sample]) -> tuple[Sample, Sample, Sample]:
    drag = draws["train_drag"]
    none = np.zeros_like(drag)
    wind = sheet.level_wind
    if wind is None or not np.any(drag > 0):
        return none, none, none
    grows = draws["train_growth"]
    per_turn = wind.worm_lead * prod(driver / driven for driver, driven in wind.cogs)
    reversal = draws["reversal_loss"] * draws["carriage_mass"] * per_turn**3 / ((2 * pi) ** 3 * wind.travel)
    return np.asarray(drag * (1 - grows)), np.asarray(drag * grows / TRAIN_SPEED), np.asarray(reversal)
