"""One reel's whole life with us: its marks, every visit, every reading, every part. It never closes."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from spoolwright.shop.questions.blocks import Block, blocks_of
from spoolwright.shop.records.reading import ReadingValue
from spoolwright.shop.records.reel import IdentityMark, Reel
from spoolwright.shop.records.visit import Visit
from spoolwright.shop.records.work import PartFitted


@dataclass(frozen=True)
class VisitInPassport:
    visit: Visit
    blocks: tuple[Block, ...]


@dataclass(frozen=True)
class ReadingInPassport:
    """One result over the years; compare only where the conditions are the same."""

    kind: str
    value: ReadingValue
    conditions: dict[str, Any]
    tag: int
    written_at: datetime
    after_work: bool


@dataclass(frozen=True)
class PartInPassport:
    part: PartFitted
    tag: int
    written_at: datetime


@dataclass(frozen=True)
class Passport:
    reel: Reel
    marks: tuple[IdentityMark, ...]
    visits: tuple[VisitInPassport, ...]
    readings: tuple[ReadingInPassport, ...]
    parts: tuple[PartInPassport, ...]

    def readings_of(self, kind: str) -> tuple[ReadingInPassport, ...]:
        return tuple(reading for reading in self.readings if reading.kind == kind)


def passport(reel_id: int) -> Passport | None:
    """The passport, oldest visit first, or None when there is no such reel."""
    reel = Reel.objects.select_related("customer", "sheet_version__sheet").filter(pk=reel_id).first()
    if reel is None:
        return None
    stays = list(reel.visits.select_related("parcel", "return_of").order_by("arrived_at", "pk"))
    blocks = blocks_of(visit.pk for visit in stays)
    visits = tuple(VisitInPassport(visit, blocks[visit.pk]) for visit in stays)
    return Passport(
        reel=reel,
        marks=tuple(reel.marks.select_related("author").order_by("id")),
        visits=visits,
        readings=tuple(_readings(visits)),
        parts=tuple(_parts(visits)),
    )


def _standing(visit: VisitInPassport) -> Iterable[Block]:
    return (block for block in visit.blocks if not block.is_struck)


def _readings(visits: Iterable[VisitInPassport]) -> Iterable[ReadingInPassport]:
    for stay in visits:
        worked = False
        for block in _standing(stay):
            worked = worked or block.kind == "work"
            if block.kind == "reading":
                yield from _results(block, stay.visit.tag, worked)


def _results(block: Block, tag: int, worked: bool) -> Iterable[ReadingInPassport]:
    for value in block.part.values.all():
        if value.repeat == 0:
            yield ReadingInPassport(
                value.kind, value, block.part.conditions, tag, block.entry.written_at, worked
            )


def _parts(visits: Iterable[VisitInPassport]) -> Iterable[PartInPassport]:
    for stay in visits:
        for block in _standing(stay):
            if block.kind == "work":
                for part in block.part.parts.all():
                    yield PartInPassport(part, stay.visit.tag, block.entry.written_at)
