"""The three people of every test: the owner, a bench hand, and a stranger who is nobody here."""

from __future__ import annotations

from django.contrib.auth.models import AnonymousUser

from spoolwright.shop.acts.add_person import add_person
from spoolwright.shop.questions.people import person
from spoolwright.shop.records.people import Person

PASSWORD = "sild-og-poteter"


def owner() -> Person:
    return person("ingjerd") or add_person(
        hand=None, username="ingjerd", name="Ingjerd Vannes", password=PASSWORD
    )


def bench_hand() -> Person:
    return person("torbal") or add_person(
        hand=owner(), username="torbal", name="Torbal Kvie", role="bench", password=PASSWORD
    )


def stranger() -> AnonymousUser:
    return AnonymousUser()
