"""What is asked of the picture: which state, which line and how much of it, how far the drag is turned."""

from __future__ import annotations

from typing import Any

from django import forms

from spoolwright.pages.gathered.line_field import LineField
from spoolwright.pages.gathered.sliders import PERCENT, SliderField, SliderForm
from spoolwright.pages.gathered.subject import Subject

LEAST_FILL = 0.05
LEAST_WAY, STEP_OF_LEVER = 0.05, 0.05
LEAST_TURN, STEP_OF_STAR = 0.5, 0.1
TENSION = {"low": 0.5, "high": 50.0, "start": 6.0}
"""How tight a line is wound on [N]: from slack to more than a bench should; it starts as usual for braid."""


class CarriesForm(SliderForm):
    """Everything has an answer: today, a full spool, the drag hard on, no line reckoned."""

    state = forms.ChoiceField(
        label="Which ladder",
        widget=forms.RadioSelect,
        error_messages={
            "invalid_choice": "Nothing of this reel is called “%(value)s”. Accepted: the ways above."
        },
    )
    line = LineField()
    fill = SliderField(
        "ratio", low=LEAST_FILL, high=1.0, step=0.05, start=1.0, units=PERCENT, label="Line on the spool"
    )
    tension = SliderField("force", step=0.5, label="Line wound on under", **TENSION)

    def __init__(self, data: Any, subject: Subject) -> None:
        starts = {"fill": max(subject.fill, LEAST_FILL), "state": subject.states[0].key}
        super().__init__(data, system=subject.system, starts=starts)
        self.setting = subject.setting
        self.fields["state"].choices = [(state.key, state.words) for state in subject.states]
        if len(subject.states) == 1:
            del self.fields["state"]
        if subject.sheet.drag is not None:
            self.fields["turns"] = way_field(subject)
            self.fields["turns"].ask_in(subject.system)
            self.order_fields(["state", "line", "fill", "turns", "tension"])

    @property
    def turns(self) -> float | None:
        """How far the drag is turned from free, as its sheet counts; None where the reel has no drag."""
        if "turns" not in self.fields:
            return None
        return float(self.value("turns")) * (self.setting.whole if self.setting.is_lever else 1.0)


def way_field(subject: Subject) -> SliderField:
    """The way of the drag's own control, from almost free to hard on."""
    setting = subject.setting
    if setting.is_lever:
        return SliderField(
            "ratio",
            low=LEAST_WAY,
            high=1.0,
            step=STEP_OF_LEVER,
            start=1.0,
            units=PERCENT,
            label="Way of the lever",
        )
    whole = setting.whole
    label = f"{setting.control.capitalize()}, from free"
    return SliderField(
        "score", low=LEAST_TURN, high=whole, step=STEP_OF_STAR, start=whole, after="turns", label=label
    )
