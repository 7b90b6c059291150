"""Where a coast begins and ends: a hand before it, a thumb after it, another push, nobody at all."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.bench import coast_ends, mending, spin_down
from spoolwright.mechanics import coastdown
from tests.unit.bench import spins

SHARES = (0.5, 0.3, 0.2)


def spun(seed: int, *, speed: float = 150.0, stop: float = 15.0, free: float = 0.6, thumb: float = 1.0):
    """Hand, coast, thumb; the coast begins at three seconds."""
    rng = np.random.default_rng(seed)
    drags = spins.drags_for(speed, stop, SHARES)
    clean = spins.coast(speed, *drags)
    coast = clean[: int(free * len(clean))]
    now = spins.TURN / float(coast[-1] - coast[-2])
    after = coast[-1] + spins.braked(now, thumb) if thumb else np.empty(0)
    ticks = 3 + np.concatenate((spins.pushed(speed)[:-1], coast, after))
    return spins.faulty(spins.jittered(ticks, rng), rng, 0.03, 0.03), drags, 3 + float(coast[-1])


@pytest.mark.parametrize("seed", range(3))
def test_hand_and_thumb_are_cut_off_and_the_law_is_that_of_the_free_spool(seed: int) -> None:
    ticks, drags, ends = spun(seed)
    found = spin_down.fit(mending.mend(ticks))
    assert found.start == pytest.approx(3.0, abs=0.5)
    assert found.start > 2.999
    assert found.start + found.used[-1] < ends + 0.15
    assert found.cut_off.after
    true = float(coastdown.speed(found.start - 3, 150.0, 1.0, *drags))
    assert abs(found.initial_speed.value - true) < 4 * found.initial_speed.uncertainty
    stop = float(coastdown.stop_time(true, 1.0, *drags))
    assert abs(found.stop_time.value - stop) < 4 * found.stop_time.uncertainty
    assert found.stop_time.value > 0.8 * stop


@pytest.mark.parametrize("seed", range(3))
def test_a_spool_that_nobody_touches_is_used_to_its_rest(seed: int) -> None:
    ticks, *_ = spun(seed, free=1.0, thumb=0.0)
    counted = mending.mend(ticks)
    first, last = coast_ends.let_go(counted.times, counted.turns)
    assert last == len(counted.times) - 1
    assert coast_ends.touched(counted.times[first:], counted.turns[first:]) is None


def test_the_last_turns_of_a_bearing_that_drags_more_before_it_rests_are_no_touch() -> None:
    ticks, *_ = spun(1, free=1.0, thumb=0.0)
    counted = mending.mend(ticks)
    slow = np.where(np.arange(len(counted.times)) > len(counted.times) - 4, 0.3, 0.0)
    times = counted.times + np.cumsum(slow)
    assert coast_ends.touched(times[20:], counted.turns[20:]) is None


def test_of_two_spins_in_one_recording_the_longer_is_read() -> None:
    ticks, *_ = spun(2, free=0.4, thumb=0.0)
    again, drags, _ = spun(3, free=0.9, thumb=0.0)
    join = ticks[-1] + 0.05 - again[np.searchsorted(again, 2.85)]
    both = np.concatenate((ticks, again[again > 2.85] + join))
    found = spin_down.fit(mending.mend(both))
    assert found.start == pytest.approx(3.0 + join, abs=0.6)
    assert abs(found.stop_time.value - 15.0) < 0.5


def test_few_ticks_are_taken_as_they_are() -> None:
    times = 0.1 * np.arange(10.0)
    assert coast_ends.touched(times, np.arange(10)) is None
    assert coast_ends.highest_speed(times, np.arange(10)) == pytest.approx(10.0)
