"""What judgement offers is what the quote writes: sums, promises, warnings."""

from __future__ import annotations

import pytest

from spoolwright.demo.nature import known
from spoolwright.demo.offers import by_hand, charges_of, offered, told_option
from spoolwright.judgement.findings import Finding
from spoolwright.judgement.price import Charge, price
from spoolwright.judgement.quote_case import Around
from spoolwright.judgement.quote_options import Option, three_options
from spoolwright.judgement.shop_rates import starting_rates
from spoolwright.shop.acts.send_quote import OfferedPromise, OfferedWork

RATES = starting_rates()


@pytest.fixture(scope="module")
def ways() -> tuple[Option, ...]:
    return three_options(known("tarvak-58r"), {}, [Finding("pawl", "F15")], RATES, samples=200)


def test_an_option_is_offered_word_for_word(ways: tuple[Option, ...]) -> None:
    for way in ways:
        told = offered(way)
        assert sum(line.gross_minor for line in told.lines) == way.total_minor
        assert [work.work for work in told.works] == [work.id for work in way.works]
        assert [promise.reading_kind for promise in told.promises] == [p.reading_kind for p in way.promises]
        assert told.prediction is way.prediction
        assert told.compared_with_trade == way.compared_with_trade


def test_a_promise_carries_what_it_is_for_and_what_it_rests_on(ways: tuple[Option, ...]) -> None:
    pull = next(p for p in offered(ways[1]).promises if p.reading_kind == "pull_full")
    assert pull.kind == "pull_full_spool"
    assert pull.conditions["radius"] == pytest.approx(known("tarvak-58r").spool.full_radius)
    assert "reel sheet of the Tarvak 58R" in pull.rests_on


def test_the_bill_comes_to_what_was_offered(ways: tuple[Option, ...]) -> None:
    for way in ways:
        assert price(charges_of(way.lines), RATES).total_minor == way.total_minor


def test_works_chosen_by_hand_need_no_sheet() -> None:
    option = by_hand(RATES, Around(kind="fixed spool", posted=False), ["strip-and-wash", "dress-drag"])
    promise = OfferedPromise("start_up_ratio", "ratio", high=1.15, reading_kind="start_up_ratio")
    told = offered(option, [promise])
    assert told.promises == [promise]
    assert told.prediction is None
    assert option.total_minor == RATES.tier("common").price_minor


def test_a_told_option_takes_as_long_as_its_works() -> None:
    works = [OfferedWork("a", "A", 12), OfferedWork("b", "B", 10)]
    option = told_option(RATES, "quick", "Quick", [Charge("tier", "Quick fix", 150_00)], works)
    assert option.minutes == 22
    assert sum(line.gross_minor for line in option.lines) == 150_00
