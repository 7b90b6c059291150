"""A pull trace: the gauge's file, how the drag was set, the conditions; drawn before it is written."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import Any

from django import forms

from spoolwright.bench import pull_corrections, pull_trace
from spoolwright.bench.gauge import Gauge
from spoolwright.bench.trace import TraceForm
from spoolwright.bench.uncertainty import Measured
from spoolwright.pages.diary.ask import conditions, line_way
from spoolwright.pages.diary.ask.gauge import OWN, as_last_time, gauge_fields, gauge_of, own_fields
from spoolwright.pages.diary.ask.instrument import of_old
from spoolwright.pages.diary.ask.signal_file import FILE, LABELS, SignalForm
from spoolwright.pages.diary.told import pictures, promised_band, readings
from spoolwright.papers.figures import Span
from spoolwright.sheets import reading_kinds
from spoolwright.sheets.cautions import LINE_UNDER_LOAD
from spoolwright.sheets.drag_setting import setting_of
from spoolwright.shop.acts.take_pull import Pulled, values_of
from spoolwright.shop.questions.blocks import Block
from spoolwright.shop.questions.signals import kept_pull

PART_WAY, HARD_ON = "part", "hard"
KEYS = reading_kinds.kind("pull_run").conditions
KEYS_HARD_ON = reading_kinds.kind("pull_full").conditions


class PullForm(SignalForm):
    what = "pull"
    title = "A pull trace"
    button = "Write the reading"
    template = "diary/ask/_pull.html"
    cautions = (LINE_UNDER_LOAD,)
    file_label = "Pull trace from the gauge"
    file_hint = "A CSV of time and force. Let it fall here; the curve is drawn before anything is written."
    accepts = ".csv,.txt,.tsv,.dat,text/csv,text/plain"
    on_line = True
    looks_at = (
        FILE,
        *LABELS,
        "pull",
        "gauge_accuracy",
        "gauge_full_scale",
        "gauge_of_full_scale",
        "gauge_step",
        "gauge_own",
        *line_way.NAMES,
    )

    setting = forms.ChoiceField(
        label="The drag was set",
        choices=((PART_WAY, "part way"), (HARD_ON, "hard on, to the most this reel holds")),
        widget=forms.RadioSelect,
        initial=PART_WAY,
    )
    pull = forms.IntegerField(
        label="Which pull in the file",
        required=False,
        min_value=1,
        max_value=99,
        help_text="Where the file holds several; left empty, the last.",
        widget=forms.NumberInput({"inputmode": "numeric", "autocomplete": "off"}),
    )
    pulled: Pulled | None = None

    def lay_out(self) -> None:
        super().lay_out()
        self.fields |= own_fields() | gauge_fields() | line_way.way_fields()
        self.fields |= conditions.fields(KEYS, self.desk.sheet)
        self.fields["star_turns"].required = not self.is_hard_on
        self.ask_questions(self.questions)

    @property
    def is_hard_on(self) -> bool:
        return self.is_bound and self.data.get("setting") == HARD_ON

    @property
    def keys(self) -> Sequence[str]:
        return KEYS_HARD_ON if self.is_hard_on else KEYS

    @property
    def asked_conditions(self) -> Sequence[Any]:
        return [self[key] for key in self.fields if key in KEYS]

    @property
    def gauge_rows(self) -> Sequence[Any]:
        return [self[key] for key in self.fields if key.startswith("gauge_")]

    @property
    def gauge_faults(self) -> bool:
        return any(name.startswith("gauge_") for name in self.errors)

    @property
    def way_rows(self) -> Sequence[Any]:
        return [self[key] for key in line_way.NAMES]

    @property
    def way_open(self) -> bool:
        return any(self[key].value() or self[key].errors for key in line_way.NAMES)

    def started(self) -> dict[str, Any]:
        return conditions.started(self.desk, KEYS) | as_last_time(self.desk.request)

    def started_again(self, old: Block) -> dict[str, Any]:
        if old.kind != "reading":
            return super().started_again(old)
        kinds = {value.kind for value in old.part.values.all()}
        setting = HARD_ON if "pull_full" in kinds else PART_WAY
        written = conditions.as_fields(old.part.conditions)
        return super().started_again(old) | written | of_old(self, old, OWN) | {"setting": setting}

    def read_signal(self, data: bytes, name: str, answers: Mapping[str, Any]) -> Any:
        return pull_trace.read(data, name=name, form=TraceForm(**answers))

    def clean(self) -> dict[str, Any]:
        given = super().clean() or self.cleaned_data
        trace = self.read_file()
        gauge, way = gauge_of(self), line_way.way_of(self)
        if trace is not None and gauge is not None and way is not None:
            put_right, unsure = pull_corrections.corrected(trace, gauge, way)
            self.pulled = self.guarded(lambda: self._analysed(put_right, unsure, given.get("pull")))
        return given

    def _analysed(self, trace: Any, gauge: Gauge, number: int | None) -> Pulled:
        return Pulled(trace, pull_trace.analyse(trace, gauge, number), self.is_hard_on)

    def conditions(self) -> dict[str, Any]:
        return conditions.given(self.cleaned_data, KEYS)

    def _promised(self) -> Span | None:
        return promised_band.of_full_pull(self.desk) if self.is_hard_on else None

    @property
    def drawn(self) -> dict[str, Any] | None:
        """The chart and its numbers as they would be written."""
        if self.pulled is None:
            return None
        kept, desk = kept_pull(self.pulled.trace, self.pulled.read), self.desk
        results = [
            readings.Result(v.kind, Measured(v.value, v.uncertainty or 0.0, v.dimension))
            for v in values_of(self.pulled)
        ]
        return {
            "chart": pictures.pull_chart(kept, desk.system, self._promised()),
            "told": readings.told(
                results, self.conditions(), desk.tags, desk.system, "pull trace", setting_of(desk.sheet)
            ),
            "notes": kept.notes,
            "budget": pictures.budget_rows(kept.budget, desk.system),
            "found": list(_found(self.pulled.trace.found)),
            "pulls": kept.pulls,
        }


def _found(found: Any) -> Iterable[str]:
    """How the file was read, so that a wrong guess is seen before it is written."""
    yield f"{found.rows} rows, {found.delimiter} between the columns, decimal {found.decimal}"
    if found.time_column:
        yield f"time in column {found.time_column}, in {found.time_unit}"
    yield f"pull in column {found.force_column}, in {found.force_unit}"
    yield f"{found.rate:.3g} readings a second"
