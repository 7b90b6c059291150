"""Two questions to a sheet: how much of this line goes on, and what would reach this pull."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING, Any

from django import forms

from spoolwright.judgement.line_fill import filled_with
from spoolwright.judgement.reaching import Way
from spoolwright.judgement.star_turns import TurnAdvice
from spoolwright.pages.reel_sheet import expected
from spoolwright.pages.reel_sheet.expected import Expected
from spoolwright.pages.words.asked import QuantityField, ask_in
from spoolwright.sheets.lines import line_material, line_names

if TYPE_CHECKING:
    from spoolwright.pages.reel_sheet.leaf import Leaf

LEAST_LINE, MOST_LINE = 0.05e-3, 3e-3
LINES = "0.05 mm to 3 mm, such as 0.35 mm"
PULLS = "a pull above zero, such as 18 lb or 8.2 kg"
USUAL = {"metric": "0.40 mm", "imperial": "0.0157 in"}


class LineForm(forms.Form):
    """A line by what it is made of and how thick a caliper finds it."""

    line = forms.ChoiceField(
        label="Line of",
        choices=[(name, line_material(name).title) for name in line_names()],
        error_messages={"invalid_choice": f"This is no line we know. Accepted: {', '.join(line_names())}."},
    )
    thick = QuantityField(
        "length",
        label="Diameter",
        error_messages={"required": f"Nothing was typed. Accepted: {LINES}."},
        help_text="Measured with a caliper; the label is often wrong (common practice).",
    )
    leaf: Leaf

    @classmethod
    def of(cls, leaf: Leaf) -> LineForm:
        form = cls(asked_of(leaf, cls), initial={"line": line_names()[0], "thick": USUAL[leaf.system]})
        ask_in(form, leaf.system)
        form.leaf = leaf
        return form

    def clean_thick(self) -> float:
        return between(self.cleaned_data["thick"], LEAST_LINE, MOST_LINE, LINES)

    @cached_property
    def answer(self) -> tuple[Expected, Expected, str] | None:
        """Length, mass and a word about such line; None where the question cannot be read."""
        capacity = self.leaf.value("line_capacity")
        said = self.cleaned_data if self.is_bound and self.is_valid() else None
        if capacity is None or (self.is_bound and said is None):
            return None
        material, diameter = (said["line"], said["thick"]) if said else (line_names()[0], 0.40e-3)
        filled = filled_with(capacity, diameter, material, self.leaf.system)
        length = expected.told(filled.length, "Line on a full spool", self.leaf.system)
        return length, expected.told(filled.mass, "It weighs", self.leaf.system), filled.note


class TargetForm(forms.Form):
    """A pull that somebody wants at a full spool."""

    target = QuantityField(
        "force",
        label="A pull at a full spool",
        help_text="such as 18 lb or 8.2 kg",
        error_messages={"required": f"Nothing was typed. Accepted: {PULLS}."},
    )
    leaf: Leaf

    @classmethod
    def of(cls, leaf: Leaf) -> TargetForm:
        form = cls(asked_of(leaf, cls))
        ask_in(form, leaf.system)
        form.leaf = leaf
        return form

    def clean_target(self) -> float:
        return between(
            self.cleaned_data["target"], 0.01, 5000.0, "a pull above zero, such as 18 lb or 8.2 kg"
        )

    @cached_property
    def answer(self) -> tuple[TurnAdvice, tuple[Way, ...]] | None:
        if not (self.is_bound and self.is_valid() and self.leaf.prediction.star_turns):
            return None
        leaf = self.leaf
        target = self.cleaned_data["target"]
        return expected.reaching(leaf.sheet, leaf.taken, target, leaf.system, leaf.learned)


def asked_of(leaf: Leaf, form: type[forms.Form]) -> Any:
    """The address where it asks this form's question, else nothing."""
    return leaf.asked if any(name in leaf.asked for name in form.base_fields) else None


def between(value: float | None, low: float, high: float, accepted: str) -> float:
    if value is None or not low <= value <= high:
        raise forms.ValidationError(f"This is out of range. Accepted: {accepted}.")
    return value
