"""Which of the shop's own instruments took a signal, or what an inertia is worked out from."""

from __future__ import annotations

from functools import cached_property
from typing import Any

from spoolwright.pages.diary.ask import instrument
from spoolwright.pages.diary.ask.ink_form import InkForm
from spoolwright.shop.questions import instruments
from spoolwright.shop.questions.blocks import Block
from spoolwright.shop.questions.instruments import Shelved

FIELD = "instrument"
NONE = "none of these"
A_TIME = ("time", "rotation")
"""What an instrument measures whose stated share is that of its clock."""


class TakenWith(InkForm):
    """The choice of an instrument, optional, as last time; nothing is asked where the shop has none."""

    way = ""
    of_instrument = "It is named on the reading’s sheet, with its last check."

    @property
    def measures(self) -> tuple[str, ...]:
        """Dimensions of what may be taken with an instrument, beside what one records by itself."""
        return ()

    @property
    def remembered_as(self) -> str:
        return self.way

    def offer_instruments(self) -> None:
        found = instruments.taking(self.way, self.measures)
        field = instrument.field_of(found, NONE, self.of_instrument)
        if field:
            self.fields[FIELD] = field

    @cached_property
    def tool(self) -> Shelved | None:
        """The one of the shop's own that was chosen."""
        return instrument.chosen(self, FIELD)

    @property
    def tool_row(self) -> Any:
        return self.tool.row if self.tool else None

    @property
    def tool_field(self) -> Any:
        return self[FIELD] if FIELD in self.fields else None

    @property
    def clock_share(self) -> float:
        """How far off its clock may be, as a share; nothing where that is not stated."""
        tool = self.tool
        return (tool.known.limit_share or 0.0) if tool and tool.row.dimension in A_TIME else 0.0

    def instrument_last_time(self) -> dict[str, Any]:
        last = self.desk.request.session.get(instrument.KEPT, {}).get(self.remembered_as)
        field = self.fields.get(FIELD)
        marks = [value for value, _ in field.choices] if field else []  # type: ignore[attr-defined]
        return {FIELD: last if last in marks else instrument.NONE_OF_OURS}

    def instrument_of(self, old: Block) -> dict[str, str]:
        """The one that took what is written again."""
        return instrument.of_old(self, old, FIELD)

    def remember_instrument(self) -> None:
        if FIELD in self.fields:
            instrument.remember(self.desk.request, self.remembered_as, self.data.get(FIELD, ""))
