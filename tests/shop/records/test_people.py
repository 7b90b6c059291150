"""A person is shown by name, and the owner is known."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.records.people import Person

pytestmark = pytest.mark.django_db


def test_shown_by_the_best_name_there_is(owner: Any, hand: Any) -> None:
    assert (owner.shown, owner.is_owner, hand.is_owner) == ("Ingjerd Vannes", True, False)
    assert Person(username="t").shown == "t"
    assert Person(username="t", first_name="Torbal", last_name="Kvie").shown == "Torbal Kvie"
