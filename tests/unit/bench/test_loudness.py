"""Where a noise lies and how spiky it is."""

import numpy as np
import pytest
from scipy import signal

from spoolwright.bench import loudness

BANDS = [(500.0, 5700.0), (500.0, 3100.0), (3100.0, 5700.0)]


def noise(seed: int = 1) -> np.ndarray:
    return np.random.default_rng(seed).normal(size=36000)


def test_low_noise_lies_low_and_its_bands_share_it_out() -> None:
    low = signal.sosfilt(signal.butter(4, 900.0, fs=12000.0, output="sos"), noise())
    found = loudness.of(low, 12000.0, BANDS)
    assert found.high < 0.1
    assert found.shares[0] > 0.99
    assert found.shares[1] + found.shares[2] == pytest.approx(found.shares[0], abs=0.01)


def test_knocks_are_spiky_and_one_bang_is_not() -> None:
    knocks = noise()
    knocks[::300] += 20.0
    bang = noise()
    bang[20000:20020] += 50.0
    assert loudness.of(knocks, 12000.0, BANDS).spikiness > 0.75
    assert loudness.of(bang, 12000.0, BANDS).spikiness < 0.3


def test_silence_is_neither_low_nor_spiky() -> None:
    found = loudness.of(np.zeros(12000), 12000.0, BANDS)
    assert (found.high, found.spikiness) == (1.0, 0.0)
