"""The head of a diary: whose reel it is, where it lies, when it was promised, and what must not be done."""

from __future__ import annotations

from typing import Any

from spoolwright.pages.diary import ways
from spoolwright.pages.diary.desk import Desk
from spoolwright.pages.words import places

DO_NOT_TURN = (
    "Do not turn the handle. This reel was under water less than two days ago: salt between the parts grinds "
    "as they move. Strip it at once; the bearings may have to be new."
)


def facts(desk: Desk) -> dict[str, Any]:
    visit, reel = desk.visit, desk.visit.reel
    version = reel.sheet_version
    return {
        "desk": desk,
        "visit": visit,
        "reel": reel,
        "customer": reel.customer,
        "there": places.there(visit.place) if visit.is_open else "",
        "waiting": desk.diary.waiting,
        "do_not_turn": DO_NOT_TURN if desk.diary.must_not_be_turned and visit.is_open else "",
        "customers_page": ways.to_customer(reel.customer.pk),
        "passport": ways.to_passport(reel.pk),
        "sheet": ways.to_sheet(version.sheet.slug) if version else "",
        "bag_tag": ways.to_paper("bag_tag", visit.tag),
        "came_before": visit.return_of,
    }
