"""Friction materials and structural materials, every value with its source (materials.toml)."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import Any

from spoolwright.sheets.sourced import Sourced, sourced, table, unknown


@dataclass(frozen=True)
class FrictionMaterial:
    """What slips against metal: coefficient and start-up ratio dry and greased, what it stands, how heat
    goes through it, and `fade`: the share of its friction lost at its temperature limit."""

    name: str
    title: str
    dry: Sourced
    greased: Sourced
    start_ratio_dry: Sourced
    start_ratio_greased: Sourced
    pressure_limit: Sourced
    temperature_limit: Sourced
    conductivity: Sourced
    density: Sourced
    specific_heat: Sourced
    fade: Sourced
    note: str

    def friction(self, lubrication: str) -> Sourced:
        """Running coefficient of friction for "dry" or "greased"."""
        return self.dry if lubrication == "dry" else self.greased

    def start_ratio(self, lubrication: str) -> Sourced:
        """Static over running friction for "dry" or "greased"."""
        return self.start_ratio_dry if lubrication == "dry" else self.start_ratio_greased


@dataclass(frozen=True)
class StructuralMaterial:
    """What carries load.

    `allowable_bending` is for a tooth's root by Lewis's formula, `allowable_contact` for the peak pressure
    between two teeth, both for the life of gears turned by hand; `endurance` for a turning shaft.
    """

    name: str
    title: str
    density: Sourced
    youngs_modulus: Sourced
    poisson: Sourced
    yield_strength: Sourced
    hardness: Sourced
    allowable_bending: Sourced
    allowable_contact: Sourced
    endurance: Sourced
    conductivity: Sourced
    specific_heat: Sourced


BARE_METAL = "bare metal"
"""The entry for metal that slips on metal, where no friction disc lies between."""

_FRICTION = {
    "dry": "ratio",
    "greased": "ratio",
    "start_ratio_dry": "ratio",
    "start_ratio_greased": "ratio",
    "pressure_limit": "pressure",
    "temperature_limit": "temperature",
    "conductivity": "conductivity",
    "density": "density",
    "specific_heat": "specific_heat",
    "fade": "ratio",
}
_STRUCTURAL = {
    "density": "density",
    "youngs_modulus": "pressure",
    "poisson": "ratio",
    "yield_strength": "pressure",
    "hardness": "pressure",
    "allowable_bending": "pressure",
    "allowable_contact": "pressure",
    "endurance": "pressure",
    "conductivity": "conductivity",
    "specific_heat": "specific_heat",
}


@cache
def _file() -> dict[str, Any]:
    return table("materials.toml")


@cache
def friction_material(name: str) -> FrictionMaterial:
    """The friction material of this name; KeyError lists the names that are known."""
    entry = _file()["friction"].get(name)
    if entry is None:
        raise unknown("friction material", name, friction_names())
    values = {key: sourced(entry[key], dimension) for key, dimension in _FRICTION.items()}
    return FrictionMaterial(name=name, title=entry["title"], note=entry.get("note", ""), **values)


@cache
def structural_material(name: str) -> StructuralMaterial:
    """The structural material of this name; KeyError lists the names that are known."""
    entry = _file()["structural"].get(name)
    if entry is None:
        raise unknown("material", name, structural_names())
    values = {key: sourced(entry[key], dimension) for key, dimension in _STRUCTURAL.items()}
    return StructuralMaterial(name=name, title=entry["title"], **values)


@cache
def friction_names() -> tuple[str, ...]:
    return tuple(_file()["friction"])


@cache
def structural_names() -> tuple[str, ...]:
    return tuple(_file()["structural"])


def washer_names() -> tuple[str, ...]:
    """What a member of a drag stack may be made of."""
    names = (*(name for name in friction_names() if name != BARE_METAL), *structural_names())
    return tuple(dict.fromkeys(names))
