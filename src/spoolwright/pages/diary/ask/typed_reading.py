"""A reading that is typed: caliper, scale, stopwatch, count, feel; with the conditions of its kind."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property
from typing import Any

from django import forms

from spoolwright import quantities
from spoolwright.bench.typed import TypedReading
from spoolwright.pages.diary.ask import conditions, instrument
from spoolwright.pages.diary.ask.ink_form import InkForm
from spoolwright.pages.diary.ask.tries import ScaleField, TriesField
from spoolwright.pages.diary.desk import Desk
from spoolwright.pages.diary.told import limits
from spoolwright.sheets.cautions import FAST_SPOOL, LINE_UNDER_LOAD
from spoolwright.sheets.reading_kinds import ReadingKind
from spoolwright.shop.acts.take_reading import Value
from spoolwright.shop.questions.blocks import Block
from spoolwright.shop.questions.instruments import Shelved

CAUTIONS = {
    "force": (LINE_UNDER_LOAD,),
    "spin": (FAST_SPOOL,),
    "anti_reverse_slips": ("A handle that slips back strikes the hand: flat hand, thumb outside.",),
}


class TypedReadingForm(InkForm):
    """One kind of reading, up to three tries."""

    template = "diary/ask/_typed_reading.html"
    button = "Write the reading"

    def __init__(self, desk: Desk, kind: ReadingKind, *, sent: bool = True, heading: str = "") -> None:
        self.kind = kind
        self.title = heading or kind.title
        super().__init__(desk, sent=sent)

    def lay_out(self) -> None:
        asked = ScaleField if self.kind.scale else TriesField
        told = "" if self.kind.scale else "Up to three tries; the diary keeps each and their mean."
        values = asked(self.kind, label=self.kind.title, help_text=told)
        tools = None if self.kind.scale else instrument.instrument_field(self.kind.dimension)
        own: dict[str, forms.Field] = {"values": values} | ({"instrument": tools} if tools else {})
        self.fields = own | conditions.fields(self.kind.conditions, self.desk.sheet) | self.fields
        self.order_fields(list(own))
        if isinstance(values, TriesField) and self.tool:
            values.instrument = self.tool.measuring(self.kind.dimension)

    @cached_property
    def tool(self) -> Shelved | None:
        """The one of the shop's own that was chosen."""
        return instrument.chosen(self)

    @property
    def tool_field(self) -> Any:
        return self["instrument"] if "instrument" in self.fields else None

    @property
    def cautions(self) -> tuple[str, ...]:  # type: ignore[override]
        spins = CAUTIONS["spin"] if self.kind.way == "spin-down" else ()
        return CAUTIONS.get(self.kind.id, ()) or CAUTIONS.get(self.kind.dimension, ()) or spins

    @property
    def asked_conditions(self) -> Sequence[Any]:
        return [self[key] for key in self.fields if key in self.kind.conditions]

    @property
    def limits(self) -> str:
        return limits.in_words(self.kind, self.desk.tags, self.desk.system)

    @property
    def action(self) -> str:
        return self.desk.typed_way(self.kind.id)

    @property
    def keep(self) -> str:
        return f"{super().keep} {self.kind.id}"

    def started(self) -> dict[str, Any]:
        found = conditions.started(self.desk, self.kind.conditions)
        field = self.fields.get("instrument")
        if isinstance(field, forms.ChoiceField):
            found["instrument"] = instrument.as_last_time(
                self.desk.request, self.kind.dimension, field, otherwise=instrument.NONE_OF_OURS
            )
        return found

    def started_again(self, old: Block) -> dict[str, Any]:
        if old.kind != "reading":
            return super().started_again(old)
        written = conditions.as_fields(old.part.conditions) | instrument.of_old(self, old)
        return super().started_again(old) | written | {"values": self._typed_before(old)}

    def _typed_before(self, old: Block) -> str:
        """What was typed, word for word where it is kept; else the tries in the reader's units."""
        own = [value for value in old.part.values.all() if value.kind == self.kind.id]
        said = next((value.typed_text for value in own if value.typed_text), "")
        if self.kind.scale:
            return str(round(own[0].value_si)) if own else ""
        tries = [value for value in own if value.repeat] or own
        return said or "; ".join(
            quantities.show(value.value_si, value.dimension, self.desk.system) for value in tries
        )

    def values_given(self) -> list[Value]:
        """The result, and the single tries where there was more than one."""
        read: TypedReading = self.cleaned_data["values"]
        measured, kind = read.measured, self.kind
        result = Value(
            kind.id, measured.value, kind.dimension, measured.uncertainty, self["values"].data or ""
        )
        if len(read.tries) == 1:
            return [result]
        return [
            result,
            *(Value(kind.id, each, kind.dimension, repeat=k) for k, each in enumerate(read.tries, 1)),
        ]

    def conditions(self) -> dict[str, Any]:
        return conditions.given(self.cleaned_data, self.kind.conditions)
