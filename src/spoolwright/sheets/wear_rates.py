"""How fast sliding faces wear, and how far a part may be worn: ranges with their sources (wear.toml)."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import Any

from spoolwright.sheets.sourced import Sourced, sourced, table, unknown

METAL, PLASTIC = "metal on metal", "plastic on metal"
OTHER_DISC = "another disc"


@dataclass(frozen=True)
class FaceWear:
    """A pair of faces oiled, dry and with grit in it; `dimension` is "ratio" for Archard's K, else a rate."""

    name: str
    dimension: str
    oiled: Sourced
    dry: Sourced
    gritty: Sourced

    def clean(self, oiled: bool) -> Sourced:
        """Without grit, oiled or dry."""
        return self.oiled if oiled else self.dry


@cache
def _file() -> dict[str, Any]:
    return table("wear.toml")


@cache
def face_wear(name: str) -> FaceWear:
    """A pair of faces: METAL by Archard's coefficient, PLASTIC by its rate; KeyError lists what is known."""
    for chapter, dimension in (("coefficient", "ratio"), ("rate", "wear_rate")):
        entry = _file()[chapter].get(name)
        if entry is not None and "gritty" in entry:
            ranges = (sourced(entry[key], dimension) for key in ("oiled", "dry", "gritty"))
            return FaceWear(name, dimension, *ranges)
    raise unknown("pair of faces", name, (METAL, PLASTIC))


@cache
def disc_wear(material: str, lubrication: str) -> Sourced:
    """Wear rate of a friction disc "dry" or "greased" [m2/N]; that of any disc where it is not listed."""
    rates = _file()["rate"]
    entry = rates.get(material)
    if entry is None or "greased" not in entry:
        entry = rates[OTHER_DISC]
    return sourced(entry["dry" if lubrication == "dry" else "greased"], "wear_rate")


@cache
def salt_factor() -> Sourced:
    """What salt multiplies the wear of metal faces by."""
    return sourced(_file()["salt"]["factor"], "ratio")


@cache
def reject_depth(part: str) -> Sourced:
    """Depth at which a part is rejected [m]; KeyError lists the parts."""
    entry = _file()["reject"].get(part)
    if entry is None:
        raise unknown("part with a reject limit", part, tuple(_file()["reject"]))
    return sourced(entry, "length")


@cache
def reject_share(material: str) -> Sourced:
    """Share of a new disc's thickness below which it is rejected."""
    shares = _file()["reject_share"]
    return sourced(shares.get(material, shares[OTHER_DISC]), "ratio")
