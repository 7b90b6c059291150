"""The mesh's tone counts the teeth, also where the hand is uneven and the stated speed a little off."""

import numpy as np
import pytest

from spoolwright.bench import mesh_track
from tests.meshing import Mesh, recording, teeth_at

MADE = Mesh("sound", seconds=6.0, rate=8000.0, turns_a_second=2.0, uneven=0.04, drift=0.06)


@pytest.mark.parametrize("off", [-0.1, 0.1])
def test_the_teeth_are_those_that_passed(off: float) -> None:
    sound = recording(MADE)
    found = mesh_track.follow(sound.samples, sound.rate, MADE.main * MADE.turns_a_second * (1 + off))
    time = np.arange(2000, len(sound.samples) - 2000) / sound.rate
    wrong = found.at(time) - teeth_at(MADE, time)
    assert np.ptp(wrong) < 0.6
    assert found.is_heard
    assert found.rate == pytest.approx(MADE.main * MADE.turns_a_second, rel=0.02)
    assert 0.02 < found.uneven < 0.08


def test_noise_alone_is_no_mesh() -> None:
    hiss = np.random.default_rng(2).normal(size=48000)
    assert not mesh_track.follow(hiss, 8000.0, 200.0).is_heard
