"""A finding: a part, what is wrong with it, and how that is known."""

from __future__ import annotations

from django.db import models

from spoolwright.shop.records.entry import Entry
from spoolwright.shop.records.ink import Inked


class Finding(Inked):
    """`fault` is a row of the fault table (F01 to F70) or empty; `touched` is the part on the drawing."""

    entry = models.OneToOneField(Entry, on_delete=models.PROTECT, related_name="finding", primary_key=True)
    part = models.CharField(max_length=200)
    fault = models.CharField(max_length=3, blank=True)
    evidence = models.TextField()
    touched = models.CharField(max_length=100, blank=True)
