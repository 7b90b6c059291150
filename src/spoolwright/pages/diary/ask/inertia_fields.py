"""The inputs of a moment of inertia as fields: a number with its unit, tries where they are wanted."""

from __future__ import annotations

from typing import Any

from django import forms

from spoolwright import quantities
from spoolwright.bench import inertia
from spoolwright.bench.instrument import Instrument
from spoolwright.bench.propagation import Known
from spoolwright.bench.unreadable import Unreadable
from spoolwright.pages.diary.ask.tries import TriesInput
from spoolwright.pages.words.asked import QuantityInput
from spoolwright.sheets.inertia_methods import Asked

VIDEO, BY_HAND = "video", "hand"


class KnownField(forms.CharField):
    """Text in, the input with its uncertainty out, times as if read off a video."""

    def __init__(self, asked: Asked, **kwargs: Any) -> None:
        of_several = asked.dimension == "time"
        widget = TriesInput(asked.dimension) if of_several else QuantityInput(asked.dimension)
        such_as = f"Such as {asked.example}."
        super().__init__(
            widget=widget,
            label=asked.words,
            help_text=f"{asked.hint} {such_as}".strip(),
            max_length=1000,
            **kwargs,
        )
        self.asked = asked

    def to_python(self, value: Any) -> Any:
        text = super().to_python(value)
        return None if text in self.empty_values else self.known(text)

    def run_validators(self, value: Any) -> None:
        """The bench has looked at it already."""

    def known(self, text: str, *, by_hand: bool = False, tool: Instrument | None = None) -> Known:
        try:
            return inertia.known(self.asked, text, by_hand=by_hand, instrument=tool)
        except quantities.NotAQuantity as fault:
            raise forms.ValidationError(str(fault)) from fault
        except Unreadable as fault:
            raise forms.ValidationError(fault.words) from fault


def timing_field() -> forms.ChoiceField:
    """How times were taken: a thumb is much less sure than the frames of a video."""
    return forms.ChoiceField(
        label="The times were taken",
        choices=(
            (VIDEO, "from a video, frame by frame, or from a recording"),
            (BY_HAND, "with a stopwatch in the hand"),
        ),
        widget=forms.RadioSelect,
        initial=VIDEO,
        help_text="A thumb that starts and stops leaves about a fifth of a second open (judgement prior).",
    )
