"""Take a spin-down: how fast the spool was, how long it takes to rest, and what holds it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Any

from spoolwright.bench.spin_down import SpinDown
from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.spin_verdict import SpinVerdict
from spoolwright.shop.acts.open_diary import NOTHING_BESIDE, Beside, Written
from spoolwright.shop.acts.take_reading import Signal, Value, take_reading
from spoolwright.shop.questions.signals import kept_spin
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.visit import Visit

NO_FILE = Signal()


def values_of(spin: SpinDown) -> Sequence[Value]:
    """What is written down: without the spool's inertia its drags are no torques, and are left out."""
    found: dict[str, Measured] = {"spin_initial_speed": spin.initial_speed, "stop_time": spin.stop_time}
    if not spin.per_inertia:
        found |= {
            "spin_constant": spin.constant,
            "spin_viscous": spin.viscous,
            "spin_quadratic": spin.quadratic,
        }
    return [Value(kind, it.value, it.dimension, it.uncertainty) for kind, it in found.items()]


def take_spin(
    *,
    hand: Person,
    visit: Visit,
    spin: SpinDown,
    verdict: SpinVerdict | None = None,
    conditions: Mapping[str, Any],
    heard: Signal = NO_FILE,
    beside: Beside = NOTHING_BESIDE,
) -> Written:
    """`verdict` is what was said of it; `heard` the recording or the file of ticks, and what took it."""
    return take_reading(
        hand=hand,
        visit=visit,
        values=values_of(spin),
        conditions=conditions,
        way="spin-down",
        signal=replace(heard, analysis=kept_spin(spin, verdict).as_data()),
        beside=beside,
    )
