"""Take a pull that was typed as it went: start-up and running pull, and no judder or drift."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from spoolwright.bench.live_pull import LiveReading
from spoolwright.bench.trace import PullTrace
from spoolwright.bench.uncertainty import Measured
from spoolwright.shop.acts.open_diary import NOTHING_BESIDE, Beside, Written
from spoolwright.shop.acts.take_reading import Signal, Value, take_reading
from spoolwright.shop.questions.kept_live import kept_live
from spoolwright.shop.records.instrument import Instrument
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.visit import Visit


@dataclass(frozen=True)
class TypedPull:
    """The rows with what was read from them; `hard_on` where the drag was set as hard as it goes."""

    trace: PullTrace
    read: LiveReading
    hard_on: bool = False


def values_of(pulled: TypedPull) -> Sequence[Value]:
    """What is written down. With the drag hard on the running pull is the most it holds."""
    read = pulled.read
    if pulled.hard_on:
        found: dict[str, Measured] = {"pull_full": read.running}
    else:
        found = {
            "pull_start": read.start_up,
            "pull_run": read.running,
            "start_up_ratio": read.start_up_ratio,
        }
    return [Value(kind, it.value, it.dimension, it.uncertainty) for kind, it in found.items()]


def take_live_pull(
    *,
    hand: Person,
    visit: Visit,
    pulled: TypedPull,
    conditions: Mapping[str, Any],
    instrument: Instrument | None = None,
    beside: Beside = NOTHING_BESIDE,
) -> Written:
    """Every number that was typed is kept; `instrument` is the scale if it is one of ours."""
    return take_reading(
        hand=hand,
        visit=visit,
        values=values_of(pulled),
        conditions=conditions,
        way="pull trace",
        signal=Signal(None, kept_live(pulled.trace, pulled.read).as_data(), instrument),
        beside=beside,
    )
