"""Add an identity mark to a reel: a serial, a stamp, a scratch by which it is known again."""

from __future__ import annotations

from django.db import transaction

from spoolwright.shop.acts import add_reel, clock
from spoolwright.shop.acts.put import needed, our_hand, put
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.reel import IdentityMark, Reel


@transaction.atomic
def mark_reel(*, hand: Person, reel: Reel, kind: str, words: str) -> IdentityMark:
    mark = put(
        IdentityMark(
            reel=reel,
            kind=kind,
            words=needed(words, "words", "The mark"),
            author=our_hand(hand),
            written_at=clock.now(),
        )
    )
    add_reel.let_search_find(reel)
    return mark
