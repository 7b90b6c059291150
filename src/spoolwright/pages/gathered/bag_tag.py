"""The tag that hangs on the reel's foot."""

from __future__ import annotations

from spoolwright.pages.gathered import parties
from spoolwright.pages.words import when
from spoolwright.papers.bag_tag import BagTag
from spoolwright.shop.questions import by_number
from spoolwright.shop.questions.diary import Diary
from spoolwright.shop.questions.shop_settings import ShopSettings

TURN_NOTHING = "Do not turn the handle: under water, strip first"
NOT_WORTH_SAYING = ("reel", "line", "customer's letter", "papers")


def gathered(diary: Diary, shop: ShopSettings, address: str) -> BagTag:
    """`address` is what the code on the tag opens."""
    visit = diary.visit
    return BagTag(
        number=str(visit.tag),
        reel=visit.reel.described,
        owner=diary.customer.name,
        arrived=when.dated(visit.arrived_at),
        address=address,
        shop=shop.name,
        marks=tuple(parties.marked(mark) for mark in visit.reel.marks.order_by("id")[:2]),
        belongs="; ".join(filter(None, [_envelope(diary), _came_with(diary)])),
        caution=TURN_NOTHING if diary.must_not_be_turned else "",
    )


def _envelope(diary: Diary) -> str:
    parcel = diary.visit.parcel
    if parcel is None:
        return ""
    others = by_number.visits_of_parcel(parcel)
    if len(others) == 1:
        return f"envelope {parcel.number}"
    place = [visit.pk for visit in others].index(diary.visit.pk) + 1
    return f"{place} of {len(others)} in envelope {parcel.number}"


def _came_with(diary: Diary) -> str:
    counted = [line for block in diary.of_kind("arrival") for line in block.part.contents.all()]
    told = [line.words or line.what for line in counted if line.what not in NOT_WORTH_SAYING and line.count]
    return f"with it: {', '.join(told)}" if told else ""
