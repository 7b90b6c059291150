"""A published value or range with its source: the one shape of everything in the data files.

In the files a value is { value = "0.25 MPa", source = "...", how = "opened" } or { low = ..., high = ... }.
"""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from importlib.resources import files
from typing import Any

from spoolwright.quantities import read

HOW = ("opened", "from memory", "judgement prior", "derived", "definition", "common practice, no source")


@dataclass(frozen=True)
class Sourced:
    """A range in SI (both ends equal where one value is given), where it is from, and how it was got."""

    low: float
    high: float
    source: str
    how: str

    @property
    def middle(self) -> float:
        return (self.low + self.high) / 2


def table(name: str) -> dict[str, Any]:
    """The data file of this name that lies beside this module."""
    return tomllib.loads((files("spoolwright.sheets") / name).read_text(encoding="utf-8"))


def sourced(entry: dict[str, Any], dimension: str) -> Sourced:
    """One entry of a data file; a file that is wrong is a fault of the program and raises ValueError."""
    if entry["how"] not in HOW or not entry["source"]:
        raise ValueError(f"{entry}: how is one of {', '.join(HOW)}, source is not empty")
    low = read(str(entry.get("low", entry.get("value"))), dimension)
    high = read(str(entry.get("high", entry.get("value"))), dimension)
    if low > high:
        raise ValueError(f"{entry}: low is above high")
    return Sourced(low, high, entry["source"], entry["how"])


def unknown(noun: str, name: str, names: tuple[str, ...]) -> KeyError:
    """The one way in which a look-up says that a name is not in its file."""
    return KeyError(f"{noun} “{name}” is not in the data file; known: {', '.join(names)}")
