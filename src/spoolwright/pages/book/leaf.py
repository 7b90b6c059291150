"""One coefficient as it is read: prior, now, every proof behind it, how it moved, what is set aside."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import cached_property
from math import exp
from typing import Any

from django.http import HttpRequest

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.book_chapter import (
    Interval,
    Weighed,
    before,
    how_it_moved,
    next_proof,
    now,
    usual_scatter,
)
from spoolwright.judgement.book_fit import Seen
from spoolwright.judgement.book_kinds import FAMILIES, Kind
from spoolwright.judgement.book_words import (
    ABOUT,
    OVERRULED,
    WHAT,
    outlier_said,
    proofs_said,
    span_said,
    value_said,
)
from spoolwright.pages import doors
from spoolwright.pages.book.forms import AsideForm
from spoolwright.pages.words import shown, when
from spoolwright.papers import charts
from spoolwright.papers.charts import Chart, Step
from spoolwright.sheets import reading_kinds
from spoolwright.shop.questions import book as questions


@dataclass(frozen=True)
class ProofLine:
    """One proof behind a coefficient, where it stands, and what it says."""

    entry: Any
    diary: str
    read: str
    says: str
    outlier: str
    instrument: str
    form: AsideForm


@dataclass(frozen=True)
class AsideLine:
    """One proof that is set aside: why, by whom, and the way to take it back."""

    row: Any
    proof: ProofLine
    back: str


class Leaf:
    """One request for one coefficient."""

    def __init__(self, request: HttpRequest, key: str, form: AsideForm | None = None) -> None:
        self.request, self.key, self.sent = request, key, form
        self.book = questions.shop_book()
        self.chapter, self.kind = doors.found(self.book.kind(key), "No coefficient of this name.")

    @property
    def system(self) -> str:
        return shown.system_of(self.request.user)

    @property
    def title(self) -> str:
        return self.kind.title

    @property
    def family(self) -> str:
        return FAMILIES[self.kind.family]

    @property
    def about(self) -> str:
        return ABOUT[self.kind.family]

    @property
    def what(self) -> str:
        return WHAT[self.kind.family]

    @property
    def own(self) -> Sequence[Weighed]:
        return self.chapter.of(self.key)

    @property
    def proofs_said(self) -> str:
        return proofs_said(len(self.own))

    @property
    def now_middle(self) -> str:
        return value_said(self.kind, now(self.chapter, self.kind).middle)

    @property
    def now_span(self) -> str:
        return span_said(self.kind, now(self.chapter, self.kind))

    @property
    def next_span(self) -> str:
        """Where the next proof alone should say it is; a single work is never timed alone."""
        scatter = usual_scatter(self.chapter, self.key)
        if not scatter or self.kind.family == "minutes":
            return ""
        low, high = (
            self.kind.middle * exp(end) for end in next_proof(self.chapter, {self.key: 1.0}, scatter**2)
        )
        return span_said(self.kind, Interval(self.kind.middle, low, high, scatter))

    @property
    def sheet_middle(self) -> str:
        return value_said(self.kind, self.kind.middle)

    @property
    def sheet_span(self) -> str:
        return span_said(self.kind, before(self.kind))

    @property
    def leans(self) -> str:
        """How much it leans on its relatives."""
        held = self.chapter.held
        if not self.chapter.weighed:
            return ""
        return (
            f"Proofs scatter {held.scatter:.1f} times as much as sheet and reading expect; "
            f"{100 * held.alike:.0f} % of what is not known is taken to be shared by the whole family."
        )

    @property
    def doubt(self) -> str:
        """What has to be said of the sheet itself."""
        return OVERRULED if self.key in self.chapter.overruled else ""

    @cached_property
    def entries(self) -> dict[int, Any]:
        aside = [seen.entry for seen, _ in self.book.aside_of(self.key)]
        return questions.entries([*(one.seen.entry for one in self.own), *aside])

    @cached_property
    def results(self) -> dict[tuple[int, str], Any]:
        return questions.results_of(self.entries)

    @property
    def proofs(self) -> list[ProofLine]:
        """Latest first."""
        return [self._line(one.seen, outlier_said(one)) for one in reversed(self.own)]

    @property
    def aside(self) -> list[AsideLine]:
        asides = {(row.entry_id, row.coefficient): row for row in questions.standing_aside()}
        rows = []
        for seen, why in self.book.aside_of(self.key):
            row = asides[why.entry, why.coefficient]
            rows.append(AsideLine(row, self._line(seen, ""), doors.way_to("book:back", self.key, row.pk)))
        return rows

    def _line(self, seen: Seen, outlier: str) -> ProofLine:
        entry = self.entries[seen.entry]
        diary = doors.way_to("diary:diary", entry.visit.tag)
        sent = self.sent if self.sent and self.sent.number == seen.entry else None
        return ProofLine(
            entry,
            f"{diary}#entry-{entry.pk}",
            self._read(entry, seen.told),
            _alone(self.kind, seen),
            outlier,
            seen.instrument,
            sent or AsideForm(None, seen.entry),
        )

    def _read(self, entry: Any, told: str) -> str:
        if told == "minutes":
            return f"the works of that day took {entry.work.minutes} min"
        value = self.results[entry.pk, told]
        measured = Measured(value.value_si, value.standard_uncertainty_si or 0.0, value.dimension)
        said = " ± ".join(filter(None, shown.measured(measured, self.system)))
        return f"{_lower(reading_kinds.kind(told).title)} {said}"

    @cached_property
    def chart(self) -> Chart:
        return charts.coefficient_moves(self.title, self._steps(), unit=self.kind.unit)

    def _steps(self) -> Iterable[Any]:
        moved = how_it_moved(self.chapter, self.kind)
        steps = [Step("the sheet", moved[0].middle, moved[0].low, moved[0].high)]
        for one, held in zip(self.own, moved[1:], strict=True):
            entry = self.entries[one.seen.entry]
            words = f"{when.dated(entry.written_at)}, number {entry.visit.tag}"
            alone = self.kind.middle * exp(one.seen.log)
            steps.append(Step(words, held.middle, held.low, held.high, alone, one.is_outlier))
        return steps


def _alone(kind: Kind, seen: Seen) -> str:
    return value_said(kind, kind.middle * exp(seen.log))


def _lower(title: str) -> str:
    return title[:1].lower() + title[1:]
