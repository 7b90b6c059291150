"""Money that came in stands in the diary, before the bill or after the reel went home."""

from __future__ import annotations

from datetime import date
from typing import Any

import pytest

from spoolwright.shop.acts.refused import FieldWasRefused
from spoolwright.shop.acts.strike_entry import strike_entry
from spoolwright.shop.acts.take_payment import NothingWasPaid, take_payment
from spoolwright.shop.questions.owed import owed, paid
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_who_owes_what_and_since_when(hand: Any) -> None:
    visit = walk.agreed(hand)
    take_payment(hand=hand, visit=visit, amount_minor=200_00, paid_by="card")
    invoice = walk.billed(hand, visit)
    walk.gone(hand, visit)
    (row,) = owed(invoice.due_on)
    assert (row.owed_minor, row.days_overdue, row.numbers) == (904_00, 0, (1,))
    late = owed(date.fromordinal(invoice.due_on.toordinal() + 10))
    assert late[0].days_overdue == 10
    rest = take_payment(hand=hand, visit=visit, amount_minor=904_00).entry
    assert owed(invoice.due_on) == ()
    strike_entry(hand=hand, entry=rest, reason="another customer's transfer")
    assert owed(invoice.due_on)[0].owed_minor == 904_00


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


def test_a_struck_bill_is_not_owed(hand: Any) -> None:
    visit = walk.agreed(hand)
    invoice = walk.billed(hand, visit)
    strike_entry(hand=hand, entry=invoice.entry, reason="wrong reel")
    assert owed(invoice.due_on) == ()
