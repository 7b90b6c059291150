"""A part measured by hand with a guide: what and how, its size when new beside it, what its limits say."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import cached_property
from typing import Any

from django import forms

from spoolwright.bench.typed import TypedReading
from spoolwright.judgement import hand_limits
from spoolwright.judgement.guard_band import call
from spoolwright.judgement.hand_limits import HandPart
from spoolwright.pages.diary.ask import conditions, instrument
from spoolwright.pages.diary.ask.conditions import AboveNothing
from spoolwright.pages.diary.ask.ink_form import InkForm
from spoolwright.pages.diary.ask.tries import TriesField
from spoolwright.pages.diary.desk import Desk
from spoolwright.pages.diary.told import by_hand
from spoolwright.papers import section_mark
from spoolwright.sheets import reading_kinds
from spoolwright.sheets.hand_guides import HandGuide, guides
from spoolwright.shop.acts.take_by_hand import ByHand
from spoolwright.shop.acts.take_reading import Value
from spoolwright.shop.questions.blocks import Block
from spoolwright.shop.questions.by_hand import KeptByHand, by_hand_of
from spoolwright.shop.questions.instruments import Shelved


class HandChooser(InkForm):
    """Not sent anywhere: what can be measured by hand, each a way to its guide."""

    what = "reading"
    title = "What is measured?"
    template = "diary/ask/_hand_chooser.html"
    own_move = False
    own_files = False

    @property
    def guides(self) -> list[tuple[str, str]]:
        return [(self.desk.way("hand", guide=guide.id), guide.title) for guide in guides().values()]


class ByHandForm(InkForm):
    """One guide: the part, the instrument, the tries; then the verdict, before it is written."""

    what = "hand"
    button = "Write the reading"
    template = "diary/ask/_by_hand.html"
    buttons = "diary/ask/_by_hand_buttons.html"
    looks_at = ("part", "instrument", "values", "new_size")

    def __init__(self, desk: Desk, guide: HandGuide, *, sent: bool = True) -> None:
        self.guide, self.kind = guide, reading_kinds.kind(guide.kind)
        self.title = guide.title
        super().__init__(desk, sent=sent)

    def lay_out(self) -> None:
        own: dict[str, forms.Field] = {}
        if len(self.parts) > 1:
            choices = [(part.key, part.title) for part in self.parts]
            own["part"] = forms.ChoiceField(label="Which one", choices=choices)
        tools = instrument.instrument_field(self.kind.dimension, self.guide.tools)
        if tools:
            own["instrument"] = tools
        if self._asks_for_new:
            hint = "From a new one, or from the other side; without it there is no limit to hold it against."
            own["new_size"] = AboveNothing(
                self.kind.dimension, label="Its size when new", required=False, help_text=hint
            )
        asked = TriesField(self.kind, label=self.kind.title, help_text="Up to three tries; each is kept.")
        own["values"] = asked
        self.fields = own | conditions.fields(self._keys, self.desk.sheet) | self.fields
        self.order_fields(list(own))
        # The uncertainty of the tries is that of the instrument, so it has to be known before they are read.
        asked.instrument = self.tool.measuring(self.kind.dimension) if self.tool else None

    @property
    def _keys(self) -> tuple[str, ...]:
        return tuple(key for key in self.kind.conditions if key != "place_measured")

    @property
    def _asks_for_new(self) -> bool:
        by_size = self.guide.rule in ("share of a disc", "tip of a tooth")
        known = hand_limits.parts_of(self.guide, self.desk.sheet, self.desk.tags)
        return by_size and any(part.new is None for part in known)

    @cached_property
    def parts(self) -> tuple[HandPart, ...]:
        """The parts on this reel, with what is known of each."""
        return hand_limits.parts_of(self.guide, self.desk.sheet, self.desk.tags)

    @cached_property
    def tool(self) -> Shelved | None:
        return instrument.chosen(self)

    @property
    def part(self) -> HandPart:
        """The part that was chosen, with its size when new if that was typed."""
        asked = self.data.get("part") if self.is_bound else self.initial.get("part")
        new = self.cleaned_data.get("new_size") if hasattr(self, "cleaned_data") else None
        known = hand_limits.parts_of(self.guide, self.desk.sheet, self.desk.tags, new) if new else self.parts
        return next((part for part in known if part.key == asked), known[0])

    @property
    def beside_it(self) -> Sequence[by_hand.BesidePart]:
        """The parts with their size when new and their limits, to be read while measuring."""
        return by_hand.beside(self.parts, self.kind.dimension, self.desk.system)

    @property
    def part_field(self) -> Any:
        return self._bound("part")

    @property
    def tool_field(self) -> Any:
        return self._bound("instrument")

    @property
    def new_field(self) -> Any:
        return self._bound("new_size")

    @property
    def tries(self) -> Any:
        # Not by its name: a form has a "values" of its own in a template.
        return self["values"]

    def _bound(self, name: str) -> Any:
        return self[name] if name in self.fields else None

    @property
    def drawing(self) -> str:
        """Where the part lies, small, where the reel's sheet can draw it."""
        return section_mark.mark(self.desk.sheet, self.guide.part) if self.desk.sheet else ""

    @property
    def asked_conditions(self) -> Sequence[Any]:
        return [self[key] for key in self.fields if key in self._keys]

    @property
    def action(self) -> str:
        return self.desk.way("hand", guide=self.guide.id)

    @property
    def keep(self) -> str:
        return f"{super().keep} {self.guide.id}"

    def started(self) -> dict[str, Any]:
        found = conditions.started(self.desk, self._keys)
        field = self.fields.get("instrument")
        if isinstance(field, forms.ChoiceField):
            found["instrument"] = instrument.as_last_time(self.desk.request, self.kind.dimension, field)
        return found

    def started_again(self, old: Block) -> dict[str, Any]:
        kept = by_hand_of(old.part) if old.kind == "reading" else None
        if kept is None:
            return super().started_again(old)
        typed = next((value.typed_text for value in old.part.values.all() if value.typed_text), "")
        mark = instrument.of_old(self, old)["instrument"]
        found = {"part": kept.part, "values": typed, "instrument": mark, "new_size": kept.new}
        return super().started_again(old) | conditions.as_fields(old.part.conditions) | found

    def taken(self) -> ByHand:
        """What the act is given."""
        read: TypedReading = self.cleaned_data["values"]
        kind = self.kind
        result = Value(
            kind.id, read.measured.value, kind.dimension, read.measured.uncertainty, self["values"].data or ""
        )
        tries = [Value(kind.id, each, kind.dimension, repeat=k) for k, each in enumerate(read.tries, 1)]
        values = [result, *(tries if len(tries) > 1 else [])]
        return ByHand(values, self.kept(read), self.tool.row if self.tool else None)

    def kept(self, read: TypedReading) -> KeptByHand:
        part = self.part
        return KeptByHand(
            guide=self.guide.id,
            part=part.key,
            title=part.title,
            source=part.source,
            instrument=self.tool.called if self.tool else self.kind.tool,
            new=part.new,
            new_source=part.new_source,
            limits=part.limits,
            call=call(read.measured, part.limits) if part.limits else None,
            budget=read.budget,
        )

    @property
    def looked(self) -> by_hand.Said | None:
        """The verdict as it would be written; None until there is a size."""
        read = self.cleaned_data.get("values") if self.is_bound and hasattr(self, "cleaned_data") else None
        return by_hand.said(self.kept(read), read.measured, self.desk.system) if read else None

    def conditions(self) -> Mapping[str, Any]:
        return conditions.given(self.cleaned_data, self._keys)
