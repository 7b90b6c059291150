"""Turns counted through doubled, stray and missing ticks."""

import numpy as np
import pytest
from numpy.typing import NDArray

from spoolwright.bench.mending import mend
from spoolwright.bench.unreadable import Unreadable

Times = NDArray[np.float64]


def slowing(turns: int, first: float = 0.2, growth: float = 0.004) -> Times:
    """Tick times whose step grows by a little each turn."""
    return np.concatenate(([0.0], np.cumsum(first * (1 + growth) ** np.arange(turns))))


def test_clean_ticks_are_left_alone() -> None:
    ticks = slowing(60)
    found = mend(ticks)
    assert (found.doubles, found.misses, found.mended) == (0, 0, 0)
    assert found.turns.tolist() == list(range(61))


@pytest.mark.parametrize("gap", [1, 2, 5, 12])
def test_missing_ticks_are_counted_in(gap: int) -> None:
    ticks = np.delete(slowing(80), range(30, 30 + gap))
    found = mend(ticks)
    assert found.misses == gap
    assert found.turns[-1] == 80


def test_after_a_long_silence_the_count_begins_anew_at_the_speed_found_there() -> None:
    ticks = slowing(400, growth=0.006)
    found = mend(np.delete(ticks, range(250, 340)))
    later = found.turns[found.times > ticks[339]]
    assert np.diff(later).tolist() == [1] * 60
    assert abs(int(found.turns[-1]) - 400) <= 6


@pytest.mark.parametrize("part", [0.05, 0.2, 0.4])
def test_doubled_ticks_are_dropped(part: float) -> None:
    ticks = slowing(60)
    extra = ticks[10:50:7] + part * 0.2
    found = mend(np.sort(np.concatenate((ticks, extra))))
    assert found.doubles == len(extra)
    np.testing.assert_array_equal(found.times, ticks)


def test_a_tick_that_came_early_and_hid_the_right_one_is_dropped_and_counted_in() -> None:
    ticks = slowing(40)
    ticks[20] -= 0.45 * 0.2
    found = mend(ticks)
    assert (found.doubles, found.misses) == (1, 1)
    assert found.turns[-1] == 40


def test_every_second_tick_missing_late_in_the_run_is_seen_from_the_early_ones() -> None:
    ticks = slowing(90)
    keep = np.ones(91, dtype=bool)
    keep[46::2] = False
    found = mend(ticks[keep])
    assert found.turns[-1] == (90 if keep[90] else 89)
    assert found.misses == int((~keep[: found.turns[-1] + 1]).sum())


@pytest.mark.parametrize("seed", range(10))
def test_a_third_of_the_ticks_may_be_wrong(seed: int) -> None:
    rng = np.random.default_rng(seed)
    ticks = slowing(200, growth=0.006)
    steps = np.diff(ticks, append=ticks[-1] + 0.6)
    shaken = ticks + rng.normal(0, 0.003, 201) * steps
    keep = rng.random(201) > 0.17
    double = rng.random(201) < 0.17
    extra = shaken[double] + rng.uniform(0.06, 0.35, double.sum()) * steps[double]
    found = mend(np.sort(np.concatenate((shaken[keep], extra))))
    true = np.searchsorted(ticks + 0.5 * steps, found.times)
    wrong = np.count_nonzero(np.diff(true) != np.diff(found.turns))
    assert wrong <= 1
    assert len(found.times) > 0.9 * keep.sum()


def test_ticks_before_the_spool_runs_freely_do_not_spoil_the_count() -> None:
    hand = np.array([0.0, 0.7, 0.9, 1.6, 1.75])
    ticks = 2.0 + slowing(60)
    found = mend(np.concatenate((hand, ticks)))
    assert found.turns[-1] >= 58
    assert np.isin(ticks[5:], found.times).all()


@pytest.mark.parametrize("before", [[-3.0], [-2.0, -1.2], [-4.0, -3.4, -0.8]])
def test_knocks_long_before_the_first_turn_are_no_turns_even_on_a_whole_number(before: list[float]) -> None:
    ticks = slowing(80, growth=1e-4)
    found = mend(np.concatenate((before, ticks)))
    assert found.times[0] == 0.0
    assert found.misses == 0


@pytest.mark.parametrize(
    ("times", "words"),
    [
        (np.arange(5.0), "there are 5 ticks"),
        (np.array([0.0, 1.0, 0.5, 2.0, 3.0, 4.0, 5.0, 6.0]), "do not follow one another"),
        (np.array([0.0, 1.0, np.nan, 3.0, 4.0, 5.0, 6.0, 7.0]), "do not follow one another"),
        (np.cumsum(10.0 ** -np.arange(9.0))[::1], "no two neighbouring ticks|follow a steady turning"),
        (np.cumsum([1, 5, 1, 5, 1, 5, 1, 5, 1.0]) ** 3, "no two neighbouring ticks|follow a steady turning"),
    ],
)
def test_what_shows_no_turning_is_refused(times: Times, words: str) -> None:
    with pytest.raises(Unreadable, match=f"(?i){words}"):
        mend(times)
