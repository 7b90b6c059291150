"""The registry of readings: what each is called, how and under which conditions it is taken, what is good."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from types import MappingProxyType
from typing import Any

from spoolwright.quantities import DIMENSIONS, read
from spoolwright.sheets.sourced import table, unknown

WAYS = (
    "typed",
    "pull trace",
    "spin-down",
    "pull series",
    "inertia",
    "bearing noise",
    "gear noise",
    "by hand",
)

CONDITIONS: Mapping[str, str] = MappingProxyType(
    {
        "line": "line on or off",
        "radius": "radius at which the line leaves the spool",
        "brakes": "brakes on, off or none fitted",
        "temperature": "temperature at the bench",
        "pull_number": "which pull this was",
        "pulls_of": "of how many pulls",
        "star_turns": "turns of the star from free",
        "lubricant_state": "what is in it: old, cleaned and oiled, dry",
        "anti_reverse_cold": "anti-reverse tried cold or warm",
        "place_measured": "where it was measured",
    }
)
"""Key of a condition and how the form asks for it."""


@dataclass(frozen=True)
class Limits:
    """What is good and what wants a look, SI, ends included; anything else is `act`. `when` "" is always."""

    when: str
    good: tuple[float, float]
    look: tuple[float, float]
    mark: str


@dataclass(frozen=True)
class ReadingKind:
    """One kind of reading."""

    id: str
    title: str
    row: str
    dimension: str
    way: str
    conditions: tuple[str, ...]
    tool: str
    method: str
    uncertainty: float
    relative: float
    limits: tuple[Limits, ...]
    scale: tuple[str, ...]
    tells: str

    def standard_uncertainty(self, value: float) -> float:
        """Standard uncertainty of one reading of this size, as the tool named allows [SI]."""
        return math.hypot(self.uncertainty, self.relative * value)

    def limits_for(self, *tags: str) -> Limits | None:
        """The limits that hold for a reel of these tags (its kind, "roller clutch"), if there are any."""
        return next((limit for limit in self.limits if not limit.when or limit.when in tags), None)

    def band(self, value: float, *tags: str) -> str:
        """ "good", "look" or "act" by the limits for these tags; "" where there are none."""
        limits = self.limits_for(*tags)
        if limits is None:
            return ""
        for name, (low, high) in (("good", limits.good), ("look", limits.look)):
            if low <= value <= high:
                return name
        return "act"


@cache
def kinds() -> Mapping[str, ReadingKind]:
    """Every kind of reading by id, in the order of the file."""
    return MappingProxyType({key: _kind(key, entry) for key, entry in table("reading_kinds.toml").items()})


def kind(name: str) -> ReadingKind:
    """The kind of reading of this id; KeyError lists the ids."""
    found = kinds().get(name)
    if found is None:
        raise unknown("kind of reading", name, tuple(kinds()))
    return found


def _kind(key: str, entry: dict[str, Any]) -> ReadingKind:
    dimension, strange = entry["dimension"], [c for c in entry["conditions"] if c not in CONDITIONS]
    if dimension not in DIMENSIONS or entry["way"] not in WAYS or strange:
        raise ValueError(f"reading_kinds.toml, {key}: dimension, way or conditions are not known")
    return ReadingKind(
        id=key,
        title=entry["title"],
        row=entry["row"],
        dimension=dimension,
        way=entry["way"],
        conditions=tuple(entry["conditions"]),
        tool=entry["tool"],
        method=entry["method"],
        uncertainty=_spread(entry["uncertainty"], dimension),
        relative=read(entry.get("relative", "0"), "ratio"),
        limits=tuple(_limits(limit, dimension) for limit in entry.get("limits", [])),
        scale=tuple(entry.get("scale", [])),
        tells=entry["tells"],
    )


def _spread(text: str, dimension: str) -> float:
    # A count may be uncertain by less than one, so its spread is read as a plain number.
    return read(text, "ratio" if dimension == "count" else dimension)


def _limits(entry: dict[str, Any], dimension: str) -> Limits:
    return Limits(
        when=entry.get("when", ""),
        good=_ends(entry["good"], dimension),
        look=_ends(entry["look"], dimension),
        mark=entry["mark"],
    )


def _ends(pair: list[str], dimension: str) -> tuple[float, float]:
    low, high = pair
    return (
        read(low, dimension) if low else -math.inf,
        read(high, dimension) if high else math.inf,
    )
