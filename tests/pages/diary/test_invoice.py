"""The invoice by hand: lines from the answer, the cap in words with the way out, no bill above it."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from tests.pages.diary.at_the_desk import form, last, send, text, way
from tests.shop import walk

pytestmark = pytest.mark.django_db


def as_shown(client: Client, visit: Any) -> dict[str, Any]:
    """What the browser would send if nothing were changed."""
    shown = form(client.get(way(visit, "invoice")))
    sent = {}
    for row in shown.lines:
        for bound in row:
            if bound.value() not in (None, "", False):
                sent[bound.html_name] = bound.value()
    return sent


def extra(sent: dict[str, Any], what: str, amount: str, kind: str = "part") -> dict[str, Any]:
    k = sum(name.endswith("-what") for name in sent)
    return sent | {f"line-{k}-what": what, f"line-{k}-amount": amount, f"line-{k}-kind": kind}


def test_the_lines_that_were_said_yes_to_are_the_bill(bench: Client, torbal: Any) -> None:
    # Handbook scenario 1 (invented sums): 520 + 95 + 170 + 190 + 129 = 1,104; tax a fifth.
    visit = walk.agreed(torbal)
    sent = as_shown(bench, visit)
    assert send(bench, way(visit, "invoice"), **sent).status_code == 302
    invoice = last(visit).part
    assert (invoice.total_minor, invoice.tax_minor) == (1104_00, 220_80)
    assert [line.what for line in invoice.lines.all()] == [charge.title for charge in walk.CHARGES]


def test_it_is_added_up_before_it_is_written(bench: Client, torbal: Any) -> None:
    visit = walk.agreed(torbal)
    walk.take_payment(hand=torbal, visit=visit, amount_minor=200_00)
    said = text(bench.get(way(visit, "invoice")))
    assert "Together 1,104.00 kr" in said
    assert "Paid before 200.00 kr" in said
    assert "Left to pay 904.00 kr" in said
    assert "within the cap of 1,200.00 kr" in said


def test_an_extra_that_was_told_within_the_cap_stands_on_the_bill(bench: Client, torbal: Any) -> None:
    # Handbook scenario 1 (invented sums): told by picture, 65 more, the whole 1,169 inside the cap of 1,200.
    visit = walk.agreed(torbal)
    walk.quoted(torbal, visit, walk.option(walk.COG, key="idler cog"))
    sent = as_shown(bench, visit)
    assert "Idler cog" in sent.values()
    assert send(bench, way(visit, "invoice"), **sent, why_more="split at the strip").status_code == 302
    assert last(visit).part.total_minor == 1169_00


def test_an_extra_above_the_cap_waits_for_its_answer(bench: Client, torbal: Any) -> None:
    visit = walk.agreed(torbal)
    walk.quoted(torbal, visit, walk.option(walk.Charge("part", "Spool", 196_00), key="spool"))
    assert "Spool" not in as_shown(bench, visit).values()


def test_an_extra_inside_the_cap_says_why(bench: Client, torbal: Any) -> None:
    # Handbook scenario 1 (invented sums): the idler cog makes it 1,169, due 969, tax 233.80.
    visit = walk.agreed(torbal)
    walk.take_payment(hand=torbal, visit=visit, amount_minor=200_00)
    sent = extra(as_shown(bench, visit), "Idler cog", "65")
    refused = send(bench, way(visit, "invoice"), **sent)
    assert refused.status_code == 422
    assert "why_more" in form(refused).errors
    assert send(bench, way(visit, "invoice"), **sent, why_more="split at the strip").status_code == 302
    invoice = last(visit).part
    assert (invoice.total_minor, invoice.due_minor, invoice.tax_minor) == (1169_00, 969_00, 233_80)


def test_a_bill_of_thirteen_hundred_is_refused_with_the_way_out(bench: Client, torbal: Any) -> None:
    visit = walk.agreed(torbal)
    sent = extra(as_shown(bench, visit), "Everything else", "196", "other")
    looked = send(bench, way(visit, "invoice"), "look", **sent)
    assert looked.status_code == 200
    assert "100.00 kr over the cap of 1,200.00 kr" in text(looked)
    assert "Leave a line off" in text(looked)
    refused = send(bench, way(visit, "invoice"), **sent, why_more="more")
    assert refused.status_code == 422
    assert "Not issued" in text(refused)
    assert last(visit).kind != "invoice"


def test_a_line_is_left_off_by_a_tick(bench: Client, torbal: Any) -> None:
    visit = walk.agreed(torbal)
    sent = as_shown(bench, visit) | {"line-4-off": "on"}
    assert send(bench, way(visit, "invoice"), **sent).status_code == 302
    assert last(visit).part.total_minor == 975_00


def test_a_discount_is_taken_off(bench: Client, torbal: Any) -> None:
    visit = walk.agreed(torbal)
    sent = extra(as_shown(bench, visit), "For the wait", "50", "discount")
    assert send(bench, way(visit, "invoice"), **sent).status_code == 302
    assert last(visit).part.total_minor == 1054_00


@pytest.mark.parametrize("amount", ["much", "", "12.345"])
def test_a_line_without_a_sum_is_named(bench: Client, torbal: Any, amount: str) -> None:
    visit = walk.agreed(torbal)
    refused = send(bench, way(visit, "invoice"), **extra(as_shown(bench, visit), "Idler cog", amount))
    assert refused.status_code == 422
    assert "Line 6:" in text(refused)
    assert 'value="Idler cog"' in refused.content.decode()


def test_where_nothing_was_quoted_the_fixed_prices_are_named(bench: Client, torbal: Any) -> None:
    visit = walk.arrived(torbal, up_to_minor=500_00)
    assert "Fixed prices here" in text(bench.get(way(visit, "invoice")))
    sent = {"line-0-what": "Quick", "line-0-amount": "150", "line-0-kind": "tier"}
    assert send(bench, way(visit, "invoice"), **sent).status_code == 302
    assert last(visit).part.total_minor == 150_00


def test_nothing_said_yes_to_is_nothing_billed(bench: Client, torbal: Any) -> None:
    visit = walk.arrived(torbal)
    sent = {"line-0-what": "Quick", "line-0-amount": "150", "line-0-kind": "tier"}
    refused = send(bench, way(visit, "invoice"), **sent)
    assert refused.status_code == 422
    assert "Ask the customer first" in text(refused)


def test_struck_and_written_again_its_lines_stand_there(bench: Client, torbal: Any) -> None:
    visit = walk.agreed(torbal)
    walk.billed(torbal, visit)
    old = last(visit).entry
    bench.post(f"/diary/{visit.tag}/strike/{old.pk}/", {"reason": "sent to the wrong address"})
    address = f"{way(visit, 'invoice')}?again={old.pk}"
    sent = {b.html_name: b.value() for row in form(bench.get(address)).lines for b in row if b.value()}
    assert send(bench, way(visit, "invoice"), **sent, again=old.pk).status_code == 302
    assert (last(visit).part.number, last(visit).part.total_minor) == (2, 1104_00)
