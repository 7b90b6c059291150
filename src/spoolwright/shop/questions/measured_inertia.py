"""The spool's moment of inertia as it was measured: in this visit, else earlier in the life of the reel."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Any

from spoolwright.bench.uncertainty import Measured
from spoolwright.shop.questions.kept_inertia import inertia_of
from spoolwright.shop.records.reading import ReadingValue
from spoolwright.shop.records.visit import Visit

KIND = "spool_inertia"


@dataclass(frozen=True)
class MeasuredInertia:
    """One result that stands: its method's id ("" where it was typed), whether the line was on, its entry."""

    measured: Measured
    method: str
    line_on: bool
    entry: Any
    this_visit: bool


def of_reel(visit: Visit) -> tuple[MeasuredInertia, ...]:
    """Every result that stands for this reel, newest first, those of this visit before all others."""
    rows = ReadingValue.objects.filter(
        kind=KIND, repeat=0, reading__entry__visit__reel=visit.reel_id, reading__entry__strike=None
    )
    asked = rows.select_related("reading__entry__author").order_by("-reading__entry__written_at", "-id")
    found = [_result(row, visit) for row in asked]
    return tuple(sorted(found, key=lambda one: not one.this_visit))


def latest(visit: Visit, *, line_on: bool) -> MeasuredInertia | None:
    """The newest result with the line on or off as asked: the two are not the same spool.

    With the line off an earlier visit's will do; with it on, only this visit's, because line comes and goes.
    """
    return next(_fitting(of_reel(visit), line_on), None)


def _fitting(found: Iterable[MeasuredInertia], line_on: bool) -> Iterator[MeasuredInertia]:
    return (one for one in found if one.line_on == line_on and (one.this_visit or not line_on))


def _result(row: ReadingValue, visit: Visit) -> MeasuredInertia:
    kept = inertia_of(row.reading)
    return MeasuredInertia(
        measured=Measured(row.value_si, row.standard_uncertainty_si or 0.0, row.dimension),
        method=kept.method if kept else "",
        line_on=row.reading.line == "on",
        entry=row.reading.entry,
        this_visit=row.reading.entry.visit_id == visit.pk,
    )
