"""A sheet's text looked through: its faults with their lines, or what is new in it."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from functools import cached_property

from spoolwright.pages.reel_sheet.leaf import read
from spoolwright.sheets import reel_sheet
from spoolwright.sheets.reel_sheet import ReelSheet, SheetFault
from spoolwright.sheets.sheet_differences import differences
from spoolwright.sheets.sheet_faults import Fault
from spoolwright.sheets.sheet_remarks import remarks
from spoolwright.sheets.where_in_text import line_of

LONGEST_EXCERPT = 120
MOST_FAULTS = 60


@dataclass(frozen=True)
class FaultInText:
    """A fault with the line on which it stands, and what that line says."""

    fault: Fault
    line: int | None
    excerpt: str


@dataclass(frozen=True)
class Checked:
    """The outcome. `last` is the text that stands, empty for a new sheet."""

    text: str
    last: str
    system: str
    sheet: ReelSheet | None
    found: tuple[Fault, ...]

    @cached_property
    def faults(self) -> list[FaultInText]:
        return [in_text(fault, self.text) for fault in self.found[:MOST_FAULTS]]

    @property
    def more_faults(self) -> int:
        return max(len(self.found) - MOST_FAULTS, 0)

    @cached_property
    def changes(self) -> tuple[str, ...]:
        return differences(read(self.last), self.sheet, self.system) if self.sheet and self.last else ()

    @property
    def is_same_text(self) -> bool:
        return bool(self.last) and self.text == self.last

    @cached_property
    def remarks(self) -> tuple[str, ...]:
        return remarks(self.sheet) if self.sheet else ()


def check(text: str, *, last: str, system: str, slug: str = "") -> Checked:
    """Read the text; `slug` is the sheet whose version it has to be."""
    try:
        sheet = reel_sheet.read(text)
    except SheetFault as fault:
        return Checked(text, last, system, None, fault.faults)
    if slug and sheet.reel.slug != slug:
        other = Fault(
            "reel.slug", f"“{sheet.reel.slug}” names another sheet; this page writes “{slug}”", f'"{slug}"'
        )
        return Checked(text, last, system, None, (other,))
    return Checked(text, last, system, sheet, ())


def in_text(fault: Fault, text: str) -> FaultInText:
    line = line_of(text, fault.where)
    lines = text.split("\n") if line else []
    excerpt = lines[line - 1].strip() if line and line <= len(lines) else ""
    return FaultInText(fault, line, excerpt[:LONGEST_EXCERPT])


def refused(faults: Iterable[Fault], text: str, last: str, system: str) -> Checked:
    """What the shop refused, in the same shape."""
    return Checked(text, last, system, None, tuple(faults))
