"""Small jobs: no full check-in, and a spool filled to the right level."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from spoolwright.demo.planned import Book, Planned, ReelPlanned
from spoolwright.demo.small_jobs import NewLine, OverTheCounter
from spoolwright.demo.usual_stay import Job, play
from spoolwright.shop.acts.add_customer import NewCustomer
from tests.unit.demo.conftest import END, TUESDAY

REEL = ReelPlanned("one", "owner", described="Lumvik 4000", kind="fixed spool")


def story(kind: type[Job], shop: Any, **more: Any) -> Any:
    plan = Planned(REEL, TUESDAY, **more)
    return play(kind(shop, Book(people={"owner": NewCustomer("Somebody")}), plan), plan, END)


def test_over_the_counter_takes_minutes_and_no_readings(shop: Any, tell: Callable[..., list[Any]]) -> None:
    (read,) = tell(story(OverTheCounter, shop, job="counter", posted=False))
    assert not read.of_kind("reading")
    assert not read.of_kind("proof")
    took = read.visit.sent_home_at - read.visit.arrived_at
    assert took.total_seconds() < 3600
    (invoice,) = read.of_kind("invoice")
    assert invoice.part.total_minor > 150_00


def test_new_line_is_filled_to_the_level_and_proved(shop: Any, tell: Callable[..., list[Any]]) -> None:
    (read,) = tell(story(NewLine, shop, job="line"))
    (proof,) = read.of_kind("proof")
    assert [row.decision for row in proof.part.rows.all()] == ["shown"]
    (invoice,) = read.of_kind("invoice")
    assert [line.kind for line in invoice.part.lines.all()] == ["labour", "other", "post"]


@pytest.mark.parametrize("posted", [True, False])
def test_on_the_winder_it_waits_for_a_hand(shop: Any, tell: Callable[..., list[Any]], posted: bool) -> None:
    (read,) = tell(story(NewLine, shop, job="line", at_last="line winder", posted=posted))
    assert read.visit.place == "line winder"
    assert read.next.act == "work"
