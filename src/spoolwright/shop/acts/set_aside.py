"""Set a proof aside: the shop book leaves it out, for a reason that stays beside it."""

from __future__ import annotations

from django.db import transaction

from spoolwright.shop.acts import clock
from spoolwright.shop.acts.put import needed, our_hand, put
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.records.entry import Entry
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.set_aside import SetAside

TEACHES = ("reading", "work", "finding")
"""The kinds of entry that the book learns from."""


class EntryHadNothingToTeach(Refused):
    def __init__(self, kind: str) -> None:
        super().__init__(f"The book learns from {', '.join(TEACHES)}; this entry is a {kind}.")


class WasSetAsideAlready(Refused):
    def __init__(self, earlier: SetAside) -> None:
        super().__init__(f"{earlier.author.shown} has set this proof aside already: {earlier.reason}")


@transaction.atomic
def set_aside(*, hand: Person, entry: Entry, reason: str, coefficient: str = "") -> SetAside:
    """From one coefficient by its key, or from all of them where none is named."""
    our_hand(hand)
    if entry.kind not in TEACHES:
        raise EntryHadNothingToTeach(entry.kind)
    standing = SetAside.objects.filter(entry=entry, taken_back=None, coefficient__in=("", coefficient))
    if earlier := standing.select_related("author").first():
        raise WasSetAsideAlready(earlier)
    return put(
        SetAside(
            entry=entry,
            coefficient=coefficient,
            reason=needed(reason, "reason", "The reason"),
            author=hand,
            written_at=clock.now(),
        )
    )
