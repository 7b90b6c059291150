"""How is the brake set? So much of what the reel has, so many blocks, a measured constant, or by itself."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np

from spoolwright import quantities
from spoolwright.judgement.monte_carlo import Distribution, Sample, Triangular
from spoolwright.mechanics import brakes
from spoolwright.sheets.reel_sheet import ReelSheet

BRAKE_DRAWS: Mapping[str, Distribution] = {
    "block_friction": Triangular(0.75, 1.25),
    "magnet_field": Triangular(0.06, 0.14),
    "return_path": Triangular(0.3, 0.7),
}
"""What is not known of a brake: friction of a block against the sheet's, field in the spool's wall [T] with
the magnets nearest, share that the return path leaves. Judgement priors."""

MAGNET_FACE = 28e-6
"""Face of one magnet of 6 mm [m^2]: judgement prior."""
WALL = 1.2e-3
ALLOY_RESISTIVITY = 4.5e-8
"""Aluminium alloys as spools are turned from: 3e-8 to 6e-8 ohm m (from memory)."""
UNDER_THE_RIM = 0.85
"""Where the magnets stand, as a share of the flange's radius: judgement prior."""

ACCEPTED = (
    'a share such as "50 %", blocks such as "2 blocks", a measured brake such as "2 μN m s", the slack that '
    'it is to keep such as "slack 1 m", or "set"'
)


@dataclass(frozen=True)
class BrakeSetting:
    """One of: a `share` of all that the reel has; a number of `blocks`; a measured `constant` [N m s].

    None of them: the brake is set until the middle cast runs no more than `slack` [m], and where that is not
    said either, half of what the spool's lip allows.
    """

    share: float | None = None
    blocks: float | None = None
    constant: float | None = None
    slack: float | None = None

    @property
    def is_searched(self) -> bool:
        return self.share is None and self.blocks is None and self.constant is None


SET_FOR_SLACK = BrakeSetting()


@dataclass(frozen=True)
class ReelBrakes:
    """All that a reel's own brakes can do: torque over w^2 and torque over w, draw by draw, shape `(n,)`."""

    centrifugal: Sample
    magnetic: Sample
    blocks: int
    magnets: int
    guess: str

    @property
    def has_any(self) -> bool:
        return bool(np.any(self.centrifugal > 0) or np.any(self.magnetic > 0))


def brakes_of(sheet: ReelSheet, draws: Mapping[str, Sample]) -> ReelBrakes:
    """The brakes of a reel at their hardest: every block in, every magnet nearest.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    draws : mapping of str to array
        BRAKE_DRAWS **[-, T]**, each of shape `(n,)`.

    Returns
    -------
    ReelBrakes
        Torque over w^2 **[N m s^2]** and over w **[N m s]**, shape `(n,)`; zeros where the sheet has none.

    Notes
    -----
    Blocks: mass, radius and friction of the sheet; their mass is taken to turn at the ring. Magnets: as the
    sheet has measured them, else 6 mm faces beside the wall under the rim, which is a guess to a factor of
    three.

    Source
    ------
    mechanics.brakes.

    Examples
    --------
    >>> from spoolwright.judgement.monte_carlo import draw
    >>> from spoolwright.sheets import reel_sheet
    >>> brakes_of(reel_sheet.load("tarvak-58r"), draw(BRAKE_DRAWS, samples=100, seed=1)).blocks
    2
    """
    fitted = sheet.brakes
    nothing = np.zeros_like(draws["block_friction"])
    if fitted is None:
        return ReelBrakes(nothing, nothing, 0, 0, "")
    blocks, magnets = fitted.blocks or 0, fitted.magnets or 0
    centrifugal = nothing
    if blocks and fitted.block_mass and fitted.block_radius:
        friction = (0.2 if fitted.ring_friction is None else fitted.ring_friction) * draws["block_friction"]
        at = fitted.block_radius
        centrifugal = np.asarray(brakes.centrifugal(blocks, fitted.block_mass, at, at, friction))
    if fitted.magnet_drag is not None:
        return ReelBrakes(centrifugal, nothing + fitted.magnet_drag, blocks, magnets, "")
    if not magnets:
        return ReelBrakes(centrifugal, nothing, blocks, magnets, "")
    words = f"{magnets} magnets of 6 mm beside the spool's wall, 0.06 to 0.14 T in it: judgement prior"
    return ReelBrakes(centrifugal, _magnetic(sheet, magnets, draws), blocks, magnets, words)


def _magnetic(sheet: ReelSheet, magnets: int, draws: Mapping[str, Sample]) -> Sample:
    radius = UNDER_THE_RIM * sheet.spool.flange_diameter / 2
    wall = sheet.spool.wall or WALL
    field, left = draws["magnet_field"], draws["return_path"]
    area = magnets * MAGNET_FACE
    return np.asarray(brakes.eddy(field, area, wall, radius, ALLOY_RESISTIVITY, left))


def share_of(setting: BrakeSetting, has: ReelBrakes) -> float | None:
    """A setting as a share of all that the reel has.

    Parameters
    ----------
    setting : BrakeSetting
        As it is set **[-, N m s]**.
    has : ReelBrakes
        The reel's own brakes at their hardest **[SI]**.

    Returns
    -------
    float or None
        Share **[-]**, 0 or more; None where the setting is to be searched for, or is a measured constant that
        stands in place of the reel's own.

    Raises
    ------
    ValueError
        Blocks are asked of a reel that has none, or more than it has.

    Source
    ------
    Arithmetic.

    Examples
    --------
    >>> two = ReelBrakes(np.array([2e-9]), np.array([0.0]), 2, 0, "")
    >>> share_of(BrakeSetting(blocks=1), two)
    0.5
    """
    if setting.blocks is None:
        return setting.share
    if setting.blocks > has.blocks:
        count = f"{has.blocks} block{'' if has.blocks == 1 else 's'}"
        raise ValueError(f"brake: at most {count}, as this reel has; got {setting.blocks:g}")
    return setting.blocks / has.blocks if has.blocks else 0.0


def read_setting(text: str) -> BrakeSetting:
    """A brake's setting as a person types it.

    Parameters
    ----------
    text : str
        Such as "50 %", "2 blocks", "2 μN m s"; "slack 1 m" for one that is set to keep so much, "set" for
        one that is set to the cast **[-]**.

    Returns
    -------
    BrakeSetting
        The setting **[-, N m s]**.

    Raises
    ------
    NotAQuantity
        Text that is none of these, with what is accepted.

    Source
    ------
    Our own.

    Examples
    --------
    >>> read_setting("50 %").share, read_setting("2 blocks").blocks, read_setting("set").is_searched
    (0.5, 2.0, True)
    """
    word = text.strip().lower()
    if word in ("", "set"):
        return SET_FOR_SLACK
    try:
        if word.endswith(("block", "blocks")):
            count = quantities.read(word.removesuffix("s").removesuffix("block").strip(), "count")
            return _not_below(BrakeSetting(blocks=count), count, text)
        if word.startswith("slack"):
            slack = quantities.read(word.removeprefix("slack").strip(), "line_length")
            return _not_below(BrakeSetting(slack=slack or None), slack, text)
        if "n m" in word or "nm" in word:
            constant = quantities.read(text, "viscous_drag")
            return _not_below(BrakeSetting(constant=constant), constant, text)
        share = quantities.read(text, "ratio")
        return _not_below(BrakeSetting(share=share), share, text)
    except quantities.NotAQuantity as fault:
        raise quantities.NotAQuantity(text, "is no setting of a brake", ACCEPTED) from fault


def _not_below(setting: BrakeSetting, value: float, text: str) -> BrakeSetting:
    if value < 0:
        raise quantities.NotAQuantity(text, "is below zero", ACCEPTED)
    return setting
