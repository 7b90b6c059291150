"""The results that stand in a visit, as judgement wants them, and which of them answers which promise."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.comparable import apart
from spoolwright.judgement.taken import Taken
from spoolwright.shop.questions.agreed import agreed
from spoolwright.shop.records.quote import QuotePromise
from spoolwright.shop.records.reading import ReadingValue
from spoolwright.shop.records.work import Work


@dataclass(frozen=True)
class ToProve:
    """A promise that was agreed, with the latest comparable reading after the work and the one before it.

    Where no reading can stand beside the promise, `nearest` is the latest of its kind after the work and
    `parted` says what parts it from the promise.
    """

    promise: QuotePromise
    measured: ReadingValue | None
    before: ReadingValue | None
    nearest: ReadingValue | None = None
    parted: tuple[str, ...] = ()


def results(visit_id: int) -> tuple[ReadingValue, ...]:
    """Every result that stands, oldest first, each with its reading and entry."""
    rows = ReadingValue.objects.filter(reading__entry__visit=visit_id, reading__entry__strike=None, repeat=0)
    return tuple(
        rows.select_related("reading__entry", "reading__entry__author").order_by("reading__entry__seq", "id")
    )


def as_found(visit_id: int) -> dict[str, Measured]:
    """The latest result of each kind from before any work: what a prediction starts from."""
    worked = _work_seq(visit_id, "entry__seq")
    return _latest(value for value in results(visit_id) if not _is_after(value, worked))


def taken_as_found(visit_id: int) -> dict[str, tuple[Taken, ...]]:
    """Results from before any work with their conditions: a pull at each setting of the star."""
    worked = _work_seq(visit_id, "entry__seq")
    settings: dict[tuple[object, ...], Taken] = {}
    for value in results(visit_id):
        if not _is_after(value, worked):
            taken = _taken(value)
            key = (taken.kind, *(taken.conditions.get(name) for name in ("line", "radius", "star_turns")))
            settings[key] = taken
    kinds = dict.fromkeys(taken.kind for taken in settings.values())
    return {kind: tuple(taken for taken in settings.values() if taken.kind == kind) for kind in kinds}


def as_it_is(visit_id: int) -> dict[str, Measured]:
    """The latest result of each kind, work or no work."""
    return _latest(results(visit_id))


def taken_after(visit_id: int) -> tuple[Taken, ...]:
    """Results from after the last work with their conditions, oldest first."""
    worked = _work_seq(visit_id, "-entry__seq")
    return tuple(_taken(value) for value in results(visit_id) if _is_after(value, worked))


def to_prove(visit_id: int, system: str = "metric") -> tuple[ToProve, ...]:
    """Each agreed promise beside the reading that can prove it, where one has been taken."""
    worked_first, worked_last = _work_seq(visit_id, "entry__seq"), _work_seq(visit_id, "-entry__seq")
    options = [answer.option_id for answer in agreed(visit_id).answers]
    promises = QuotePromise.objects.filter(option__in=options).select_related("option")
    found = results(visit_id)
    rows = []
    for promise in promises.order_by("option__quote", "position"):
        after = [v for v in found if _is_after(v, worked_last)]
        measured = _last_of(promise, after)
        before = _last_of(promise, (v for v in found if not _is_after(v, worked_first)), measured)
        nearest = None if measured else next((v for v in reversed(after) if _is_of(promise, v)), None)
        parted = apart(promise.conditions, nearest.reading.conditions, system) if nearest else ()
        rows.append(ToProve(promise, measured, before, nearest, parted))
    return tuple(rows)


def _work_seq(visit_id: int, order: str) -> int | None:
    """Where in the diary the first or the last work stands."""
    work = Work.objects.filter(entry__visit=visit_id, entry__strike=None)
    return work.order_by(order).values_list("entry__seq", flat=True).first()


def _is_after(value: ReadingValue, seq: int | None) -> bool:
    return seq is not None and value.reading.entry.seq > seq


def _last_of(
    promise: QuotePromise, values: Iterable[ReadingValue], beside: ReadingValue | None = None
) -> ReadingValue | None:
    """The last value of the promised kind that may stand beside the promise, and beside that other value."""
    also = beside.reading.conditions if beside else {}
    fitting = [
        v
        for v in values
        if _is_of(promise, v)
        and not apart(promise.conditions, v.reading.conditions)
        and not apart(also, v.reading.conditions)
    ]
    return fitting[-1] if fitting else None


def _is_of(promise: QuotePromise, value: ReadingValue) -> bool:
    return value.kind == (promise.reading_kind or promise.kind) and value.dimension == promise.dimension


def _taken(value: ReadingValue) -> Taken:
    measured = Measured(value.value_si, value.standard_uncertainty_si or 0.0, value.dimension)
    return Taken(value.kind, measured, value.reading.conditions)


def _latest(values: Iterable[ReadingValue]) -> dict[str, Measured]:
    return {v.kind: Measured(v.value_si, v.standard_uncertainty_si or 0.0, v.dimension) for v in values}
