"""Money that came in stands in the diary, before the bill or after the reel went home."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.refused import FieldWasRefused
from spoolwright.shop.acts.take_payment import NothingWasPaid, take_payment
from spoolwright.shop.questions.owed import paid
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_money_given_back(hand: Any) -> None:
    visit = walk.agreed(hand)
    take_payment(hand=hand, visit=visit, amount_minor=200_00)
    entry = take_payment(hand=hand, visit=visit, amount_minor=-50_00, paid_by="cash").entry
    assert entry.words == "Given back: 50.00 kr (cash)."
    assert paid(visit.pk) == 150_00


def test_a_payment_has_a_sum_and_a_way(hand: Any) -> None:
    visit = walk.agreed(hand)
    with pytest.raises(NothingWasPaid):
        take_payment(hand=hand, visit=visit, amount_minor=0)
    with pytest.raises(FieldWasRefused):
        take_payment(hand=hand, visit=visit, amount_minor=1, paid_by="fish")
