"""The pull traces of several entries at once: the small marks by which reels are known at a glance."""

from __future__ import annotations

from collections.abc import Iterable

from spoolwright.shop.questions.signals import KeptPull, pull_of
from spoolwright.shop.records.reading import Reading


def pulls_of_entries(entries: Iterable[int | None]) -> dict[int, KeptPull]:
    """The pull that was kept with each of these entries, by entry, in one query; others are left out."""
    wanted = [entry for entry in entries if entry is not None]
    found = ((reading.pk, pull_of(reading)) for reading in Reading.objects.filter(pk__in=wanted))
    return {entry: pull for entry, pull in found if pull is not None}
