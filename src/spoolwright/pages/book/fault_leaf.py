"""How often a fault is found on a kind of reel, as it is read: prior, now, and every finding behind it."""

from __future__ import annotations

from functools import cached_property
from typing import Any

from django.http import HttpRequest

from spoolwright.judgement.book_kinds import FAMILIES
from spoolwright.judgement.book_rates import beta_interval
from spoolwright.pages import doors
from spoolwright.pages.book.chapters import FAULTS_ABOUT, rate_line
from spoolwright.pages.book.forms import AsideForm
from spoolwright.pages.book.leaf import AsideLine, ProofLine
from spoolwright.pages.words import shown
from spoolwright.papers import charts
from spoolwright.papers.charts import Chart, Step
from spoolwright.shop.questions import book as questions


class FaultLeaf:
    """One request for one fault on one kind of reel; it answers to the same names as a coefficient's leaf."""

    family = FAMILIES["faults"]
    about = FAULTS_ABOUT
    leans = ""
    doubt = ""
    next_span = ""
    what = "reels on which it is found"
    sheet_middle = ""

    def __init__(self, request: HttpRequest, key: str, form: AsideForm | None = None) -> None:
        self.request, self.key, self.sent = request, key, form
        self.book = questions.shop_book()
        self.rate = doors.found(self.book.rate(key), "No fault of this name on a reel that has been here.")
        self.line = rate_line(self.rate)

    @property
    def system(self) -> str:
        return shown.system_of(self.request.user)

    @property
    def title(self) -> str:
        return self.rate.title

    @property
    def proofs_said(self) -> str:
        return self.line.proofs

    @property
    def now_middle(self) -> str:
        return self.line.now

    @property
    def now_span(self) -> str:
        return self.line.span

    @property
    def sheet_span(self) -> str:
        return self.line.sheet

    @cached_property
    def findings(self) -> list[Any]:
        return list(questions.findings_of(self.rate.fault, self.rate.reel))

    @cached_property
    def _aside(self) -> dict[int, Any]:
        return {row.entry_id: row for row in questions.standing_aside()}

    @property
    def proofs(self) -> list[ProofLine]:
        return [self._line(one) for one in reversed(self.findings) if one.pk not in self._aside]

    @property
    def aside(self) -> list[AsideLine]:
        return [
            AsideLine(
                self._aside[one.pk],
                self._line(one),
                doors.way_to("book:back", self.key, self._aside[one.pk].pk),
            )
            for one in self.findings
            if one.pk in self._aside
        ]

    def _line(self, finding: Any) -> ProofLine:
        entry = finding.entry
        sent = self.sent if self.sent and self.sent.number == entry.pk else None
        diary = doors.way_to("diary:diary", entry.visit.tag)
        read = f"{finding.part}: {finding.evidence}"
        return ProofLine(
            entry, f"{diary}#entry-{entry.pk}", read, "", "", "", sent or AsideForm(None, entry.pk)
        )

    @cached_property
    def chart(self) -> Chart:
        first, last = beta_interval(self.rate.prior), beta_interval(self.rate.after)
        steps = [
            Step("the table", self.rate.before, *first),
            Step(self.line.proofs, self.rate.mean, *last, alone=self.rate.found / self.rate.reels),
        ]
        percent = [
            Step(s.words, 100 * s.middle, 100 * s.low, 100 * s.high, s.alone and 100 * s.alone) for s in steps
        ]
        return charts.coefficient_moves(
            self.title, percent, unit="of 100 reels", names=("the table", self.line.proofs)
        )
