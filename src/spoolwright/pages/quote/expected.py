"""What is expected, as text: the middle, and the ends between which nine in ten will lie."""

from __future__ import annotations

from dataclasses import dataclass

from spoolwright import quantities
from spoolwright.judgement.prediction import Predicted
from spoolwright.pages.words import conditions, promised, shown
from spoolwright.sheets.drag_setting import STAR, DragSetting


@dataclass(frozen=True)
class Expected:
    """A predicted value ready to be set."""

    quantity: str
    middle: str
    span: str
    conditions: str


def expected(value: Predicted, system: str, kind: str = "", setting: DragSetting = STAR) -> Expected:
    """The middle is rounded to the same place as the ends; `kind` is the reading it stands for."""
    unit, width = promised.unit_of(kind), value.high - value.low
    middle = quantities.show(value.middle, value.dimension, system, width, unit).partition(" ±")[0]
    return Expected(
        quantity=value.quantity[:1].upper() + value.quantity[1:],
        middle=shown.unbroken(middle),
        span=shown.unbroken(quantities.show_interval(value.low, value.high, value.dimension, system, unit)),
        conditions=conditions.in_words(value.conditions, system, setting),
    )
