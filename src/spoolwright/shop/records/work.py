"""Work in ink: what was done, with which parts and lubricants, in how many minutes."""

from __future__ import annotations

from django.db import models

from spoolwright.shop.records.entry import Entry
from spoolwright.shop.records.ink import Inked

PART_SOURCES = ("new", "used", "own-made")


class Work(Inked):
    """`left_over` names what lay on the mat at the end; empty means none."""

    entry = models.OneToOneField(Entry, on_delete=models.PROTECT, related_name="work", primary_key=True)
    minutes = models.PositiveIntegerField()
    left_over = models.CharField(max_length=300, blank=True)


class WorkDone(Inked):
    work = models.ForeignKey(Work, on_delete=models.PROTECT, related_name="done")
    position = models.PositiveSmallIntegerField()
    key = models.CharField(max_length=60)
    title = models.CharField(max_length=200)

    class Meta:
        ordering = ["work_id", "position"]


class PartFitted(Inked):
    """`made_from` says what an own-made part was made of, such as the wire and its size."""

    work = models.ForeignKey(Work, on_delete=models.PROTECT, related_name="parts")
    position = models.PositiveSmallIntegerField()
    what = models.CharField(max_length=200)
    count = models.PositiveSmallIntegerField(default=1)
    source = models.CharField(max_length=10, choices=[(s, s) for s in PART_SOURCES])
    made_from = models.CharField(max_length=200, blank=True)

    class Meta:
        ordering = ["work_id", "position"]


class LubricantUsed(Inked):
    work = models.ForeignKey(Work, on_delete=models.PROTECT, related_name="lubricants")
    position = models.PositiveSmallIntegerField()
    point = models.CharField(max_length=200)
    lubricant = models.CharField(max_length=100)
    amount = models.CharField(max_length=60, blank=True)
    lot = models.CharField(max_length=60, blank=True)

    class Meta:
        ordering = ["work_id", "position"]
