"""Words for where a drag stands: turns of a star or a knob from free, or the way of a lever."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from spoolwright.sheets.reel_sheet import ReelSheet


@dataclass(frozen=True)
class DragSetting:
    """What sets a drag, how much of it there is to full, and how one place on that way is said.

    A lever counts its way in shares of the whole: 0 is free, `whole` is full.
    """

    control: str = "star"
    whole: float = 1.0
    angle: float | None = None

    @property
    def is_lever(self) -> bool:
        return self.control == "lever"

    @property
    def along(self) -> str:
        """What a column or an axis counts."""
        if self.is_lever:
            return "way of the lever from free, 1 is full"
        return f"turns of the {self.control} from free"

    @property
    def by(self) -> str:
        """What a table or a chart goes by: "turns of the star"."""
        return "the way of the lever" if self.is_lever else f"turns of the {self.control}"

    def at(self, turns: float) -> str:
        """One place on the way, in short: "2.5 turns", "70 % of its way"."""
        if self.is_lever:
            return f"{self.share(turns):.0%} of its way".replace("%", " %")
        return f"{turns:g} turn{'' if turns == 1 else 's'}"

    def stands(self, turns: float) -> str:
        """ "star 2.5 turns from free", "lever at 70 % of its way"."""
        return f"lever at {self.at(turns)}" if self.is_lever else f"{self.control} {turns:g} turns from free"

    def share(self, turns: float) -> float:
        """The share of the whole way."""
        return turns / self.whole


STAR = DragSetting()
"""What is meant where no sheet says what sets the drag."""


def setting_of(sheet: ReelSheet | None) -> DragSetting:
    """What sets this reel's drag; a star where the sheet says nothing of it."""
    drag = sheet.drag if sheet else None
    if drag is None:
        return STAR
    return DragSetting(drag.control, drag.turns_to_full, drag.lever.cam_angle if drag.lever else None)
