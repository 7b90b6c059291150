"""House oils and greases, ISO viscosity grades and NLGI classes, with sources (lubricants.toml)."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import Any

from spoolwright.quantities import read
from spoolwright.sheets.sourced import Sourced, sourced, table, unknown


@dataclass(frozen=True)
class Oil:
    name: str
    code: str
    title: str
    viscosity_40: Sourced
    viscosity_100: Sourced
    density: Sourced


@dataclass(frozen=True)
class Grease:
    """The viscosities are those of the base oil."""

    name: str
    code: str
    title: str
    nlgi: str
    viscosity_40: Sourced
    viscosity_100: Sourced
    density: Sourced


@dataclass(frozen=True)
class Consistency:
    """An NLGI class: worked penetration in tenths of a millimetre, least and most."""

    nlgi: str
    softest: int
    stiffest: int
    source: str


@cache
def _file() -> dict[str, Any]:
    return table("lubricants.toml")


@cache
def names() -> tuple[str, ...]:
    """Every house oil and grease by name."""
    return (*_file()["oil"], *_file()["grease"])


@cache
def oil(name_or_class: str) -> Oil:
    """The house oil of this name ("Tysna 10") or lubrication class ("O1"); KeyError lists what is known."""
    name, entry = _find("oil", name_or_class)
    return Oil(
        name,
        entry["class"],
        entry["title"],
        sourced(entry["viscosity_40"], "viscosity"),
        sourced(entry["viscosity_100"], "viscosity"),
        sourced(entry["density"], "density"),
    )


@cache
def grease(name_or_class: str) -> Grease:
    """The house grease of this name or lubrication class ("G2"); KeyError lists what is known."""
    name, entry = _find("grease", name_or_class)
    return Grease(
        name,
        entry["class"],
        entry["title"],
        entry["nlgi"],
        sourced(entry["base_viscosity_40"], "viscosity"),
        sourced(entry["base_viscosity_100"], "viscosity"),
        sourced(entry["density"], "density"),
    )


def lubricant(name_or_class: str) -> Oil | Grease:
    """The oil or grease of this name or class."""
    oils = _file()["oil"]
    known = name_or_class in oils or name_or_class in {entry["class"] for entry in oils.values()}
    return oil(name_or_class) if known else grease(name_or_class)


@cache
def iso_vg(grade: int) -> Sourced:
    """Least and most viscosity at 40 °C of an ISO viscosity grade [m2/s]; KeyError lists the grades."""
    chapter = _file()["iso_vg"]
    for number, _, low, high in chapter["grades"]:
        if number == str(grade):
            limits = read(low, "viscosity"), read(high, "viscosity")
            return Sourced(*limits, chapter["source"], chapter["how"])
    raise unknown("ISO VG grade", str(grade), tuple(row[0] for row in chapter["grades"]))


@cache
def consistency(nlgi: str) -> Consistency:
    """What an NLGI class means."""
    chapter = _file()["nlgi"]
    for number, least, most in chapter["classes"]:
        if number == nlgi:
            return Consistency(nlgi, most, least, chapter["source"])
    raise unknown("NLGI class", nlgi, tuple(row[0] for row in chapter["classes"]))


def _find(kind: str, name_or_class: str) -> tuple[str, dict[str, Any]]:
    entries: dict[str, dict[str, Any]] = _file()[kind]
    for name, entry in entries.items():
        if name_or_class in (name, entry["class"]):
            return name, entry
    raise unknown(kind, name_or_class, tuple(f"{n} ({e['class']})" for n, e in entries.items()))
