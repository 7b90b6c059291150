"""Customers by name, and the reels of each."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.add_customer import add_customer
from spoolwright.shop.questions.customers import customer, customers, known_as, reels_of
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


def test_by_the_beginnings_of_words_without_signs(hand: Any) -> None:
    ase = add_customer(hand=hand, name="Åse Ødegård", address="Sjøgata 4", telephone="+47 900 11 222")
    aslak = add_customer(hand=hand, name="Aslak Rein", note="skipper")
    assert known_as("as") == (ase, aslak)
    assert known_as("odeg as") == (ase,)
    assert known_as("sjo") == known_as("900 11") == (ase,)
    assert known_as("degard") == ()
    assert known_as("as", limit=1) == (ase,)
    assert known_as(" ! ") == ()
