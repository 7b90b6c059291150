"""Entries: the blocks of a diary. Written in ink; struck through with a reason, never changed."""

from __future__ import annotations

from django.db import models

from spoolwright.shop.records.ink import Inked
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.visit import PLACES, Visit

ENTRY_KINDS = (
    "arrival",
    "reading",
    "finding",
    "quote",
    "answer",
    "work",
    "proof",
    "invoice",
    "dispatch",
    "word",
)


class Entry(Inked):
    """What all entries share. The typed part of each kind is a row of its own that points here."""

    visit = models.ForeignKey(Visit, on_delete=models.PROTECT, related_name="entries")
    seq = models.PositiveIntegerField()
    kind = models.CharField(max_length=10, choices=[(k, k) for k in ENTRY_KINDS])
    author = models.ForeignKey(Person, on_delete=models.PROTECT, related_name="entries")
    written_at = models.DateTimeField()
    moved_to = models.CharField(max_length=20, blank=True, choices=[(p, p) for p in PLACES])
    words = models.TextField(blank=True)

    class Meta:
        ordering = ["visit_id", "seq"]
        constraints = [
            models.UniqueConstraint(fields=["visit", "seq"], name="shop_entry_seq_once"),
            models.CheckConstraint(condition=models.Q(kind__in=ENTRY_KINDS), name="shop_entry_kind_known"),
            models.CheckConstraint(
                condition=models.Q(moved_to__in=("", *PLACES)), name="shop_entry_place_known"
            ),
        ]


class Strike(Inked):
    """A line through an entry: who drew it, why, and what was written instead."""

    entry = models.OneToOneField(Entry, on_delete=models.PROTECT, related_name="strike", primary_key=True)
    reason = models.TextField()
    author = models.ForeignKey(Person, on_delete=models.PROTECT, related_name="+")
    written_at = models.DateTimeField()
    replaced_by = models.ForeignKey(
        Entry, on_delete=models.PROTECT, null=True, blank=True, related_name="replaces"
    )

    class Meta:
        constraints = [
            models.CheckConstraint(condition=~models.Q(reason=""), name="shop_strike_has_reason"),
        ]
