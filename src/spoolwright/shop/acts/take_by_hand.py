"""Take a size by hand: the value, with which of our instruments, and what its limits say of the part."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from spoolwright.shop.acts.open_diary import NOTHING_BESIDE, Beside, Written
from spoolwright.shop.acts.take_reading import Signal, Value, take_reading
from spoolwright.shop.records.instrument import Instrument
from spoolwright.shop.records.kept_by_hand import KeptByHand
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.visit import Visit


@dataclass(frozen=True)
class ByHand:
    """The values as a reading takes them, what is kept beside them, the instrument if it is one of ours."""

    values: Sequence[Value]
    kept: KeptByHand
    instrument: Instrument | None = None


def take_by_hand(
    *,
    hand: Person,
    visit: Visit,
    taken: ByHand,
    conditions: Mapping[str, Any],
    beside: Beside = NOTHING_BESIDE,
) -> Written:
    """The part that was measured is the place of the reading, unless a place was named."""
    place = {"place_measured": taken.kept.title} if taken.kept.title else {}
    return take_reading(
        hand=hand,
        visit=visit,
        values=taken.values,
        conditions={**place, **conditions},
        way="by hand",
        signal=Signal(analysis=taken.kept.as_data(), instrument=taken.instrument),
        beside=beside,
    )
