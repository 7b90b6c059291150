"""Counts a planned reel out onto the mat: known to the shop already, or written down with its parcel."""

from __future__ import annotations

from datetime import timedelta
from random import Random

from spoolwright.demo import words_said
from spoolwright.demo.cast import table
from spoolwright.demo.planned import Book, Planned, ReelPlanned
from spoolwright.demo.stay import Stay, arrive
from spoolwright.demo.workshop import Workshop
from spoolwright.shop.acts import clock
from spoolwright.shop.acts.add_customer import NewCustomer
from spoolwright.shop.acts.add_reel import NewReel
from spoolwright.shop.acts.receive_parcel import ArrivingReel, Counted, Envelope, Told

DUNKED = timedelta(minutes=55)


def arrives(shop: Workshop, book: Book, plan: Planned, chance: Random, complaint: str = "") -> Stay:
    """The book keeps who and what is known from now on."""
    person = book.people[plan.reel.owner]
    arriving = ArrivingReel(
        reel=book.reels.get(plan.reel.key) or _new(shop, plan.reel),
        contents=_contents(plan, chance),
        told=_told(plan, person, chance, complaint),
        while_you_wait=plan.job == "counter",
    )
    stay = arrive(shop, person, [arriving], _envelope(plan, chance))[0]
    book.reels[plan.reel.key] = stay.visit.reel
    book.people[plan.reel.owner] = stay.visit.reel.customer
    return stay


def _new(shop: Workshop, reel: ReelPlanned) -> NewReel:
    return NewReel(reel.described, shop.sheets.get(reel.slug), reel.winding_hand, reel.serial)


def _contents(plan: Planned, chance: Random) -> list[Counted]:
    lines = [Counted("reel", words="with the line on" if chance.random() < 0.6 else "without line")]
    more = (
        ("rod clamp and nuts", 0.25),
        ("bag, case or box", 0.3),
        ("customer's letter", 0.3),
        ("spare spool", 0.12),
    )
    lines += [Counted(what) for what, share in more if chance.random() < share and plan.posted]
    return lines


def _told(plan: Planned, person: NewCustomer, chance: Random, complaint: str) -> Told:
    if "dunked" in plan.turns:
        under = clock.now() - DUNKED
        return Told("Went over the side of the kayak, hung on the leash.", "salt", under_water_at=under)
    return Told(
        complaint=complaint or words_said.complaint(chance),
        water=person.water,
        last_opened=words_said.last_opened(chance),
        old_parts_back=chance.choice((True, False, None)),
        used_value_minor=chance.choice((None, None, 900_00, 1400_00, 2200_00)),
    )


def _envelope(plan: Planned, chance: Random) -> Envelope:
    if not plan.posted:
        return Envelope("walk-in")
    carrier = chance.choice(table("people.toml")["carriers"])
    damage = "one corner pressed in; the reel is sound" if chance.random() < 0.06 else ""
    number = f"{carrier[0]}{chance.randrange(10, 99)} {chance.randrange(1000, 9999)}"
    return Envelope("post", carrier, number, round(0.35 + chance.uniform(0.3, 0.6), 3), damage)
