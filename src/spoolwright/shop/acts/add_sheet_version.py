"""Add a reel sheet, or a further version of one. Every version stays as it was written."""

from __future__ import annotations

import hashlib

from django.db import transaction

from spoolwright.sheets import reel_sheet
from spoolwright.sheets.reel_sheet import SheetFault
from spoolwright.shop.acts import clock
from spoolwright.shop.acts.make_findable import make_findable
from spoolwright.shop.acts.put import our_hand, put
from spoolwright.shop.acts.refused import Refused, SomeoneElseWroteFirst
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.reel_sheet import Sheet, SheetVersion


class SheetWasFaulty(Refused):
    """The text is not a reel sheet; `faults` say where, what, and what is accepted."""

    def __init__(self, fault: SheetFault) -> None:
        super().__init__(str(fault), "toml")
        self.faults = fault.faults


@transaction.atomic
def add_sheet_version(*, hand: Person, toml: str, after: int | None = None, words: str = "") -> SheetVersion:
    """`after` is the number of the version that was on the screen; the slug in the text names the sheet.

    The same text again changes nothing and gives back the version that stands.
    """
    our_hand(hand)
    read = _read(toml)
    sheet, _ = Sheet.objects.get_or_create(
        slug=read.reel.slug,
        defaults={"maker": read.reel.maker, "model": read.reel.model, "kind": read.reel.kind},
    )
    Sheet.objects.select_for_update().get(pk=sheet.pk)
    last = sheet.versions.order_by("-number").first()
    digest = hashlib.sha256(toml.encode()).hexdigest()
    if last and last.sha256 == digest:
        return last
    if after is not None and last and last.number != after:
        raise SomeoneElseWroteFirst(f"The sheet {sheet.shown}")
    make_findable(kind="sheet", ref=sheet.pk, title=sheet.shown, words=[sheet.slug, sheet.kind])
    return put(
        SheetVersion(
            sheet=sheet,
            number=last.number + 1 if last else 1,
            toml=toml,
            sha256=digest,
            author=hand,
            written_at=clock.now(),
            words=words,
        )
    )


def _read(toml: str) -> reel_sheet.ReelSheet:
    try:
        return reel_sheet.read(toml)
    except SheetFault as fault:
        raise SheetWasFaulty(fault) from fault
