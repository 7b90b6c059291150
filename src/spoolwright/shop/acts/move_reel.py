"""Move a reel to another place. Two hands that carry it at once: the second is told."""

from __future__ import annotations

from django.db import transaction

from spoolwright.shop.acts.open_diary import Beside, Written, open_diary
from spoolwright.shop.acts.put import needed
from spoolwright.shop.acts.refused import SomeoneElseWroteFirst
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.visit import Visit


@transaction.atomic
def move_reel(
    *, hand: Person, visit: Visit, to: str, version: int, words: str = "", seen: int | None = None
) -> Written:
    """`version` is the visit's version that the hand saw when it decided to carry the reel."""
    diary = open_diary(hand, visit)
    if diary.visit.version != version:
        raise SomeoneElseWroteFirst(f"The place of reel {diary.visit.tag} (now: {diary.visit.place})")
    return diary.write("word", Beside(words, needed(to, "moved_to", "The place"), seen=seen))
