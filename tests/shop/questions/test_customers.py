"""Customers by name, and the reels of each."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.add_customer import add_customer
from spoolwright.shop.questions.customers import customer, customers, reels_of
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_a_customers_reels_newest_first(hand: Any) -> None:
    visit = walk.arrived(hand)
    assert [reel.described for reel in reels_of(visit.reel.customer_id)] == ["Tarvak 58R"]


def test_by_a_piece_of_the_name(hand: Any) -> None:
    ragna, sigrun = (add_customer(hand=hand, name=name) for name in ("Ragna Solbu", "Sigrun Tveit"))
    assert customers() == (ragna, sigrun)
    assert customers("tve") == (sigrun,)
    assert customer(sigrun.pk) == sigrun
    assert customer(10**6) is None
