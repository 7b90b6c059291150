"""Write down a reel: whose it is, which sheet describes it, by what it is known again."""

from __future__ import annotations

from dataclasses import dataclass

from django.db import transaction
from django.db.models import Q

from spoolwright.shop.acts import clock
from spoolwright.shop.acts.make_findable import make_findable
from spoolwright.shop.acts.put import needed, our_hand, put, put_all
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.records.customer import Customer
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.reel import IdentityMark, Reel
from spoolwright.shop.records.reel_sheet import SheetVersion


class TwinWasNotMarked(Refused):
    """Two reels of one model from one customer look alike until somebody marks one of them."""

    def __init__(self, twin: Reel) -> None:
        super().__init__(
            f"{twin.customer.name} has another {twin.described} with us. Give this one a visible difference "
            "before it is opened (a dot of removable paint under the foot) and write down which.",
            "twin_mark",
        )
        self.twin = twin


@dataclass(frozen=True)
class NewReel:
    """A reel that the shop does not know yet: what stands on it ("Tarvak 58R"), or the sheet that says it.

    `marks` are pairs of kind and words.
    """

    described: str = ""
    sheet_version: SheetVersion | None = None
    winding_hand: str = ""
    serial: str = ""
    twin_mark: str = ""
    marks: tuple[tuple[str, str], ...] = ()


@transaction.atomic
def add_reel(*, hand: Person, customer: Customer, reel: NewReel) -> Reel:
    """Refused while a twin of it from the same customer could be mistaken for it."""
    our_hand(hand)
    Customer.objects.select_for_update().get(pk=customer.pk)
    words = reel.described or (reel.sheet_version.sheet.shown if reel.sheet_version else "")
    added = Reel(
        customer=customer,
        sheet_version=reel.sheet_version,
        described=needed(words, "described", "What the reel is"),
        winding_hand=reel.winding_hand,
        added_by=hand,
        added_at=clock.now(),
    )
    _refuse_unmarked_twin(added, reel.twin_mark)
    put(added)
    every = [("serial", reel.serial), ("twin mark", reel.twin_mark), *reel.marks]
    put_all(
        IdentityMark(reel=added, kind=kind, words=text, author=hand, written_at=clock.now())
        for kind, text in every
        if text
    )
    let_search_find(added)
    return added


def let_search_find(reel: Reel) -> None:
    marks = [mark.words for mark in reel.marks.order_by("id")]
    make_findable(kind="reel", ref=reel.pk, title=f"{reel.described}, {reel.customer.name}", words=marks)


def _refuse_unmarked_twin(reel: Reel, twin_mark: str) -> None:
    same = Q(described__iexact=reel.described)
    if reel.sheet_version:
        same |= Q(sheet_version__sheet=reel.sheet_version.sheet_id)
    twins = Reel.objects.filter(same, customer=reel.customer).prefetch_related("marks")
    for twin in twins.select_related("customer"):
        worn = {m.words.strip().casefold() for m in twin.marks.all() if m.kind == "twin mark"}
        if not twin_mark.strip() or twin_mark.strip().casefold() in worn:
            raise TwinWasNotMarked(twin)
