"""The one way in which an act puts a row down: checked field by field, refused in words."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from functools import lru_cache
from typing import Any, TypeVar

from django.core.exceptions import ValidationError
from django.db import models

from spoolwright.shop.acts.refused import FieldWasRefused, HandWasNotOurs, OwnerWasNeeded, WordsWereMissing
from spoolwright.shop.records.people import ROLES, Person

Row = TypeVar("Row", bound=models.Model)


def our_hand(hand: Person | None) -> Person:
    """The person if it is one of ours, else a refusal."""
    if not isinstance(hand, Person) or hand.pk is None or not hand.is_active or hand.role not in ROLES:
        raise HandWasNotOurs
    return hand


def owners_hand(hand: Person | None, what: str) -> Person:
    if not our_hand(hand).is_owner:
        raise OwnerWasNeeded(what)
    return our_hand(hand)


def needed(text: str, field: str, what: str) -> str:
    """The text as typed, unless there is nothing in it."""
    if not text or not text.strip():
        raise WordsWereMissing(field, what)
    return text


def checked(row: Row) -> Row:
    """Refuse what the row's columns cannot hold, whichever database is behind it."""
    try:
        row.clean_fields(exclude=_foreign_keys(type(row)))
    except ValidationError as error:
        field, complaints = next(iter(error.message_dict.items()))
        raise FieldWasRefused(field, complaints) from error
    for field in row._meta.local_concrete_fields:
        _refuse_unwritable(field.name, getattr(row, field.attname))
    return row


def put(row: Row) -> Row:
    """Write one new row."""
    checked(row).save(force_insert=True)
    return row


def put_all(rows: Iterable[Row]) -> Sequence[Row]:
    """Write new rows of one table in one go."""
    found = [checked(row) for row in rows]
    return type(found[0])._default_manager.bulk_create(found) if found else []


@lru_cache
def _foreign_keys(model: type[models.Model]) -> tuple[str, ...]:
    # The database holds the foreign keys; asking for each target again would double the queries.
    return tuple(f.name for f in model._meta.local_concrete_fields if f.is_relation)


def _refuse_unwritable(field: str, value: Any) -> None:
    if isinstance(value, str) and any(c == "\x00" or "\ud800" <= c <= "\udfff" for c in value):
        raise FieldWasRefused(field, ["It holds a character that cannot be written down (a zero byte)."])
    if isinstance(value, float) and value != value or value in (float("inf"), float("-inf")):
        raise FieldWasRefused(field, ["A number is needed."])
