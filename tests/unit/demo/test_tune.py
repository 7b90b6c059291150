"""A tune with three ways offered, and the things that go unusually in one."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from spoolwright.demo.planned import Book, Planned, ReelPlanned
from spoolwright.demo.tune import Tune
from spoolwright.demo.usual_stay import play
from spoolwright.shop.acts.add_customer import NewCustomer
from tests.unit.demo.conftest import END, TUESDAY


def tune(shop: Any, *turns: str, slug: str = "tarvak-58r", **more: Any) -> Any:
    plan = Planned(ReelPlanned("one", "owner", slug), TUESDAY, turns=frozenset(turns), **more)
    return play(Tune(shop, Book(people={"owner": NewCustomer("Somebody")}), plan), plan, END)


@pytest.mark.parametrize("slug", ["tarvak-52", "tarvak-54c", "tarvak-58r", "pellmar-70"])
def test_three_ways_and_what_was_promised_is_shown(
    shop: Any, tell: Callable[..., list[Any]], slug: str
) -> None:
    (read,) = tell(tune(shop, slug=slug))
    (quote,) = read.of_kind("quote")
    assert [option.key for option in quote.part.options.all()] == ["put right", "improve", "most"]
    (proof,) = read.of_kind("proof")
    assert {row.decision for row in proof.part.rows.all()} == {"shown"}
    assert all(row.before for row in proof.part.rows.all())


def test_the_bill_is_what_was_agreed(shop: Any, tell: Callable[..., list[Any]]) -> None:
    (read,) = tell(tune(shop))
    (invoice,) = read.of_kind("invoice")
    assert invoice.part.total_minor == read.agreed.total_minor
    assert not invoice.part.why_more


def test_more_was_found_and_it_stays_inside_the_cap(shop: Any, tell: Callable[..., list[Any]]) -> None:
    (read,) = tell(tune(shop, "extra"))
    first, extra = read.of_kind("quote")
    assert extra.part.extends is not None
    (invoice,) = read.of_kind("invoice")
    assert read.agreed.total_minor < invoice.part.total_minor <= read.agreed.cap_minor
    assert "inside your cap" in invoice.part.why_more


def test_a_slip_of_the_decimal_is_struck_and_written_again(shop: Any, tell: Callable[..., list[Any]]) -> None:
    (read,) = tell(tune(shop, "struck"))
    (struck,) = [block for block in read.blocks if block.is_struck]
    (wrong,) = struck.part.values.all()
    right = next(v for v in struck.strike.replaced_by.reading.values.all() if v.kind == "end_float")
    assert wrong.value_si == pytest.approx(10 * right.value_si, rel=0.01)


def test_a_failed_proof_is_worked_on_and_proved_again(shop: Any, tell: Callable[..., list[Any]]) -> None:
    (read,) = tell(tune(shop, "failed"))
    first, second = [{row.decision for row in block.part.rows.all()} for block in read.of_kind("proof")]
    assert "failed" in first
    assert second == {"shown"}
    assert len(read.of_kind("work")) == 2


def test_a_promise_may_stay_not_shown(shop: Any, tell: Callable[..., list[Any]]) -> None:
    (read,) = tell(tune(shop, "not shown"))
    (proof,) = read.of_kind("proof")
    assert "not shown" in {row.decision for row in proof.part.rows.all()}


def test_a_bill_with_the_wrong_address_keeps_its_number(shop: Any, tell: Callable[..., list[Any]]) -> None:
    (read,) = tell(tune(shop, "struck bill"))
    bills = [block for block in read.blocks if block.kind == "invoice"]
    assert [(bill.part.number, bill.is_struck) for bill in bills] == [(1, True), (2, False)]


def test_what_is_unpaid_stays_owed(shop: Any, tell: Callable[..., list[Any]]) -> None:
    (read,) = tell(tune(shop, "unpaid"))
    paid = [block for block in read.of_kind("word") if block.part]
    assert not [word for word in paid if "Invoice" in word.entry.words]
