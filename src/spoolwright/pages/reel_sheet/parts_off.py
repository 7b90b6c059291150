"""The parts in the order in which they come off, each with its point of lubrication in words."""

from __future__ import annotations

from dataclasses import dataclass

from spoolwright.pages.reel_sheet import lubricants_in_words
from spoolwright.papers import section_drawing
from spoolwright.papers.section.parts_list import all_drawn_as
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.sheets.sheet_tables import Part


@dataclass(frozen=True)
class PartOff:
    """One line of the list; `key` is the part that the drawing shows it as, empty where it shows none."""

    line: Part
    lubricant: str
    key: str


def parts_off(sheet: ReelSheet) -> list[PartOff]:
    """Every line, in its order."""
    keys = {part.key for part in section_drawing.parts(sheet)}
    return [
        PartOff(
            line,
            lubricants_in_words.short(line.lubricant, line.amount),
            key if key in keys else "",
        )
        for line, key in zip(sheet.parts, all_drawn_as(sheet), strict=True)
    ]
