"""Every reading of a reel by its kind: a chart where there are several, a line where there is one."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from django.utils import timezone

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.comparable import apart
from spoolwright.pages.words import conditions, promised, shown, when
from spoolwright.papers import charts
from spoolwright.papers.charts import Chart, Manner, Then
from spoolwright.sheets import reading_kinds
from spoolwright.sheets.drag_setting import STAR, DragSetting
from spoolwright.sheets.reading_kinds import ReadingKind
from spoolwright.shop.questions.passport import Passport, ReadingInPassport


@dataclass(frozen=True)
class History:
    """One kind of reading with its chart; `name` is the chart's own on the page."""

    name: str
    title: str
    chart: Chart


@dataclass(frozen=True)
class Once:
    """A kind that was read a single time: set as in a bench book."""

    title: str
    value: str
    spread: str
    conditions: str


@dataclass(frozen=True)
class Histories:
    several: Sequence[History] = ()
    once: Sequence[Once] = ()

    @property
    def is_anything(self) -> bool:
        return bool(self.several or self.once)


def histories(found: Passport, system: str, setting: DragSetting = STAR) -> Histories:
    """The kinds in the order of the registry."""
    several, once = [], []
    for kind in reading_kinds.kinds().values():
        readings = found.readings_of(kind.id)
        if len(readings) > 1:
            several.append(
                History(kind.id.replace("_", "-"), kind.title, drawn(kind, readings, system, setting))
            )
        elif readings:
            once.append(single(kind, readings[0], system, setting))
    return Histories(several, once)


def drawn(
    kind: ReadingKind,
    readings: Sequence[ReadingInPassport],
    system: str,
    setting: DragSetting = STAR,
) -> Chart:
    groups = alike(readings, system)
    how = Manner(system, promised.unit_of(kind.id))
    points = [
        Then(
            at=timezone.localtime(reading.written_at),
            visit=reading.tag,
            measured=measured(reading),
            alike=group,
            after_work=reading.after_work,
            words=conditions.in_words(reading.conditions, system, setting),
        )
        for reading, group in zip(readings, groups, strict=True)
    ]
    return charts.reading_history(kind.title, points, manner=how)


def alike(readings: Sequence[ReadingInPassport], system: str) -> list[int]:
    """A number for each reading: the same where nothing in their conditions parts them."""
    firsts: list[dict[str, Any]] = []
    numbers = []
    for reading in readings:
        how = reading.conditions
        fitting = (n for n, first in enumerate(firsts) if not apart(first, how, system))
        number = next(fitting, len(firsts))
        if number == len(firsts):
            firsts.append(how)
        numbers.append(number)
    return numbers


def single(kind: ReadingKind, reading: ReadingInPassport, system: str, setting: DragSetting = STAR) -> Once:
    value, spread = in_two(reading, system)
    said = conditions.in_words(reading.conditions, system, setting)
    state = "after the work" if reading.after_work else "as found"
    told = f"{when.dated(reading.written_at)}, number {reading.tag}, {state}"
    return Once(kind.title, value, spread, ", ".join(filter(None, (told, said))))


def in_two(reading: ReadingInPassport, system: str) -> tuple[str, str]:
    """The value and its uncertainty as two texts, in the unit in which the bench says this kind."""
    text = Manner(system, promised.unit_of(reading.kind)).shown(measured(reading))
    value, found, spread = text.partition(shown.PLUS_MINUS)
    return shown.unbroken(value), shown.unbroken(spread) if found else ""


def measured(reading: ReadingInPassport) -> Measured:
    value = reading.value
    return Measured(value.value_si, value.standard_uncertainty_si or 0.0, value.dimension)
