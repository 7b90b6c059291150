"""The ways of finding a spool's moment of inertia: what each asks for, how it is done, what to beware of."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from types import MappingProxyType
from typing import Any

from spoolwright.quantities import DIMENSIONS
from spoolwright.sheets.sourced import table, unknown

CAUTIONS: Mapping[str, str] = MappingProxyType(
    {
        "weight": (
            "A weight that falls, and a line under its load: feet and hands clear of where it lands, "
            "something soft under it, eyes covered, the thread free to run off. Light weights are surer as "
            "well as safer."
        ),
        "ring": (
            "A ring that comes loose at speed is a missile: fix it well, start slowly, eyes covered, nobody "
            "in line with it, nothing loose near the spool."
        ),
    }
)


@dataclass(frozen=True)
class Asked:
    """One input: its name, what the form calls it, its dimension, how it is taken, and an example."""

    key: str
    words: str
    dimension: str
    hint: str
    example: str


@dataclass(frozen=True)
class Method:
    """One way: `says` how it is done; where it takes a record, that stands for `time` and `swings`."""

    id: str
    title: str
    says: str
    asks: tuple[Asked, ...]
    takes_record: bool
    caution: str


@cache
def methods() -> Mapping[str, Method]:
    """Every method by id, in the order of the file."""
    return MappingProxyType({key: _method(key, row) for key, row in table("inertia_methods.toml").items()})


def method(name: str) -> Method:
    """The method of this id; KeyError lists the ids."""
    found = methods().get(name)
    if found is None:
        raise unknown("way of finding an inertia", name, tuple(methods()))
    return found


def _method(key: str, row: dict[str, Any]) -> Method:
    asks = tuple(_asked(key, one) for one in row["asks"])
    return Method(
        id=key,
        title=row["title"],
        says=row["says"].strip(),
        asks=asks,
        takes_record=row.get("takes_record", False),
        caution=CAUTIONS[row["caution"]] if "caution" in row else "",
    )


def _asked(key: str, row: dict[str, Any]) -> Asked:
    if row["dimension"] not in DIMENSIONS:
        raise ValueError(f"inertia_methods.toml, {key}: {row['dimension']!r} is no dimension")
    return Asked(row["key"], row["words"], row["dimension"], row.get("hint", ""), row["example"])
