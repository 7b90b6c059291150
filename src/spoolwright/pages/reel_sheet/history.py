"""The versions of a sheet, newest first, each with what it changed."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise
from typing import Any

from spoolwright.pages.reel_sheet.leaf import Leaf, read
from spoolwright.sheets.sheet_differences import differences


@dataclass(frozen=True)
class PastVersion:
    """A version and its differences to the one before; the first has none."""

    version: Any
    changes: tuple[str, ...]
    is_first: bool


def history(leaf: Leaf) -> list[PastVersion]:
    """Every version of the leaf's sheet, in the reader's units."""
    found = [
        PastVersion(newer, differences(read(older.toml), read(newer.toml), leaf.system), is_first=False)
        for newer, older in pairwise(leaf.versions)
    ]
    return [*found, PastVersion(leaf.versions[-1], (), is_first=True)]
