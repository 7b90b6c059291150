"""What is known of a part that was touched: sizes, material, limits, its lines on the parts list."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from spoolwright.pages.reel_sheet import known_of_drive, known_of_rotor, known_of_spool, lubricants_in_words
from spoolwright.pages.reel_sheet.rows import Row
from spoolwright.papers import section_drawing
from spoolwright.papers.section.parts_list import lines_of
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.sheets.sheet_tables import Part

Teller = Callable[[ReelSheet, str, str], Iterator[Row]]

TOLD: dict[str, Teller] = {
    "spool": known_of_spool.spool,
    "line": known_of_spool.line,
    "spool-shaft": known_of_spool.shaft,
    "bearing": known_of_spool.bearing,
    "brakes": known_of_spool.brakes,
    "level-wind": known_of_spool.level_wind,
    "level-wind-cogs": known_of_spool.cogs,
    "frame": known_of_spool.frame,
    "pillars": known_of_spool.frame,
    "gear-cover": known_of_spool.frame,
    "off-cover": known_of_spool.frame,
    "pinion": known_of_drive.pinion,
    "main-gear": known_of_drive.main_gear,
    "drag": known_of_drive.washer,
    "springs": known_of_drive.springs,
    "star": known_of_drive.control,
    "drive-shaft": known_of_drive.drive_shaft,
    "roller-clutch": known_of_drive.anti_reverse,
    "handle": known_of_drive.handle,
    "thumb-bar": known_of_drive.thumb_bar,
    "gear-shaft": known_of_drive.drive_shaft,
    "cam": known_of_drive.cam,
    "preset": known_of_drive.preset,
    "rotor": known_of_rotor.rotor,
    "rotor-nut": known_of_rotor.rotor,
    "line-roller": known_of_rotor.line_roller,
    "oscillation": known_of_rotor.oscillation,
    "oscillation-cogs": known_of_rotor.cogs,
    "check": known_of_rotor.check,
}
"""Who tells of a part, by its key or by the first word of its key."""


@dataclass(frozen=True)
class KnownPart:
    """A part with everything that the sheet, the data files and the parts list say of it.

    `lines` are those of the parts list, each with its point of lubrication in words.
    """

    key: str
    title: str
    rows: tuple[Row, ...]
    lines: tuple[tuple[Part, str], ...]


def known_part(sheet: ReelSheet, key: str, system: str) -> KnownPart | None:
    """What is known of the part of this key, or None where the drawing has no such part."""
    title = next((part.title for part in section_drawing.parts(sheet) if part.key == key), None)
    if title is None:
        return None
    tell = TOLD.get(key) or TOLD.get(key.partition("-")[0])
    rows = tuple(tell(sheet, key, system)) if tell else ()
    lines = [(line, lubricants_in_words.short(line.lubricant, line.amount)) for line in lines_of(sheet, key)]
    return KnownPart(key, title, rows, tuple(lines))
