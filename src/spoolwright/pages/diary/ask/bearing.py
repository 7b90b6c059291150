"""A bearing's noise: which bearing, held at which speed or coasting; judged before it is written."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import cached_property
from typing import Any

from django import forms

from spoolwright.bench import bearing_noise, bearing_on_sheet, recording, sound_kinds
from spoolwright.bench.bearing_rates import Bearing
from spoolwright.bench.recording import Recording
from spoolwright.pages.diary.ask.conditions import AboveNothing
from spoolwright.pages.diary.ask.signal_file import FILE, LABELS, SignalForm
from spoolwright.pages.diary.ask.taken_with import FIELD, TakenWith
from spoolwright.pages.gathered import noise
from spoolwright.sheets.cautions import FAST_SPOOL
from spoolwright.shop.questions.blocks import Block
from spoolwright.shop.questions.kept_noise import KeptNoise, kept_bearing, noise_of

HELD, COAST = "held", "coast"
OTHER = "another"
MOTOR = (
    "A spool driven by a motor, however small, takes fingers, hair and sleeves: hold the reel fast, drive it "
    "through something that slips, keep a hand on the switch."
)
SIZES = ("balls", "ball_diameter", "pitch_diameter")


class BearingForm(SignalForm, TakenWith):
    what = "bearing"
    title = "The noise of a bearing"
    button = "Write the reading"
    template = "diary/ask/_bearing.html"
    way = "bearing noise"
    cautions = (MOTOR, FAST_SPOOL)
    file_label = "The recording"
    file_hint = (
        "Sound or video as the phone saves it, the phone a hand’s breadth from the bearing. Ten seconds of "
        "even turning; or a whole coast with a tab of tape that ticks once a turn, louder than all else."
    )
    accepts = ",".join((*sound_kinds.ENDINGS, *sound_kinds.MEDIA))
    records = 30
    looks_at = (FILE, *LABELS, "place", "turning", "speed", "marks", *SIZES, FIELD)

    place = forms.ChoiceField(label="Which bearing", widget=forms.RadioSelect)
    balls = forms.IntegerField(
        label="Its balls",
        required=False,
        min_value=3,
        max_value=40,
        widget=forms.NumberInput({"inputmode": "numeric", "autocomplete": "off"}),
        help_text="For another bearing, as counted.",
    )
    ball_diameter = AboveNothing("length", label="Diameter of a ball", required=False)
    pitch_diameter = AboveNothing(
        "length",
        label="Diameter of the circle of their middles",
        required=False,
        help_text="About half way between bore and outside.",
    )
    turning = forms.ChoiceField(
        label="It turned",
        choices=[(HELD, "at one speed, held"), (COAST, "coasting to rest, a tick each turn")],
        initial=HELD,
        widget=forms.RadioSelect,
    )
    speed = AboveNothing(
        "rotation",
        label="The speed it was held at",
        required=False,
        help_text="Of the spool, within 3 %. Nothing is needed for a coast.",
    )
    marks = forms.IntegerField(
        label="Ticks in one turn of the spool",
        required=False,
        min_value=1,
        max_value=50,
        initial=1,
        widget=forms.NumberInput({"inputmode": "numeric", "autocomplete": "off"}),
        help_text="Only for a coast.",
    )
    kept: KeptNoise | None = None

    def lay_out(self) -> None:
        super().lay_out()
        places = [(one.place, one.place) for one in (self.desk.sheet.bearings if self.desk.sheet else ())]
        self.fields["place"].choices = [*places, (OTHER, "another, its balls typed below")]
        self.fields["place"].initial = places[0][0] if places else OTHER
        self.offer_instruments()
        self.ask_questions(self.questions)

    def started(self) -> dict[str, Any]:
        return self.instrument_last_time()

    def started_again(self, old: Block) -> dict[str, Any]:
        if old.kind != "reading":
            return super().started_again(old)
        kept = noise_of(old.part)
        held = {"turning": HELD, "speed": kept.speed} if kept and kept.speed else {"turning": COAST}
        again = super().started_again(old) | self.instrument_of(old)
        return again | ({"place": kept.place} | held if kept else {})

    def read_signal(self, data: bytes, name: str, answers: Mapping[str, Any]) -> Recording:
        return recording.read(data, name=name)

    def clean(self) -> dict[str, Any]:
        given = super().clean() or self.cleaned_data
        if given.get("turning") == HELD and given.get("speed") is None and "speed" not in self._errors:
            self.add_error("speed", "No speed was typed. Accepted: such as 1200 rpm, or choose “coasting”.")
        bearing = self._bearing(given)
        sound = self.read_file()
        if bearing and sound and not self._errors.keys() & {"speed", "marks", "turning"}:
            self.kept = self.guarded(lambda: self._heard(sound, bearing, given))
        return given

    def _bearing(self, given: Mapping[str, Any]) -> Bearing | None:
        place = given.get("place")
        if self._errors.keys() & {"place", *SIZES} or not place:
            return None
        if place != OTHER and self.desk.sheet is not None:
            sheet = self.desk.sheet
            return self._sized(lambda: bearing_on_sheet.at(sheet, place)[0], "place")
        if missing := [name for name in SIZES if given.get(name) is None]:
            self.add_error(missing[0], "Missing: without it the rates of its knocks are not known.")
            return None
        sizes = (given["balls"], given["ball_diameter"], given["pitch_diameter"])
        return self._sized(lambda: bearing_on_sheet.typed(*sizes), "balls")

    def _sized(self, find: Callable[[], Bearing], field: str) -> Bearing | None:
        found: Bearing | None = self.guarded(find, field)
        return found

    def _heard(self, sound: Recording, bearing: Bearing, given: Mapping[str, Any]) -> KeptNoise:
        from spoolwright.bench import order_tracking, spin_down, ticks, turning

        place = "another bearing" if given["place"] == OTHER else given["place"]
        if given["turning"] == HELD:
            return kept_bearing(bearing_noise.listen(sound, bearing, given["speed"]), place, given["speed"])
        spin = spin_down.fit(ticks.mend(ticks.find(sound)), ticks_per_turn=given.get("marks") or 1)
        return kept_bearing(order_tracking.listen(sound, bearing, turning.of_coast(spin)), place, None)

    def conditions(self) -> dict[str, Any]:
        return {"place_measured": self.kept.place} if self.kept else {}

    @cached_property
    def drawn(self) -> dict[str, Any] | None:
        return noise.drawn(self.kept, self.desk.system) if self.kept else None
