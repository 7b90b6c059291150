"""Take a series of pulls: over settings, one after the other, or slow and fast; its pulls kept beside it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from spoolwright.shop.acts.open_diary import NOTHING_BESIDE, Beside, Written
from spoolwright.shop.acts.take_reading import Signal, Value, take_reading
from spoolwright.shop.questions.kept_series import KeptSeries
from spoolwright.shop.records.attachment import Attachment
from spoolwright.shop.records.instrument import Instrument
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.visit import Visit


def values_of(kept: KeptSeries) -> Sequence[Value]:
    """What is written down of a series; the single pulls stay with what is kept of it."""
    return [Value(kind, it.value, it.dimension, it.uncertainty) for kind, it in kept.results]


def take_series(
    *,
    hand: Person,
    visit: Visit,
    kept: KeptSeries,
    conditions: Mapping[str, Any],
    attachment: Attachment | None = None,
    instrument: Instrument | None = None,
    beside: Beside = NOTHING_BESIDE,
) -> Written:
    """`attachment` is the table that pulls were read from, `instrument` the scale if it is one of ours."""
    return take_reading(
        hand=hand,
        visit=visit,
        values=values_of(kept),
        conditions=conditions,
        way="pull series",
        signal=Signal(attachment, kept.as_data(), instrument),
        beside=beside,
    )
