"""The customer: who owns the reel and where it goes home to."""

from __future__ import annotations

from django.db import models

from spoolwright.shop.records.people import Person

WATERS = ("", "fresh", "brackish", "salt")


class Customer(models.Model):
    name = models.CharField(max_length=200)
    address = models.TextField(blank=True)
    email = models.CharField(max_length=254, blank=True)
    telephone = models.CharField(max_length=60, blank=True)
    water = models.CharField(max_length=10, blank=True, choices=[(w, w) for w in WATERS])
    note = models.TextField(blank=True)
    added_by = models.ForeignKey(Person, on_delete=models.PROTECT, related_name="+")
    added_at = models.DateTimeField()
    version = models.PositiveIntegerField(default=1)
