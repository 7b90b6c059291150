"""The life of a reel as its passport tells it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

from django.utils.safestring import SafeString, mark_safe

from spoolwright.judgement.upkeep import NextService, next_service
from spoolwright.pages import doors
from spoolwright.pages.gathered import pictures
from spoolwright.pages.passport.histories import Histories, histories
from spoolwright.pages.passport.stays import Stay, stays
from spoolwright.pages.passport.watched import Watch, watched
from spoolwright.pages.words import places, when
from spoolwright.papers import section_drawing
from spoolwright.papers.section_drawing import Ringed
from spoolwright.sheets import reel_sheet
from spoolwright.sheets.drag_setting import setting_of
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.shop.questions import reel_sheets
from spoolwright.shop.questions.passport import Passport


@dataclass(frozen=True)
class Life:
    """Everything on the page, newest first."""

    passport: Passport
    stays: Sequence[Stay]
    histories: Histories
    watched: Sequence[Watch]
    service: NextService | None
    mark: SafeString | str
    drawing: SafeString | str
    sheet_address: str
    latest_version: int
    owner_address: str

    @property
    def reel(self) -> Any:
        return self.passport.reel

    @property
    def here(self) -> Stay | None:
        """The visit that is not over, if the reel is in the house."""
        return next((stay for stay in self.stays if stay.visit.is_open), None)

    @property
    def there(self) -> str:
        return places.there(self.here.visit.place) if self.here else ""

    @property
    def is_due(self) -> bool:
        return self.service is not None and self.service.is_over(when.today())


def life_of(found: Passport, system: str) -> Life:
    version = found.reel.sheet_version
    sheet = reel_sheets.read(version) if version else None
    latest = reel_sheets.version(version.sheet.slug) if version else None
    address = doors.way_to("reel_sheet:sheet", version.sheet.slug) if version else ""
    told = stays(found)
    return Life(
        passport=found,
        stays=told,
        histories=histories(found, system, setting_of(sheet)),
        watched=watched(found, sheet, system),
        service=service(told, found.reel.customer.water),
        mark=mark(found),
        drawing=drawing(found, sheet, address, system),
        sheet_address=address,
        latest_version=latest.number if latest else 0,
        owner_address=doors.way_to("customer:customer", found.reel.customer_id),
    )


def service(told: Sequence[Stay], customers_water: str) -> NextService | None:
    """From the last work that is over; none while the reel is here or before it was ever worked on."""
    if not told or told[0].visit.is_open:
        return None
    worked = next((stay for stay in told if stay.worked_on), None)
    if worked is None:
        return None
    return next_service(when.local_day(worked.worked_on), told[0].water or customers_water)


def mark(found: Passport) -> SafeString | str:
    """The latest pull trace, by which the reel is known at a glance."""
    every = [block for stay in found.visits for block in stay.blocks]
    picture = pictures.mark_before(every)
    return mark_safe(picture.svg) if picture else ""


def drawing(found: Passport, sheet: ReelSheet | None, address: str, system: str) -> SafeString | str:
    """The section, with what was found in the visit that is not over ringed. Its words are escaped there."""
    if sheet is None:
        return ""
    open_blocks = [block for stay in found.visits if stay.visit.is_open for block in stay.blocks]
    link = f"{address}?part={{key}}#known" if address else None
    return mark_safe(drawn(found.reel.sheet_version.toml, pictures.ringed(sheet, open_blocks), system, link))


@lru_cache(maxsize=64)
def drawn(toml: str, rings: tuple[Ringed, ...], system: str, link: str | None) -> str:
    sheet = reel_sheet.read(toml)
    return section_drawing.draw(sheet, arrangement="narrow", findings=rings, system=system, link=link)
