"""Each changes herself, the owner anybody, and somebody stays the owner."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.change_person import LastOwnerWasLeaving, change_person
from spoolwright.shop.acts.refused import FieldWasRefused, OwnerWasNeeded
from spoolwright.shop.records.people import Person
from tests import people
from tests.shop.at_once import at_once


@pytest.mark.django_db
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


@pytest.mark.django_db
def test_a_new_password_replaces_the_old_one(hand: Any) -> None:
    changed = change_person(hand=hand, person=hand, password="klippfisk-i-november")
    assert changed.check_password("klippfisk-i-november")
    assert not changed.check_password(people.PASSWORD)


@pytest.mark.django_db
def test_somebody_stays_the_owner(owner: Any) -> None:
    for change in ({"role": "bench"}, {"is_active": False}):
        with pytest.raises(LastOwnerWasLeaving):
            change_person(hand=owner, person=owner, **change)
    assert Person.objects.get().is_owner


def test_of_two_owners_who_step_down_at_once_one_stays(own_database: None) -> None:
    first, second = people.owner(), people.bench_hand()
    change_person(hand=first, person=second, role="owner")
    both = [first, Person.objects.get(pk=second.pk)]
    at_once([lambda p=person: change_person(hand=p, person=p, role="bench") for person in both])
    assert Person.objects.filter(role="owner").count() == 1
