"""Take a pull trace: the five results of one pull under its conditions, with the trace kept beside them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from spoolwright.bench.pull_reading import PullReading
from spoolwright.bench.trace import PullTrace
from spoolwright.bench.uncertainty import Measured
from spoolwright.shop.acts.open_diary import NOTHING_BESIDE, Beside, Written
from spoolwright.shop.acts.take_reading import Signal, Value, take_reading
from spoolwright.shop.questions.signals import kept_pull
from spoolwright.shop.records.attachment import Attachment
from spoolwright.shop.records.instrument import Instrument
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.visit import Visit


@dataclass(frozen=True)
class Pulled:
    """A trace with what was read from it; `hard_on` where star, lever or knob was set as hard as it goes."""

    trace: PullTrace
    read: PullReading
    hard_on: bool = False


def values_of(pulled: Pulled) -> Sequence[Value]:
    """What is written down of a pull. With the drag hard on the running pull is the most it holds."""
    read = pulled.read
    if pulled.hard_on:
        found: dict[str, Measured] = {"pull_full": read.running}
    else:
        found = {
            "pull_start": read.start_up,
            "pull_run": read.running,
            "start_up_ratio": read.start_up_ratio,
            "judder": read.judder,
            "drift": read.drift,
        }
    return [Value(kind, it.value, it.dimension, it.uncertainty) for kind, it in found.items()]


def take_pull(
    *,
    hand: Person,
    visit: Visit,
    pulled: Pulled,
    conditions: Mapping[str, Any],
    attachment: Attachment | None = None,
    instrument: Instrument | None = None,
    beside: Beside = NOTHING_BESIDE,
) -> Written:
    """`attachment` is the file that the trace was read from, `instrument` the gauge if it is one of ours."""
    return take_reading(
        hand=hand,
        visit=visit,
        values=values_of(pulled),
        conditions=conditions,
        way="pull trace",
        signal=Signal(attachment, kept_pull(pulled.trace, pulled.read).as_data(), instrument),
        beside=beside,
    )
