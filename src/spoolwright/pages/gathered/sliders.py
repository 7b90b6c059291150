"""A row of sliders as a form: each quantity can be slid with a thumb or typed with its unit.

    class LineForm(SliderForm):
        fill = SliderField("ratio", low=0, high=1, step=0.05, start=1, units=PERCENT, label="Line left")
        speed = SliderField("speed", low=1, high=6, step=0.5, start=4, label="Line speed")

    form = LineForm(request.GET, system=subject.system)
    form.value("fill")                  SI, whatever was typed or slid

A slider and its typed field are two controls of one quantity: `<name>_slide` stands where it was drawn
(`<name>_was`) or was moved, and where it was moved it counts before what is typed. What cannot be read keeps
what was typed beside its message, and the picture as it was.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from django import forms
from django.forms.boundfield import BoundField

from spoolwright import quantities
from spoolwright.pages.words.asked import BARE_NUMBER, QuantityField, QuantityInput

PERCENT = {"metric": "%", "imperial": "%"}
SLACK = 1e-9


@dataclass(frozen=True)
class Track:
    """The slider itself in the person's unit: ends, step, and the factor to SI."""

    low: float
    high: float
    step: float
    places: int
    unit: str
    factor: float
    offset: float

    def si(self, number: float) -> float:
        return number * self.factor + self.offset

    def number(self, value: float) -> float:
        return (value - self.offset) / self.factor

    def text(self, value: float) -> str:
        """The number alone, with the decimals of the track."""
        return f"{self.number(value) + 0.0:.{self.places}f}"

    def holds(self, value: float) -> bool:
        room = SLACK * (abs(self.high) + abs(self.low) + 1)
        return self.low - room <= self.number(value) <= self.high + room


def track(low: float, high: float, step: float, dimension: str, unit: str) -> Track:
    """A track from SI ends: its step a round number of the unit, its ends whole steps."""
    kind = quantities.DIMENSIONS[dimension].unit(unit)
    factor, offset = float(kind.factor), float(kind.offset)
    each = rounded(step / factor)
    ends = (
        math.floor((low - offset) / factor / each + SLACK),
        math.ceil((high - offset) / factor / each - SLACK),
    )
    places = max(0, -math.floor(math.log10(each) + SLACK))
    return Track(round(ends[0] * each, 9), round(ends[1] * each, 9), each, places, kind.name, factor, offset)


def rounded(step: float) -> float:
    """The nearest of 1, 2 and 5 times a power of ten."""
    power = 10.0 ** math.floor(math.log10(step))
    return float(f"{min((1, 2, 5, 10), key=lambda k: abs(k * power - step)) * power:.6g}")


class SliderInput(QuantityInput):
    """Two controls of one quantity in what a form sends; the slider counts where it was moved."""

    template_name = "_quantity_input.html"
    track: Track

    @property
    def unit_names(self) -> list[str]:
        own = [self.track.unit] if self.track.unit else []
        return list(dict.fromkeys([*own, *super().unit_names])) if self.dimension != "ratio" else own

    def value_from_datadict(self, data: Mapping[str, Any], files: Any, name: str) -> str:
        slid = moved(data, name)
        if slid is not None:
            return f"{slid} {self.track.unit}".strip()
        text = super().value_from_datadict(data, files, name)
        return f"{text} {self.track.unit}".strip() if BARE_NUMBER.fullmatch(text) else text


def moved(data: Mapping[str, Any], name: str) -> str | None:
    """Where the slider was moved to; None where it stands as it was drawn."""
    slide, was = (str(data.get(f"{name}_{end}") or "").strip() for end in ("slide", "was"))
    try:
        same = slide == was or float(slide) == float(was or "nan")
    except ValueError:
        return None
    return None if same or not slide else slide


class SliderField(QuantityField):
    """A quantity between two ends. `units` gives the unit of each system; without it the usual one."""

    def __init__(
        self,
        dimension: str,
        *,
        low: float,
        high: float,
        step: float,
        start: float,
        units: Mapping[str, str] | None = None,
        **words: Any,
    ) -> None:
        self.after = words.pop("after", "")
        super().__init__(dimension, widget=SliderInput(dimension), required=False, initial=start, **words)
        self.low, self.high, self.step, self.start = low, high, step, start
        self.units = dict(units or {})
        self.ask_in("metric")

    def ask_in(self, system: str) -> None:
        """Set the track to the person's units."""
        usual = quantities.show(self.high, self.dimension, system).partition(" ")[2]
        unit = self.units.get(system, usual)
        self.widget.system = system
        self.widget.track = track(self.low, self.high, self.step, self.dimension, unit)

    @property
    def track(self) -> Track:
        return self.widget.track  # type: ignore[no-any-return]

    @property
    def word(self) -> str:
        """The unit, or the word that stands for one: "turns"."""
        return self.track.unit or self.after

    def said(self, value: float) -> str:
        return " ".join(filter(None, (self.track.text(value), self.word)))

    def clean(self, value: Any) -> float:
        found = super().clean(value)
        if found is None:
            return self.start
        if not self.track.holds(found):
            ends = self.said(self.track.si(self.track.low)), self.said(self.track.si(self.track.high))
            raise forms.ValidationError(f"This is out of range. Accepted: {ends[0]} to {ends[1]}.")
        return float(found)

    def bound_data(self, data: Any, initial: Any) -> Any:
        """What was typed; where nothing was, the field shows where its slider stands."""
        return data or self.start

    def prepare_value(self, value: Any) -> Any:
        return f"{self.track.text(value)} {self.track.unit}".strip() if isinstance(value, float) else value


@dataclass(frozen=True)
class Slid:
    """One slider as it is set on the page."""

    bound: BoundField
    at: str
    said: str
    moved: bool

    @property
    def track(self) -> Track:
        return self.bound.field.track  # type: ignore[no-any-return]

    @property
    def word(self) -> str:
        return self.bound.field.word  # type: ignore[no-any-return]


class SliderForm(forms.Form):
    """A GET form of sliders and choices in which everything has an answer before anybody touches it."""

    use_required_attribute = False

    def __init__(self, data: Any, *, system: str, starts: Mapping[str, Any] | None = None) -> None:
        """`starts` are answers of this reel that go before the fields' own, such as its fill."""
        self.asked = dict((data or {}).items())
        super().__init__(self.asked, initial=dict(starts or {}))
        self.system = system
        for name, field in self.fields.items():
            start = self.get_initial_for_field(field, name)
            if isinstance(field, SliderField):
                field.start = float(start)
                field.ask_in(system)
            else:
                field.required = False
                self.asked.setdefault(name, start)

    def value(self, name: str) -> Any:
        """The answer in SI; where what was typed cannot be read, where the slider stood."""
        field = self.fields[name]
        self.is_valid()
        if isinstance(field, SliderField):
            return self.cleaned_data[name] if name in self.cleaned_data else self._stood(name, field)
        return (
            self.cleaned_data[name] if name in self.cleaned_data else self.get_initial_for_field(field, name)
        )

    def _stood(self, name: str, field: SliderField) -> float:
        try:
            stood = field.track.si(float(self.asked.get(f"{name}_was", "")))
        except ValueError:
            return field.start
        return stood if field.track.holds(stood) else field.start

    @property
    def sliders(self) -> list[Slid]:
        return [
            self._slid(name, field) for name, field in self.fields.items() if isinstance(field, SliderField)
        ]

    @property
    def choices(self) -> list[BoundField]:
        """Everything that is not a slider, to be set as any other field."""
        return [self[name] for name, field in self.fields.items() if not isinstance(field, SliderField)]

    def _slid(self, name: str, field: SliderField) -> Slid:
        value = float(self.value(name))
        return Slid(
            self[name], field.track.text(value), field.said(value), moved(self.asked, name) is not None
        )
