"""The first person is the owner; after that the owner gives hands; passwords are hashed and not easy."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.add_person import NameWasTaken, add_person
from spoolwright.shop.acts.refused import FieldWasRefused, HandWasNotOurs, OwnerWasNeeded
from tests import people

pytestmark = pytest.mark.django_db


def test_the_first_is_the_owner_whatever_was_asked() -> None:
    assert add_person(hand=None, username="ingjerd", role="bench").is_owner
    with pytest.raises(HandWasNotOurs):
        add_person(hand=None, username="second", role="owner")


def test_only_the_owner_gives_hands(owner: Any, hand: Any) -> None:
    assert not hand.is_owner
    with pytest.raises(OwnerWasNeeded):
        add_person(hand=hand, username="third")
    with pytest.raises(HandWasNotOurs):
        add_person(hand=people.stranger(), username="third")


def test_a_name_is_taken_once(owner: Any, hand: Any) -> None:
    with pytest.raises(NameWasTaken):
        add_person(hand=owner, username="Torbal")


def test_passwords_are_hashed_by_the_framework_and_not_easy(owner: Any) -> None:
    assert owner.check_password(people.PASSWORD)
    assert people.PASSWORD not in owner.password
    for easy in ("short", "1234567890123", "password123"):
        with pytest.raises(FieldWasRefused) as told:
            add_person(hand=owner, username="new", password=easy)
        assert told.value.field == "password"


def test_without_a_password_only_a_link_opens(owner: Any) -> None:
    assert not add_person(hand=owner, username="new").has_usable_password()
