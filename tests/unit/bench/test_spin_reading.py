"""The one door: ticks, several ticks a turn, a hum; in talk, mains hum and clipping."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.bench import spin_reading
from spoolwright.bench.recording import Recording
from spoolwright.bench.speed_steps import NOT_LOOKED
from spoolwright.mechanics import coastdown
from tests.unit.bench import spins
from tests.unit.bench.test_hum import humming
from tests.unit.bench.test_tick_sound import talk
from tests.unit.bench.test_tooth_pattern import uneven

RATE = 22_050


def clicking(ticks: np.ndarray, loud: float = 0.5) -> Recording:
    """A tick of tape for each time, with talk, mains hum, and the loudest cut off."""
    sound = np.random.default_rng(1).normal(0, 0.005, int((ticks[-1] + 0.4) * RATE))
    since = np.arange(int(0.004 * RATE)) / RATE
    burst = loud * np.sin(2 * np.pi * 3000 * since) * np.exp(-since / 0.0008)
    for at in ticks:
        first = round(float(at) * RATE)
        sound[first : first + len(burst)] += burst[: len(sound) - first]
    t = np.arange(len(sound)) / RATE
    sound += talk(len(sound), RATE) + 0.1 * np.sin(2 * np.pi * 50 * t) + 0.05 * np.sin(2 * np.pi * 150 * t)
    return Recording(np.clip(sound, -0.3, 0.3).astype(np.float32), float(RATE))


@pytest.mark.parametrize("speed", [8.0, 60.0, 600.0])
def test_ticks_in_talk_hum_and_clipping(speed: float) -> None:
    stop = 14.0 if speed < 20 else 5.0
    drags = spins.drags_for(speed, stop, (0.5, 0.3, 0.2))
    found = spin_reading.read(clicking(0.5 + spins.coast(speed, *drags)))
    true = float(coastdown.speed(max(found.start - 0.5, 0.0), speed, 1.0, *drags))
    assert found.initial_speed.value == pytest.approx(true, rel=0.01)
    assert found.stop_time.value == pytest.approx(
        float(coastdown.stop_time(true, 1.0, *drags)), abs=0.03 * stop + 2 * found.stop_time.expanded
    )


@pytest.mark.parametrize(("speed", "stop"), [(1.0, 180.0), (1.5, 120.0), (600.0, 6.0)])
def test_ticks_of_the_slowest_and_the_fastest_spools(speed: float, stop: float) -> None:
    drags = spins.drags_for(speed, stop, (0.5, 0.3, 0.2))
    ticks = spins.jittered(spins.coast(speed, *drags), np.random.default_rng(4), clock=2e-5)
    found = spin_reading.read(ticks)
    true = float(coastdown.speed(max(found.start, 0.0), speed, 1.0, *drags))
    left = float(coastdown.stop_time(true, 1.0, *drags))
    assert found.initial_speed.value == pytest.approx(true, rel=0.01)
    assert found.stop_time.value == pytest.approx(left, abs=0.03 * stop + 2 * found.stop_time.expanded)
    assert found.stop_time.expanded < 0.2 * stop


def test_a_clicker_with_unequal_teeth_is_heard_in_sound() -> None:
    times, _, _ = uneven(24, 0.04, seed=2, speed=40.0, stop=6.0)
    found = spin_reading.read(clicking(0.5 + times), a_turn=24)
    assert found.initial_speed.value == pytest.approx(40.0, rel=0.03)
    assert found.stop_time.value == pytest.approx(6.0, rel=0.05)


def test_a_hum_goes_the_other_way_and_is_not_looked_at_for_steps() -> None:
    sound, _ = humming(1)
    heard = Recording(sound.astype(np.float32), 8000.0)
    found = spin_reading.read(heard, heard_as="hum", a_turn=3.0)
    assert found.heard_as == "hum"
    assert spin_reading.steps(found) is NOT_LOOKED


def test_another_way_of_hearing_is_refused() -> None:
    with pytest.raises(ValueError, match="ticks, hum"):
        spin_reading.read(np.arange(10.0), heard_as="song")
