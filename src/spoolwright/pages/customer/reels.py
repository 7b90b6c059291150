"""The reels of a customer: where each is, and when it was here."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from spoolwright.pages import doors
from spoolwright.pages.words import places
from spoolwright.shop.questions import customers


@dataclass(frozen=True)
class OwnReel:
    """One reel with its visits, newest first, each with the way to its diary and its days."""

    reel: Any
    passport: str
    marks: str
    visits: Sequence[tuple[Any, str, str]]
    there: str


def reels_of(customer: Any) -> list[OwnReel]:
    return [own(reel) for reel in customers.reels_of(customer.pk)]


def own(reel: Any) -> OwnReel:
    visits = sorted(reel.visits.all(), key=lambda visit: visit.arrived_at, reverse=True)
    here = next((visit for visit in visits if visit.is_open), None)
    return OwnReel(
        reel=reel,
        passport=doors.way_to("passport:passport", reel.pk),
        marks="; ".join(mark.words for mark in reel.marks.all()),
        visits=[(one, doors.way_to("diary:diary", one.tag), places.days_here(one)) for one in visits],
        there=places.there(here.place) if here else "",
    )
