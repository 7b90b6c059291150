"""Sudden losses of speed: found where they are, not where there is scatter alone."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.bench import mending, speed_steps, spin_down
from spoolwright.bench.speed_steps import FALSE_ALARM, NOT_LOOKED
from tests.unit.bench import spins

FREE_SPINS = 150
TIME = np.cumsum(np.linspace(0.04, 0.2, 150))


def free(rng: np.random.Generator, *, tails: bool) -> np.ndarray:
    """Scatter alone, and what a law misses that is not quite right: a slow wave."""
    scatter = rng.standard_t(4, 150) if tails else rng.normal(0, 1, 150)
    return 0.02 * (scatter + 0.3 * np.sin(TIME / rng.uniform(1.5, 6) + rng.uniform(0, 6)))


def test_even_scatter_shows_steps_no_more_often_than_is_said() -> None:
    # With the stated chance of one in 200, more than 3 of 150 spins would be chance once in 140 (binomial).
    rng = np.random.default_rng(7)
    alarms = [speed_steps.look(TIME, free(rng, tails=False)) for _ in range(FREE_SPINS)]
    assert sum(bool(one.losses or one.gains) for one in alarms) <= 3
    assert FALSE_ALARM == 0.005


def test_no_free_spin_is_gritty_even_where_single_ticks_are_far_off() -> None:
    rng = np.random.default_rng(8)
    assert max(len(speed_steps.look(TIME, free(rng, tails=True)).losses) for _ in range(FREE_SPINS)) < 3


@pytest.mark.parametrize("seed", range(3))
def test_free_spins_with_doubles_and_misses_are_not_gritty(seed: int) -> None:
    rng = np.random.default_rng(seed)
    drags = spins.drags_for(120.0, 12.0, (0.4, 0.3, 0.3))
    heard = spins.faulty(spins.jittered(spins.coast(120.0, *drags), rng, turn=0.006), rng, 0.03, 0.03)
    found = spin_down.fit(mending.mend(heard))
    assert len(speed_steps.look(found.used, found.residuals).losses) < 3


def test_steps_are_found_where_and_as_large_as_they_are() -> None:
    time = np.cumsum(np.linspace(0.04, 0.12, 160))
    noise = np.random.default_rng(3).normal(0, 0.01, 160)
    true = {float(time[40]): 2.0, float(time[80]): 1.5, float(time[120]): 1.0}
    angle = noise - sum(size * np.maximum(time - at, 0) for at, size in true.items())
    found = speed_steps.look(time, angle)
    assert len(found.losses) == 3
    assert not found.gains
    for step, (at, size) in zip(found.losses, true.items(), strict=True):
        assert step.time == pytest.approx(at, abs=0.2)
        assert -step.change == pytest.approx(size, rel=0.4)
    assert found.smallest < 1.0


def test_too_few_ticks_are_not_looked_at_and_lengths_must_agree() -> None:
    assert speed_steps.look(np.arange(10.0), np.zeros(10)) is NOT_LOOKED
    assert speed_steps.look(np.array([0.0]), np.zeros(1)) is NOT_LOOKED
    with pytest.raises(ValueError, match="length of time"):
        speed_steps.look(np.arange(30.0), np.zeros(29))


def test_the_last_slow_turns_are_left_out() -> None:
    time = np.concatenate((np.arange(40) * 0.05, 2 + np.cumsum(np.full(12, 0.8))))
    angle = np.random.default_rng(1).normal(0, 0.01, 52)
    angle[44:] -= 0.8 * (time[44:] - time[44])
    assert not speed_steps.look(time, angle).losses
