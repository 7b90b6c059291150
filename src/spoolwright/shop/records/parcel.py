"""The envelope: what came through the door together. Its reels each have a number of their own."""

from __future__ import annotations

from django.db import models

from spoolwright.shop.records.customer import Customer
from spoolwright.shop.records.people import Person

WAYS_IN = ("post", "walk-in", "collected", "club evening")


class Parcel(models.Model):
    number = models.PositiveIntegerField(unique=True)
    customer = models.ForeignKey(Customer, on_delete=models.PROTECT, related_name="parcels")
    came_by = models.CharField(max_length=20, choices=[(w, w) for w in WAYS_IN])
    carrier = models.CharField(max_length=100, blank=True)
    carrier_number = models.CharField(max_length=100, blank=True)
    mass_kg = models.FloatField(null=True, blank=True)
    outer_damage = models.TextField(blank=True)
    opened_by = models.ForeignKey(Person, on_delete=models.PROTECT, related_name="+")
    opened_at = models.DateTimeField()
