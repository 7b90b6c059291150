"""One stay of one reel at the bench, and the place where it lies now."""

from __future__ import annotations

from django.db import models

from spoolwright.shop.records.parcel import Parcel
from spoolwright.shop.records.reel import Reel

PLACES = (
    "mat",
    "bath",
    "drying rack",
    "shelf",
    "asked shelf",
    "waits for a part",
    "jig",
    "line winder",
    "post table",
)


class Visit(models.Model):
    """`last_seq` and `version` are moved by the acts, under a lock on this row."""

    reel = models.ForeignKey(Reel, on_delete=models.PROTECT, related_name="visits")
    parcel = models.ForeignKey(Parcel, on_delete=models.PROTECT, null=True, blank=True, related_name="visits")
    tag = models.PositiveIntegerField(unique=True)
    place = models.CharField(max_length=20, choices=[(p, p) for p in PLACES], default="mat")
    place_since = models.DateTimeField()
    arrived_at = models.DateTimeField()
    sent_home_at = models.DateTimeField(null=True, blank=True)
    while_you_wait = models.BooleanField(default=False)
    needed_by = models.DateField(null=True, blank=True)
    promised_p50 = models.DateField(null=True, blank=True)
    promised_p90 = models.DateField(null=True, blank=True)
    return_of = models.ForeignKey(
        "self", on_delete=models.PROTECT, null=True, blank=True, related_name="returns"
    )
    last_seq = models.PositiveIntegerField(default=0)
    version = models.PositiveIntegerField(default=1)

    class Meta:
        constraints = [
            models.CheckConstraint(condition=models.Q(place__in=PLACES), name="shop_visit_place_known"),
            models.CheckConstraint(
                condition=models.Q(promised_p50__isnull=True)
                | models.Q(promised_p90__gte=models.F("promised_p50")),
                name="shop_visit_spread_in_order",
            ),
        ]

    @property
    def is_open(self) -> bool:
        return self.sent_home_at is None
