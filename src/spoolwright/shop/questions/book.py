"""The shop book, gathered from what stands in the diaries: proofs, works with their minutes, findings.

A visit speaks through the last proof that stands in it: the reel as it went home. What is gathered is plain
rows; what is reckoned from them is kept in this process for as long as the rows are the same.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import Any

from django.db import connection
from django.db.models import Count, Max, Sum

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement import book_evidence
from spoolwright.judgement.book_evidence import PULLS, SPINS, Learnt, Source
from spoolwright.judgement.book_kinds import Kind, friction_kinds, start_kind
from spoolwright.judgement.book_lessons import NOTHING_LEARNED, Lessons, bearing_kind_of
from spoolwright.judgement.book_rates import rates
from spoolwright.judgement.reel_state import as_built
from spoolwright.judgement.shop_book import Aside, ShopBook, bind
from spoolwright.judgement.taken import Condition, Taken
from spoolwright.judgement.works import all_works
from spoolwright.sheets import reel_sheet
from spoolwright.sheets.faults import faults
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.shop.questions.reel_sheets import newest_versions
from spoolwright.shop.records.entry import Entry, Strike
from spoolwright.shop.records.finding import Finding
from spoolwright.shop.records.proof import ProofRow
from spoolwright.shop.records.reading import CONDITION_COLUMNS, ReadingValue
from spoolwright.shop.records.reel import Reel
from spoolwright.shop.records.reel_sheet import SheetVersion
from spoolwright.shop.records.set_aside import SetAside, TakenBack
from spoolwright.shop.records.work import Work, WorkDone

TEACHES = (*PULLS, *SPINS, "start_up_ratio")


@dataclass(frozen=True)
class ReadingRow:
    """A reading of a proof, with the works that were done before it."""

    toml: str
    works: tuple[str, ...]
    kind: str
    value: float
    uncertainty: float
    dimension: str
    conditions: tuple[tuple[str, Condition], ...]
    start_speed: float | None
    source: Source


@dataclass(frozen=True)
class WorkRow:
    """The works of one entry and the minutes that they took together."""

    reel: str
    works: tuple[str, ...]
    minutes: int
    source: Source


@dataclass(frozen=True)
class FaultCount:
    """Reels that were looked into, by kind; and on how many of them each fault was found."""

    reels: tuple[tuple[str, int], ...]
    found: tuple[tuple[tuple[str, str], int], ...]


def shop_book() -> ShopBook:
    """Every coefficient as the shop's proofs have it today."""
    return _gathered(_stamp())


@lru_cache(maxsize=8)
def _gathered(_: tuple[Any, ...]) -> ShopBook:
    aside = tuple(Aside(row.entry_id, row.coefficient, row.reason) for row in standing_aside())
    works = tuple(_works())
    rows = tuple(_readings(works))
    sheets = tuple(version.toml for version in newest_versions().values())
    return _bound(rows, tuple(one.row for one in works), aside, _faults(aside), sheets)


def lessons() -> Lessons:
    """What predictions take from the book."""
    if not (Work.objects.exists() or ProofRow.objects.exists()):
        return NOTHING_LEARNED
    return shop_book().lessons


def _stamp() -> tuple[Any, ...]:
    """What changes whenever anything is written that the book may read: asking for it costs little.

    Sums of what was measured are in it, so that two shops are not taken for one another.
    """
    counted = (
        Entry.objects.aggregate(Count("pk"), Max("pk"), Max("written_at")),
        Strike.objects.aggregate(Count("pk"), Max("written_at")),
        ReadingValue.objects.aggregate(Sum("value_si"), Sum("standard_uncertainty_si")),
        Work.objects.aggregate(Sum("minutes")),
        ProofRow.objects.aggregate(Count("pk"), Sum("measured_id")),
        SetAside.objects.aggregate(Count("pk"), Max("written_at")),
        TakenBack.objects.aggregate(Count("pk"), Max("written_at")),
        SheetVersion.objects.aggregate(Count("pk"), Max("written_at")),
        Reel.objects.aggregate(Sum("version"), Sum("sheet_version_id")),
    )
    return (connection.settings_dict["NAME"], *(it for row in counted for it in row.values()))


def standing_aside(entry: int | None = None) -> tuple[SetAside, ...]:
    """What is set aside and not taken back, oldest first."""
    rows = SetAside.objects.filter(taken_back=None).select_related("author", "entry__visit")
    return tuple(rows.filter(entry=entry) if entry else rows)


def set_aside_row(pk: int) -> SetAside | None:
    """One setting aside, or None."""
    return SetAside.objects.select_related("author").filter(pk=pk).first()


def entries(ids: Iterable[int]) -> dict[int, Entry]:
    """The entries that stand behind a coefficient, with their visits."""
    return Entry.objects.select_related("visit__reel__customer", "author", "reading", "work").in_bulk(
        list(ids)
    )


def results_of(ids: Iterable[int]) -> dict[tuple[int, str], ReadingValue]:
    """The results of readings, by entry and kind."""
    rows = ReadingValue.objects.filter(reading__in=list(ids), repeat=0)
    return {(row.reading_id, row.kind): row for row in rows}


def findings_of(fault: str, reel: str) -> tuple[Finding, ...]:
    """The findings of a fault that stand on a kind of reel, oldest first, set aside or not."""
    kind = {"entry__visit__reel__sheet_version__sheet__kind": reel}
    rows = Finding.objects.filter(fault=fault, entry__strike=None, **kind)
    return tuple(rows.select_related("entry__visit", "entry__author").order_by("entry__written_at", "pk"))


@lru_cache(maxsize=8)
def _bound(
    rows: tuple[ReadingRow, ...],
    works: tuple[WorkRow, ...],
    aside: tuple[Aside, ...],
    counts: FaultCount,
    sheets: tuple[str, ...],
) -> ShopBook:
    learnt = [*(_of_reading(row) for row in rows), *(_of_work(row) for row in works if row.reel)]
    known = [kind for toml in sheets for kind in _kinds_of(toml)]
    told = rates(faults(), dict(counts.reels), dict(counts.found))
    return bind(learnt, aside, told, known)


@lru_cache(maxsize=4096)
def _of_reading(row: ReadingRow) -> Learnt:
    taken = Taken(row.kind, Measured(row.value, row.uncertainty, row.dimension), dict(row.conditions))
    learnt = book_evidence.of_reading(_sheet(row.toml), row.works, taken, row.start_speed, row.source)
    return replace(learnt, entry=row.source.entry)


@lru_cache(maxsize=4096)
def _of_work(row: WorkRow) -> Learnt:
    learnt = book_evidence.of_minutes(row.reel, row.works, row.minutes, row.source)
    return replace(learnt, entry=row.source.entry)


@lru_cache(maxsize=256)
def _sheet(toml: str) -> ReelSheet:
    return reel_sheet.read(toml)


@lru_cache(maxsize=256)
def _kinds_of(toml: str) -> tuple[Kind, ...]:
    """The coefficients that a sound reel of this model rests on."""
    sheet = _sheet(toml)
    state = as_built(sheet)
    kinds = [*friction_kinds(state).values(), start_kind(state), bearing_kind_of(sheet, state)]
    return tuple(kind for kind in kinds if kind is not None)


@dataclass(frozen=True)
class _Worked:
    """An entry of work: whose visit, where in its diary, and what it teaches."""

    visit: int
    seq: int
    row: WorkRow


def _works() -> Iterator[_Worked]:
    """Every entry of work that stands, oldest first."""
    done: dict[int, list[str]] = defaultdict(list)
    for work, key in WorkDone.objects.order_by("work", "position").values_list("work", "key"):
        done[work].append(key)
    rows = Work.objects.filter(entry__strike=None).order_by("entry__written_at", "pk")
    kind = "entry__visit__reel__sheet_version__sheet__kind"
    for pk, visit, seq, minutes, reel in rows.values_list(
        "pk", "entry__visit", "entry__seq", "minutes", kind
    ):
        yield _Worked(visit, seq, WorkRow(reel or "", tuple(done[pk]), minutes, Source(pk, told="minutes")))


def _readings(works: Iterable[_Worked]) -> Iterator[ReadingRow]:
    """The readings of the last proof of each visit, and those before the work beside them.

    A spin before the work is left out: nobody knows what was in the bearings then.
    """
    done: dict[int, list[_Worked]] = defaultdict(list)
    for one in works:
        done[one.visit].append(one)
    taught = _taught()
    sheets = {version.pk: version for version in SheetVersion.objects.select_related("sheet")}
    speeds = _start_speeds(value["reading_id"] for value in taught)
    for value in taught:
        before = sorted((one.seq, one.row.works) for one in done[value[VISIT]] if one.seq < value[SEQ])
        keys = tuple(dict.fromkeys(key for _, several in before for key in several))
        yield _row(value, keys, sheets[value[SHEET]], speeds.get(value["reading_id"]))


VISIT, SEQ, SHEET, MARK = (
    "reading__entry__visit",
    "reading__entry__seq",
    "reading__entry__visit__reel__sheet_version",
    "reading__instrument__mark",
)


def _taught() -> list[dict[str, Any]]:
    """The values that the proofs speak through, oldest proof first, each once."""
    pairs = _last_pairs()
    wanted = dict.fromkeys(pk for pair in pairs for pk in pair if pk)
    early = {before for before, _ in pairs}
    columns = [f"reading__{column}" for column in CONDITION_COLUMNS.values()]
    rows = ReadingValue.objects.filter(pk__in=wanted, kind__in=TEACHES, reading__entry__strike=None)
    own = ("pk", "kind", "value_si", "standard_uncertainty_si", "dimension", "reading_id")
    found = {row["pk"]: row for row in rows.values(*own, VISIT, SEQ, SHEET, MARK, *columns)}
    ordered = [found[pk] for pk in wanted if pk in found]
    return [row for row in ordered if row["kind"] not in SPINS or row["pk"] not in early]


def _last_pairs() -> list[tuple[int | None, int]]:
    """Before and measured of the last proof that stands in each visit, on reels that a sheet describes."""
    rows = ProofRow.objects.filter(proof__entry__strike=None)
    rows = rows.exclude(proof__entry__visit__reel__sheet_version=None)
    columns = ("proof__entry__visit", "proof__entry__seq", "before", "measured")
    found = list(rows.order_by("proof__entry__written_at", "pk").values_list(*columns))
    last: dict[int, int] = {}
    for visit, seq, _, _ in found:
        last[visit] = max(seq, last.get(visit, 0))
    return [(before, measured) for visit, seq, before, measured in found if seq == last[visit]]


def _row(
    value: dict[str, Any], done: tuple[str, ...], version: SheetVersion, start_speed: float | None
) -> ReadingRow:
    kind, known = version.sheet.kind, all_works()
    held = {key: value[f"reading__{column}"] for key, column in CONDITION_COLUMNS.items()}
    return ReadingRow(
        version.toml,
        tuple(key for key in done if key in known and kind in known[key].kinds),
        value["kind"],
        value["value_si"],
        value["standard_uncertainty_si"] or 0.0,
        value["dimension"],
        tuple(sorted((key, it) for key, it in held.items() if it not in (None, ""))),
        start_speed if value["kind"] in SPINS else None,
        Source(value["reading_id"], value[MARK] or "", value["kind"]),
    )


def _start_speeds(readings: Iterable[int]) -> dict[int, float]:
    """The measured speed at the start of a spin, by reading."""
    rows = ReadingValue.objects.filter(reading__in=list(readings), kind="spin_initial_speed", repeat=0)
    return dict(rows.values_list("reading_id", "value_si"))


def _faults(aside: tuple[Aside, ...]) -> FaultCount:
    """One count a visit, however often the fault was written in it."""
    left = {row.entry for row in aside}
    looked: dict[int, str] = {}
    for visit, kind in Entry.objects.filter(
        kind__in=("finding", "work"), strike=None, visit__reel__sheet_version__isnull=False
    ).values_list("visit", "visit__reel__sheet_version__sheet__kind"):
        looked[visit] = kind
    found: dict[tuple[str, str], set[int]] = defaultdict(set)
    for entry, visit, fault in (
        Finding.objects.filter(entry__strike=None)
        .exclude(fault="")
        .values_list("entry", "entry__visit", "fault")
    ):
        if entry not in left and visit in looked:
            found[looked[visit], fault].add(visit)
    reels: dict[str, int] = defaultdict(int)
    for kind in looked.values():
        reels[kind] += 1
    counts = tuple(sorted((key, len(visits)) for key, visits in found.items()))
    return FaultCount(tuple(sorted(reels.items())), counts)
