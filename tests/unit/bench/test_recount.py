"""The second count, by the law."""

import numpy as np
import pytest

from spoolwright.bench import coast_fit
from spoolwright.bench.recount import recount
from spoolwright.mechanics import coastdown

TURN = 2 * np.pi
TICKS = np.asarray(coastdown.time_at_angle(TURN * np.arange(80), 60.0, 1.0, 2.0, 0.02, 1e-4), dtype=float)


def test_ticks_that_the_first_count_lost_are_found() -> None:
    few = np.r_[0:50, 70]
    found = coast_fit.fit(TICKS[few], few.astype(np.int64))
    time, turns = recount(TICKS, TICKS[few], few.astype(np.int64), found)
    assert turns.tolist() == list(range(80))
    np.testing.assert_array_equal(time, TICKS)


def test_a_turn_too_many_in_the_first_count_does_not_come_back() -> None:
    wrong = np.arange(80)
    wrong[74:] += 1
    found = coast_fit.fit(TICKS[:70], np.arange(70))
    _, turns = recount(TICKS, TICKS, wrong, found)
    assert turns[-1] == 79


def test_strays_find_no_place_and_of_two_at_one_turn_the_nearer_stays() -> None:
    heard = np.sort(np.concatenate((TICKS, TICKS[10:60:5] + 0.04, TICKS[30:31] + 0.004)))
    found = coast_fit.fit(TICKS, np.arange(80))
    time, turns = recount(heard, TICKS, np.arange(80), found)
    assert turns.tolist() == list(range(80))
    assert np.abs(time - TICKS).max() < 0.001


def test_ticks_after_the_spool_stands_still_are_left_out() -> None:
    late = np.concatenate((TICKS, TICKS[-1] + np.array([20.0, 40.0])))
    found = coast_fit.fit(TICKS, np.arange(80))
    assert recount(late, TICKS, np.arange(80), found)[0][-1] == pytest.approx(TICKS[-1])
