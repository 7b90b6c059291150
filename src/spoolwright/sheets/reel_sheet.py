"""A reel sheet: what one model of reel is made of, read from TOML with quantities as text.

Inside, every quantity is an SI float. What is wrong comes back as a `SheetFault` that lists every fault with
its place, what was read and what is accepted.
"""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from functools import cache
from importlib.resources import files
from pathlib import Path
from typing import Any

from pydantic import Field, ValidationError

from spoolwright.sheets import sheet_checks
from spoolwright.sheets.sheet_faults import Fault, SheetFault, broken_toml, from_validation
from spoolwright.sheets.sheet_tables import (
    AntiReverse,
    Bearing,
    Brakes,
    Check,
    Drag,
    Frame,
    Gears,
    Handle,
    LevelWind,
    Oscillation,
    Part,
    Reel,
    Rotor,
    Screw,
    Shaft,
    Spool,
    Table,
)

__all__ = ["Fault", "ReelSheet", "SheetFault", "json_schema", "load", "read", "shipped"]

LONGEST = 200_000
"""Characters of a sheet; the longest shipped one is a tenth of it."""

MOST_DOTS = 100
"""Dots in a line: a key of thousands of parts keeps the parser busy for minutes."""


class ReelSheet(Table):
    """One model of reel. Attributes are the tables of the file; SI floats inside."""

    reel: Reel
    spool: Spool
    gears: Gears | None = None
    drag: Drag | None = None
    bearings: tuple[Bearing, ...] = Field(default=(), max_length=60)
    shaft: Shaft | None = None
    handle: Handle | None = None
    level_wind: LevelWind | None = None
    rotor: Rotor | None = None
    oscillation: Oscillation | None = None
    check: Check | None = None
    anti_reverse: AntiReverse | None = None
    brakes: Brakes | None = None
    frame: Frame | None = None
    screws: tuple[Screw, ...] = Field(default=(), max_length=60)
    parts: tuple[Part, ...] = Field(default=(), max_length=200)

    @property
    def gear_ratio(self) -> float:
        """Spool turns for one handle turn; 1 where there are no gears."""
        return self.gears.ratio if self.gears else 1.0

    @property
    def drag_ratio(self) -> float:
        """By what the drag's torque is divided on its way to the line: 1 where the drag acts on the spool."""
        return self.gear_ratio if self.drag and self.drag.acts_on == "main gear" else 1.0


def read(text: str) -> ReelSheet:
    """The sheet in this text.

    Raises `SheetFault` with every fault that was found.
    """
    data = _toml(text)
    try:
        sheet = ReelSheet.model_validate(data)
    except ValidationError as error:
        raise SheetFault(from_validation(error, ReelSheet, data)) from None
    found = sheet_checks.faults(sheet)
    if found:
        raise SheetFault(found)
    return sheet


def _toml(text: str) -> dict[str, Any]:
    if len(text) > LONGEST:
        raise SheetFault([Fault("the file", f"has more than {LONGEST} characters", f"at most {LONGEST}")])
    for number, line in enumerate(text.splitlines(), 1):
        if line.count(".") > MOST_DOTS:
            raise SheetFault([Fault(f"line {number}", "has too many dots", f"at most {MOST_DOTS} in a line")])
    try:
        return tomllib.loads(text.removeprefix("\ufeff"))
    except (ValueError, RecursionError) as error:
        # tomllib lets int() complain about digits and the stack about depth: neither file is a sheet.
        reason = error if isinstance(error, ValueError) else ValueError("is nested too deeply")
        raise SheetFault([broken_toml(reason)]) from None


def json_schema() -> dict[str, Any]:
    """The JSON Schema (2020-12) of the file, for editors and for other programs."""
    schema = ReelSheet.model_json_schema(mode="validation")
    return {"$schema": "https://json-schema.org/draft/2020-12/schema", **schema, "title": "Reel sheet"}


@cache
def shipped() -> Mapping[str, str]:
    """Slug and text of every sheet that comes with the program."""
    folder = files("spoolwright.sheets") / "reels"
    found = sorted((file for file in folder.iterdir() if file.name.endswith(".toml")), key=lambda f: f.name)
    return {file.name.removesuffix(".toml"): file.read_text(encoding="utf-8") for file in found}


def load(slug_or_path: str | Path) -> ReelSheet:
    """A shipped sheet by its slug, or any sheet by its path.

    Raises `SheetFault`, also where there is no such file.
    """
    text = shipped().get(str(slug_or_path))
    if text is not None:
        return read(text)
    path = Path(slug_or_path)
    try:
        with path.open(encoding="utf-8") as file:
            return read(file.read(LONGEST + 1))
    except UnicodeDecodeError:
        raise SheetFault([Fault(str(path), "is not text in UTF-8", "a TOML file saved as UTF-8")]) from None
    except OSError as error:
        accepted = f"a path, or one of: {', '.join(shipped())}"
        raise SheetFault([Fault(str(path), error.strerror or "cannot be opened", accepted)]) from None
