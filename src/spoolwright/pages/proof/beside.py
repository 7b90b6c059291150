"""One promise beside what was measured: the decision that the rule makes, or what is still missing."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.proof import Decision, Promise, decide
from spoolwright.pages import doors
from spoolwright.pages.gathered import findings
from spoolwright.pages.words import conditions, promised
from spoolwright.papers import charts
from spoolwright.papers.charts import Chart
from spoolwright.papers.figures import Span
from spoolwright.papers.figures import shown as figure_shown
from spoolwright.sheets import reading_kinds
from spoolwright.sheets.drag_setting import STAR, DragSetting
from spoolwright.shop.questions.predictions import expected_of
from spoolwright.shop.questions.readings import ToProve

WRITES = {"pull trace": "pull", "spin-down": "spin"}
"""The diary's own word for a reading that comes out of a file."""


@dataclass(frozen=True)
class Beside:
    """What is set for one promise; `decision` is None while no reading can stand beside it."""

    title: str
    promised: str
    where: str
    measured: str
    taken: str
    before: str
    decision: Decision | None
    nearest: str
    parted: tuple[str, ...]
    takes: str
    chart: Chart | None
    name: str


def beside(row: ToProve, tag: int, system: str, setting: DragSetting = STAR) -> Beside:
    promise, value = row.promise, row.measured
    decision = _decided(promise, value, system) if value else None
    kind = promise.reading_kind or promise.kind
    return Beside(
        title=promised.title(promise),
        promised=promised.in_words(promise, system),
        where=conditions.in_words(promise.conditions, system, setting),
        measured=_said(value, system),
        taken=conditions.in_words(value.reading.conditions, system, setting) if value else "",
        before=_said(row.before, system),
        decision=decision,
        nearest=_said(row.nearest, system),
        parted=row.parted,
        takes=_way_to_take(tag, kind),
        chart=_chart(row, system) if value else None,
        name=f"promise-{promise.pk}",
    )


def is_to_be_taken(row: Beside) -> bool:
    return row.decision is None


def _decided(promise: Any, value: Any, system: str) -> Decision:
    asked = Promise(promise.low_si, promise.high_si, promise.dimension)
    return decide(asked, findings.measured(value), expected=expected_of(promise), system=system)


def _said(value: Any, system: str) -> str:
    return figure_shown(findings.figure(value, system), system) if value else ""


def _way_to_take(tag: int, kind: str) -> str:
    """Where this reading is taken; a pull and a spin come out of a file, and can be typed as well."""
    known = reading_kinds.kinds().get(kind)
    if known is None:
        return ""
    if known.way in WRITES:
        return doors.way_to("diary:write", tag, WRITES[known.way])
    return doors.way_to("diary:typed", tag, kind)


def _chart(row: ToProve, system: str) -> Chart | None:
    """Before and after on one line with the promise behind; only where there is a before or a band."""
    promise, after = row.promise, findings.measured(row.measured)
    before: Measured | None = findings.measured(row.before) if row.before else None
    band = None
    if promise.low_si is not None and promise.high_si is not None:
        middle = promise.middle_si or (promise.low_si + promise.high_si) / 2
        band = Span(middle, promise.low_si, promise.high_si, promise.dimension)
    kind = promise.reading_kind or promise.kind
    if promised.unit_of(kind) or (before is None and band is None):
        return None
    title = promised.title(promise)
    return charts.before_after(title, before=before, after=after, promised=band, system=system)
