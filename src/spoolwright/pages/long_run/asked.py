"""What is asked of the run: how the drag is set, how fast and far the fish runs, with which line."""

from __future__ import annotations

from typing import Any

from django import forms

from spoolwright.judgement import drag_train
from spoolwright.judgement.fish_run import FishRun
from spoolwright.pages.gathered import kept_known
from spoolwright.pages.gathered.line_field import LineField
from spoolwright.pages.gathered.sliders import PERCENT, SliderField, SliderForm
from spoolwright.pages.gathered.subject import Subject

BY_PULL, BY_CONTROL = "pull", "control"
LEAST_FILL, LEAST_PULL, STEP_OF_PULL = 0.05, 2.0, 1.0
"""Least line on the spool; least pull that a slider goes down to, and its step [N]."""
LEAST_WAY, STEP_OF_LEVER = 0.05, 0.05
_ORDINARY = FishRun()


class LongRunForm(SliderForm):
    """Everything has an answer: 100 m at 4 m/s against half of what the first state's drag gives."""

    by = forms.ChoiceField(label="The drag is set", widget=forms.RadioSelect, initial=BY_PULL)
    line = LineField()
    speed = SliderField(
        "speed", low=0.5, high=12.0, step=0.5, start=_ORDINARY.speed, label="The fish runs at"
    )
    distance = SliderField(
        "line_length", low=10.0, high=300.0, step=10.0, start=_ORDINARY.distance, label="How far it runs"
    )
    line_out = SliderField(
        "line_length", low=2.0, high=150.0, step=2.0, start=_ORDINARY.line_out, label="Line out before it"
    )
    fill = SliderField(
        "ratio", low=LEAST_FILL, high=1.0, step=0.05, start=1.0, units=PERCENT, label="Line on the spool"
    )

    def __init__(self, data: Any, subject: Subject) -> None:
        super().__init__(data, system=subject.system, starts={"fill": max(subject.fill, LEAST_FILL)})
        self.setting = subject.setting
        if subject.sheet.drag is None:
            self.fields.clear()
            return
        control = self.setting.control
        self.fields["by"].choices = [(BY_PULL, "to a pull"), (BY_CONTROL, f"by its {control}")]
        for name, field in (("pull", pull_field(subject)), ("turns", way_field(subject))):
            field.ask_in(subject.system)
            self.fields[name] = field
        self.order_fields(["by", "line", "pull", "turns", "speed", "distance", "line_out", "fill"])

    @property
    def fish(self) -> FishRun:
        """The run that is asked for, in SI."""
        by_control = self.value("by") == BY_CONTROL
        way = float(self.value("turns"))
        return FishRun(
            distance=round(float(self.value("distance")), 6),
            speed=round(float(self.value("speed")), 6),
            pull=None if by_control else round(float(self.value("pull")), 6),
            turns=round(way * (self.setting.whole if self.setting.is_lever else 1.0), 6)
            if by_control
            else None,
            fill=round(float(self.value("fill")), 6),
            line=self.value("line"),
            line_out=round(float(self.value("line_out")), 6),
        )


def pull_field(subject: Subject) -> SliderField:
    """From hardly any pull to the most that the first state's drag may give; it starts at half."""
    torque = kept_known.prediction(
        subject.sheet, subject.taken, subject.states[0].works, subject.system, subject.learned
    ).values.get("drag_torque")
    radius = drag_train.radius_at_fill(subject.sheet, max(subject.fill, LEAST_FILL))
    middle, high = (torque.middle / radius, torque.high / radius) if torque else (40.0, 80.0)
    step = STEP_OF_PULL if high < 100 else 5 * STEP_OF_PULL
    return SliderField(
        "force",
        low=LEAST_PULL,
        high=max(high, 4 * LEAST_PULL),
        step=step,
        start=max(middle / 2, LEAST_PULL),
        label="Pull as the run begins",
        units={"metric": "kg", "imperial": "lb"},
    )


def way_field(subject: Subject) -> SliderField:
    """The way of the drag's own control, from almost free to hard on."""
    setting = subject.setting
    if setting.is_lever:
        return SliderField(
            "ratio",
            low=LEAST_WAY,
            high=1.0,
            step=STEP_OF_LEVER,
            start=0.5,
            units=PERCENT,
            label="Way of the lever",
        )
    whole, step = setting.whole, 0.25 if setting.whole <= 8 else 0.5
    label = f"{setting.control.capitalize()}, from free"
    return SliderField("score", low=step, high=whole, step=step, start=whole / 2, after="turns", label=label)
