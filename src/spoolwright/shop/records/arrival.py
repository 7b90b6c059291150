"""Arrival: what was in the parcel, counted and weighed, and what the customer said."""

from __future__ import annotations

from datetime import datetime, timedelta

from django.db import models

from spoolwright.shop.records.customer import WATERS
from spoolwright.shop.records.entry import Entry
from spoolwright.shop.records.ink import Inked

LINE_WISHES = ("", "keep", "discard", "strip and respool")
CONTENTS = (
    "reel",
    "spare spool",
    "handle",
    "knob cap",
    "rod clamp and nuts",
    "bag, case or box",
    "tools and spare parts",
    "papers",
    "line",
    "cover",
    "customer's letter",
    "cash",
    "belongs to nobody",
)
"""The order of counting out onto the mat; common practice, no source."""

STRIP_WITHIN = timedelta(hours=48)


class Arrival(Inked):
    entry = models.OneToOneField(Entry, on_delete=models.PROTECT, related_name="arrival", primary_key=True)
    complaint = models.TextField(blank=True)
    water = models.CharField(max_length=10, blank=True, choices=[(w, w) for w in WATERS])
    under_water_at = models.DateTimeField(null=True, blank=True)
    last_opened = models.CharField(max_length=300, blank=True)
    line_wish = models.CharField(max_length=20, blank=True, choices=[(w, w) for w in LINE_WISHES])
    line_words = models.CharField(max_length=300, blank=True)
    old_parts_back = models.BooleanField(null=True, blank=True)
    up_to_minor = models.PositiveBigIntegerField(null=True, blank=True)
    used_value_minor = models.PositiveBigIntegerField(null=True, blank=True)
    send_back_to = models.TextField(blank=True)

    def must_not_be_turned(self, at: datetime) -> bool:
        """Under water less than two days ago: the handle must not be turned before the strip-down."""
        return self.under_water_at is not None and at - self.under_water_at < STRIP_WITHIN


class ArrivalContent(Inked):
    """One line of what was counted out onto the mat."""

    arrival = models.ForeignKey(Arrival, on_delete=models.PROTECT, related_name="contents")
    position = models.PositiveSmallIntegerField()
    what = models.CharField(max_length=100)
    count = models.PositiveSmallIntegerField(default=1)
    mass_kg = models.FloatField(null=True, blank=True)
    words = models.CharField(max_length=300, blank=True)

    class Meta:
        ordering = ["arrival_id", "position"]
