"""A series of pulls: over settings, one after the other, or slow and fast; drawn before it is written."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from functools import cached_property
from hashlib import sha256
from typing import Any

from django import forms
from django.core.exceptions import NON_FIELD_ERRORS

from spoolwright import quantities
from spoolwright.bench import pull_corrections, pull_table
from spoolwright.bench.gauge import Gauge
from spoolwright.bench.pulls import OnePull
from spoolwright.bench.uncertainty import Measured
from spoolwright.bench.unreadable import Unreadable
from spoolwright.judgement import drag_faults
from spoolwright.pages.diary.ask import conditions, line_way, pull_rows
from spoolwright.pages.diary.ask.gauge import OWN, as_last_time, gauge_fields, gauge_of, own_fields
from spoolwright.pages.diary.ask.instrument import of_old
from spoolwright.pages.diary.ask.pull_rows import PullRow
from spoolwright.pages.diary.ask.rows import rows
from spoolwright.pages.diary.ask.signal_file import FILE, SignalForm
from spoolwright.pages.diary.told import pictures, readings, series
from spoolwright.pages.words import when
from spoolwright.pages.words.asked import QuantityField
from spoolwright.sheets import reading_kinds
from spoolwright.sheets.cautions import LINE_UNDER_LOAD
from spoolwright.sheets.drag_setting import setting_of
from spoolwright.shop.questions.blocks import Block
from spoolwright.shop.questions.kept_series import Drag, KeptSeries, earlier_series, kept_series, series_of

TURNS, NUMBER, SPEED = "turns", "number", "speed"
KEYS = reading_kinds.kind("pull_fade").conditions
FACTS = ("felt", "compare", "lost", "ruled_out")
NOTHING_TYPED = "No pull was typed. Accepted: what was set and the running pull, row by row."
LEAST_ROWS = 6
CALIPER = 0.05e-3
"""Standard uncertainty of a thickness lost, as the difference of two stacks under a caliper [m]: judgement
prior."""


class SeriesForm(SignalForm):
    what = "series"
    title = "A series of pulls"
    button = "Write the series"
    template = "diary/ask/_series.html"
    cautions = (LINE_UNDER_LOAD,)
    file_label = "Or a table from a spreadsheet"
    file_hint = "Its first row names the columns, such as turns; start-up [kg]; running [kg]."
    accepts = ".csv,.txt,.tsv,text/csv,text/plain"

    along = forms.ChoiceField(
        label="What was changed from pull to pull",
        choices=(
            (TURNS, "how hard the drag was set"),
            (NUMBER, "nothing: one pull after the other, for fade"),
            (SPEED, "how fast the line was drawn, for judder"),
        ),
        widget=forms.RadioSelect,
        initial=TURNS,
    )
    unit = forms.ChoiceField(label="The scale shows")
    drawn_as = forms.CharField(required=False, widget=forms.HiddenInput)
    felt = forms.BooleanField(
        label="Free was found by feel, not by a stop or a mark that stays", required=False
    )
    compare = forms.ChoiceField(label="An earlier series, when the drag was sound", required=False)
    lost = QuantityField(
        "length",
        required=False,
        label="Thinner than new, all friction discs together",
        help_text="Measured with a caliper against the sheet.",
    )
    ruled_out = forms.MultipleChoiceField(
        label="Looked for, and not there",
        required=False,
        widget=forms.CheckboxSelectMultiple,
        choices=[(c.key, c.title) for c in drag_faults.causes().values() if c.key != drag_faults.SOUND],
    )
    kept: KeptSeries | None = None

    def lay_out(self) -> None:
        super().lay_out()
        force = quantities.DIMENSIONS["force"]
        own = force.imperial if self.desk.system == "imperial" else force.metric
        names = dict.fromkeys([*own, *(unit.name for unit in force.units)])
        self.fields["unit"].choices = [(name, name) for name in names]
        self.fields["compare"].choices = [("", "none"), *((str(k), words) for k, words in self.earlier_words)]
        self.fields |= own_fields() | gauge_fields() | line_way.way_fields()
        self.fields |= conditions.fields(KEYS, self.desk.sheet)
        self.fields["star_turns"].required = self.chosen != TURNS
        self.pulls = rows(
            PullRow,
            "pull",
            self.data if self.is_bound else None,
            started=self._started_rows(),
            least=self._spare,
        )

    @property
    def looks_at(self) -> tuple[str, ...]:  # type: ignore[override]
        gauge = (OWN, *gauge_fields())
        return (NON_FIELD_ERRORS, FILE, "along", "unit", "radius", "lost", *gauge, *line_way.NAMES)

    @property
    def chosen(self) -> str:
        """What was chosen so far."""
        said = self.data.get("along") if self.is_bound else None
        return str(said) if said in (NUMBER, SPEED) else TURNS

    @property
    def _spare(self) -> int:
        return 2 if self.is_bound else LEAST_ROWS

    def _started_rows(self) -> list[Any]:
        written = self._written
        return pull_rows.started(written.pulls, written.along, self.desk.system) if written else []

    @cached_property
    def _written(self) -> KeptSeries | None:
        return series_of(self.old.part) if self.old and self.old.kind == "reading" else None

    @cached_property
    def earlier(self) -> dict[int, KeptSeries]:
        mine = self.old.part.pk if self.old and self.old.kind == "reading" else None
        found = earlier_series(self.desk.visit.reel)
        self._when = {one.number: one.written_at for one in found}
        return {one.number: one.kept for one in found if one.number != mine}

    @property
    def earlier_words(self) -> list[tuple[int, str]]:
        return [(number, f"of {when.plain_day(self._when[number])}") for number in self.earlier]

    @property
    def point_label(self) -> str:
        setting = setting_of(self.desk.sheet)
        turns = "way of the lever" if setting.is_lever else "turns"
        return {TURNS: turns, NUMBER: "number", SPEED: "m/s"}[self.chosen]

    @property
    def shows_judder(self) -> bool:
        return self.chosen == SPEED

    @property
    def asked_conditions(self) -> Sequence[Any]:
        left_out = {"star_turns"} if self.chosen == TURNS else set()
        return [self[key] for key in self.fields if key in KEYS and key not in left_out]

    @property
    def gauge_rows(self) -> Sequence[Any]:
        return [self[key] for key in (OWN, *gauge_fields()) if key in self.fields]

    @property
    def gauge_faults(self) -> bool:
        return any(name.startswith("gauge_") for name in self.errors)

    @property
    def way_rows(self) -> Sequence[Any]:
        return [self[key] for key in line_way.NAMES]

    @property
    def way_open(self) -> bool:
        return any(self[key].value() or self[key].errors for key in line_way.NAMES)

    @property
    def facts_open(self) -> bool:
        return any(self[key].value() for key in FACTS if key != "felt")

    @property
    def is_look(self) -> bool:
        """What was not drawn as it stands now is drawn first."""
        return super().is_look or (self.is_bound and self.data.get("drawn_as") != self.mark)

    @cached_property
    def mark(self) -> str:
        """What the drawing is made from, in short."""
        asked = ("along", "unit", "radius", *FACTS, OWN, *gauge_fields(), *line_way.NAMES)
        made_from = sorted(
            (name, given)
            for name in self.data
            if (given := [text.strip() for text in self.data.getlist(name) if text.strip()])
            and (name.startswith(("pull-", "signal_kept")) or name.removesuffix("_unit") in asked)
        )
        return sha256(repr(made_from).encode()).hexdigest()[:16]

    def started(self) -> dict[str, Any]:
        return conditions.started(self.desk, KEYS) | as_last_time(self.desk.request)

    def started_again(self, old: Block) -> dict[str, Any]:
        if old.kind != "reading":
            return super().started_again(old)
        again = super().started_again(old) | conditions.as_fields(old.part.conditions)
        again |= of_old(self, old, OWN)
        return again | ({"along": self._written.along} if self._written else {})

    def read_signal(self, data: bytes, name: str, answers: Any) -> Any:
        return pull_table.read(data, name=name, along=self.chosen)

    def clean(self) -> dict[str, Any]:
        given = super().clean() or self.cleaned_data
        taken = self.read_file() if self.file.last or self.file.faults else self._typed_pulls(given)
        gauge, way = gauge_of(self), line_way.way_of(self)
        if taken and gauge is not None and way is not None:
            self.kept = self.guarded(lambda: self._read(taken, gauge, way))
        return given

    def guarded(self, read: Any) -> Any:
        """As of a file, with the fault above all rows where no file came."""
        if self.file.last:
            return super().guarded(read)
        try:
            return read()
        except Unreadable as fault:
            self.add_error(None, fault.words)
        return None

    def _typed_pulls(self, given: dict[str, Any]) -> tuple[OnePull, ...]:
        typed = [row for row in self.pulls if not row.is_blank and row.is_valid()]
        if not typed:
            if self.data.get("do") == "write":
                self.add_error(None, NOTHING_TYPED)
            return ()
        found = self.guarded(lambda: tuple(row.pull(self.chosen, given.get("unit", "")) for row in typed))
        return found or ()

    def _read(self, taken: Sequence[OnePull], gauge: Gauge, way: pull_corrections.LineWay) -> KeptSeries:
        put_right, unsure = pull_corrections.corrected_pulls(taken, gauge, way)
        kept = kept_series(self.chosen, put_right, unsure, self._drag())
        return replace(kept, notes=(*kept.notes, *pull_corrections.said(way)))

    def _drag(self) -> Drag:
        given = self.cleaned_data
        radius, lost = given.get("radius"), given.get("lost")
        if radius is None and self.desk.sheet is not None and self.is_look:
            radius = self.desk.sheet.spool.full_radius
        chosen = given.get("compare")
        return Drag(
            sheet=self.desk.sheet,
            radius=radius,
            felt=bool(given.get("felt")),
            earlier=self.earlier.get(int(chosen)) if chosen else None,
            lost=None if lost is None else Measured(lost, CALIPER, "length"),
            ruled_out=frozenset(given.get("ruled_out") or ()),
        )

    def conditions(self) -> dict[str, Any]:
        left_out = {"star_turns"} if self.chosen == TURNS else set()
        return conditions.given(self.cleaned_data, [key for key in KEYS if key not in left_out])

    @property
    def drawn(self) -> dict[str, Any] | None:
        """The chart and its words as they would be written."""
        if self.kept is None:
            return None
        kept, desk = self.kept, self.desk
        results = [readings.Result(kind, measured) for kind, measured in kept.results]
        setting = setting_of(desk.sheet)
        return {
            "chart": series.chart(kept, desk.system, setting),
            "told": readings.told(results, self.conditions(), desk.tags, desk.system, "pull series", setting),
            "said": kept.said[desk.system],
            "notes": kept.notes,
            "budget": pictures.budget_rows(kept.budget, desk.system),
            "full_spool": self.cleaned_data.get("radius") is None and bool(kept.band),
        }
