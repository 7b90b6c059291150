"""Where in a trace the drag slips, and traces in which it never does."""

import numpy as np
import pytest
from numpy.typing import NDArray

from spoolwright.bench import slip
from spoolwright.bench.unreadable import Unreadable
from spoolwright.demo.signals import PullShape, pull_trace

Samples = NDArray[np.float64]
TIME = np.arange(0.0, 8.0, 0.01)


def held(time: Samples, begin: float, end: float, level: float = 20.0) -> Samples:
    """A pull that climbs in half a second, runs level, and is let go."""
    return level * np.clip((time - begin) / 0.5, 0, 1) * np.clip((end - time) / 0.1, 0, 1)


def quiet(time: Samples, noise: float = 0.02, seed: int = 1) -> Samples:
    return np.random.default_rng(seed).normal(0.0, noise, len(time))


@pytest.mark.parametrize("seed", range(12))
def test_the_breakaway_and_the_end_are_found(seed: int) -> None:
    rng = np.random.default_rng(seed)
    shape = PullShape(
        ramp=rng.uniform(0.3, 1.5), start_up_ratio=rng.uniform(1.0, 1.6), stick_slip=rng.uniform(0, 0.08)
    )
    signal = pull_trace(shape, seed=seed)
    (found,) = slip.find(signal.time, signal.force)
    assert signal.time[found.start] == pytest.approx(signal.truth.breaks_away, abs=0.12)
    assert signal.time[found.end] == pytest.approx(signal.truth.let_go, abs=0.15)
    assert found.noise == pytest.approx(shape.noise, rel=0.8)


def test_each_pull_of_several_is_found() -> None:
    force = held(TIME, 0.5, 2.5) + held(TIME, 3.0, 5.0, 22.0) + held(TIME, 5.5, 7.5, 21.0)
    found = slip.find(TIME, force + quiet(TIME))
    assert [round(one.level) for one in found] == [20, 22, 21]


def test_a_short_pull_beside_a_good_one_is_passed_over() -> None:
    force = held(TIME, 0.5, 1.2) + held(TIME, 3.0, 6.0)
    assert len(slip.find(TIME, force + quiet(TIME))) == 1


def test_a_pull_that_begins_at_its_peak_is_read_and_marked() -> None:
    force = 20.0 + 8.0 * np.exp(-TIME / 0.1) + quiet(TIME)
    (found,) = slip.find(TIME, force)
    assert found.tight
    assert found.rest is None


@pytest.mark.parametrize(
    ("force", "words"),
    [
        (quiet(TIME, 0.1), "no pull in it"),
        (10.0 + quiet(TIME, 0.1), "no pull in it"),
        (20.0 * np.clip(1 - np.abs(TIME - 4) / 3, 0, 1), "never runs level"),
        (20.0 * np.clip(TIME / 6, 0, 1) * (TIME < 6.2), "slips for"),
        (held(TIME, 1.0, 1.9) + quiet(TIME), "slips for"),
        (20.0 + 0.5 * np.sin(TIME) + quiet(TIME), "already pulled"),
        (20.0 * (np.abs(TIME - 4) < 0.05) + quiet(TIME), "no pull in the trace that lasts"),
    ],
)
def test_what_is_no_slip_is_refused_in_words(force: Samples, words: str) -> None:
    with pytest.raises(Unreadable, match=words):
        slip.find(TIME, force)


def test_a_gap_while_it_slips_is_refused() -> None:
    keep = (TIME < 3.0) | (TIME > 4.0)
    with pytest.raises(Unreadable, match=r"stopped for 1\.0"):
        slip.find(TIME[keep], (held(TIME, 0.5, 7.0) + quiet(TIME))[keep])


def test_noise_between_samples_does_not_see_what_is_slow() -> None:
    slow = 5.0 * np.sin(TIME) + quiet(TIME, 0.1)
    assert slip.noise_between_samples(slow) == pytest.approx(0.1, rel=0.15)


def test_a_pull_that_falls_as_the_drag_warms_up_is_read_to_its_end() -> None:
    time = np.arange(0.0, 12.0, 0.1)
    force = np.where(time < 1.0, 0.0, np.where(time < 11.0, 40.0 - 0.4 * time, 0.0))
    (found,) = slip.find(time, force)
    assert time[found.end] == pytest.approx(10.9)


def test_the_noise_at_rest_is_found_before_and_after_the_pull() -> None:
    time = np.arange(0.0, 6.0, 0.01)
    (found,) = slip.find(time, held(time, 0.5, 5.0) + quiet(time, 0.2))
    before, after = np.count_nonzero(time < 0.35), np.count_nonzero(time > 5.25)
    assert found.calm > 0.9 * (before + after)
    assert found.noise == pytest.approx(0.2, rel=0.25)
