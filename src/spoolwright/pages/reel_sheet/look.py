"""What is asked of the drawing: how much line is on, names or sizes, the stack apart or together."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from django import forms

from spoolwright import quantities
from spoolwright.judgement import drag_train
from spoolwright.mechanics import spool
from spoolwright.pages.words.asked import QuantityField, ask_in
from spoolwright.papers.section_drawing import Shown
from spoolwright.sheets.reel_sheet import ReelSheet

WORDS = (("names", "names"), ("sizes", "sizes"))
STACK = (("apart", "pulled apart"), ("together", "together"))
SLACK = 1e-5
"""How far a typed level may lie beyond an end [m]: the ends are shown rounded."""
THREAD = 0.3e-3
"""Any thickness of line gives the same share [m]: only volumes count."""


class LookForm(forms.Form):
    """Everything has an answer already; what cannot be read leaves the drawing as it was."""

    level = QuantityField(
        "length", required=False, label="Line level", help_text="from the lip down to the line"
    )
    fill = forms.IntegerField(
        required=False,
        min_value=0,
        max_value=100,
        label="Line on the spool",
        widget=forms.NumberInput({"type": "range", "min": 0, "max": 100, "step": 1}),
    )
    was = forms.IntegerField(required=False, widget=forms.HiddenInput)
    words = forms.ChoiceField(required=False, choices=WORDS, label="On the drawing", widget=forms.RadioSelect)
    stack = forms.ChoiceField(required=False, choices=STACK, label="Drag stack", widget=forms.RadioSelect)

    use_required_attribute = False

    def __init__(self, data: Any = None, *, sheet: ReelSheet, system: str, initial: Any = None) -> None:
        super().__init__(data, initial=initial)
        ask_in(self, system)
        self.sheet, self.system = sheet, system

    def as_answered(self) -> LookForm:
        """To be shown: a level stands there already, so it is not one "if there is one"."""
        self.fields["level"].required = True
        return self

    def clean_level(self) -> float | None:
        level = self.cleaned_data["level"]
        if level is None or self.sheet.spool.line_level - SLACK <= level <= bare(self.sheet) + SLACK:
            return level
        typed = quantities.show(level, "length", self.system)
        ends = [
            quantities.show(end, "length", self.system)
            for end in (self.sheet.spool.line_level, bare(self.sheet))
        ]
        raise forms.ValidationError(
            f"{typed} below the lip is not on this spool. Accepted: {ends[0]} (full) to {ends[1]} (bare)."
        )


@dataclass(frozen=True)
class Look:
    """The drawing that was asked for.

    `level` is from the lip down to the line [m], `fill` the share of a full spool's line that is on.
    """

    fill: float
    level: float
    sizes: bool
    apart: bool
    slid: bool

    def shown(self, chosen: str) -> Shown:
        return Shown(dimensions=self.sizes, apart=self.apart, chosen=chosen)

    @property
    def percent(self) -> int:
        return round(100 * self.fill)


def bare(sheet: ReelSheet) -> float:
    """The level at a bare arbor: the whole depth of the spool [m]."""
    return (sheet.spool.flange_diameter - sheet.spool.arbor_diameter) / 2


def look_of(form: LookForm) -> Look:
    """The look that the form asks for; a field that was refused counts as not asked."""
    said = getattr(form, "cleaned_data", {})
    fill, was, level = said.get("fill"), said.get("was"), said.get("level")
    slid = fill is not None and fill != (100 if was is None else was)
    sheet = form.sheet
    if slid:
        share = fill / 100
    elif level is not None:
        share = share_at(sheet, level)
    else:
        share = 1.0
    return Look(
        share, level_at(sheet, share), said.get("words") == "sizes", said.get("stack") != "together", slid
    )


def share_at(sheet: ReelSheet, level: float) -> float:
    """Share of a full spool's line at this level below the lip."""
    room, radius = sheet.spool, sheet.spool.flange_diameter / 2 - level
    if radius <= room.arbor_radius:
        return 0.0
    whole, left = (
        spool.line_length(room.arbor_radius, top, room.width, THREAD) for top in (room.full_radius, radius)
    )
    return min(float(left / whole), 1.0)


def level_at(sheet: ReelSheet, share: float) -> float:
    """The level below the lip at this share of a full spool's line [m]."""
    return sheet.spool.flange_diameter / 2 - drag_train.radius_at_fill(sheet, share)


def settled(form: LookForm, look: Look) -> LookForm:
    """The form as it is shown: what was refused as typed, else every field at what the drawing shows."""
    if form.is_bound and not form.is_valid():
        return form.as_answered()
    initial = {
        "level": look.level,
        "fill": look.percent,
        "was": look.percent,
        "words": "sizes" if look.sizes else "names",
        "stack": "apart" if look.apart else "together",
    }
    return LookForm(sheet=form.sheet, system=form.system, initial=initial).as_answered()
