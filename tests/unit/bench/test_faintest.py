"""What a recording would have shown: knocks a little louder than that are found, far fainter ones are not."""

from math import pi

import numpy as np
import pytest
from scipy import signal

from spoolwright.bench import envelope, faintest, loudness
from spoolwright.bench.bearing_noise import Bearing, listen
from spoolwright.bench.faintest import Faintest
from spoolwright.bench.recording import Recording

RATE, TURNS = 12000.0, 30.0
BEARING = Bearing(9, 7.94e-3, 39.04e-3)


def hiss(seed: int, knocks: float = 0.0, at: float = 2200.0) -> np.ndarray:
    """Plain noise of power 1, with knocks of the outer ring of that power that ring at a frequency [Hz]."""
    sound = np.random.default_rng(seed).normal(size=36000)
    train = np.zeros(len(sound))
    train[(np.arange(1, 320) * RATE / (3.585 * TURNS)).astype(int)] = 1.0
    time = np.arange(120) / RATE
    rung = signal.fftconvolve(train, np.exp(-500 * time) * np.sin(2 * pi * at * time))[: len(sound)]
    return np.asarray(sound + rung * np.sqrt(knocks / rung.var()))


def level(sound: np.ndarray) -> Faintest:
    bands = envelope.bands(RATE, 5.42 * TURNS)
    spectra = list(envelope.spectra(envelope.pieces(sound, RATE, TURNS), RATE, bands, 600.0, TURNS))
    found = faintest.faintest(spectra, loudness.of(sound, RATE, bands).shares, 3.585 * TURNS)
    assert found is not None
    return found


def heard(sound: np.ndarray) -> bool:
    """Whether anything at all is said of the outer ring."""
    found = listen(Recording(sound.astype(np.float32), RATE), BEARING, TURNS * 2 * pi)
    return any("outer ring" in sentence for sentence in found.evidence)


@pytest.mark.parametrize("seed", [1, 2])
def test_knocks_of_twice_that_power_are_noticed_and_of_a_fiftieth_are_not(seed: int) -> None:
    limit = 10 ** (level(hiss(seed)).level / 10)
    assert heard(hiss(seed, 2 * limit))
    assert not heard(hiss(seed, 0.02 * limit))


def test_a_longer_recording_would_show_fainter_knocks() -> None:
    short, long = (np.random.default_rng(4).normal(size=int(RATE * seconds)) for seconds in (2.0, 8.0))
    assert level(long).level < level(short).level - 1


def test_a_spectrum_too_short_for_three_multiples_says_nothing() -> None:
    bands = [(500.0, 5700.0)]
    spectra = list(envelope.spectra([hiss(1)], RATE, bands, 200.0, TURNS))
    assert faintest.faintest(spectra, [1.0], 107.0) is None


def test_levels_are_read_as_plain_fractions() -> None:
    assert faintest.as_ratio(-20.0) == "1/100 of"
    assert faintest.as_ratio(-6.0) == "1/4 of"
