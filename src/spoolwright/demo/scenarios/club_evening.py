"""Scenario 7: an evening with the Grånesvåg sea anglers, a check and a verdict for each reel on the table.

Four of the twenty-four reels are in the books: one of each verdict. Slips and forecasts come later.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime

from spoolwright.demo.cast import Cast
from spoolwright.demo.planned import Book, Planned, ReelPlanned
from spoolwright.demo.shop_hours import at, working_days
from spoolwright.demo.stay import Stay, arrive, pull_conditions
from spoolwright.demo.timetable import Story
from spoolwright.demo.workshop import Workshop
from spoolwright.shop.acts.add_customer import NewCustomer
from spoolwright.shop.acts.add_reel import NewReel
from spoolwright.shop.acts.receive_parcel import ArrivingReel, Counted, Envelope, Told
from spoolwright.shop.acts.send_home import WayHome


@dataclass(frozen=True)
class Looked:
    """One reel on the table: what it is, what was read, and what was said."""

    reel: str
    sheet: str
    radius: float
    pull: str
    feel: str
    verdict: str
    fault: tuple[str, str, str] | None = None
    line: str = "nylon 0.40 mm"


TABLE = (
    Looked("", "tarvak-54c", 24.5e-3, "7.9 kg", "1", "fine: come back after the season."),
    Looked("", "tarvak-52", 22.0e-3, "3.4 kg", "3", "clean: the grease is dry. Booked on the spot."),
    Looked("", "tarvak-58r", 23.5e-3, "5.2 kg", "2", "parts: the level wind wants a pawl. Booked.",
           ("level-wind pawl", "F15", "catches at the right end, tip worn")),
    Looked(
        "Ostrell S71", "", 15.5e-3, "7.5 kg", "2",
        "unsafe: 23 kg braid on a reel made for 5 kg of drag. A third of the line would be 7.59 kg, a "
        "quarter 5.75: nothing protects the reel. Line of 15 to 20 kg is its limit.",
        ("drag and line", "F08", "drag found at 7.5 kg; nothing would slip before the gears"), "braid, 23 kg",
    ),
)  # fmt: skip


def story(shop: Workshop, day: date, cast: Cast, book: Book) -> Story:
    for number in range(len(TABLE)):
        book.people[f"club {number}"] = cast.customer()
        yield from _look(shop, day, number, book)


def booked(day: date) -> list[Planned]:
    """The two who booked on the spot bring their reels within the month."""
    later = ((1, 9), (2, 16))
    return [
        Planned(ReelPlanned(f"club {n}", f"club {n}", TABLE[n].sheet), working_days(day, wait), posted=False)
        for n, wait in later
    ]


def _look(shop: Workshop, day: date, number: int, book: Book) -> Iterator[datetime]:
    looked, key = TABLE[number], f"club {number}"
    yield at(day, f"18:{10 + 12 * number:02d}")
    stay = _on_the_table(shop, looked, book.people[key])
    book.people[key], book.reels[key] = stay.visit.reel.customer, stay.visit.reel
    yield at(day, f"18:{15 + 12 * number:02d}")
    stay.typed({"pull_full": looked.pull, "feel": looked.feel}, pull_conditions(looked.radius))
    if looked.fault:
        stay.found(*looked.fault)
    yield at(day, f"18:{18 + 12 * number:02d}")
    stay.said(f"Verdict: {looked.verdict}", shop.torbal)
    stay.gone(WayHome("fetched", enclosed=["verdict, by word of mouth"]))


def _on_the_table(shop: Workshop, looked: Looked, person: NewCustomer) -> Stay:
    sheet = shop.sheets.get(looked.sheet)
    reel = ArrivingReel(
        NewReel(looked.reel, sheet, winding_hand="right"),
        [Counted("reel"), Counted("line", words=looked.line)],
        Told("A look at the club evening.", "salt"),
        while_you_wait=True,
    )
    return arrive(shop, person, [reel], Envelope("club evening"))[0]
