"""One tooth that is loud each time it comes round is found; a bang and an uneven hand are not."""

import numpy as np
import pytest

from spoolwright.bench import tooth_loudness as loudness
from spoolwright.bench.mesh_track import MeshTrack

BAND = (1000.0, 4000.0)


def noise(turns: int = 30, teeth: int = 40, seed: int = 1) -> np.ndarray:
    return np.random.default_rng(seed).gamma(4.0, 0.25, size=2 * turns * teeth)


def test_a_loud_tooth_is_on_its_own_wheel_only() -> None:
    loud = noise()
    loud[11::80] *= 4
    found = loudness.loud_tooth(loud, 40, BAND)
    assert (found.place, found.turns) == (11, 30)
    assert found.swelling == pytest.approx(3.0, rel=0.25)
    assert found.rival < 0.3
    assert found.log_chance < -20
    assert loudness.loud_tooth(loud, 17, BAND).log_chance > -6


def test_wheels_whose_teeth_divide_are_told_apart_once_the_loud_one_is_explained() -> None:
    loud = noise()
    loud[3::20] *= 4
    pinion = loudness.loud_tooth(loud, 10, BAND)
    assert pinion.log_chance < loudness.loud_tooth(loud, 40, BAND).log_chance
    hidden = loudness.explained(pinion, len(loud))
    assert loudness.loud_tooth(loud, 40, BAND, hidden).log_chance > -6


def test_one_bang_however_loud_is_no_tooth() -> None:
    loud = noise()
    loud[500] = 20.0
    assert loudness.loud_tooth(loud, 40, BAND).log_chance > -6


def test_even_noise_is_called_loud_as_seldom_as_is_said() -> None:
    chances = [loudness.loud_tooth(noise(seed=s), 40, BAND).log_chance for s in range(120)]
    assert sum(chance < np.log(0.05) for chance in chances) <= 12


def test_a_hand_that_swells_once_a_turn_falls_out() -> None:
    time = np.linspace(0.0, 6.0, 601)
    track = MeshTrack(time, 200.0 * time, 200.0, 0.0, 1.0)
    sound = np.random.default_rng(3).normal(size=48000)
    swelling = sound * (1 + 0.5 * np.cos(2 * np.pi * 2.0 * np.arange(48000) / 8000.0))
    ((band, loud),) = loudness.series(swelling, 8000.0, track, [BAND])
    assert band == BAND
    assert len(loud) == 2400
    assert loudness.loud_tooth(loud, 100, BAND).swelling < 0.6
