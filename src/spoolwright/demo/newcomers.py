"""Three reels that have only just been counted out: a newcomer takes them on with the files that lie ready.

They come last of all, yesterday evening, so that their tags are the same whatever day it is today.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from random import Random

from spoolwright.demo.cast import Cast
from spoolwright.demo.nature import Nature, flick_speed, known, sound
from spoolwright.demo.planned import Book
from spoolwright.demo.shop_hours import at
from spoolwright.demo.stay import arrive
from spoolwright.demo.timetable import Story
from spoolwright.demo.workshop import Workshop
from spoolwright.judgement.findings import Finding
from spoolwright.shop.acts.add_reel import NewReel
from spoolwright.shop.acts.receive_parcel import ArrivingReel, Counted, Envelope, Told


@dataclass(frozen=True)
class Newcomer:
    """A reel at its arrival, what it really is like, and what will be found in it."""

    slug: str
    clock: str
    complaint: str
    finding: Finding
    serial: str
    tired: float
    ratio: float
    spins: float
    end_float: float
    feel: int

    @property
    def nature(self) -> Nature:
        sheet, built = known(self.slug), sound(self.slug)
        half = sheet.drag.turns_to_full / 2 if sheet.drag else 2.0
        pull = min(built.star_turns, key=lambda row: abs(row.turns - half)).pull.middle
        return Nature(
            running=self.tired * pull,
            ratio=self.ratio,
            judder=0.17,
            full=self.tired * built.values["pull_full_spool"].middle,
            radius=sheet.spool.full_radius,
            star_turns=half,
            flick=flick_speed(sheet),
            spins=self.spins,
            end_float=self.end_float,
            feel=self.feel,
            mass=(sheet.reel.mass or 0.3) + 0.001,
        )


NEWCOMERS: Sequence[Newcomer] = (
    Newcomer(
        "tarvak-58r", "17:10", "The drag starts with a jerk and the line guide stops at the right side.",
        Finding("level-wind pawl", "F15", "tip worn to a hook, the worm is sound"),
        "58R-31207", 0.88, 1.46, 12.0, 0.34e-3, 2,
    ),
    Newcomer(
        "tarvak-54c", "17:22", "Casts half as far as it did last year.",
        Finding("spool bearings", "F19", "old oil like varnish"),
        "54C-08815", 0.92, 1.27, 14.0, 0.16e-3, 2,
    ),
    Newcomer(
        "tarvak-52", "17:34", "It was my uncle's. Please make it turn again.",
        Finding("old grease inside", "F01", "dried to wax"),
        "", 0.80, 1.52, 9.0, 0.22e-3, 3,
    ),
)  # fmt: skip


def story(shop: Workshop, day: date, cast: Cast, book: Book) -> Story:
    """Two new customers, and one who has a reel here already."""
    people = [cast.customer(), cast.customer(), None]
    for number, newcomer in enumerate(NEWCOMERS):
        yield at(day, newcomer.clock)
        person = people[number] or book.people["club 0"]
        reel = ArrivingReel(
            NewReel(sheet_version=shop.sheets[newcomer.slug], winding_hand="right", serial=newcomer.serial),
            [Counted("reel", mass_kg=round(newcomer.nature.mass, 3)), Counted("customer's letter")],
            Told(newcomer.complaint, "salt", last_opened="not known", line_words="came without line"),
        )
        stay = arrive(shop, person, [reel], _envelope(shop.chance(f"newcomer {number}")))[0]
        book.reels[key(number)] = stay.visit.reel


def key(number: int) -> str:
    return f"newcomer {number}"


def _envelope(chance: Random) -> Envelope:
    number = f"FB 90{chance.randrange(100, 999)}"
    return Envelope("post", "Fjordbud, evening round", number, round(chance.uniform(0.6, 0.8), 3))
