"""What a pull at the line puts on the parts of a reel, and how strong their materials are, for every draw."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import sqrt
from zlib import crc32

import numpy as np

from spoolwright.judgement.line_said import SaidLine
from spoolwright.judgement.monte_carlo import Sample
from spoolwright.judgement.reel_state import ReelState
from spoolwright.sheets.materials import structural_material, structural_names
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.sheets.sourced import Sourced

RECTANGLE_PLASTIC = 1.5
ROUND_PLASTIC = 16 / (3 * np.pi)
"""How much more than at first yield a section in bending carries before all of it yields: 1.5 and 1.70."""

SHEAR_YIELD = 1 / sqrt(3)
"""Yield in shear over yield in tension (von Mises)."""

SIZE = 0.02
"""Sizes on a sheet are taken to be true within so much, likelier in the middle: judgement prior."""


@dataclass(frozen=True)
class Loads:
    """One reel under a pull at its line: what is known of it, and draws of what is not.

    `radius` is where the line leaves [m]; `draws` those of the drag, as a prediction uses them.
    """

    sheet: ReelSheet
    state: ReelState
    radius: float
    draws: Mapping[str, Sample]
    samples: int
    seed: int
    line: SaidLine | None = None
    system: str = "metric"

    @property
    def handle_torque(self) -> float:
        """Torque about the handle's axis for each newton at the line [N m/N], nothing lost on the way."""
        return self.radius * self.sheet.gear_ratio

    def between(self, name: str, low: float, high: float) -> Sample:
        """Draws between two ends, likelier in the middle; the same whenever the same name asks."""
        if low == high:
            return np.full(self.samples, low)
        generator = np.random.default_rng([self.seed, crc32(name.encode())])
        middle, half = (low + high) / 2, (high - low) / 2
        return middle + half * (generator.random(self.samples) + generator.random(self.samples) - 1.0)

    def evenly(self, name: str, low: float, high: float) -> Sample:
        """Draws between two ends of which nothing else is known."""
        generator = np.random.default_rng([self.seed, crc32(name.encode())])
        return generator.uniform(low, high, self.samples)

    def of(self, part: str, held: Sourced) -> Sample:
        """Draws of a sourced range, one lot for each part: two parts of one metal are not of one bar."""
        return self.between(f"{part}: {held.source}", held.low, held.high)

    def size(self, part: str, power: float = 1.0) -> Sample:
        """What the truth of a size does to a strength that goes with that power of it."""
        return self.between(f"{part}: size", 1 - SIZE, 1 + SIZE) ** power

    def yields_at(self, part: str, material: str) -> Sample:
        """Yield strength of that part's metal [Pa]."""
        return self.of(part, structural_material(material).yield_strength)

    def stated_or_guessed(self, name: str, stated: float | None, low: float, high: float) -> Sample:
        """A size that the sheet states, true within SIZE; else a guess between two ends [m]."""
        if stated is not None:
            return stated * self.size(name)
        return self.between(f"{name}: guess", low, high)


def part_material(sheet: ReelSheet, word: str, otherwise: str) -> str:
    """The metal of a part, as the parts list of the sheet names it.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    word : str
        A word of the part's name **[-]**; the first part whose name holds it counts.
    otherwise : str
        Material where no such part is listed or its metal is not in the data file **[-]**.

    Returns
    -------
    str
        Name of a structural material **[-]**; plating is no metal to carry load.

    Source
    ------
    The reel sheet.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> part_material(reel_sheet.load("tarvak-52"), "handle nut", "carbon steel")
    'brass'
    """
    for part in sheet.parts:
        if word in part.name:
            found = [name for name in structural_names() if name in part.material]
            return max(found, key=len) if found else otherwise
    return otherwise


def material_words(part: str, held: Sourced) -> str:
    """A range of a material with its source, as a rung tells it.

    Parameters
    ----------
    part : str
        What it is of **[-]**.
    held : Sourced
        The range **[SI]**.

    Returns
    -------
    str
        Words **[-]**.

    Source
    ------
    sheets/materials.toml.

    Examples
    --------
    >>> material_words("brass", structural_material("brass").yield_strength)
    'yield of brass 150 to 300 MPa: EN 12164 brass CW614N, half hard (from memory)'
    """
    return f"yield of {part} {held.low / 1e6:.0f} to {held.high / 1e6:.0f} MPa: {held.source} ({held.how})"
