"""A pull, typed as it goes: each number of the scale with its second, drawn before it is written."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from django import forms

from spoolwright import quantities
from spoolwright.bench import live_pull, live_rows
from spoolwright.bench.gauge import Gauge
from spoolwright.bench.uncertainty import Measured
from spoolwright.bench.unreadable import Unreadable
from spoolwright.pages.diary.ask import conditions
from spoolwright.pages.diary.ask.gauge import (
    OWN,
    ForceField,
    as_last_time,
    gauge_fields,
    gauge_of,
    own_fields,
    own_of,
)
from spoolwright.pages.diary.ask.ink_form import InkForm
from spoolwright.pages.diary.ask.pull import HARD_ON, KEYS, PART_WAY, PullForm
from spoolwright.pages.diary.told import pictures, promised_band, readings
from spoolwright.sheets.cautions import LINE_UNDER_LOAD
from spoolwright.sheets.drag_setting import setting_of
from spoolwright.shop.acts.take_live_pull import TypedPull, values_of
from spoolwright.shop.questions.blocks import Block
from spoolwright.shop.questions.kept_live import kept_live
from spoolwright.shop.questions.signals import pull_of

LONGEST = 20_000
"""Letters of all rows: five hundred rows of a careful hand."""


class LivePullForm(InkForm):
    what = "live"
    title = "A pull, typed as it goes"
    button = "Write the reading"
    template = "diary/ask/_live_pull.html"
    buttons = "diary/ask/_signal_buttons.html"
    cautions = (LINE_UNDER_LOAD,)
    looks_at = ("rows", "unit", "held", OWN, *gauge_fields())

    unit = forms.ChoiceField(label="The scale shows")
    rows = forms.CharField(
        label="The numbers as they come",
        max_length=LONGEST,
        help_text=(
            "One row a number: the seconds since the start, a space, what the scale shows, such as 2.4 3.35. "
            "The highest as the line starts to run, then three or more while it runs."
        ),
        widget=forms.Textarea({"rows": 6, "inputmode": "text", "autocomplete": "off", "spellcheck": "false"}),
        error_messages={"required": "No number was typed. Accepted: such as 2.4 3.35, one row a number."},
    )
    held = ForceField(
        label="The highest that the scale held",
        help_text="Where it holds its highest: it sees a start-up that an eye misses.",
    )
    setting = PullForm.base_fields["setting"]
    pulled: TypedPull | None = None

    def lay_out(self) -> None:
        force = quantities.DIMENSIONS["force"]
        own = force.imperial if self.desk.system == "imperial" else force.metric
        names = dict.fromkeys([*own, *(unit.name for unit in force.units)])
        self.fields["unit"].choices = [(name, name) for name in names if name]
        self.fields |= own_fields() | gauge_fields() | conditions.fields(KEYS, self.desk.sheet)
        self.fields["star_turns"].required = not self.is_hard_on

    @property
    def is_hard_on(self) -> bool:
        return self.is_bound and self.data.get("setting") == HARD_ON

    @property
    def asked_conditions(self) -> Sequence[Any]:
        return [self[key] for key in self.fields if key in KEYS]

    @property
    def gauge_rows(self) -> Sequence[Any]:
        return [self[key] for key in self.fields if key.startswith("gauge_")]

    @property
    def instrument(self) -> Any:
        """The shop's own instrument that it was taken with, if it was one."""
        own = own_of(self)
        return own.row if own else None

    @property
    def gauge_faults(self) -> bool:
        return any(name.startswith("gauge_") for name in self.errors)

    def started(self) -> dict[str, Any]:
        return conditions.started(self.desk, KEYS) | as_last_time(self.desk.request)

    def started_again(self, old: Block) -> dict[str, Any]:
        if old.kind != "reading":
            return super().started_again(old)
        kinds = {value.kind for value in old.part.values.all()}
        setting = HARD_ON if "pull_full" in kinds else PART_WAY
        written = conditions.as_fields(old.part.conditions) | {"rows": _rows_of(old), "unit": "N"}
        return super().started_again(old) | written | {"setting": setting}

    def clean(self) -> dict[str, Any]:
        given = super().clean() or self.cleaned_data
        gauge = gauge_of(self)
        if given.get("rows") and given.get("unit") and gauge is not None and "held" not in self._errors:
            self.pulled = self._read(given, gauge)
        return given

    def _read(self, given: dict[str, Any], gauge: Gauge) -> TypedPull | None:
        try:
            trace = live_rows.read(given["rows"], given["unit"])
            return TypedPull(trace, live_pull.analyse(trace, gauge, given.get("held")), self.is_hard_on)
        except Unreadable as fault:
            self.add_error("held" if "that was held" in fault.reason else "rows", fault.words)
            return None

    def conditions(self) -> dict[str, Any]:
        return conditions.given(self.cleaned_data, KEYS)

    @property
    def drawn(self) -> dict[str, Any] | None:
        """The chart and its numbers as they would be written."""
        if self.pulled is None:
            return None
        kept, desk = kept_live(self.pulled.trace, self.pulled.read), self.desk
        results = [
            readings.Result(v.kind, Measured(v.value, v.uncertainty or 0.0, v.dimension))
            for v in values_of(self.pulled)
        ]
        promised = promised_band.of_full_pull(desk) if self.is_hard_on else None
        told = readings.told(
            results, self.conditions(), desk.tags, desk.system, "pull trace", setting_of(desk.sheet)
        )
        found = self.pulled.trace.found
        return {
            "chart": pictures.pull_chart(kept, desk.system, promised),
            "told": told,
            "notes": kept.notes,
            "budget": pictures.budget_rows(kept.budget, desk.system),
            "found": [f"{found.rows} rows, seconds and {found.force_unit}"],
        }


def _rows_of(old: Block) -> str:
    """The rows of a pull that was typed before, in newtons; nothing of one that came from a file."""
    kept = pull_of(old.part)
    if kept is None or old.part.attachment_id is not None:
        return ""
    pairs = zip(kept.times, kept.forces, strict=True)
    return "\n".join(f"{at:.2f} {force:.2f}" for at, force in pairs)
