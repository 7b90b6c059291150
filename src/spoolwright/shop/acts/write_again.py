"""Write an entry again: the new one is written and the old one struck through, pointing at it, in one go."""

from __future__ import annotations

from collections.abc import Callable

from django.db import transaction

from spoolwright.shop.acts.open_diary import Written
from spoolwright.shop.acts.put import needed
from spoolwright.shop.acts.strike_entry import strike_entry
from spoolwright.shop.records.entry import Entry
from spoolwright.shop.records.people import Person


@transaction.atomic
def write_again(*, hand: Person, entry: Entry, reason: str, write: Callable[[], Written]) -> Written:
    """`write` writes the new entry; when it refuses, the old one stands as it stood."""
    needed(reason, "reason", "The reason")
    written = write()
    strike_entry(hand=hand, entry=entry, reason=reason, replaced_by=written.entry)
    return written
