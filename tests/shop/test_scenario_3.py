"""Acceptance: dropped into the sea on a Saturday, in as far as this shop's acts go.

Source of every number: the trade handbook, chapter 9, scenario 3 (invented there).
"""

from __future__ import annotations

from datetime import date
from fractions import Fraction
from typing import Any

import pytest

from spoolwright.demo.offers import by_hand, offered
from spoolwright.demo.shop_hours import at
from spoolwright.judgement.job_price import Before
from spoolwright.judgement.price import Charge
from spoolwright.judgement.quote_case import Around
from spoolwright.shop.acts import clock
from spoolwright.shop.acts.add_customer import NewCustomer
from spoolwright.shop.acts.add_reel import NewReel
from spoolwright.shop.acts.issue_invoice import BillWasAboveTheCap
from spoolwright.shop.acts.receive_parcel import ArrivingReel, Envelope, Told, receive_parcel
from spoolwright.shop.acts.record_answer import CapWasBelowTheQuote, Said, record_answer
from spoolwright.shop.acts.send_quote import send_quote
from spoolwright.shop.questions.agreed import agreed
from spoolwright.shop.questions.diary import diary
from spoolwright.shop.questions.on_the_bench import on_the_bench
from spoolwright.shop.questions.shop_settings import rates
from tests.shop import walk

pytestmark = pytest.mark.django_db
SATURDAY = date(2026, 6, 6)
KIND, USED = "low-profile multiplier", 1900_00
WORKS = ("strip-and-wash", "regrease-gears", "set-and-prove")
PLANNED = (
    Charge("tier", "Common tune", 520_00),
    Charge("labour", "Emergency", 300_00),
    Charge("part", "Bearings", 75_00, quantity=Fraction(4)),
)
FREED = Charge("labour", "Free the seized bearing", 350_00)


@pytest.fixture
def visit(hand: Any) -> Any:
    with clock.as_of(at(SATURDAY, "15:05")):
        told = Told("Fell off the quay.", "salt", at(SATURDAY, "14:10"), used_value_minor=USED)
        received = receive_parcel(
            hand=hand,
            customer=NewCustomer("Jonna Fure"),
            envelope=Envelope("walk-in"),
            reels=[ArrivingReel(NewReel("Ostrell S71"), told=told)],
        )
    return received.written[0].entry.visit


def ask(hand: Any, visit: Any, option: Any, cap: int, words: str) -> Any:
    quote = send_quote(hand=hand, visit=visit, options=[offered(option)]).entry.quote
    said = Said("Jonna Fure", "telephone", words, cap)
    return record_answer(hand=hand, quote=quote, option=quote.options.get(), said=said)


def planned(hand: Any, visit: Any) -> Any:
    around = Around(used_price_minor=USED, posted=False, kind=KIND)
    option = by_hand(rates(), around, WORKS, PLANNED[1:])
    assert option.total_minor == 1120_00
    return ask(hand, visit, option, 1300_00, "ask me before you pass 1,300")


def seized(visit: Any) -> Any:
    """The extra, weighed with all that was agreed before."""
    before = Before("common", WORKS, agreed(visit.pk).total_minor)
    around = Around(used_price_minor=USED, posted=False, kind=KIND, before=before)
    minutes = {"free-seized-bearing": 35}
    return by_hand(rates(), around, ["free-seized-bearing"], minutes=minutes, key="extra")


def test_do_not_turn_is_said_at_once_and_it_comes_first_on_the_bench(hand: Any, visit: Any) -> None:
    with clock.as_of(at(SATURDAY, "09:00")):
        walk.arrived(hand)
    soon, late = at(SATURDAY, "15:10"), at(date(2026, 6, 9), "09:00")
    read = diary(visit.pk, soon)
    assert read is not None
    assert read.must_not_be_turned
    assert (read.next.act, "without turning the handle" in read.next.words) == ("finding", True)
    mat = next(place for place in on_the_bench(soon) if place.name == "mat")
    assert mat.reels[0].visit_id == visit.pk
    later = diary(visit.pk, late)
    assert later is not None
    assert not later.must_not_be_turned


def test_1300_is_not_passed_without_a_new_answer(hand: Any, visit: Any) -> None:
    planned(hand, visit)
    with pytest.raises(BillWasAboveTheCap, match=r"1,470\.00 kr is 170\.00 kr over the cap of 1,300\.00 kr"):
        walk.billed(hand, visit, *PLANNED, FREED, why_more="the palm-side bearing was seized")


def test_raised_to_1500_and_the_old_answer_is_kept(hand: Any, visit: Any) -> None:
    first = planned(hand, visit).entry.answer
    with pytest.raises(CapWasBelowTheQuote, match=r"less than the 1,470\.00 kr"):
        ask(hand, visit, seized(visit), 1400_00, "up to 1,400")
    raised = ask(hand, visit, seized(visit), 1500_00, "All right, up to 1,500.").entry.answer
    held = agreed(visit.pk)
    assert (held.total_minor, held.cap_minor) == (1470_00, 1500_00)
    assert raised.quote.extends == first
    assert first.exact_words == "ask me before you pass 1,300"
    bill = walk.billed(hand, visit, *PLANNED, FREED)
    assert bill.total_minor == 1470_00


def test_above_sixty_per_cent_of_its_used_price_a_word_is_said(hand: Any, visit: Any) -> None:
    planned(hand, visit)
    (warned,) = seized(visit).warnings
    assert "1,470.00 kr, 77% of the 1,900.00 kr" in warned
    assert "more than such a repair is usually worth" in warned
