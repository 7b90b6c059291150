"""A link is made for oneself, or by the owner; only its hash is kept."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.make_sign_in_link import make_sign_in_link
from spoolwright.shop.acts.refused import OwnerWasNeeded
from spoolwright.shop.acts.use_sign_in_link import use_sign_in_link
from spoolwright.shop.records.people import SignInLink

pytestmark = pytest.mark.django_db


def test_only_its_hash_is_kept(owner: Any) -> None:
    token = make_sign_in_link(hand=owner, person=owner)
    kept = SignInLink.objects.values().get()
    assert len(token) >= 43
    assert not any(token in str(value) for value in kept.values())


def test_a_bench_hand_makes_links_for_herself_only(owner: Any, hand: Any) -> None:
    assert use_sign_in_link(token=make_sign_in_link(hand=hand, person=hand)) == hand
    with pytest.raises(OwnerWasNeeded):
        make_sign_in_link(hand=hand, person=owner)
