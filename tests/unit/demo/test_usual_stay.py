"""A stay stops where it is planned to stop, and the diary says what comes next there."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from spoolwright.demo.planned import Book, Planned, ReelPlanned
from spoolwright.demo.shop_hours import at
from spoolwright.demo.tune import Tune
from spoolwright.demo.usual_stay import play
from spoolwright.shop.acts.add_customer import NewCustomer
from spoolwright.shop.questions.diary import diary
from tests.unit.demo.conftest import END, TUESDAY

REEL = ReelPlanned("one", "owner", "tarvak-58r")


def tune(shop: Any, until: Any = END, **more: Any) -> Any:
    plan = Planned(REEL, TUESDAY, **more)
    return play(Tune(shop, Book(people={"owner": NewCustomer("Somebody")}), plan), plan, until)


@pytest.mark.parametrize(
    ("place", "act"),
    [
        ("mat", "quote"),
        ("asked shelf", "answer"),
        ("shelf", "work"),
        ("bath", "work"),
        ("drying rack", "work"),
        ("jig", "proof"),
        ("post table", "dispatch"),
    ],
)
def test_it_lies_where_it_was_planned_to_lie(
    shop: Any, tell: Callable[..., list[Any]], place: str, act: str
) -> None:
    (read,) = tell(tune(shop, at_last=place))
    assert read.visit.place == place
    on_that_day = diary(read.visit.pk, read.blocks[-1].entry.written_at)
    assert on_that_day is not None
    assert on_that_day.next.act == act


@pytest.mark.parametrize(("place", "turn"), [("waits for a part", "part"), ("line winder", "respool")])
def test_some_places_need_a_reason(shop: Any, tell: Callable[..., list[Any]], place: str, turn: str) -> None:
    (read,) = tell(tune(shop, at_last=place, turns=frozenset({turn})))
    assert read.visit.place == place


def test_the_whole_way_home(shop: Any, tell: Callable[..., list[Any]]) -> None:
    (read,) = tell(tune(shop))
    kinds = [block.kind for block in read.blocks]
    assert kinds[0] == "arrival"
    assert not read.visit.is_open
    assert read.next.act == "nothing"
    assert {"reading", "finding", "quote", "answer", "work", "proof", "invoice", "dispatch"} <= set(kinds)


def test_what_would_come_later_has_not_happened_yet(shop: Any, tell: Callable[..., list[Any]]) -> None:
    (read,) = tell(tune(shop, until=at(TUESDAY, "12:30")))
    assert read.visit.is_open
    assert not read.of_kind("work")


def test_silence_is_reminded_after_a_week(shop: Any, tell: Callable[..., list[Any]]) -> None:
    (read,) = tell(tune(shop, at_last="asked shelf", turns=frozenset({"silent"})))
    assert "no answer for a week" in read.blocks[-1].entry.words
    asked = next(block for block in read.blocks if block.kind == "quote").entry.written_at
    assert (read.blocks[-1].entry.written_at.date() - asked.date()).days >= 7


def test_a_no_sends_it_back_as_it_came(shop: Any, tell: Callable[..., list[Any]]) -> None:
    (read,) = tell(tune(shop, turns=frozenset({"no"})))
    assert not read.visit.is_open
    assert not read.of_kind("work")
    assert not read.of_kind("invoice")
    assert read.agreed.said_no
