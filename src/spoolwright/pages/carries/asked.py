"""What is asked of the picture: how much line is on, which state the ladder shows."""

from __future__ import annotations

from typing import Any

from django import forms

from spoolwright.pages.gathered.sliders import PERCENT, SliderField, SliderForm
from spoolwright.pages.gathered.subject import Subject


class CarriesForm(SliderForm):
    """Fill of the spool."""

    state = forms.ChoiceField(label="The ladder", widget=forms.RadioSelect)
    fill = SliderField(
        "ratio", low=0.0, high=1.0, step=0.05, start=1.0, units=PERCENT, label="Line on the spool"
    )

    def __init__(self, data: Any, subject: Subject) -> None:
        starts = {"fill": subject.fill, "state": subject.states[0].key}
        super().__init__(data, system=subject.system, starts=starts)
        self.fields["state"].choices = [(state.key, state.words) for state in subject.states]
