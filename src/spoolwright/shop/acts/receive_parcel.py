"""Open a parcel: one envelope, and for each reel in it a number, a visit and an arrival in ink."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import asdict, dataclass, field
from datetime import date, datetime

from django.db import transaction

from spoolwright.shop.acts import clock
from spoolwright.shop.acts.add_customer import NewCustomer, add_customer
from spoolwright.shop.acts.add_reel import NewReel, add_reel
from spoolwright.shop.acts.make_findable import make_findable
from spoolwright.shop.acts.open_diary import Attached, Beside, Written, open_diary
from spoolwright.shop.acts.put import checked, our_hand, put, put_all
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.acts.take_number import take_number
from spoolwright.shop.records.arrival import Arrival, ArrivalContent
from spoolwright.shop.records.customer import Customer
from spoolwright.shop.records.parcel import Parcel
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.reel import Reel
from spoolwright.shop.records.visit import Visit


class NoReelWasInTheParcel(Refused):
    def __init__(self) -> None:
        super().__init__("No reel was counted out of the parcel. Each reel gets a number of its own.")


class ReelWasAlreadyHere(Refused):
    def __init__(self, visit: Visit) -> None:
        super().__init__(f"This reel is here already, as number {visit.tag} ({visit.place}).")


class ReturnWasOfAnotherReel(Refused):
    def __init__(self) -> None:
        super().__init__(
            "A return belongs to an earlier visit of the same reel that has gone home.", "return_of"
        )


@dataclass(frozen=True)
class Counted:
    """One line counted out onto the mat; mass in kilograms."""

    what: str
    count: int = 1
    mass_kg: float | None = None
    words: str = ""


@dataclass(frozen=True)
class Told:
    """What the customer said about the reel; every part of it may be unknown."""

    complaint: str = ""
    water: str = ""
    under_water_at: datetime | None = None
    last_opened: str = ""
    line_wish: str = ""
    line_words: str = ""
    old_parts_back: bool | None = None
    up_to_minor: int | None = None
    used_value_minor: int | None = None
    send_back_to: str = ""


@dataclass(frozen=True)
class ArrivingReel:
    """One reel of a parcel, with what lay beside it and what was said about it."""

    reel: Reel | NewReel
    contents: Sequence[Counted] = ()
    told: Told = field(default_factory=Told)
    place: str = "mat"
    needed_by: date | None = None
    while_you_wait: bool = False
    return_of: Visit | None = None
    words: str = ""
    attached: Sequence[Attached] = ()


@dataclass(frozen=True)
class Received:
    """The envelope and the first entry of each reel in it."""

    parcel: Parcel
    written: tuple[Written, ...]


@dataclass(frozen=True)
class Envelope:
    """How it came and what it was like from outside; a reel that is walked in has an envelope too."""

    came_by: str = "post"
    carrier: str = ""
    carrier_number: str = ""
    mass_kg: float | None = None
    outer_damage: str = ""


BY_POST = Envelope()


@transaction.atomic
def receive_parcel(
    *,
    hand: Person,
    customer: Customer | NewCustomer,
    reels: Sequence[ArrivingReel],
    envelope: Envelope = BY_POST,
) -> Received:
    """All of it or none of it: a parcel that was half written down would be the worst of all."""
    our_hand(hand)
    if not reels:
        raise NoReelWasInTheParcel
    if isinstance(customer, NewCustomer):
        customer = add_customer(hand=hand, **asdict(customer))
    parcel = checked(
        Parcel(
            number=0,
            customer=customer,
            **asdict(envelope),
            opened_by=hand,
            opened_at=clock.now(),
        )
    )
    parcel.number = take_number("envelope")
    put(parcel)
    return Received(parcel, tuple(_receive(hand, parcel, arriving) for arriving in reels))


def _receive(hand: Person, parcel: Parcel, arriving: ArrivingReel) -> Written:
    reel = _reel(hand, parcel.customer, arriving.reel)
    _refuse_wrong_return(reel, arriving.return_of)
    visit = put(
        Visit(
            reel=reel,
            parcel=parcel,
            tag=take_number("tag"),
            place=arriving.place,
            place_since=clock.now(),
            arrived_at=clock.now(),
            needed_by=arriving.needed_by,
            while_you_wait=arriving.while_you_wait,
            return_of=arriving.return_of,
        )
    )
    let_search_find(visit)
    return _write_arrival(hand, visit, arriving)


def let_search_find(visit: Visit) -> None:
    make_findable(
        kind="visit",
        ref=visit.pk,
        title=f"{visit.tag}: {visit.reel.described}, {visit.reel.customer.name}",
        words=[visit.parcel.carrier, visit.parcel.carrier_number] if visit.parcel else [],
        visit=visit,
    )


def _reel(hand: Person, customer: Customer, reel: Reel | NewReel) -> Reel:
    if isinstance(reel, NewReel):
        return add_reel(hand=hand, customer=customer, reel=reel)
    Reel.objects.select_for_update().get(pk=reel.pk)
    if here := reel.visits.filter(sent_home_at=None).first():
        raise ReelWasAlreadyHere(here)
    return reel


def _refuse_wrong_return(reel: Reel, return_of: Visit | None) -> None:
    if return_of and (return_of.reel_id != reel.pk or return_of.is_open):
        raise ReturnWasOfAnotherReel


def _write_arrival(hand: Person, visit: Visit, arriving: ArrivingReel) -> Written:
    told = arriving.told
    diary = open_diary(hand, visit)
    counted = [f"{c.what} {c.words}" for c in arriving.contents]
    written = diary.write(
        "arrival",
        Beside(arriving.words, arriving.place, arriving.attached),
        [told.complaint, told.last_opened, told.line_words, *counted],
    )
    arrival = put(Arrival(entry=written.entry, **asdict(told)))
    put_all(
        ArrivalContent(arrival=arrival, position=i, **asdict(line))
        for i, line in enumerate(arriving.contents)
    )
    return written
