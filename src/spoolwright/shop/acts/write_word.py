"""Write a plain word in the diary; also after the reel has gone home."""

from __future__ import annotations

from collections.abc import Sequence

from django.db import transaction

from spoolwright.shop.acts.open_diary import Attached, Beside, Written, open_diary
from spoolwright.shop.acts.put import needed
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.visit import Visit


@transaction.atomic
def write_word(
    *, hand: Person, visit: Visit, words: str, attached: Sequence[Attached] = (), seen: int | None = None
) -> Written:
    diary = open_diary(hand, visit, even_after_dispatch=True)
    return diary.write("word", Beside(needed(words, "words", "The word"), attached=attached, seen=seen))
