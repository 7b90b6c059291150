"""Numbers without gaps: one row a series, locked by the act that takes the next number."""

from __future__ import annotations

from django.db import models


class NumberSeries(models.Model):
    name = models.CharField(max_length=20, primary_key=True)
    next_number = models.PositiveIntegerField(default=1)
