"""Teeth that are not evenly spaced: found, taken out, and not invented where there are too few ticks."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.bench import coast_fit, mending, spin_down, tooth_pattern
from spoolwright.mechanics import coastdown
from tests.unit.bench import spins


def uneven(marks: int, spread: float, seed: int, speed: float = 40.0, stop: float = 9.0):
    rng = np.random.default_rng(seed)
    drags = spins.drags_for(speed, stop, (0.5, 0.3, 0.2))
    clean = spins.coast(speed, *drags, marks=marks)
    n = np.arange(len(clean))
    off = rng.normal(0, spread, marks)
    angle = spins.TURN * np.maximum(n + (off - off[0])[n % marks], 0) / marks
    times = np.asarray(coastdown.time_at_angle(angle, speed, 1.0, *drags))
    return np.sort(times[np.isfinite(times)]), off - off[0], drags


@pytest.mark.parametrize("marks", [7, 60])
def test_unequal_teeth_of_a_clicker_do_not_spoil_the_law(marks: int) -> None:
    times, _, drags = uneven(marks, 0.05, seed=marks)
    rng = np.random.default_rng(1)
    heard = spins.faulty(spins.jittered(times, rng), rng, 0.03, 0.03)
    found = spin_down.fit(mending.mend(heard, marks=marks), ticks_per_turn=marks)
    speed = float(coastdown.speed(max(found.start, 0.0), 40.0, 1.0, *drags))
    assert abs(found.initial_speed.value - speed) < 4 * found.initial_speed.uncertainty
    assert found.initial_speed.value == pytest.approx(speed, rel=0.01)
    assert found.stop_time.value == pytest.approx(9.0, rel=0.02)


def test_each_tooth_is_found_where_it_stands() -> None:
    times, off, _ = uneven(7, 0.05, seed=3)
    turns = np.arange(len(times))
    count, found = tooth_pattern.places(times, turns, coast_fit.fit(times, turns), 7)
    shift = (count - turns)[:7]
    np.testing.assert_allclose(shift - shift[0], off, atol=0.01)
    assert np.std(found.residual) < 0.05


def test_one_mark_or_too_few_ticks_stay_as_they_are() -> None:
    times, _, _ = uneven(24, 0.05, seed=4)
    turns = np.arange(60)
    law = coast_fit.fit(times[:60], turns)
    for marks in (1, 24):
        count, same = tooth_pattern.places(times[:60], turns, law, marks)
        assert same is law
        np.testing.assert_array_equal(count, turns)
