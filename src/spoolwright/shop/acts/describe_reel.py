"""Say which sheet describes a reel, once that is known."""

from __future__ import annotations

from django.db import transaction

from spoolwright.shop.acts.put import our_hand
from spoolwright.shop.acts.refused import SomeoneElseWroteFirst
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.reel import Reel
from spoolwright.shop.records.reel_sheet import SheetVersion


@transaction.atomic
def describe_reel(*, hand: Person, reel: Reel, sheet_version: SheetVersion, version: int) -> Reel:
    """`version` is the reel's version that was on the screen."""
    our_hand(hand)
    fresh = Reel.objects.select_for_update().get(pk=reel.pk)
    if fresh.version != version:
        raise SomeoneElseWroteFirst(fresh.described)
    fresh.sheet_version = sheet_version
    fresh.version += 1
    fresh.save(update_fields=["sheet_version", "version"])
    return fresh
