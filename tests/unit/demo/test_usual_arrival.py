"""A planned reel is counted out; the second time the shop knows it."""

from __future__ import annotations

from random import Random
from typing import Any

import pytest

from spoolwright.demo.planned import Book, Planned, ReelPlanned
from spoolwright.demo.shop_hours import at
from spoolwright.demo.usual_arrival import arrives
from spoolwright.shop.acts import clock
from spoolwright.shop.acts.add_customer import NewCustomer
from spoolwright.shop.acts.send_home import WayHome
from spoolwright.shop.questions.diary import diary
from tests.unit.demo.conftest import TUESDAY

REEL = ReelPlanned("one", "owner", "tarvak-52", serial="52-1")


@pytest.fixture
def book() -> Book:
    return Book(people={"owner": NewCustomer("Somebody", water="salt")})


def come(shop: Any, book: Book, clock_said: str = "09:00", **more: Any) -> Any:
    with clock.as_of(at(TUESDAY, clock_said)):
        return arrives(shop, book, Planned(REEL, TUESDAY, **more), Random(1))


def test_the_book_knows_the_reel_and_its_owner_from_then_on(shop: Any, book: Book) -> None:
    first = come(shop, book, posted=False)
    first.gone(WayHome("fetched"))
    second = come(shop, book, "15:00")
    assert second.visit.reel_id == first.visit.reel_id
    assert second.visit.reel.customer_id == first.visit.reel.customer_id
    assert second.visit.tag == first.visit.tag + 1


def test_by_post_it_comes_in_a_weighed_envelope(shop: Any, book: Book) -> None:
    parcel = come(shop, book).visit.parcel
    assert (parcel.came_by, bool(parcel.carrier), bool(parcel.mass_kg)) == ("post", True, True)


def test_a_dunked_reel_must_not_be_turned(shop: Any, book: Book) -> None:
    visit = come(shop, book, turns=frozenset({"dunked"}), posted=False).visit
    read = diary(visit.pk, at(TUESDAY, "12:00"))
    assert read is not None
    assert read.must_not_be_turned
    assert "without turning" in read.next.words


def test_over_the_counter_somebody_waits(shop: Any, book: Book) -> None:
    assert come(shop, book, job="counter", posted=False).visit.while_you_wait
