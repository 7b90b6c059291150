"""The quote as the customer sees it: what stood when it was asked, and nothing that came later."""

from __future__ import annotations

from datetime import date
from typing import Any

from spoolwright.pages.gathered import quote as quote_of
from spoolwright.shop.questions.diary import diary
from tests.shop import walk


def told(visit: Any, quote: Any, shop: Any) -> Any:
    return quote_of.gathered(diary(visit.pk), quote.entry, shop, "metric")


def test_what_was_written_after_it_is_not_on_it(hand: Any, shop: Any) -> None:
    visit = walk.arrived(hand)
    walk.write_finding(hand=hand, visit=visit, part="pawl", fault="F15", evidence="worn")
    quote = walk.quoted(hand, visit)
    before = told(visit, quote, shop)
    walk.write_finding(hand=hand, visit=visit, part="idler cog", fault="F16", evidence="split")
    walk.answered(hand, quote)
    assert told(visit, quote, shop) == before
    assert [it.what for it in before.found] == ["Pawl"]
    assert before.asked == "level wind catches at the right end"
    assert before.cap == ""


def test_an_extra_tells_what_was_found_since_and_the_cap_that_holds(hand: Any, shop: Any) -> None:
    visit = walk.arrived(hand)
    walk.write_finding(hand=hand, visit=visit, part="pawl", fault="F15", evidence="worn")
    walk.answered(hand, walk.quoted(hand, visit))
    walk.write_finding(hand=hand, visit=visit, part="idler cog", fault="F16", evidence="split")
    extra = walk.quoted(hand, visit, walk.option(walk.COG, key="cog"))
    quote = told(visit, extra, shop)
    assert [it.what for it in quote.found] == ["Idler cog"]
    assert quote.cap.replace("\u00a0", " ") == "1,200.00 kr"
    assert quote.number == f"{visit.tag}-2"


def test_how_long_it_holds_and_what_the_rule_is(hand: Any, shop: Any) -> None:
    visit = walk.arrived(hand)
    entry = walk.send_quote(
        hand=hand, visit=visit, options=(walk.option(),), valid_until=date(2030, 1, 31)
    ).entry
    quote = told(visit, entry.quote, shop)
    assert quote.valid_until == "31 January 2030"
    assert quote.ceiling_percent.replace("\u00a0", " ") == "15 %"
    assert told(visit, walk.quoted(hand, visit), shop).valid_until == "we say otherwise"
