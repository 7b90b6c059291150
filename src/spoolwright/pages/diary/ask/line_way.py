"""The line's way to the gauge: zero before and after, a pulley tried both ways, an angle; put right first."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from django import forms

from spoolwright.bench.budget import ROUNDING
from spoolwright.bench.pull_corrections import ANGLE_UNSURE, LineWay, Pulley, angle_factor, pulley
from spoolwright.bench.uncertainty import Measured
from spoolwright.bench.unreadable import Unreadable
from spoolwright.pages.diary.ask.gauge import ForceField
from spoolwright.pages.words.asked import QuantityField
from spoolwright.quantities import read_typed

NAMES = ("zero_before", "zero_after", "pulley_up", "pulley_down", "line_angle")


def way_fields() -> dict[str, forms.Field]:
    return {
        "zero_before": QuantityField(
            "force",
            required=False,
            label="Line slack, before the pull it shows",
            help_text="Also where that is nothing, such as 0.00 kg.",
        ),
        "zero_after": QuantityField("force", required=False, label="Line slack, afterwards it shows"),
        "pulley_up": ForceField(
            label="Pulley: the pull that lifts a weight",
            help_text="Over the pulley on the line’s way, steadily; then let the same weight down.",
        ),
        "pulley_down": ForceField(label="Pulley: the pull that lets it down"),
        "line_angle": QuantityField(
            "angle",
            required=False,
            label="The line leaves askew by",
            help_text="The angle between the line and straight off the spool, up to 60 deg.",
        ),
    }


def way_of(form: forms.Form) -> LineWay | None:
    """What was typed of the line's way; None with the faults where they belong."""
    given = form.cleaned_data
    angle = given.get("line_angle")
    leaves = None if angle is None else Measured(angle, ANGLE_UNSURE, "angle")
    tried = _guarded(form, "pulley_up", lambda: _pulley(form))
    if leaves is not None:
        _guarded(form, "line_angle", lambda: angle_factor(leaves))
    if any(name in form.errors for name in NAMES):
        return None
    return LineWay(
        angle=leaves,
        pulley=tried.factor if tried else None,
        zero_before=_pull(form, "zero_before"),
        zero_after=_pull(form, "zero_after"),
    )


def _pulley(form: forms.Form) -> Pulley | None:
    up, down = _pull(form, "pulley_up"), _pull(form, "pulley_down")
    if up is None and down is None:
        return None
    if up is None or down is None:
        raise Unreadable("a pulley is tried both ways", "", "the pull up and the pull down, or neither")
    return pulley(up, down)


def _pull(form: forms.Form, name: str) -> Measured | None:
    """A pull read off a display: its last digit is all that is known of how sure it is."""
    value = form.cleaned_data.get(name)
    if value is None:
        return None
    field = form[name]
    typed = field.field.widget.value_from_datadict(form.data, form.files, field.html_name)
    return Measured(value, read_typed(typed, "force").resolution * ROUNDING, "force")


def _guarded(form: forms.Form, name: str, read: Callable[[], Any]) -> Any:
    try:
        return read()
    except Unreadable as fault:
        form.add_error(name, fault.words)
    return None
