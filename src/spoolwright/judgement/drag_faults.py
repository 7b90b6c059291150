"""What may be wrong with a drag, how likely that is before anybody looked, and what it does to the pull."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from types import MappingProxyType
from typing import Any

SOUND, WORN, GLAZED, OILED, WEAK, MISSTACKED = "sound", "worn", "glazed", "oiled", "weak", "misstacked"
KEYS = (SOUND, WORN, GLAZED, OILED, WEAK, MISSTACKED)

_WHOLE = (1.0, 1.0)
_NOTHING = (0.0, 0.0)


@dataclass(frozen=True)
class Cause:
    """One thing that may be wrong: ranges as shares, drawn evenly; `next` is what would show it by itself."""

    key: str
    title: str
    chance: float
    mark: str
    friction: tuple[float, float]
    start_ratio: tuple[float, float]
    lost_thickness: tuple[float, float]
    spring_force: tuple[float, float]
    lost_height: tuple[float, float]
    pairs: tuple[int, ...]
    next: str


@dataclass(frozen=True)
class Setup:
    """How exactly a drag is set and reckoned, and from which chance something is said; shares and turns."""

    turn: float
    way: float
    model: float
    day_to_day: float
    felt: float
    felt_way: float
    new_thickness: float
    named: float
    among: float
    misfit: float


def causes() -> Mapping[str, Cause]:
    """Every cause by its key, the sound drag first.

    Returns
    -------
    mapping of str to Cause
        Chances and ranges **[-]**.

    Source
    ------
    drag_faults.toml: judgement priors.

    Examples
    --------
    >>> round(sum(cause.chance for cause in causes().values()), 9)
    1.0
    """
    return _causes()


def setup() -> Setup:
    """How exactly a drag is set and reckoned.

    Returns
    -------
    Setup
        Shares and turns **[-]**.

    Source
    ------
    drag_faults.toml: judgement priors.

    Examples
    --------
    >>> setup().named
    0.9
    """
    return Setup(**_table()["setup"])


@lru_cache(maxsize=1)
def _causes() -> Mapping[str, Cause]:
    return MappingProxyType({key: _cause(key, _table()[key]) for key in KEYS})


@lru_cache(maxsize=1)
def _table() -> Mapping[str, Any]:
    return tomllib.loads((Path(__file__).parent / "drag_faults.toml").read_text(encoding="utf-8"))


def _cause(key: str, row: Mapping[str, Any]) -> Cause:
    return Cause(
        key=key,
        title=row["title"],
        chance=row["chance"],
        mark=row["mark"],
        friction=_range(row, "friction", _WHOLE),
        start_ratio=_range(row, "start_ratio", _WHOLE),
        lost_thickness=_range(row, "lost_thickness", _NOTHING),
        spring_force=_range(row, "spring_force", _WHOLE),
        lost_height=_range(row, "lost_height", _NOTHING),
        pairs=tuple(row.get("pairs", ())),
        next=row["next"],
    )


def _range(row: Mapping[str, Any], name: str, otherwise: tuple[float, float]) -> tuple[float, float]:
    low, high = row.get(name, otherwise)
    return float(low), float(high)
