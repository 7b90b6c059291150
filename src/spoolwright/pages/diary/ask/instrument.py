"""Which of the shop's own instruments a reading was taken with: one field, as last time in this session."""

from __future__ import annotations

from collections.abc import Sequence

from django import forms
from django.http import HttpRequest

from spoolwright.shop.questions import instruments
from spoolwright.shop.questions.blocks import Block
from spoolwright.shop.questions.instruments import Shelved

KEPT = "instrument as last time"
NONE_OF_OURS = ""


def instrument_field(dimension: str, tools: Sequence[str] = ()) -> forms.ChoiceField | None:
    """The choice among those that measure such a thing, the fitting kinds first; None while there is none."""
    found = sorted(
        instruments.measuring(dimension),
        key=lambda one: tools.index(one.row.kind) if one.row.kind in tools else len(tools),
    )
    return field_of(
        found,
        "none of these: the usual tool for it",
        "Its own study, or what is stated of it, makes the uncertainty.",
    )


def field_of(found: Sequence[Shelved], none: str, told: str) -> forms.ChoiceField | None:
    """The choice among these, and none of them; None while there are none."""
    if not found:
        return None
    choices = [*((one.row.mark, one.called) for one in found), (NONE_OF_OURS, none)]
    return forms.ChoiceField(label="Taken with", required=False, choices=choices, help_text=told)


def chosen(form: forms.Form, field: str = "instrument") -> Shelved | None:
    """The instrument that was chosen, whether or not the rest of the form is sound."""
    if field not in form.fields or not form.is_bound:
        return None
    asked = form.data.get(field, "")
    known = {value for value, _ in form.fields[field].choices}  # type: ignore[attr-defined]
    return instruments.marked(asked) if asked and asked in known else None


def as_last_time(
    request: HttpRequest, dimension: str, field: forms.ChoiceField, *, otherwise: str | None = None
) -> str:
    """The mark chosen last for such a thing, if it is still on offer; else the first, or `otherwise`."""
    marks = [str(value) for value, _ in field.choices]  # type: ignore[misc]
    last = request.session.get(KEPT, {}).get(dimension)
    return last if last in marks else marks[0] if otherwise is None else otherwise


def of_old(form: forms.Form, old: Block, field: str = "instrument") -> dict[str, str]:
    """The one that took what is written again while it can be chosen, else none: not the first."""
    offered = form.fields.get(field)
    marks = [value for value, _ in offered.choices] if offered else []  # type: ignore[attr-defined]
    mark = old.part.instrument.mark if old.part.instrument else NONE_OF_OURS
    return {field: mark if mark in marks else NONE_OF_OURS}


def remember(request: HttpRequest, dimension: str, mark: str) -> None:
    request.session[KEPT] = {**request.session.get(KEPT, {}), dimension: mark}
