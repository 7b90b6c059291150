"""Take a moment of inertia: one result by one method, with what went in and its budget."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from spoolwright.shop.acts.open_diary import NOTHING_BESIDE, Beside, Written
from spoolwright.shop.acts.take_reading import Signal, Value, take_reading
from spoolwright.shop.questions.kept_inertia import KeptInertia
from spoolwright.shop.records.attachment import Attachment
from spoolwright.shop.records.instrument import Instrument
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.visit import Visit


def values_of(kept: KeptInertia) -> Sequence[Value]:
    """What is written down: the inertia; the friction of a falling weight stays with what is kept of it."""
    found = kept.inertia
    return [Value("spool_inertia", found.value, found.dimension, found.uncertainty)]


def take_inertia(
    *,
    hand: Person,
    visit: Visit,
    kept: KeptInertia,
    conditions: Mapping[str, Any],
    attachment: Attachment | None = None,
    instrument: Instrument | None = None,
    beside: Beside = NOTHING_BESIDE,
) -> Written:
    """`attachment` is the record of the swing, where there was one; `instrument` one of ours."""
    return take_reading(
        hand=hand,
        visit=visit,
        values=values_of(kept),
        conditions=conditions,
        way="inertia",
        signal=Signal(attachment, kept.as_data(), instrument),
        beside=beside,
    )
