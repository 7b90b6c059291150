"""A finding: the part, what is wrong with it, how that is known; a picture says it best."""

from __future__ import annotations

from typing import Any

from django import forms

from spoolwright.judgement.works import band_findings, finding_words
from spoolwright.pages.diary.ask.ink_form import InkForm
from spoolwright.pages.diary.ask.offered import WordsField
from spoolwright.papers import section_drawing
from spoolwright.sheets import faults, reading_kinds
from spoolwright.shop.questions import readings
from spoolwright.shop.questions.blocks import Block

LONGEST_PART = 200


class FindingForm(InkForm):
    what = "finding"
    title = "A finding"
    button = "Write the finding"
    template = "diary/ask/_finding.html"
    cautions = (
        "Springs jump out of an open reel: eyes covered, the spring under a finger or in a clear bag.",
    )
    files_open = True

    part = WordsField(
        label="The part",
        max_length=LONGEST_PART,
        help_text="In your own words, from the sheet’s list, or touched on the drawing.",
    )
    touched = forms.CharField(required=False, max_length=100, widget=forms.HiddenInput)
    fault = forms.ChoiceField(label="Row of the fault table", required=False)
    evidence = forms.CharField(
        label="What is wrong, and how it is known",
        max_length=4000,
        widget=forms.Textarea({"rows": 3}),
    )

    def lay_out(self) -> None:
        names = [*(title for _, title in self.drawn_parts), *self._parts_of_sheet()]
        self.fields["part"].widget.offered = list(dict.fromkeys(names))
        rows = [(row.id, f"{row.id} {row.symptom}") for row in self.fault_rows]
        self.fields["fault"].choices = [("", "none of them"), *rows]
        self.order_fields(["part", "touched", "fault", "evidence", "words", "moved_to", "reason"])

    @property
    def drawn_parts(self) -> list[tuple[str, str]]:
        sheet = self.desk.sheet
        return [(part.key, part.title) for part in section_drawing.parts(sheet)] if sheet else []

    def _parts_of_sheet(self) -> list[str]:
        return [part.name for part in self.desk.sheet.parts] if self.desk.sheet else []

    @property
    def fault_rows(self) -> tuple[faults.Fault, ...]:
        return faults.faults_of(self.desk.kind)

    @property
    def mark(self) -> str:
        return faults.MARK

    @property
    def drawing(self) -> str:
        """The reel in section; touching a part takes its name into the form."""
        if self.desk.sheet is None:
            return ""
        way = f"{self.desk.way(self.what)}?touched={{key}}#next"
        return section_drawing.draw(self.desk.sheet, arrangement="narrow", link=way, system=self.desk.system)

    def started(self) -> dict[str, Any]:
        key = self.desk.request.GET.get("touched", "")
        title = dict(self.drawn_parts).get(key, "")
        if title:
            return {"part": title, "touched": key}
        rejected = self.desk.request.GET.get("part", "")[:LONGEST_PART]
        return {"part": rejected} if rejected else {}

    def started_again(self, old: Block) -> dict[str, Any]:
        if old.kind != "finding":
            return super().started_again(old)
        names = ("part", "fault", "evidence", "touched")
        return super().started_again(old) | {name: getattr(old.part, name) for name in names}

    @property
    def hints(self) -> list[str]:
        """What the readings of this visit point at, by the limits of the registry."""
        found = []
        for kind, measured in readings.as_it_is(self.desk.visit.pk).items():
            known = reading_kinds.kinds().get(kind)
            band = known.band(measured.value, *self.desk.tags) if known else ""
            about = band_findings().get(kind, {}).get(band, "")
            if known and about:
                found.append(f"{known.title.lower()}: {finding_words()[about]}")
        return found

    def given(self) -> dict[str, Any]:
        return {name: self.cleaned_data[name] for name in ("part", "fault", "evidence", "touched")}
