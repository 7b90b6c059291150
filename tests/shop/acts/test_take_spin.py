"""A spin-down in ink: with the spool's inertia its drags are torques, without it they are left out."""

from __future__ import annotations

import pytest

from spoolwright.bench import spin_down, ticks
from spoolwright.bench.spin_down import SpinDown
from spoolwright.bench.uncertainty import Measured
from spoolwright.demo import signals
from spoolwright.shop.acts.take_spin import take_spin
from spoolwright.shop.questions.signals import kept_spin, spin_of
from tests.people import bench_hand
from tests.shop.walk import arrived

pytestmark = pytest.mark.django_db

FREE = {"line": "off", "brakes": "off", "temperature": 292.0}


def spun(inertia: Measured | None = None, **shape: float) -> SpinDown:
    signal = signals.spin_recording(signals.SpinShape(**shape), seed=3)
    return spin_down.fit(ticks.mend(ticks.read_csv(signal.to_csv())), inertia)


def test_without_an_inertia_speed_and_time_alone_are_written() -> None:
    hand = bench_hand()
    written = take_spin(hand=hand, visit=arrived(hand), spin=spun(), conditions=FREE)
    reading = written.entry.reading
    assert {value.kind for value in reading.values.all()} == {"spin_initial_speed", "stop_time"}
    assert reading.way == "spin-down"


def test_with_an_inertia_the_drags_are_torques() -> None:
    hand = bench_hand()
    spin = spun(Measured(3e-6, 2e-7, "inertia"))
    written = take_spin(hand=hand, visit=arrived(hand), spin=spin, conditions=FREE)
    values = {value.kind: value for value in written.entry.reading.values.all()}
    assert values["spin_constant"].value_si == pytest.approx(spin.constant.value)
    assert values["spin_viscous"].dimension == "viscous_drag"


def test_it_can_be_drawn_again_and_shows_which_turns_were_counted_in() -> None:
    hand, spin = bench_hand(), spun()
    kept = spin_of(take_spin(hand=hand, visit=arrived(hand), spin=spin, conditions=FREE).entry.reading)
    assert kept is not None
    assert kept.stop_time == spin.stop_time
    assert kept.counted_in == kept_spin(spin).counted_in
    assert sum(kept.counted_in) == sum(1 for turns in spin.turns if turns > 1)
    assert max(kept.speeds) == pytest.approx(max(spin.speed), abs=0.001)
