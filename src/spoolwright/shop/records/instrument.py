"""The shop's own instruments: what each can tell apart, its checks, and the studies made with it.

All in ink. What is known of an instrument stands in its versions: a change is a new version, and an
instrument that is put away gets a last one that says so.
"""

from __future__ import annotations

from django.db import models

from spoolwright.shop.records.attachment import Attachment
from spoolwright.shop.records.ink import Inked
from spoolwright.shop.records.people import Person


class Instrument(Inked):
    """One instrument on the shelf, under the mark that the shop has put on it."""

    mark = models.CharField(max_length=40, unique=True)
    kind = models.CharField(max_length=40)
    dimension = models.CharField(max_length=40)
    author = models.ForeignKey(Person, on_delete=models.PROTECT, related_name="+")
    written_at = models.DateTimeField()


class InstrumentVersion(Inked):
    """What is known of an instrument from one day on. SI throughout; an empty limit was not stated."""

    instrument = models.ForeignKey(Instrument, on_delete=models.PROTECT, related_name="versions")
    number = models.PositiveIntegerField()
    name = models.CharField(max_length=200)
    serial = models.CharField(max_length=100, blank=True)
    resolution_si = models.FloatField()
    limit_si = models.FloatField(null=True, blank=True)
    limit_share = models.FloatField(null=True, blank=True)
    range_low_si = models.FloatField(null=True, blank=True)
    range_high_si = models.FloatField(null=True, blank=True)
    retired = models.BooleanField(default=False)
    author = models.ForeignKey(Person, on_delete=models.PROTECT, related_name="+")
    written_at = models.DateTimeField()
    words = models.TextField(blank=True)

    class Meta:
        ordering = ["instrument_id", "number"]
        constraints = [
            models.UniqueConstraint(fields=["instrument", "number"], name="shop_instrument_version_once")
        ]


class InstrumentCheck(Inked):
    """An instrument held against something better known: what that should show, and what was found."""

    instrument = models.ForeignKey(Instrument, on_delete=models.PROTECT, related_name="checks")
    day = models.DateField()
    against = models.CharField(max_length=200)
    nominal_si = models.FloatField()
    found_si = models.FloatField()
    standard_uncertainty_si = models.FloatField()
    author = models.ForeignKey(Person, on_delete=models.PROTECT, related_name="+")
    written_at = models.DateTimeField()
    words = models.TextField(blank=True)

    class Meta:
        ordering = ["instrument_id", "day", "id"]


class GaugeStudy(Inked):
    """Several parts, measured several times by each of several people with one instrument."""

    instrument = models.ForeignKey(Instrument, on_delete=models.PROTECT, related_name="studies")
    what = models.CharField(max_length=200)
    dimension = models.CharField(max_length=40)
    day = models.DateField()
    tolerance_si = models.FloatField(null=True, blank=True)
    attachment = models.ForeignKey(
        Attachment, on_delete=models.PROTECT, null=True, blank=True, related_name="+"
    )
    author = models.ForeignKey(Person, on_delete=models.PROTECT, related_name="+")
    written_at = models.DateTimeField()
    words = models.TextField(blank=True)

    class Meta:
        ordering = ["instrument_id", "day", "id"]


class GaugeTrial(Inked):
    """One value of a study: which part, in whose hands, which try."""

    study = models.ForeignKey(GaugeStudy, on_delete=models.PROTECT, related_name="trials")
    part = models.CharField(max_length=60)
    person = models.CharField(max_length=60)
    trial = models.PositiveSmallIntegerField()
    value_si = models.FloatField()

    class Meta:
        ordering = ["study_id", "id"]
        constraints = [
            models.UniqueConstraint(fields=["study", "part", "person", "trial"], name="shop_gauge_trial_once")
        ]
