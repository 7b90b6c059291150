"""Money that comes in or goes back."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from tests.pages.diary.at_the_desk import form, last, send, text, way
from tests.shop import walk

pytestmark = pytest.mark.django_db


@pytest.mark.parametrize(("direction", "amount"), [("in", 200_00), ("back", -200_00)])
def test_a_payment_is_written_with_its_direction(
    bench: Client, torbal: Any, direction: str, amount: int
) -> None:
    visit = walk.agreed(torbal)
    sent = {"amount_minor": "200 kr", "way": direction, "paid_by": "card", "words": "the deposit"}
    assert send(bench, way(visit, "payment"), **sent).status_code == 302
    assert last(visit).part.amount_minor == amount
    said = text(bench.get(f"/diary/{visit.tag}/"))
    assert f"{'Paid' if amount > 0 else 'Given back'}: 200.00 kr (card). the deposit" in said


def test_written_again_the_sum_is_there(bench: Client, torbal: Any) -> None:
    visit = walk.agreed(torbal)
    old = walk.take_payment(hand=torbal, visit=visit, amount_minor=-50_00).entry
    fresh = form(bench.get(f"{way(visit, 'payment')}?again={old.pk}"))
    assert (fresh["amount_minor"].value(), fresh["way"].value()) == ("50.00 kr", "back")
