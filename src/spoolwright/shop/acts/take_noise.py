"""Take a noise, of a bearing or of gears: how far it swells at their rates, the verdict, its evidence."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from spoolwright.shop.acts.open_diary import NOTHING_BESIDE, Beside, Written
from spoolwright.shop.acts.take_reading import Signal, Value, take_reading
from spoolwright.shop.questions.kept_noise import BEARING, KeptNoise
from spoolwright.shop.records.attachment import Attachment
from spoolwright.shop.records.instrument import Instrument
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.visit import Visit


def values_of(kept: KeptNoise) -> Sequence[Value]:
    """What is written down as a number; the verdict stays with what is kept of the noise."""
    kind = "bearing_swelling" if kept.about == BEARING else "gear_swelling"
    found = kept.strength
    return [Value(kind, found.value, found.dimension, found.uncertainty)]


def take_noise(
    *,
    hand: Person,
    visit: Visit,
    kept: KeptNoise,
    conditions: Mapping[str, Any],
    attachment: Attachment | None = None,
    instrument: Instrument | None = None,
    beside: Beside = NOTHING_BESIDE,
) -> Written:
    """`attachment` is the recording, `instrument` what took it if it is one of ours."""
    return take_reading(
        hand=hand,
        visit=visit,
        values=values_of(kept),
        conditions=conditions,
        way="bearing noise" if kept.about == BEARING else "gear noise",
        signal=Signal(attachment, kept.as_data(), instrument),
        beside=beside,
    )
