"""What is asked about an instrument: what it is, what a check showed, why it is put away."""

from __future__ import annotations

from typing import Any

from django import forms

from spoolwright.pages.words.asked import DayField, QuantityField, ask_in
from spoolwright.sheets import instrument_kinds
from spoolwright.sheets.instrument_kinds import InstrumentKind, step_dimension
from spoolwright.shop.acts.add_instrument import Known
from spoolwright.shop.acts.check_instrument import HeldAgainst
from spoolwright.shop.questions.instruments import Shelved

MEASURES = {
    "length": "a length",
    "line_length": "a length of line",
    "force": "a pull",
    "mass": "a mass",
    "time": "a time",
    "temperature": "a temperature",
    "angle": "an angle",
    "rotation": "a speed of turning",
    "torque": "a torque",
}
"""Key of a dimension and what the bench calls it."""


class NotBelowZero(QuantityField):
    """A step or a limit of error: nothing below zero."""

    def to_python(self, value: Any) -> Any:
        size = super().to_python(value)
        if size is not None and size < 0:
            raise forms.ValidationError(f"“{value}” is below zero. Accepted: zero or more.")
        return size


class InstrumentForm(forms.Form):
    """What is known of an instrument; the usual of its kind stands in it to begin with."""

    def __init__(
        self, data: Any, *, kind: InstrumentKind, dimension: str, system: str, known: Any = None
    ) -> None:
        super().__init__(data)
        self.kind, self.dimension = kind, dimension
        step = step_dimension(dimension)
        if known is None:
            self.fields["mark"] = forms.CharField(
                label="Its mark", max_length=40, help_text="On a label or scratched in, such as C1."
            )
            self._offer_dimensions()
        self.fields |= _known_fields(dimension, step)
        self.initial = self._of(known) if known else self._usual()
        if known:
            self.fields["version"] = forms.IntegerField(widget=forms.HiddenInput)
        ask_in(self, system)

    def _offer_dimensions(self) -> None:
        if len(self.kind.dimensions) > 1:
            choices = [(key, MEASURES.get(key, key)) for key in self.kind.dimensions]
            self.fields["dimension"] = forms.ChoiceField(
                label="It measures", choices=choices, initial=self.dimension, widget=forms.RadioSelect
            )

    def _usual(self) -> dict[str, Any]:
        usual = self.dimension == self.kind.dimensions[0]
        return {
            "name": self.kind.title,
            "resolution": self.kind.resolution if usual and self.kind.resolution else None,
            "limit": self.kind.limit if usual and self.kind.limit else None,
            "share": self.kind.share or None,
        }

    def _of(self, known: Any) -> dict[str, Any]:
        return {
            "name": known.name,
            "serial": known.serial,
            "resolution": known.resolution_si,
            "limit": known.limit_si,
            "share": known.limit_share,
            "low": known.range_low_si,
            "high": known.range_high_si,
            "words": known.words,
            "version": known.number,
        }

    def known(self) -> Known:
        given = self.cleaned_data
        return Known(
            name=given["name"],
            resolution=given["resolution"] or 0.0,
            limit=given["limit"],
            share=given["share"],
            low=given["low"],
            high=given["high"],
            serial=given["serial"],
            words=given["words"],
        )


def _known_fields(dimension: str, step: str) -> dict[str, forms.Field]:
    return {
        "name": forms.CharField(label="What it is called", max_length=200),
        "serial": forms.CharField(label="Serial number", max_length=100, required=False),
        "resolution": NotBelowZero(step, label="Its smallest step", required=False),
        "limit": NotBelowZero(step, label="Right to within, as its maker says", required=False),
        "share": NotBelowZero("ratio", label="And to within, of what it shows", required=False),
        "low": QuantityField(dimension, label="It measures from", required=False),
        "high": QuantityField(dimension, label="up to", required=False),
        "words": forms.CharField(
            label="Anything else, in words",
            required=False,
            max_length=4000,
            widget=forms.Textarea({"rows": 2}),
        ),
    }


class CheckForm(forms.Form):
    """One check: against what, what that should show, what it showed."""

    def __init__(self, data: Any, *, of: Shelved, system: str) -> None:
        super().__init__(data)
        dimension = of.row.dimension
        self.fields |= {
            "against": forms.CharField(
                label="Held against", max_length=200, help_text=of.kind.check, strip=True
            ),
            "nominal": QuantityField(dimension, label="It should show"),
            "found": QuantityField(dimension, label="It showed"),
            "uncertainty": NotBelowZero(
                step_dimension(dimension),
                label="How sure that is, give or take",
                help_text="Of what it was held against, for about 95 of 100; half of it is the standard one.",
            ),
            "day": DayField(label="On", required=False, help_text="Left empty: today."),
            "words": forms.CharField(
                label="In words", required=False, max_length=4000, widget=forms.Textarea({"rows": 2})
            ),
        }
        ask_in(self, system)

    def held(self) -> HeldAgainst:
        given = self.cleaned_data
        return HeldAgainst(
            against=given["against"],
            nominal=given["nominal"],
            found=given["found"],
            uncertainty=given["uncertainty"] / 2,
            day=given["day"],
            words=given["words"],
        )


class PutAwayForm(forms.Form):
    why = forms.CharField(
        label="Why it is put away", max_length=1000, help_text="What was measured with it keeps its name."
    )


def kinds() -> list[InstrumentKind]:
    return list(instrument_kinds.kinds().values())
