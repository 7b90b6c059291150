"""Line materials with their sources (lines.toml)."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import Any

from spoolwright.sheets.sourced import Sourced, sourced, table, unknown


@dataclass(frozen=True)
class LineMaterial:
    """What a line is made of: density, modulus, elongation at the break, strength, and what a knot leaves."""

    name: str
    title: str
    density: Sourced
    modulus: Sourced
    elongation: Sourced
    strength: Sourced
    knot: Sourced
    note: str


@cache
def _file() -> dict[str, Any]:
    return table("lines.toml")


@cache
def line_names() -> tuple[str, ...]:
    return tuple(_file())


@cache
def line_material(name: str) -> LineMaterial:
    """The line material of this name; KeyError lists the names that are known."""
    entry = _file().get(name)
    if entry is None:
        raise unknown("line material", name, line_names())
    return LineMaterial(
        name=name,
        title=entry["title"],
        density=sourced(entry["density"], "density"),
        modulus=sourced(entry["modulus"], "pressure"),
        elongation=sourced(entry["elongation"], "ratio"),
        strength=sourced(entry["strength"], "pressure"),
        knot=sourced(entry["knot"], "ratio"),
        note=entry["note"],
    )
