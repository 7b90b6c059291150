"""A falling tone followed: through mains hum, talk, hiss and clipping; none made up where there is none."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.bench import hum, hum_spin
from spoolwright.bench.recording import Recording
from spoolwright.bench.unreadable import Unreadable
from spoolwright.mechanics import coastdown
from tests.unit.bench import spins

RATE = 8000


def humming(seed: int, *, speed: float = 300.0, stop: float = 9.0, orders: float = 3.0, seconds: float = 7.0):
    """The sound of a spool that hums with overtones, in a shop; and its drags. The coast begins at 0.8 s."""
    rng = np.random.default_rng(seed)
    drags = spins.drags_for(speed, stop, (0.5, 0.3, 0.2))
    t = np.arange(int((seconds + 0.8) * RATE)) / RATE
    angle = np.asarray(coastdown.angle(np.maximum(t - 0.8, 0), speed, 1.0, *drags))
    now = np.asarray(coastdown.speed(np.maximum(t - 0.8, 0), speed, 1.0, *drags))
    loud = np.where(t > 0.8, now / speed, 0.0)
    tone = loud * sum(np.sin(k * orders * angle) / k for k in (1, 2, 3)) * 0.2
    mains = sum(a * np.sin(2 * np.pi * f * t) for a, f in ((0.15, 50), (0.04, 100), (0.08, 150)))
    talk = np.zeros_like(t)
    for at in rng.uniform(0, seconds, 6):
        part = (t > at) & (t < at + 0.25)
        pitch = rng.uniform(110, 180)
        voice = sum(np.sin(2 * np.pi * k * pitch * t[part]) / k for k in range(1, 8))
        talk[part] += 0.1 * np.hanning(part.sum()) * voice
    return np.clip(tone + mains + talk + rng.normal(0, 0.02, len(t)), -0.35, 0.35), drags


@pytest.mark.parametrize("seed", range(3))
def test_the_law_behind_a_hum_is_found_through_the_noises_of_a_shop(seed: int) -> None:
    sound, drags = humming(seed)
    heard = hum.follow(Recording(sound.astype(np.float32), float(RATE)), orders=3.0)
    found = hum_spin.fit(heard, orders=3.0)
    true = float(coastdown.speed(max(found.start - 0.8, 0.0), 300.0, 1.0, *drags))
    stop = float(coastdown.stop_time(true, 1.0, *drags))
    assert found.initial_speed.value == pytest.approx(true, rel=0.02)
    assert abs(found.stop_time.value - stop) < 3 * found.stop_time.uncertainty + 0.1
    assert found.heard_as == "hum"


@pytest.mark.parametrize(
    "sound",
    [
        np.random.default_rng(1).normal(0, 0.1, 5 * RATE),
        0.3 * np.sin(2 * np.pi * 50 * np.arange(5 * RATE) / RATE),
    ],
)
def test_noise_or_mains_hum_alone_is_no_spool(sound: np.ndarray) -> None:
    with pytest.raises(Unreadable, match="tone"):
        hum.follow(Recording(sound.astype(np.float32), float(RATE)))


def test_a_moment_of_sound_or_no_orders_are_refused() -> None:
    with pytest.raises(Unreadable, match="(?i)no tone"):
        hum.follow(Recording(np.zeros(2000, dtype=np.float32) + 0.1, float(RATE)))
    with pytest.raises(ValueError, match="orders"):
        hum.follow(Recording(np.zeros(2000, dtype=np.float32), float(RATE)), orders=0)
