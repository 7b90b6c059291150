"""Change how a person works here: name, units, look, password; the owner also changes who may do what."""

from __future__ import annotations

from typing import Any

from django.db import transaction
from django.db.models import Q

from spoolwright.shop.acts.add_person import give_password
from spoolwright.shop.acts.put import checked, our_hand, owners_hand
from spoolwright.shop.acts.refused import FieldWasRefused, Refused
from spoolwright.shop.records.people import Person

_OWN = ("name", "units", "look", "password")
_OWNERS = ("role", "is_active")


class LastOwnerWasLeaving(Refused):
    def __init__(self) -> None:
        super().__init__("Somebody has to be the owner: make another person the owner first.", "role")


@transaction.atomic
def change_person(*, hand: Person, person: Person, **changes: Any) -> Person:
    """Each person changes herself; the owner may change anybody."""
    if unknown := set(changes) - {*_OWN, *_OWNERS}:
        raise FieldWasRefused(min(unknown), [f"Accepted: {', '.join((*_OWN, *_OWNERS))}."])
    if our_hand(hand).pk != person.pk or set(changes) & set(_OWNERS):
        owners_hand(hand, "changes what others may do")
    # All owners are locked with her: two who step down at once would leave nobody.
    locked = Person.objects.select_for_update().filter(Q(pk=person.pk) | Q(role="owner")).in_bulk()
    fresh = locked[person.pk]
    if "password" in changes:
        give_password(fresh, changes.pop("password"))
    for field, value in changes.items():
        setattr(fresh, field, value)
    checked(fresh).save()
    if not Person.objects.filter(role="owner", is_active=True).exists():
        raise LastOwnerWasLeaving
    return fresh
