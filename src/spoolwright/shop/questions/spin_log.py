"""The shop's own spins: every free-spin time in the records, with the kind of bearing that turned then."""

from __future__ import annotations

from collections.abc import Iterable

from django.db.models import Min

from spoolwright.bench.spin_log import Spin
from spoolwright.judgement.changed_sheet import changed
from spoolwright.judgement.free_spin import spool_bearings
from spoolwright.judgement.works import all_works
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.shop.questions import reel_sheets
from spoolwright.shop.records.reading import Reading
from spoolwright.shop.records.work import Work, WorkDone

KINDS = ("spin_time", "stop_time")
BEARINGS = "sheet.bearings.spool."
"""How the effects begin of works that fit other spool bearings, or open their shields."""


def own_spins() -> tuple[Spin, ...]:
    """Spins with line and brakes off after work was done, of reels whose sheet names the spool's bearings.

    As they came in, dirt and old oil would be compared and not bearings. A kind is the sheet's, changed by
    the works that were done on the reel before the spin. Where three tries were written, each is a spin.
    """
    readings = Reading.objects.filter(
        entry__strike=None, line="off", brakes__in=("off", "none"), values__kind__in=KINDS
    )
    readings = readings.exclude(entry__visit__reel__sheet_version=None).distinct()
    rows = readings.select_related("entry__visit__reel__sheet_version").prefetch_related("values")
    sheets: dict[int, ReelSheet] = {}
    works, worked = _works(), _worked()
    after = (
        row for row in rows.order_by("pk") if row.entry_id > worked.get(row.entry.visit_id, row.entry_id)
    )
    return tuple(spin for row in after for spin in _spins(row, sheets, works))


def _worked() -> dict[int, int]:
    """The first entry of work that stands, by visit."""
    rows = Work.objects.filter(entry__strike=None).values_list("entry__visit_id")
    return dict(rows.annotate(first=Min("entry_id")))


def _works() -> dict[int, list[tuple[int, str]]]:
    """Works that change spool bearings, by reel: the number of the entry and the work's id."""
    keys = [
        key
        for key, work in all_works().items()
        if any(effect.on.startswith(BEARINGS) for effect in work.effects)
    ]
    done = WorkDone.objects.filter(key__in=keys, work__entry__strike=None).order_by("work__entry__pk")
    found: dict[int, list[tuple[int, str]]] = {}
    for reel, entry, key in done.values_list("work__entry__visit__reel_id", "work__entry__pk", "key"):
        found.setdefault(reel, []).append((entry, key))
    return found


def _spins(
    row: Reading, sheets: dict[int, ReelSheet], works: dict[int, list[tuple[int, str]]]
) -> Iterable[Spin]:
    reel = row.entry.visit.reel
    version = reel.sheet_version
    if version is None:
        return
    if version.pk not in sheets:
        sheets[version.pk] = reel_sheets.read(version)
    before = [all_works()[key] for entry, key in works.get(reel.pk, []) if entry < row.entry_id]
    kind = _kind(changed(sheets[version.pk], before) if before else sheets[version.pk])
    if not kind:
        return
    values = [value for value in row.values.all() if value.kind in KINDS]
    tries = [value for value in values if value.repeat] or values
    for value in tries:
        if value.value_si > 0:
            yield Spin(kind, str(reel.pk), "", value.value_si)


def _kind(sheet: ReelSheet) -> str:
    return " and ".join(sorted({bearing.kind for bearing in spool_bearings(sheet)}))
