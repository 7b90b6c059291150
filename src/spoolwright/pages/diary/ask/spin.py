"""A spin-down: the spool's ticks, what turns, the conditions; drawn before it is written."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Any

from django import forms

from spoolwright.bench import recording, sound_kinds, spin_clock, spin_reading, ticks
from spoolwright.bench.spin_down import SpinDown
from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.free_spin import bare_inertia
from spoolwright.judgement.spin_verdict import SpinVerdict, spin_verdict
from spoolwright.pages.diary.ask import as_measured, conditions
from spoolwright.pages.diary.ask.conditions import AboveNothing
from spoolwright.pages.diary.ask.signal_file import FILE, LABELS, SignalForm
from spoolwright.pages.diary.ask.taken_with import FIELD, TakenWith
from spoolwright.pages.diary.told import pictures, readings
from spoolwright.pages.words import shown
from spoolwright.sheets import reading_kinds
from spoolwright.sheets.cautions import FAST_SPOOL
from spoolwright.shop.acts.take_spin import values_of
from spoolwright.shop.questions.blocks import Block
from spoolwright.shop.questions.signals import kept_spin

KEYS = reading_kinds.kind("stop_time").conditions
ONE, SEVERAL, HUM = "one", "several", "hum"
HEARD_AS = (
    (ONE, "one tick a turn: a tab of tape against a card"),
    (SEVERAL, "several ticks a turn, as many as typed below: the clicker"),
    (HUM, "a hum that falls: no ticks, only the tone of the spool"),
)
FROM_SHEET, TYPED, UNKNOWN = "sheet", "typed", "unknown"
INERTIA_UNSURE = 0.05
"""Standard uncertainty of an inertia from a sheet or typed, as a share: judgement prior."""


class SpinForm(SignalForm, TakenWith):
    what = "spin"
    title = "A spin-down"
    button = "Write the reading"
    template = "diary/ask/_spin.html"
    way = "spin-down"
    of_instrument = "What is stated of its clock goes into the uncertainty."
    cautions = (FAST_SPOOL,)
    file_label = "The sound of the spool, or its ticks"
    file_hint = (
        "A recording in which each turn of the spool makes a tick, as the phone saves it: sound or video, up "
        "to 10 minutes. Or a CSV with the time of each tick. Let it fall here; the curve is drawn before "
        "anything is written."
    )
    accepts = ",".join((*sound_kinds.ENDINGS, *sound_kinds.MEDIA, ".csv", ".txt", "text/csv", "text/plain"))
    records = 60
    looks_at = (FILE, *LABELS, "heard_as", "marks", "inertia", "inertia_from", FIELD)

    heard_as = forms.ChoiceField(
        label="What is heard of a turn",
        choices=HEARD_AS,
        initial=ONE,
        required=False,
        widget=forms.RadioSelect,
    )
    marks = forms.IntegerField(
        label="Ticks, or waves of the hum, in one turn of the spool",
        min_value=1,
        max_value=60,
        initial=1,
        widget=forms.NumberInput({"inputmode": "numeric", "autocomplete": "off"}),
    )
    inertia_from = forms.ChoiceField(label="Moment of inertia of what turns", widget=forms.RadioSelect)
    inertia = AboveNothing(
        "inertia",
        label="The inertia, typed",
        required=False,
        help_text="Of the spool and all that turns with it, the line too if it is on.",
    )
    spun: SpinDown | None = None
    verdict: SpinVerdict | None = None
    sound_notes: tuple[str, ...] = ()

    def lay_out(self) -> None:
        super().lay_out()
        self.offer_instruments()
        self.fields |= conditions.fields(KEYS, self.desk.sheet)
        typed = (TYPED, "as typed below")
        unknown = (UNKNOWN, "not known: speed and time are written, the drags are not")
        choices = [*as_measured.choices(self.desk), *self._of_sheet(), typed, unknown]
        self.fields["inertia_from"].choices = choices
        self.fields["inertia_from"].initial = UNKNOWN if choices[0] is typed else choices[0][0]
        self.ask_questions(self.questions)

    def _of_sheet(self) -> list[tuple[str, str]]:
        if self.desk.sheet is None:
            return []
        amount = shown.quantity(bare_inertia(self.desk.sheet), "inertia", self.desk.system)
        return [(FROM_SHEET, f"the bare spool’s by the reel’s sheet, {amount}; only with the line off")]

    @property
    def asked_conditions(self) -> Sequence[Any]:
        return [self[key] for key in self.fields if key in KEYS]

    def started(self) -> dict[str, Any]:
        return conditions.started(self.desk, KEYS) | self.instrument_last_time()

    def started_again(self, old: Block) -> dict[str, Any]:
        if old.kind != "reading":
            return super().started_again(old)
        written = conditions.as_fields(old.part.conditions)
        return super().started_again(old) | written | self.instrument_of(old)

    def read_signal(self, data: Any, name: str, answers: Mapping[str, Any]) -> Any:
        """Sound, or tick times from text: the first bytes say which."""
        if recording.is_sound(data):
            sound = recording.read(data, name=name)
            self.sound_notes = sound.notes
            return sound
        asked = {key: answers[key] for key in ("time_unit", "time_column") if key in answers}
        return ticks.read_csv(data, name=name, marks=self._a_turn(self.data), **asked)

    def clean(self) -> dict[str, Any]:
        given = super().clean() or self.cleaned_data
        heard = self.read_file()
        inertia = self._inertia(given)
        if heard is not None and not self._errors.keys() & {"inertia", "inertia_from", "marks"}:
            self.spun = self.guarded(lambda: self._fitted(heard, inertia, given))
        if self.spun is not None:
            bare = given.get("line") == "off" and given.get("brakes") in ("off", "none")
            steps = spin_reading.steps(self.spun)
            self.verdict = spin_verdict(self.spun, steps, self.desk.sheet, bare=bare, system=self.desk.system)
        return given

    def _fitted(self, heard: Any, inertia: Measured | None, given: Mapping[str, Any]) -> SpinDown:
        way = "hum" if given.get("heard_as") == HUM else "ticks"
        spun = spin_reading.read(heard, inertia, heard_as=way, a_turn=self._a_turn(given))
        return spin_clock.with_clock(replace(spun, notes=(*self.sound_notes, *spun.notes)), self.clock_share)

    @staticmethod
    def _a_turn(given: Mapping[str, Any]) -> int:
        """Ticks or waves in one turn; one where that was chosen, whatever stands in the box."""
        typed = str(given.get("marks") or 1)
        return int(typed) if given.get("heard_as") != ONE and typed.isdigit() else 1

    def _inertia(self, given: Mapping[str, Any]) -> Measured | None:
        """The inertia that was chosen; a fault where it cannot be the one that turned."""
        chosen = given.get("inertia_from")
        if chosen == as_measured.MEASURED:
            return self._measured(line_on=given.get("line") == "on")
        if chosen == FROM_SHEET and self.desk.sheet is not None:
            if given.get("line") == "on":
                words = "That is the bare spool’s inertia. With the line on, type the inertia of both."
                self.add_error("inertia_from", words)
                return None
            return _unsure(bare_inertia(self.desk.sheet))
        if chosen == TYPED and given.get("inertia") is None and "inertia" not in self._errors:
            self.add_error(
                "inertia", "No inertia was typed. Accepted: such as 24 g cm^2, or choose “not known”."
            )
        return _unsure(given["inertia"]) if chosen == TYPED and given.get("inertia") else None

    def _measured(self, *, line_on: bool) -> Measured | None:
        """With its own uncertainty, where that very spool was measured."""
        found = as_measured.chosen(self.desk, line_on=line_on)
        if found is None:
            self.add_error("inertia_from", as_measured.not_measured(line_on=line_on))
        return found.measured if found else None

    def conditions(self) -> dict[str, Any]:
        return conditions.given(self.cleaned_data, KEYS)

    @property
    def drawn(self) -> dict[str, Any] | None:
        if self.spun is None:
            return None
        kept, desk = kept_spin(self.spun, self.verdict), self.desk
        results = [
            readings.Result(v.kind, Measured(v.value, v.uncertainty or 0.0, v.dimension))
            for v in values_of(self.spun)
        ]
        return {
            "chart": pictures.spin_chart(kept, desk.system),
            "told": readings.told(results, self.conditions(), desk.tags, desk.system, "spin-down"),
            "notes": kept.notes,
            "budget": pictures.budget_rows(kept.budget, desk.system, per_inertia=self.spun.per_inertia),
            "verdict": kept.verdict,
            "evidence": kept.evidence,
            "found": [pictures.heard(kept)],
        }


def _unsure(inertia: float) -> Measured:
    return Measured(inertia, INERTIA_UNSURE * inertia, "inertia")
