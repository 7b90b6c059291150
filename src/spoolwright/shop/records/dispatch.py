"""Dispatch: how the reel went home. The weight of the closed parcel is evidence."""

from __future__ import annotations

from django.db import models

from spoolwright.shop.records.entry import Entry
from spoolwright.shop.records.ink import Inked

WAYS_HOME = ("post", "fetched", "delivered")


class Dispatch(Inked):
    entry = models.OneToOneField(Entry, on_delete=models.PROTECT, related_name="dispatch", primary_key=True)
    went_by = models.CharField(max_length=20, choices=[(w, w) for w in WAYS_HOME])
    carrier = models.CharField(max_length=100, blank=True)
    carrier_number = models.CharField(max_length=100, blank=True)
    mass_kg = models.FloatField(null=True, blank=True)
    insured_minor = models.PositiveBigIntegerField(null=True, blank=True)
    sent_to = models.TextField(blank=True)
    enclosed = models.JSONField(default=list, blank=True)
