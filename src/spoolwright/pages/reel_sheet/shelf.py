"""The sheets that the shop holds, kind by kind, and those that come with the program and are not held yet."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import get_args

from django.utils.safestring import SafeString, mark_safe

from spoolwright.pages.reel_sheet.leaf import read
from spoolwright.papers.section_mark import mark
from spoolwright.sheets import reel_sheet
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.sheets.sheet_tables import Kind
from spoolwright.shop.questions import reel_sheets

KINDS: tuple[str, ...] = get_args(Kind)


@dataclass(frozen=True)
class OnShelf:
    """One sheet as a line: its mark, its name, its version, how many of our reels it describes."""

    slug: str
    sheet: ReelSheet
    version: int
    reels: int
    drawing: SafeString

    @property
    def shown(self) -> str:
        return shown(self.sheet)


def shown(sheet: ReelSheet) -> str:
    return f"{sheet.reel.maker} {sheet.reel.model}"


def kinds() -> list[tuple[str, list[OnShelf]]]:
    """Each kind that is held, with its sheets by maker and model."""
    texts = reel_sheets.newest_versions()
    held = []
    for row in reel_sheets.all_sheets():
        if row.sheet.slug in texts:
            sheet = read(texts[row.sheet.slug].toml)
            held.append(OnShelf(row.sheet.slug, sheet, row.latest, row.reels, drawing_of(sheet)))
    held.sort(key=lambda one: one.shown.casefold())
    found = [(kind, [one for one in held if one.sheet.reel.kind == kind]) for kind in KINDS]
    return [(kind, lines) for kind, lines in found if lines]


@lru_cache(maxsize=256)
def drawing_of(sheet: ReelSheet) -> SafeString:
    """The mark of a sheet; the drawing escapes every word that comes from a sheet."""
    return mark_safe(mark(sheet))  # noqa: S308


def not_ours() -> list[tuple[str, str]]:
    """Slug and name of the shipped sheets that nobody has taken in."""
    held = {row.sheet.slug for row in reel_sheets.all_sheets()}
    return [(slug, shown(read(text))) for slug, text in reel_sheet.shipped().items() if slug not in held]
