"""What is no bearing is never called a damaged one: noise, hum, tones, a machine that only turns."""

from math import pi

import numpy as np
import pytest

from spoolwright.bench.bearing_noise import Bearing, listen
from spoolwright.bench.recording import Recording
from tests.knocking import Case, recording

BEARINGS = (Bearing(9, 7.94e-3, 39.04e-3), Bearing(7, 1.588e-3, 6.175e-3), Bearing(8, 1.588e-3, 7.6e-3))
RATE, SECONDS = 8000.0, 1.7
HARMLESS = ("sound", "cannot tell")


def made(seed: int) -> tuple[str, np.ndarray]:
    rng = np.random.default_rng(seed)
    time = np.arange(int(RATE * SECONDS)) / RATE
    white = rng.normal(size=len(time))
    kind = ("noise", "brown", "hum", "tones", "swelling")[seed % 5]
    if kind == "brown":
        return kind, np.diff(np.cumsum(white), prepend=0.0) + 0.2 * np.cumsum(white) / 40
    if kind == "hum":
        mains = (50.0, 60.0)[seed % 2]
        return kind, 0.1 * white + sum(np.sin(2 * pi * mains * k * time + k) / k for k in range(1, 40))
    if kind == "tones":
        return kind, 0.05 * white + sum(np.sin(2 * pi * f * time) for f in rng.uniform(100.0, 3900.0, 6))
    if kind == "swelling":
        return kind, white * (1 + 0.8 * np.sin(2 * pi * rng.uniform(5.0, 200.0) * time))
    return kind, white


@pytest.mark.parametrize("seed", range(40))
def test_nothing_is_called_damaged_that_is_no_bearing(seed: int) -> None:
    kind, sound = made(seed)
    rpm = float(np.random.default_rng(seed + 1000).uniform(900.0, 2500.0))
    level = (0.3 * sound / np.abs(sound).max()).astype(np.float32)
    found = listen(Recording(level, RATE), BEARINGS[seed % 3], rpm * 2 * pi / 60)
    assert found.verdict in HARMLESS, (kind, found.evidence)


@pytest.mark.parametrize("seed", range(3))
def test_a_sound_machine_is_never_called_damaged(seed: int) -> None:
    case = Case("sound", 900.0 + 700 * seed, rate=8000.0, turns=40.0, seed=seed)
    found = listen(recording(case), BEARINGS[0], case.rpm * 2 * pi / 60)
    assert found.verdict in HARMLESS, found.evidence
