"""Scenario 8: a pier reel from an estate, offered to the shop: restore it, or strip it for parts?"""

from __future__ import annotations

from datetime import date

from spoolwright.demo.shop_hours import at
from spoolwright.demo.stay import arrive
from spoolwright.demo.timetable import Story
from spoolwright.demo.workshop import Workshop
from spoolwright.shop.acts.add_customer import NewCustomer
from spoolwright.shop.acts.add_reel import NewReel
from spoolwright.shop.acts.receive_parcel import ArrivingReel, Counted, Envelope, Told

SUMS = (
    "Restored: parts 310, 70 minutes 700, asked 400: 1,410 against 1,500 when sold, 90 left. "
    "Stripped: parts 180, 220, 150, 120, 90 and 60 are 820, less a tenth 738, less 45 minutes 288; at 400 "
    "that loses 112, so 288 is the most for stripping. In a quiet month an hour is worth 200 here, "
    "not 600: then restoring leaves 557."
)


def story(shop: Workshop, day: date) -> Story:
    """It lies on the shelf until the two of them agree."""
    yield at(day, "13:30")
    customer = NewCustomer(
        "Estate of Oddvar Selskjær", "Fyrveien 21, Kalvneset", note="His daughter answers."
    )
    reel = ArrivingReel(
        NewReel(sheet_version=shop.sheets["tarvak-58r"], winding_hand="right", serial="58R-11873"),
        [
            Counted("reel", mass_kg=0.284),
            Counted("bag, case or box", words="cigar box"),
            Counted("tools and spare parts"),
        ],
        Told("From my father's boathouse. 400 for it, if you want it.", "salt", used_value_minor=1500_00),
    )
    stay = arrive(shop, customer, [reel], Envelope("walk-in"))[0]
    yield at(day, "14:10")
    stay.typed({"mass": "284 g", "feel": "3", "end_float": "0.31 mm", "corrosion": "2"}, _conditions())
    stay.found("drag discs", "F07", "fibre, pressed to three quarters of their thickness")
    yield at(day, "14:35")
    stay.said(SUMS)
    stay.moved("shelf", "Offered, not bought yet.", shop.ingjerd)


def _conditions() -> dict[str, object]:
    return {"line": "off", "brakes": "off", "place_measured": "foot and side plates"}
