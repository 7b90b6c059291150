"""The fault table: symptoms by kind of reel, what is probably behind each, and the check that settles it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from types import MappingProxyType
from typing import Any

from spoolwright.sheets.sourced import table, unknown

MARK = "judgement prior"
"""What the shares of the causes are, until the shop has counted its own."""


@dataclass(frozen=True)
class Cause:
    """One thing that may be behind a symptom, and how often it is, as a share of the row."""

    words: str
    share: float


@dataclass(frozen=True)
class Fault:
    """One row; `id` is F01 to F70, `kinds` are kinds of reel as their sheets call them."""

    id: str
    kinds: tuple[str, ...]
    symptom: str
    causes: tuple[Cause, ...]
    check: str


@cache
def faults() -> Mapping[str, Fault]:
    """Every row by its id, in the order of the table."""
    return MappingProxyType({key: _fault(key, row) for key, row in table("faults.toml").items()})


def fault(name: str) -> Fault:
    """The row of this id; KeyError lists the ids."""
    found = faults().get(name)
    if found is None:
        raise unknown("fault", name, tuple(faults()))
    return found


def faults_of(kind: str = "") -> tuple[Fault, ...]:
    """The rows that a reel of this kind can show; all of them where the kind is not known."""
    return tuple(row for row in faults().values() if not kind or kind in row.kinds)


def _fault(key: str, row: dict[str, Any]) -> Fault:
    causes = tuple(Cause(cause["is"], cause["share"]) for cause in row["causes"])
    if abs(sum(cause.share for cause in causes) - 1) > 0.005:
        raise ValueError(f"faults.toml, {key}: the shares of the causes do not add up to 1")
    return Fault(key, tuple(row["kinds"]), row["symptom"], causes, row["check"])
