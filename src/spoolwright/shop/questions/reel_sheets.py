"""Reel sheets and their versions, newest first."""

from __future__ import annotations

from dataclasses import dataclass

from django.db.models import Count, F, Max

from spoolwright.sheets import reel_sheet
from spoolwright.shop.records.reel import Reel
from spoolwright.shop.records.reel_sheet import Sheet, SheetVersion


@dataclass(frozen=True)
class SheetInUse:
    """A sheet with the number of its newest version, and how many reels that we know are described by it."""

    sheet: Sheet
    latest: int
    reels: int


def all_sheets() -> tuple[SheetInUse, ...]:
    counted = Sheet.objects.annotate(
        latest=Max("versions__number"), reels=Count("versions__reels", distinct=True)
    )
    rows = counted.order_by("maker", "model")
    return tuple(SheetInUse(sheet, sheet.latest or 0, sheet.reels) for sheet in rows)


def newest_versions() -> dict[str, SheetVersion]:
    """The version that stands of every sheet, by the sheet's slug."""
    newest = SheetVersion.objects.annotate(latest=Max("sheet__versions__number")).filter(number=F("latest"))
    return {row.sheet.slug: row for row in newest.select_related("sheet", "author")}


def reels_of(slug: str) -> tuple[Reel, ...]:
    """The reels that some version of this sheet describes."""
    rows = Reel.objects.filter(sheet_version__sheet__slug=slug).select_related("customer", "sheet_version")
    return tuple(rows.order_by("described", "pk"))


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
