"""The bill and the way from the quote to it. Sums: trade handbook, chapter 9, scenario 1."""

from __future__ import annotations

from typing import Any

from spoolwright.pages.gathered import invoice as invoice_of
from spoolwright.shop.questions import by_number
from spoolwright.shop.questions.diary import diary
from tests.shop import walk


def told(visit: Any, shop: Any) -> Any:
    number = diary(visit.pk).of_kind("invoice")[-1].part.number
    return invoice_of.gathered(diary(visit.pk), by_number.invoice(number), shop)


def plain(text: str) -> str:
    return text.replace("\u00a0", " ")


def test_the_sums_and_why_they_are_more(whole: Any, shop: Any) -> None:
    bill = told(whole, shop)
    assert [plain(s) for s in (bill.total, bill.deposit, bill.due)] == [
        "1,169.00 kr",
        "200.00 kr",
        "969.00 kr",
    ]
    assert [(plain(t.rate), plain(t.tax)) for t in bill.tax] == [("25 %", "233.80 kr")]
    assert (plain(bill.quoted), bill.answered) == ("1,104.00 kr", "yes, up to 1,200")
    assert [(plain(d.amount), d.why) for d in bill.differences] == [("+ 65.00 kr", "the idler cog was split")]
    assert bill.customer.name == "Ragna Solbu"
    assert bill.old_parts == ("Pawl", "2 × check spring")
    assert any("salt" in words for words in bill.care)


def test_an_extra_that_was_answered_is_its_own_step(hand: Any, shop: Any) -> None:
    visit = walk.agreed(hand)
    walk.answered(hand, walk.quoted(hand, visit, walk.option(walk.COG, key="cog")))
    walk.worked(hand, visit)
    walk.billed(hand, visit, *walk.CHARGES, walk.COG)
    bill = told(visit, shop)
    assert [plain(d.amount) for d in bill.differences] == ["+ 65.00 kr"]
    assert "you answered “yes, up to 1,200”" in bill.differences[0].why


def test_a_bill_of_what_was_quoted_has_no_steps_and_less_is_said_too(hand: Any, shop: Any) -> None:
    visit = walk.agreed(hand)
    walk.billed(hand, visit)
    assert told(visit, shop).differences == ()
    other = walk.arrived(hand, name="Jonna Fure")
    walk.answered(hand, walk.quoted(hand, other))
    walk.billed(hand, other, *walk.CHARGES[:-1])
    assert [(plain(d.amount), d.why) for d in told(other, shop).differences] == [
        ("− 129.00 kr", "less than was quoted")
    ]


def test_hours_and_counts_are_said(hand: Any, shop: Any) -> None:
    visit = walk.arrived(hand, up_to_minor=5000_00)
    labour = walk.Charge("labour", "Free the bearing", 350_00, minutes=35)
    bearings = walk.Charge("part", "Spool bearing", 85_00, quantity=2)
    walk.billed(hand, visit, labour, bearings)
    bill = told(visit, shop)
    assert [(line.words, line.quantity, plain(line.each)) for line in bill.lines] == [
        ("Free the bearing", "35 min", ""),
        ("Spool bearing", "2", "85.00 kr"),
    ]
    assert (bill.quoted, bill.differences) == ("", ())


def test_old_parts_that_are_not_wanted_are_not_promised(hand: Any, shop: Any) -> None:
    visit = walk.arrived(hand, old_parts_back=False)
    walk.answered(hand, walk.quoted(hand, visit))
    walk.worked(hand, visit, parts=[walk.Fitted("pawl")])
    walk.billed(hand, visit)
    assert told(visit, shop).old_parts == ()
