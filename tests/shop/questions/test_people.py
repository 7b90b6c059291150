"""The people with a hand in the diary."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.questions import people

pytestmark = pytest.mark.django_db


def test_people(owner: Any, hand: Any) -> None:
    assert people.people() == (owner, hand)
    assert people.person("torbal") == hand
    assert people.person("nobody") is None
    assert people.anybody_here()
