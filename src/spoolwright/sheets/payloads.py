"""What is thrown: sinkers and lures by shape, with their sources (payloads.toml)."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import Any

from spoolwright.sheets.sourced import Sourced, sourced, table, unknown


@dataclass(frozen=True)
class PayloadShape:
    """A shape of sinker or lure: its density, frontal area over volume^(2/3), drag on that area."""

    name: str
    title: str
    density: Sourced
    area_form: Sourced
    drag: Sourced
    note: str


@cache
def _file() -> dict[str, Any]:
    return table("payloads.toml")


@cache
def payload_names() -> tuple[str, ...]:
    return tuple(_file())


@cache
def payload_shape(name: str) -> PayloadShape:
    """The shape of this name; KeyError lists the names that are known."""
    entry = _file().get(name)
    if entry is None:
        raise unknown("payload", name, payload_names())
    return PayloadShape(
        name=name,
        title=entry["title"],
        density=sourced(entry["density"], "density"),
        area_form=sourced(entry["area_form"], "ratio"),
        drag=sourced(entry["drag"], "ratio"),
        note=entry["note"],
    )
