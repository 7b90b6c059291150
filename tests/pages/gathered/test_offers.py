"""Options in ink as a paper carries them. Sums: trade handbook, chapter 9, scenario 1."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from spoolwright.pages.gathered import offers
from spoolwright.pages.gathered.amounts import Amounts
from spoolwright.papers.figures import Span
from spoolwright.shop.acts.send_quote import OfferedPromise
from tests.shop import walk


def plain(lines: Any) -> list[tuple[str, str]]:
    return [(line.words.replace("\u00a0", " "), line.amount.replace("\u00a0", " ")) for line in lines]


def test_lines_tax_and_ceiling(hand: Any, shop: Any) -> None:
    quote = walk.quoted(hand, walk.arrived(hand))
    offer = offers.offer(quote.options.get(), quote, Amounts(shop, quote.currency), "metric")
    assert plain(offer.lines)[0] == ("Common tune", "520.00 kr")
    assert plain(offer.tax) == [
        ("of which tax, 25 %", "220.80 kr"),
        ("a bill may not pass, without a new answer from you", "1,269.60 kr"),
    ]
    assert offer.total.replace("\u00a0", " ") == "1,104.00 kr"
    assert offer.time == "1 h 8 min"


def test_an_extra_says_what_it_makes_with_what_was_agreed(hand: Any, shop: Any) -> None:
    visit = walk.agreed(hand)
    extra = walk.quoted(hand, visit, walk.option(walk.COG, key="cog"))
    offer = offers.offer(extra.options.get(), extra, Amounts(shop), "metric")
    assert plain(offer.tax)[1:] == [
        ("together with what you said yes to before", "1,169.00 kr"),
        ("your own cap, which stands", "1,200.00 kr"),
    ]


def test_what_carries_the_pull_is_said_in_the_readers_units(hand: Any, shop: Any) -> None:
    option = replace(walk.option(), prediction=walk.expected(), carried=walk.carries())
    quote = walk.quoted(hand, walk.arrived(hand), option)
    for system, unit in (("metric", " kg; the weakest part"), ("imperial", " lb; the weakest part")):
        offer = offers.offer(quote.options.get(), quote, Amounts(shop), system)
        assert unit in offer.carried


def test_where_no_law_caps_a_bill_nothing_is_said(hand: Any) -> None:
    from spoolwright.shop.acts.change_settings import change_settings
    from spoolwright.shop.questions.shop_settings import shop_settings
    from tests.people import owner

    change_settings(hand=owner(), version=1, legal_ceiling=None)
    quote = walk.quoted(hand, walk.arrived(hand))
    option = quote.options.get()
    assert offers.ceiling_minor(option, quote) is None
    assert len(offers.offer(option, quote, Amounts(shop_settings()), "metric").tax) == 1


def test_a_promise_with_both_ends_has_its_middle_and_one_with_one_end_is_words(hand: Any) -> None:
    promises = (
        OfferedPromise("pull_full_spool", "force", 50.0, 70.0, 60.0, "pull_full"),
        OfferedPromise("start_up_ratio", "ratio", high=1.15, reading_kind="start_up_ratio"),
        OfferedPromise("judder", "ratio", 0.01, 0.09, 0.05, "judder"),
    )
    quote = walk.quoted(hand, walk.arrived(hand), walk.option(promises=promises))
    figures = [offers.promised_figure(p, "metric") for p in quote.options.get().promises.all()]
    assert figures[0] == Span(60.0, 50.0, 70.0, "force")
    assert figures[1] == "at most 1.15"
    assert str(figures[2]).replace("\u00a0", " ") == "1.0 to 9.0 %"
