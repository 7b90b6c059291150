"""What is measured by hand with a guide: the part, how it is done, and where its limits come from."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from types import MappingProxyType
from typing import Any

from spoolwright.quantities import read
from spoolwright.sheets import instrument_kinds, reading_kinds
from spoolwright.sheets.sourced import table, unknown

RULES = ("kind", "share of a disc", "tip of a tooth", "depth", "stated")


@dataclass(frozen=True)
class Stated:
    """Good up to `accept`, rejected beyond `reject` [SI]; `when` "" is always."""

    when: str
    accept: float
    reject: float
    mark: str


@dataclass(frozen=True)
class HandGuide:
    """One thing to measure by hand; `part` is the beginning of its key in the section drawing."""

    id: str
    title: str
    kind: str
    part: str
    rule: str
    depth: str
    place: str
    tools: tuple[str, ...]
    how: str
    stated: tuple[Stated, ...]

    def stated_for(self, *tags: str) -> Stated | None:
        """The stated limit that holds for a reel of these tags."""
        return next((row for row in self.stated if not row.when or row.when in tags), None)


@cache
def guides() -> Mapping[str, HandGuide]:
    """Every guide by its id, in the order of the file."""
    return MappingProxyType({key: _guide(key, row) for key, row in table("hand_guides.toml").items()})


def guide(name: str) -> HandGuide:
    """The guide of this id; KeyError lists the ids."""
    found = guides().get(name)
    if found is None:
        raise unknown("guide", name, tuple(guides()))
    return found


def _guide(key: str, row: dict[str, Any]) -> HandGuide:
    dimension = reading_kinds.kind(row["kind"]).dimension
    if row["rule"] not in RULES:
        raise ValueError(f"hand_guides.toml, {key}: rule is one of {', '.join(RULES)}")
    for tool in row["tools"]:
        if dimension not in instrument_kinds.kind(tool).dimensions:
            raise ValueError(f"hand_guides.toml, {key}: a {tool} measures no {dimension}")
    return HandGuide(
        id=key,
        title=row["title"],
        kind=row["kind"],
        part=row["part"],
        rule=row["rule"],
        depth=row.get("depth", ""),
        place=row.get("place", ""),
        tools=tuple(row["tools"]),
        how=row["how"],
        stated=tuple(_stated(one, dimension) for one in row.get("stated", ())),
    )


def _stated(row: dict[str, str], dimension: str) -> Stated:
    accept, reject = (read(row[name], dimension) for name in ("accept", "reject"))
    return Stated(row.get("when", ""), accept, reject, row["mark"])
