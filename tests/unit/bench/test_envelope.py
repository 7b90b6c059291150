"""Spectra of loudness: a line where loudness swells, noise as the textbook has it elsewhere."""

import numpy as np
import pytest
from scipy import stats

from spoolwright.bench import envelope

RATE = 8000.0


def noise(seed: int, seconds: float) -> np.ndarray:
    return np.random.default_rng(seed).normal(size=int(RATE * seconds))


def test_a_line_has_the_size_of_the_swelling() -> None:
    time = np.arange(int(RATE * 20)) / RATE
    carrier = noise(1, 20) * np.sqrt(1 + 0.5 * np.cos(2 * np.pi * 70.0 * time))
    (found,) = envelope.spectra([carrier], RATE, [(1000.0, 3500.0)], 200.0, 10.0)
    at = int(np.argmax(found.above))
    assert at * found.step == pytest.approx(70.0, abs=found.step)
    assert found.size[at] == pytest.approx(0.5, abs=0.05)


@pytest.mark.parametrize("looks", [1, 4])
def test_noise_alone_stands_as_high_as_its_law_says(looks: int) -> None:
    # Averaged squared lines of Gaussian noise: Gamma(looks) / looks (Bendat and Piersol, from memory).
    cut = [noise(10 + k, 8) for k in range(looks)]
    (found,) = envelope.spectra(cut, RATE, [(1000.0, 3000.0)], 900.0, 10.0)
    above = found.above[100:]
    for share in (0.5, 0.05, 0.01):
        limit = stats.gamma.isf(share, looks) / looks
        assert np.mean(above > limit) == pytest.approx(share, rel=0.35)
    np.testing.assert_allclose(found.log_chance[100:], stats.gamma.logsf(above * looks, looks), rtol=1e-6)


def test_bands_are_wide_enough_for_the_knocks_and_stay_inside() -> None:
    for rate, fastest in ((8000.0, 30.0), (12000.0, 162.0), (48000.0, 700.0)):
        found = envelope.bands(rate, fastest)
        assert found
        assert all(high - low >= 4 * fastest and 3 * fastest <= low < high <= rate / 2 for low, high in found)
    assert envelope.bands(8000.0, 1500.0) == []


def test_a_long_recording_is_cut_into_pieces_of_equal_length() -> None:
    cut = envelope.pieces(noise(1, 30), RATE, 30.0)
    assert len(cut) == 7
    assert len({len(piece) for piece in cut}) == 1
    assert len(envelope.pieces(noise(1, 1), RATE, 30.0)) == 1


def test_a_tone_in_the_sound_itself_has_its_amplitude() -> None:
    time = np.arange(int(RATE * 4)) / RATE
    found = envelope.sound_lines(
        [0.2 * np.sin(2 * np.pi * 30 * time) + 0.01 * noise(3, 4)], RATE, 200.0, 10.0
    )
    at = int(np.argmax(found.above))
    assert at * found.step == pytest.approx(30.0)
    assert found.size[at] == pytest.approx(0.2, rel=0.02)
