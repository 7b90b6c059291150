"""Kinds of instrument that a small shop owns: what each measures, and what is usual for it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from types import MappingProxyType
from typing import Any

from spoolwright.quantities import read
from spoolwright.sheets.sourced import HOW, table, unknown

_SPREAD = {"temperature": "temperature_step", "count": "ratio"}
"""A step of such a dimension is read as something else: half a degree is no temperature."""


@dataclass(frozen=True)
class InstrumentKind:
    """One kind of instrument; `resolution`, `limit` (SI) and `share` of the reading are what is usual.

    `takes` are ways of reading whose signal it records by itself.
    """

    id: str
    title: str
    dimensions: tuple[str, ...]
    resolution: float
    limit: float
    share: float
    source: str
    how: str
    check: str
    takes: tuple[str, ...] = ()


@cache
def kinds() -> Mapping[str, InstrumentKind]:
    """Every kind of instrument by its id, in the order of the file."""
    return MappingProxyType({key: _kind(key, row) for key, row in table("instrument_kinds.toml").items()})


def kind(name: str) -> InstrumentKind:
    """The kind of this id; KeyError lists the ids."""
    found = kinds().get(name)
    if found is None:
        raise unknown("kind of instrument", name, tuple(kinds()))
    return found


def step_dimension(dimension: str) -> str:
    """The dimension of a difference of this: a degree more is no temperature."""
    return _SPREAD.get(dimension, dimension)


def _kind(key: str, row: dict[str, Any]) -> InstrumentKind:
    if row["how"] not in HOW or not row["source"]:
        raise ValueError(f"instrument_kinds.toml, {key}: how is one of {', '.join(HOW)}, source is not empty")
    first = step_dimension(row["dimensions"][0])
    return InstrumentKind(
        id=key,
        title=row["title"],
        dimensions=tuple(row["dimensions"]),
        resolution=read(row["resolution"], first),
        limit=read(row["limit"], first),
        share=read(row.get("share", "0"), "ratio"),
        source=row["source"],
        how=row["how"],
        check=row["check"],
        takes=tuple(row.get("takes", ())),
    )
