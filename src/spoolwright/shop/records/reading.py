"""A reading: values with their uncertainty, how they were taken, and their conditions."""

from __future__ import annotations

from typing import Any

from django.db import models

from spoolwright.shop.records.attachment import Attachment
from spoolwright.shop.records.entry import Entry
from spoolwright.shop.records.ink import Inked
from spoolwright.shop.records.instrument import Instrument

WAYS = (
    "typed",
    "pull trace",
    "spin-down",
    "pull series",
    "inertia",
    "bearing noise",
    "gear noise",
    "by hand",
)
CONDITION_COLUMNS = {
    "line": "line",
    "radius": "radius_m",
    "brakes": "brakes",
    "temperature": "temperature_k",
    "pull_number": "pull_number",
    "pulls_of": "pulls_of",
    "star_turns": "star_turns",
    "lubricant_state": "lubricant_state",
    "anti_reverse_cold": "anti_reverse_cold",
    "place_measured": "place_measured",
}
"""From the key of a condition to the column that holds it."""


class Reading(Inked):
    entry = models.OneToOneField(Entry, on_delete=models.PROTECT, related_name="reading", primary_key=True)
    way = models.CharField(max_length=20, choices=[(w, w) for w in WAYS])
    line = models.CharField(max_length=3, blank=True, choices=[("on", "on"), ("off", "off")])
    radius_m = models.FloatField(null=True, blank=True)
    brakes = models.CharField(
        max_length=4, blank=True, choices=[("on", "on"), ("off", "off"), ("none", "none")]
    )
    temperature_k = models.FloatField(null=True, blank=True)
    pull_number = models.PositiveSmallIntegerField(null=True, blank=True)
    pulls_of = models.PositiveSmallIntegerField(null=True, blank=True)
    star_turns = models.FloatField(null=True, blank=True)
    lubricant_state = models.CharField(max_length=100, blank=True)
    anti_reverse_cold = models.BooleanField(null=True, blank=True)
    place_measured = models.CharField(max_length=100, blank=True)
    analysis = models.JSONField(default=dict, blank=True)
    attachment = models.ForeignKey(
        Attachment, on_delete=models.PROTECT, null=True, blank=True, related_name="readings"
    )
    instrument = models.ForeignKey(
        Instrument, on_delete=models.PROTECT, null=True, blank=True, related_name="readings"
    )

    @property
    def conditions(self) -> dict[str, Any]:
        """The conditions that were written down, by key, SI."""
        held = {key: getattr(self, column) for key, column in CONDITION_COLUMNS.items()}
        return {key: value for key, value in held.items() if value not in (None, "")}


class ReadingValue(Inked):
    """One value of a reading. Repeat 0 is the result; 1, 2, 3 are the single tries behind it."""

    reading = models.ForeignKey(Reading, on_delete=models.PROTECT, related_name="values")
    kind = models.CharField(max_length=40)
    repeat = models.PositiveSmallIntegerField(default=0)
    value_si = models.FloatField()
    standard_uncertainty_si = models.FloatField(null=True, blank=True)
    dimension = models.CharField(max_length=40)
    typed_text = models.CharField(max_length=300, blank=True)

    class Meta:
        ordering = ["reading_id", "id"]
        constraints = [
            models.UniqueConstraint(fields=["reading", "kind", "repeat"], name="shop_reading_value_once"),
            models.CheckConstraint(
                condition=models.Q(repeat__gt=0) | models.Q(standard_uncertainty_si__isnull=False),
                name="shop_reading_result_has_uncertainty",
            ),
        ]
