"""Reel sheets and their versions, newest first."""

from __future__ import annotations

from dataclasses import dataclass

from django.db.models import Max

from spoolwright.sheets import reel_sheet
from spoolwright.shop.records.reel_sheet import Sheet, SheetVersion


@dataclass(frozen=True)
class SheetInUse:
    """A sheet with the number of its newest version."""

    sheet: Sheet
    latest: int


def all_sheets() -> tuple[SheetInUse, ...]:
    rows = Sheet.objects.annotate(latest=Max("versions__number")).order_by("maker", "model")
    return tuple(SheetInUse(sheet, sheet.latest or 0) for sheet in rows)


def versions(slug: str) -> tuple[SheetVersion, ...]:
    """Every version of one sheet, newest first; none when there is no such sheet."""
    rows = SheetVersion.objects.filter(sheet__slug=slug).select_related("sheet", "author")
    return tuple(rows.order_by("-number"))


def version(slug: str, number: int | None = None) -> SheetVersion | None:
    """One version, or the newest."""
    found = versions(slug)
    return next((v for v in found if number in (None, v.number)), None)


def read(sheet_version: SheetVersion) -> reel_sheet.ReelSheet:
    """The sheet as data; it was read once already before it was written down."""
    return reel_sheet.read(sheet_version.toml)
