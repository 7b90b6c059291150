"""A tone to drags: the law is found, a tone that does not fall or is too short says nothing."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.bench import hum_spin
from spoolwright.bench.hum import Hum
from spoolwright.bench.uncertainty import Measured
from spoolwright.bench.unreadable import Unreadable
from spoolwright.mechanics import coastdown
from tests.unit.bench import spins

DRAGS = spins.drags_for(200.0, 12.0, (0.5, 0.3, 0.2))


def tone(seed: int, seconds: float = 10.0, orders: float = 2.0) -> Hum:
    time = 1.0 + np.arange(0, seconds, 0.1)
    speed = np.asarray(coastdown.speed(time - 1.0, 200.0, 1.0, *DRAGS))
    noise = np.random.default_rng(seed).normal(0, 0.5, len(time))
    return Hum(time, orders * (speed + noise) / spins.TURN, 0.1)


def test_truth_lies_within_what_is_stated_as_often_as_is_stated() -> None:
    inside = 0
    for seed in range(20):
        found = hum_spin.fit(tone(seed), orders=2.0)
        true = float(coastdown.speed(found.start - 1.0, 200.0, 1.0, *DRAGS))
        stop = float(coastdown.stop_time(true, 1.0, *DRAGS))
        inside += abs(found.stop_time.value - stop) <= found.stop_time.expanded
    assert inside >= 16  # of 20 at 95 %: fewer would be chance once in 400 (binomial)


def test_with_an_inertia_the_drags_are_torques_and_strays_are_left_out() -> None:
    heard = tone(1)
    heard.tone[30] *= 1.3
    found = hum_spin.fit(heard, Measured(1e-5, 5e-7, "inertia"), orders=2.0)
    assert found.constant.dimension == "torque"
    assert found.ticks_mended >= 1
    assert not found.per_inertia


def test_a_touch_after_the_coast_is_cut_off() -> None:
    heard = tone(2, seconds=6.0)
    slow = heard.tone[-1] * np.linspace(0.9, 0.1, 9)
    both = Hum(np.r_[heard.time, heard.time[-1] + 0.1 * np.arange(1, 10)], np.r_[heard.tone, slow], 0.1)
    found = hum_spin.fit(both, orders=2.0)
    assert found.cut_off.touched is not None
    assert found.stop_time.value == pytest.approx(12.0, rel=0.1)
    assert any("touched" in note for note in found.notes)


@pytest.mark.parametrize(
    ("heard", "words"),
    [
        (tone(1, seconds=0.8), "windows only"),
        (Hum(np.arange(40) / 10, np.full(40, 50.0), 0.1), "hardly falls"),
    ],
)
def test_what_says_nothing_is_refused(heard: Hum, words: str) -> None:
    with pytest.raises(Unreadable, match=words):
        hum_spin.fit(heard)
