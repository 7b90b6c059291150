"""What the shop book leaves out: a proof set aside with a reason, and the taking back of it, both in ink."""

from __future__ import annotations

from django.db import models

from spoolwright.shop.records.entry import Entry
from spoolwright.shop.records.ink import Inked
from spoolwright.shop.records.people import Person


class SetAside(Inked):
    """`entry` is the block of a diary that the book read; `coefficient` its key, empty for all of them."""

    entry = models.ForeignKey(Entry, on_delete=models.PROTECT, related_name="set_aside")
    coefficient = models.CharField(max_length=200, blank=True)
    reason = models.TextField()
    author = models.ForeignKey(Person, on_delete=models.PROTECT, related_name="+")
    written_at = models.DateTimeField()

    class Meta:
        ordering = ["id"]
        constraints = [
            models.CheckConstraint(condition=~models.Q(reason=""), name="shop_set_aside_has_reason"),
        ]


class TakenBack(Inked):
    """A proof that was set aside counts again; who says so, when, and in which words."""

    set_aside = models.OneToOneField(
        SetAside, on_delete=models.PROTECT, related_name="taken_back", primary_key=True
    )
    author = models.ForeignKey(Person, on_delete=models.PROTECT, related_name="+")
    written_at = models.DateTimeField()
    words = models.TextField(blank=True)
