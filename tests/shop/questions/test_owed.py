"""Who owes what, since when."""

from __future__ import annotations

from datetime import date
from typing import Any

import pytest

from spoolwright.shop.acts.strike_entry import strike_entry
from spoolwright.shop.acts.take_payment import take_payment
from spoolwright.shop.questions.owed import owed
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


def test_a_struck_bill_is_not_owed(hand: Any) -> None:
    visit = walk.agreed(hand)
    invoice = walk.billed(hand, visit)
    strike_entry(hand=hand, entry=invoice.entry, reason="wrong reel")
    assert owed(invoice.due_on) == ()


def test_the_oldest_debt_comes_first_and_many_cost_no_more_queries(
    hand: Any, django_assert_num_queries: Any
) -> None:
    for number in range(5):
        due = date(2026, 3, 20 - number)
        walk.billed(hand, walk.agreed(hand, name=f"Customer {number}"), due_on=due)
    with django_assert_num_queries(2):
        rows = owed(date(2026, 3, 18))
    assert [row.customer[-1] for row in rows] == ["4", "3", "2", "1", "0"]
    assert [row.days_overdue for row in rows] == [2, 1, 0, 0, 0]
