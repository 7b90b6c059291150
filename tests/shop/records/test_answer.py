"""A yes names its option, a no names none; money that came in is a word with a sum."""

from __future__ import annotations

from typing import Any

import pytest

from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_a_yes_and_a_payment(hand: Any) -> None:
    visit = walk.everything(hand)
    answer = visit.entries.get(kind="answer").answer
    assert answer.is_yes
    answer.option = None
    assert not answer.is_yes
    payment = visit.entries.get(kind="word", payment__isnull=False).payment
    assert (payment.amount_minor, payment.currency) == (200_00, "NOK")
