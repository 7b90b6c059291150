"""Which other reels of the same model lie open? Parts that look alike change places."""

from __future__ import annotations

from dataclasses import dataclass

from django.db.models import Q

from spoolwright.shop.records.entry import Entry
from spoolwright.shop.records.visit import Visit

IN_PIECES = ("bath", "drying rack")


@dataclass(frozen=True)
class OpenReel:
    """A reel in pieces, where it lies, and the hand that worked on it last."""

    tag: int
    reel: str
    place: str
    hand: str


def alike_and_open(visit: Visit) -> tuple[OpenReel, ...]:
    """Visits of the same model whose reel is in pieces; give a visit with its reel already read."""
    same = Q(reel__described__iexact=visit.reel.described)
    if visit.reel.sheet_version:
        same |= Q(reel__sheet_version__sheet=visit.reel.sheet_version.sheet_id)
    here = Visit.objects.filter(same, sent_home_at=None, place__in=("mat", *IN_PIECES)).exclude(pk=visit.pk)
    return tuple(
        OpenReel(other.tag, other.reel.described, other.place, last.author.shown)
        for other in here.select_related("reel").order_by("tag")
        if (last := _hand_inside(other))
    )


def _hand_inside(visit: Visit) -> Entry | None:
    """The last entry, where the reel is in pieces: washed or dried, or worked on and not proved since."""
    standing = visit.entries.filter(strike=None).select_related("author").order_by("-seq")
    if visit.place in IN_PIECES:
        return standing.first()
    inside = standing.filter(kind__in=("work", "proof")).first()
    return inside if inside and inside.kind == "work" else None
