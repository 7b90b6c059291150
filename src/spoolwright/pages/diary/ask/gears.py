"""The gears' noise: which wheels, how fast the handle turned; judged and drawn before it is written."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import cached_property
from typing import Any

from django import forms

from spoolwright.bench import clicker, gear_noise, gears_on_sheet, recording, sound_kinds, ticks
from spoolwright.bench.gear_noise import Gears
from spoolwright.bench.recording import Recording
from spoolwright.pages.diary.ask.conditions import AboveNothing
from spoolwright.pages.diary.ask.signal_file import FILE, LABELS, SignalForm
from spoolwright.pages.diary.ask.taken_with import FIELD, TakenWith
from spoolwright.pages.gathered import noise
from spoolwright.shop.questions.blocks import Block
from spoolwright.shop.questions.kept_noise import KeptNoise, kept_gears, noise_of

HIGH, LOW, OTHER = "high", "low", "typed"
TURNING = (
    "Fingers, hair, sleeves and line stay off whatever turns. A motor on the handle has to be able to slip, "
    "with a hand on its switch."
)


class GearsForm(SignalForm, TakenWith):
    what = "gears"
    title = "The noise of the gears"
    button = "Write the reading"
    template = "diary/ask/_gears.html"
    way = "gear noise"
    cautions = (TURNING,)
    file_label = "The recording"
    file_hint = (
        "Sound or video as the phone saves it, the phone a hand’s breadth from the gears. Twenty turns of "
        "the handle, as even as they come, nothing else running in the room."
    )
    accepts = ",".join((*sound_kinds.ENDINGS, *sound_kinds.MEDIA))
    records = 30
    looks_at = (FILE, *LABELS, "wheels", "teeth", "speed", "clicks", FIELD)

    wheels = forms.ChoiceField(label="Which gears", widget=forms.RadioSelect)
    teeth = forms.CharField(
        label="Their teeth",
        required=False,
        max_length=40,
        help_text="Main gear, pinion, and a wheel between them if there is one: 98, 17.",
        widget=forms.TextInput({"autocomplete": "off"}),
    )
    speed = AboveNothing(
        "rotation",
        label="The speed of the handle",
        required=False,
        help_text="Within a fifth: 100 turns in a minute are 100 rpm.",
    )
    clicks = forms.IntegerField(
        label="Or the teeth of the spool’s clicker",
        required=False,
        min_value=2,
        max_value=200,
        widget=forms.NumberInput({"inputmode": "numeric", "autocomplete": "off"}),
        help_text="Where the clicker was on, its clicks give the speed.",
    )
    kept: KeptNoise | None = None

    def lay_out(self) -> None:
        super().lay_out()
        self.fields["wheels"].choices = [*self._of_sheet(), (OTHER, "others, their teeth typed below")]
        self.fields["wheels"].initial = self.fields["wheels"].choices[0][0]
        self.offer_instruments()
        self.ask_questions(self.questions)

    def _of_sheet(self) -> list[tuple[str, str]]:
        found = self.desk.sheet.gears if self.desk.sheet else None
        if found is None:
            return []
        ways = [(HIGH, f"by the reel’s sheet: {found.main_teeth} and {found.pinion_teeth} teeth")]
        if found.low_main_teeth and found.low_pinion_teeth:
            ways.append((LOW, f"its low gear: {found.low_main_teeth} and {found.low_pinion_teeth} teeth"))
        return ways

    def started(self) -> dict[str, Any]:
        return self.instrument_last_time()

    def started_again(self, old: Block) -> dict[str, Any]:
        if old.kind != "reading":
            return super().started_again(old)
        kept = noise_of(old.part)
        again = super().started_again(old) | self.instrument_of(old)
        return again | ({"speed": kept.speed} if kept else {})

    def read_signal(self, data: bytes, name: str, answers: Mapping[str, Any]) -> Recording:
        return recording.read(data, name=name)

    def clean(self) -> dict[str, Any]:
        given = super().clean() or self.cleaned_data
        typed, clicks = given.get("speed"), given.get("clicks")
        if not self._errors.keys() & {"speed", "clicks"} and bool(typed) == bool(clicks):
            reason = "Both were typed: one of them is enough." if typed else "No speed was typed."
            self.add_error("speed", f"{reason} Accepted: such as 100 rpm, or the clicker’s teeth.")
        gears = self._gears(given)
        sound = self.read_file()
        if gears and sound and not self._errors.keys() & {"speed", "clicks"}:
            self.kept = self.guarded(lambda: self._heard(sound, gears, given))
        return given

    def _gears(self, given: Mapping[str, Any]) -> Gears | None:
        chosen, sheet = given.get("wheels"), self.desk.sheet
        if not chosen or "teeth" in self._errors:
            return None
        if chosen == OTHER or sheet is None:
            return self._found(lambda: gears_on_sheet.typed(given.get("teeth") or ""), "teeth")
        return self._found(lambda: gears_on_sheet.at(sheet, low=chosen == LOW), "wheels")

    def _found(self, find: Callable[[], Gears], field: str) -> Gears | None:
        found: Gears | None = self.guarded(find, field)
        return found

    def _heard(self, sound: Recording, gears: Gears, given: Mapping[str, Any]) -> KeptNoise:
        speed = given.get("speed")
        if speed is None:
            spool = clicker.speed(ticks.find(sound), given["clicks"])
            speed = spool.value * gears.pinion / gears.main
        return kept_gears(gear_noise.listen(sound, gears, speed), gears)

    def conditions(self) -> dict[str, Any]:
        return {}

    @cached_property
    def drawn(self) -> dict[str, Any] | None:
        return noise.drawn(self.kept, self.desk.system) if self.kept else None
