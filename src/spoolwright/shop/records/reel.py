"""One reel: whose it is, which sheet describes it, and how to tell it from its twin."""

from __future__ import annotations

from django.db import models

from spoolwright.shop.records.customer import Customer
from spoolwright.shop.records.ink import Inked
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.reel_sheet import SheetVersion

MARK_KINDS = ("serial", "stamp under the foot", "twin mark", "engraving", "mass without line", "other")

HANDS = ("right", "left", "either")


class Reel(models.Model):
    customer = models.ForeignKey(Customer, on_delete=models.PROTECT, related_name="reels")
    sheet_version = models.ForeignKey(
        SheetVersion, on_delete=models.PROTECT, null=True, blank=True, related_name="reels"
    )
    described = models.CharField(max_length=200)
    winding_hand = models.CharField(max_length=10, blank=True, choices=[(h, h) for h in HANDS])
    added_by = models.ForeignKey(Person, on_delete=models.PROTECT, related_name="+")
    added_at = models.DateTimeField()
    version = models.PositiveIntegerField(default=1)


class IdentityMark(Inked):
    """Something by which this reel is known again. Marks are added, never changed."""

    reel = models.ForeignKey(Reel, on_delete=models.PROTECT, related_name="marks")
    kind = models.CharField(max_length=30, choices=[(k, k) for k in MARK_KINDS])
    words = models.CharField(max_length=300)
    author = models.ForeignKey(Person, on_delete=models.PROTECT, related_name="+")
    written_at = models.DateTimeField()
