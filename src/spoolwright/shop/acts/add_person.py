"""Give somebody a hand in the diary. Only the owner does; the very first person makes herself the owner."""

from __future__ import annotations

from django.contrib.auth.password_validation import validate_password
from django.core.exceptions import ValidationError
from django.db import transaction

from spoolwright.shop.acts.put import needed, owners_hand, put
from spoolwright.shop.acts.refused import FieldWasRefused, Refused
from spoolwright.shop.records.people import Person


class NameWasTaken(Refused):
    def __init__(self, username: str) -> None:
        super().__init__(f"Somebody signs in as {username} already. Choose another name.", "username")


@transaction.atomic
def add_person(
    *,
    hand: Person | None,
    username: str,
    name: str = "",
    role: str = "bench",
    password: str | None = None,
    units: str = "metric",
) -> Person:
    """Without a password this person comes in by a link. `hand` None: only while the shop has nobody."""
    if hand is not None or Person.objects.exists():
        owners_hand(hand, "gives somebody a hand in the diary")
    else:
        role = "owner"
    if Person.objects.filter(
        username__iexact=needed(username, "username", "The name to sign in with")
    ).exists():
        raise NameWasTaken(username)
    person = Person(username=username, name=name, role=role, units=units)
    give_password(person, password)
    return put(person)


def give_password(person: Person, password: str | None) -> None:
    """Hash it in, refused where it is too easy to guess."""
    if password is None:
        person.set_unusable_password()
        return
    try:
        validate_password(password, person)
    except ValidationError as error:
        raise FieldWasRefused("password", error.messages) from error
    person.set_password(password)
