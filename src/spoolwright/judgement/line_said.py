"""Which line is meant by “nylon 0.40 mm” or “braid 0.25 mm 20 kg”?"""

from __future__ import annotations

import re
from dataclasses import dataclass

from spoolwright import quantities
from spoolwright.mechanics.line import break_load
from spoolwright.sheets.lines import LineMaterial, line_material, line_names
from spoolwright.sheets.sourced import Sourced

ALSO_CALLED = {
    "mono": "nylon",
    "nylon": "nylon",
    "fluoro": "fluorocarbon",
    "braid": "braided polyethylene",
    "polyester": "dacron",
}
"""What anglers say for a material of the data file."""

ACCEPTED = (
    "a material, a diameter and, where it is known, a breaking pull, "
    'such as "nylon 0.40 mm" or "braid 0.25 mm 20 kg"'
)


@dataclass(frozen=True)
class SaidLine:
    """A line: what it is made of, how thick it is [m], and its breaking pull without a knot [N]."""

    material: LineMaterial
    diameter: float
    strength: Sourced

    @property
    def words(self) -> str:
        return self.words_in("metric")

    def words_in(self, system: str) -> str:
        """The line as a person says it."""
        return f"{self.material.name}, {quantities.show(self.diameter, 'length', system)}"


def read_line(text: str) -> SaidLine:
    """The line that a person typed.

    Parameters
    ----------
    text : str
        Material, diameter and perhaps a breaking pull **[-]**, such as "braid 0.25 mm 20 kg".

    Returns
    -------
    SaidLine
        Diameter **[m]** and breaking pull without a knot **[N]**, as a range.

    Raises
    ------
    NotAQuantity
        No known material, no diameter, or one that no line has (0.05 to 3 mm).

    Notes
    -----
    Strength that is not stated = strength of the material times the round that a caliper reads,
    pi d^2 / 4. Stated strength is taken as it stands, 5 % up or down.

    Source
    ------
    Strengths with their sources in sheets/lines.toml; the 5 % a judgement prior.

    Examples
    --------
    >>> line = read_line("nylon 0.40 mm")
    >>> line.material.name, round(line.strength.low), round(line.strength.high)
    ('nylon', 63, 126)
    """
    name, rest = _material(text)
    found = re.fullmatch(r"([0-9.,/ ]+ ?(?:mm|in|\")?)[ ,]*(.*)", rest)
    if name is None or not rest or found is None:
        raise quantities.NotAQuantity(text, "is not a line that we know", ACCEPTED)
    diameter = quantities.read(found[1].strip(), "length")
    if not 0.05e-3 <= diameter <= 3e-3:
        raise quantities.NotAQuantity(text, "has a diameter that no line has", "0.05 mm to 3 mm")
    material = line_material(name)
    held = material.strength
    low, high = (float(break_load(end, diameter)) for end in (held.low, held.high))
    if found[2].strip():
        stated = quantities.read(found[2].strip(), "force")
        return SaidLine(material, diameter, Sourced(0.95 * stated, 1.05 * stated, "as stated", "as stated"))
    return SaidLine(material, diameter, Sourced(low, high, held.source, held.how))


def _material(text: str) -> tuple[str | None, str]:
    said = text.strip().casefold()
    names = {**{name: name for name in line_names()}, **ALSO_CALLED}
    for name in sorted(names, key=len, reverse=True):
        if said.startswith(name):
            return names[name], said.removeprefix(name).strip(" ,")
    return None, said
