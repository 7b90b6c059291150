"""What is asked of the picture: how the reel is used, which part is drawn, how cold the morning is."""

from __future__ import annotations

from typing import Any

from django import forms

from spoolwright.judgement.cold_morning import WARMEST
from spoolwright.judgement.line_said import read_line
from spoolwright.judgement.worn_face import Use
from spoolwright.judgement.wound_line import EXAMPLE
from spoolwright.pages.gathered.line_field import LineField
from spoolwright.pages.gathered.sliders import PERCENT, SliderField, SliderForm
from spoolwright.pages.gathered.subject import Subject
from spoolwright.pages.wears import kept

ORDINARY = Use()
COLDEST_ASKED = 258.15


NOT_OFFERED = {"invalid_choice": "Nothing here is called “%(value)s”. Accepted: what stands above."}


class WearsForm(SliderForm):
    """Everything has an answer: an ordinary week, oiled, fresh water, a morning at freezing."""

    part = forms.ChoiceField(label="Drawn", widget=forms.RadioSelect, error_messages=NOT_OFFERED)
    oil = forms.ChoiceField(
        label="Kept",
        choices=[("oiled", "oiled"), ("dry", "dry")],
        initial="oiled",
        widget=forms.RadioSelect,
        error_messages=NOT_OFFERED,
    )
    water = forms.ChoiceField(
        label="Fished in", choices=[("fresh", "fresh water"), ("salt", "salt water")], initial="fresh",
        widget=forms.RadioSelect, error_messages=NOT_OFFERED,
    )  # fmt: skip
    casts = SliderField(
        "score", low=0.0, high=400.0, step=10.0, start=ORDINARY.casts, after="a week", label="Casts"
    )
    distance = SliderField(
        "line_length", low=5.0, high=150.0, step=5.0, start=ORDINARY.distance, label="Line out with each"
    )
    grit = SliderField(
        "ratio", low=0.0, high=0.2, step=0.005, start=ORDINARY.grit, units=PERCENT,
        label="Wound with sand in the works",
    )  # fmt: skip
    pull = SliderField("force", low=0.5, high=40.0, step=0.5, start=ORDINARY.pull, label="Pull while winding")
    fish = SliderField(
        "line_length",
        low=0.0,
        high=500.0,
        step=10.0,
        start=ORDINARY.fish,
        label="Line that fish take in a week",
    )
    morning = SliderField(
        "temperature", low=COLDEST_ASKED, high=WARMEST, step=1.0, start=273.15, label="A morning at"
    )
    top = SliderField("line_length", low=0.0, high=300.0, step=10.0, start=100.0, label="Top shot of it")
    line = LineField()

    def __init__(self, data: Any, subject: Subject) -> None:
        parts = kept.parts(subject)
        super().__init__(data, system=subject.system, starts={"part": parts[0][0] if parts else ""})
        self.fields["part"].choices = parts
        if len(parts) < 2:
            del self.fields["part"]

    @property
    def use(self) -> Use:
        """The week that is asked about."""
        return Use(
            casts=float(self.value("casts")),
            distance=float(self.value("distance")),
            pull=float(self.value("pull")),
            fish=float(self.value("fish")),
            grit=float(self.value("grit")),
            salt=self.value("water") == "salt",
            oiled=self.value("oil") != "dry",
        )

    @property
    def line_words(self) -> str:
        """The line that is on, or a common one where none is named."""
        return str(self.value("line")) or EXAMPLE

    @property
    def diameter(self) -> float:
        return read_line(self.line_words).diameter
