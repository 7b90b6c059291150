"""The first person is the owner; after that the owner gives hands; passwords are hashed and not easy."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.add_person import NameWasTaken, add_person
from spoolwright.shop.acts.change_person import LastOwnerWasLeaving, change_person
from spoolwright.shop.acts.refused import FieldWasRefused, HandWasNotOurs, OwnerWasNeeded
from spoolwright.shop.records.people import Person
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


def test_each_changes_herself_and_the_owner_anybody(owner: Any, hand: Any) -> None:
    changed = change_person(hand=hand, person=hand, units="imperial", look="dark", name="T. Kvie")
    assert (changed.units, changed.look, changed.shown) == ("imperial", "dark", "T. Kvie")
    with pytest.raises(OwnerWasNeeded):
        change_person(hand=hand, person=owner, look="dark")
    with pytest.raises(OwnerWasNeeded):
        change_person(hand=hand, person=hand, role="owner")
    with pytest.raises(FieldWasRefused, match="Accepted: name, units"):
        change_person(hand=owner, person=hand, is_superuser=True)
    with pytest.raises(FieldWasRefused):
        change_person(hand=owner, person=hand, units="furlongs")
    assert change_person(hand=owner, person=hand, role="owner").is_owner


def test_a_new_password_replaces_the_old_one(hand: Any) -> None:
    changed = change_person(hand=hand, person=hand, password="klippfisk-i-november")
    assert changed.check_password("klippfisk-i-november")
    assert not changed.check_password(people.PASSWORD)


def test_somebody_stays_the_owner(owner: Any) -> None:
    for change in ({"role": "bench"}, {"is_active": False}):
        with pytest.raises(LastOwnerWasLeaving):
            change_person(hand=owner, person=owner, **change)
    assert Person.objects.get().is_owner
