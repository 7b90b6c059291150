"""Take back a setting aside: the proof counts in the shop book again."""

from __future__ import annotations

from django.db import transaction

from spoolwright.shop.acts import clock
from spoolwright.shop.acts.put import our_hand, put
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.set_aside import SetAside, TakenBack


class WasTakenBackAlready(Refused):
    def __init__(self, earlier: TakenBack) -> None:
        super().__init__(f"{earlier.author.shown} has taken this back already.")


@transaction.atomic
def take_back(*, hand: Person, set_aside: SetAside, words: str = "") -> TakenBack:
    our_hand(hand)
    if earlier := TakenBack.objects.filter(set_aside=set_aside.pk).select_related("author").first():
        raise WasTakenBackAlready(earlier)
    return put(TakenBack(set_aside=set_aside, author=hand, written_at=clock.now(), words=words))
