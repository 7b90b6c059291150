"""What is asked of the picture: what is thrown, how fast, into which wind, on which line and brake."""

from __future__ import annotations

from typing import Any

from django import forms

from spoolwright import quantities
from spoolwright.judgement.brake_setting import BrakeSetting
from spoolwright.judgement.line_said import read_line
from spoolwright.judgement.throw import Throw, usual_throw
from spoolwright.pages.gathered.sliders import PERCENT, SliderField, SliderForm
from spoolwright.pages.gathered.subject import Subject
from spoolwright.sheets.lines import line_material, line_names
from spoolwright.sheets.payloads import payload_names, payload_shape

PAYLOADS = {
    "low-profile multiplier": (0.003, 0.060, 0.001),
    "lever drag": (0.050, 0.600, 0.010),
    "fixed spool": (0.005, 0.200, 0.005),
}
USUAL_PAYLOADS = (0.010, 0.250, 0.005)
LEAST_FILL = 0.1
GRAMS = {"metric": "g", "imperial": "oz"}


NOT_OFFERED = {"invalid_choice": "Nothing here is called “%(value)s”. Accepted: what stands above."}


class CastsForm(SliderForm):
    """Everything has an answer: a throw as such a reel is usually asked for, the brake set for it."""

    state = forms.ChoiceField(label="Spool and line of", widget=forms.RadioSelect, error_messages=NOT_OFFERED)
    shape = forms.ChoiceField(
        label="Thrown",
        choices=[(name, payload_shape(name).title) for name in payload_names()],
        error_messages=NOT_OFFERED,
    )
    material = forms.ChoiceField(
        label="Line of",
        choices=[(name, line_material(name).title) for name in line_names()],
        error_messages=NOT_OFFERED,
    )
    payload = SliderField("mass", low=0.01, high=0.25, step=0.005, start=0.12, units=GRAMS, label="Its mass")
    speed = SliderField(
        "speed",
        low=10.0,
        high=80.0,
        step=1.0,
        start=45.0,
        label="Release speed",
        help_text="Of the payload, once the spool turns in step. Nobody has measured one: a guess.",
    )
    wind = SliderField(
        "speed",
        low=-12.0,
        high=12.0,
        step=1.0,
        start=0.0,
        label="Wind from behind",
        help_text="Below zero: in the face.",
    )
    diameter = SliderField(
        "length", low=0.1e-3, high=0.8e-3, step=0.02e-3, start=0.3e-3, label="Line diameter"
    )
    fill = SliderField(
        "ratio", low=LEAST_FILL, high=1.0, step=0.05, start=1.0, units=PERCENT, label="Line on the spool"
    )
    brake = SliderField(
        "ratio",
        low=0.0,
        high=1.0,
        step=0.02,
        start=0.5,
        units=PERCENT,
        label="Brake, of its hardest",
        help_text="It starts where the middle cast runs half of the slack that the lip allows.",
    )

    def __init__(self, data: Any, subject: Subject, share: float | None) -> None:
        """`share` is how the brake is set for the usual throw; None where the reel has none to set."""
        usual = starting_throw(subject)
        starts = {
            "state": subject.states[0].key,
            "shape": usual.shape,
            "material": usual.line,
            "payload": usual.payload,
            "speed": usual.speed,
            "diameter": usual.diameter,
            "fill": usual.fill,
            "brake": 0.0 if share is None else round(share / 0.02) * 0.02,
        }
        super().__init__(data, system=subject.system, starts=starts)
        mass = self.fields["payload"]
        mass.low, mass.high, mass.step = PAYLOADS.get(subject.sheet.reel.kind, USUAL_PAYLOADS)
        mass.ask_in(subject.system)
        self.fields["state"].choices = [(state.key, state.words) for state in subject.states]
        if share is None:
            del self.fields["brake"]
        if len(subject.states) == 1:
            del self.fields["state"]

    @property
    def state_key(self) -> str:
        return str(self.value("state")) if "state" in self.fields else ""

    @property
    def throw(self) -> Throw:
        """The throw that is asked for; where a reel has no brake to set, none is set."""
        brake = BrakeSetting(share=self.value("brake")) if "brake" in self.fields else BrakeSetting()
        return Throw(
            payload=self.value("payload"),
            speed=self.value("speed"),
            shape=self.value("shape"),
            wind=self.value("wind"),
            line=self.value("material"),
            diameter=self.value("diameter"),
            fill=self.value("fill"),
            brake=brake,
        )


def starting_throw(subject: Subject) -> Throw:
    """The usual throw of such a reel, with the line and fill that the other pictures were looked at with."""
    usual = usual_throw(subject.sheet.reel.kind)
    line, diameter = usual.line, usual.diameter or 0.3e-3
    measured = next((value for kind, value, *_ in subject.taken if kind == "line_diameter"), None)
    if subject.line:
        try:
            said = read_line(subject.line)
            line, measured = said.material.name, said.diameter
        except quantities.NotAQuantity:
            pass
    return Throw(
        payload=usual.payload,
        speed=usual.speed,
        shape=usual.shape,
        line=line,
        diameter=min(max(measured or diameter, 0.1e-3), 0.8e-3),
        fill=max(subject.fill, LEAST_FILL),
    )
