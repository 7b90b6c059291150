"""The people with a hand in the diary."""

from __future__ import annotations

from spoolwright.shop.records.people import Person


def people() -> tuple[Person, ...]:
    return tuple(Person.objects.order_by("-role", "username"))


def person(username: str) -> Person | None:
    return Person.objects.filter(username=username).first()


def anybody_here() -> bool:
    return Person.objects.exists()
