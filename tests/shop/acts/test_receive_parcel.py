"""A parcel is opened on the mat: one envelope, one number a reel, everything counted and weighed."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.add_customer import NewCustomer, add_customer
from spoolwright.shop.acts.add_reel import NewReel
from spoolwright.shop.acts.receive_parcel import (
    ArrivingReel,
    Counted,
    Envelope,
    NoReelWasInTheParcel,
    ReelWasAlreadyHere,
    ReturnWasOfAnotherReel,
    Told,
    receive_parcel,
)
from spoolwright.shop.acts.refused import FieldWasRefused, WordsWereMissing
from spoolwright.shop.records.customer import Customer
from spoolwright.shop.records.number_series import NumberSeries
from spoolwright.shop.records.parcel import Parcel
from spoolwright.shop.records.visit import Visit
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_five_reels_are_five_numbers_tied_by_one_envelope(hand: Any) -> None:
    reels = [ArrivingReel(reel=NewReel(described=f"Pellmar 30-2 no. {i}")) for i in range(5)]
    received = receive_parcel(
        hand=hand, customer=NewCustomer("Aslak Rein"), reels=reels, envelope=Envelope(mass_kg=4.1)
    )
    visits = [written.entry.visit for written in received.written]
    assert [visit.tag for visit in visits] == [1, 2, 3, 4, 5]
    assert {visit.parcel for visit in visits} == {received.parcel}
    assert (received.parcel.number, received.parcel.opened_by, received.parcel.mass_kg) == (1, hand, 4.1)


def test_what_lay_in_it_is_counted_and_weighed(hand: Any) -> None:
    arrival = walk.arrived(hand).entries.get().arrival
    counted = [(line.what, line.count, line.mass_kg) for line in arrival.contents.all()]
    assert counted == [("reel", 1, 0.338), ("line", 1, None)]
    assert (arrival.complaint, arrival.water) == ("level wind catches at the right end", "salt")


def test_all_of_it_or_none_of_it(hand: Any) -> None:
    reels = [
        ArrivingReel(reel=NewReel(described="Tarvak 58R")),
        ArrivingReel(reel=NewReel(described="Ostrell S71"), contents=[Counted("reel", count=-1)]),
    ]
    with pytest.raises(FieldWasRefused) as refusal:
        receive_parcel(hand=hand, customer=NewCustomer("Ragna Solbu"), reels=reels)
    assert refusal.value.field == "count"
    assert (Customer.objects.count(), Parcel.objects.count(), Visit.objects.count()) == (0, 0, 0)
    assert not NumberSeries.objects.filter(next_number__gt=1).exists()


def test_an_empty_parcel_and_a_nameless_customer_are_refused(hand: Any) -> None:
    with pytest.raises(NoReelWasInTheParcel):
        receive_parcel(hand=hand, customer=NewCustomer("Ragna Solbu"), reels=[])
    with pytest.raises(WordsWereMissing) as refusal:
        walk.arrived(hand, name="  ")
    assert refusal.value.field == "name"


def test_a_reel_that_is_here_cannot_arrive_again(hand: Any) -> None:
    visit = walk.arrived(hand)
    again = [ArrivingReel(reel=visit.reel)]
    with pytest.raises(ReelWasAlreadyHere, match="as number 1"):
        receive_parcel(hand=hand, customer=visit.reel.customer, reels=again)


def test_a_return_has_its_own_number_linked_to_the_old_one(hand: Any) -> None:
    visit = walk.agreed(hand)
    walk.gone(hand, visit)
    visit.refresh_from_db()
    back = [ArrivingReel(reel=visit.reel, return_of=visit)]
    returned = receive_parcel(hand=hand, customer=visit.reel.customer, reels=back).written[0].entry.visit
    assert (returned.tag, returned.return_of, returned.reel) == (2, visit, visit.reel)


def test_a_return_is_of_the_same_reel_and_after_it_went_home(hand: Any) -> None:
    here = walk.arrived(hand)
    other = [ArrivingReel(reel=NewReel(described="Ostrell S71"), return_of=here)]
    with pytest.raises(ReturnWasOfAnotherReel):
        receive_parcel(hand=hand, customer=here.reel.customer, reels=other)


def test_a_known_customer_is_not_written_down_twice(hand: Any) -> None:
    ragna = add_customer(hand=hand, name="Ragna Solbu")
    received = receive_parcel(
        hand=hand,
        customer=ragna,
        envelope=Envelope(came_by="walk-in"),
        reels=[ArrivingReel(reel=NewReel(described="Tarvak 58R"), told=Told(up_to_minor=500_00))],
    )
    assert received.parcel.customer == ragna
    assert Customer.objects.count() == 1
