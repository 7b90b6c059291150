"""Turned angle of a coasting spool from what its ticks said."""

import numpy as np
import pytest

from spoolwright.bench import mending, spin_down, turning
from tests.coasting import Coast, turns

COAST = Coast("sound")


def ticks(marks: int, unsure: float, seed: int = 1) -> np.ndarray:
    time = np.linspace(0.0, COAST.seconds, 80001)
    turned = turns(COAST, time)
    at = np.interp(np.arange(int(turned[-1] * marks)) / marks, turned, time)
    return np.asarray(2.0 + at + np.random.default_rng(seed).normal(0.0, unsure, len(at)))


@pytest.mark.parametrize("marks", [1, 2])
def test_the_angle_is_the_one_that_made_the_ticks(marks: int) -> None:
    spin = spin_down.fit(mending.mend(ticks(marks, 1e-4)), ticks_per_turn=marks)
    found = turning.of_coast(spin)
    moments = np.linspace(found.time[0], found.time[-1], 200)
    true = turns(COAST, moments - 2.0)
    off = found.at(moments) - true
    assert np.ptp(off) < 0.02
    assert found.fastest * 2 * np.pi == pytest.approx(COAST.first, rel=0.02)


def test_the_slow_end_is_left_out() -> None:
    found = turning.of_coast(spin_down.fit(mending.mend(ticks(1, 1e-4))))
    slowest = float((np.diff(found.turns) / np.diff(found.time)).min()) * 2 * np.pi
    assert 0.19 * COAST.first < slowest
    assert found.whole < turns(COAST, np.array([COAST.seconds]))[0]
