"""Turns counted through a silence, by the law that holds on both sides of it."""

import numpy as np
import pytest
from numpy.typing import NDArray

from spoolwright.bench.silences import dense, settle
from spoolwright.mechanics import coastdown


def ticks(turns: NDArray[np.int64], seed: int = 1) -> NDArray[np.float64]:
    at = np.asarray(coastdown.time_at_angle(2 * np.pi * turns, 100.0, 1.0, 2.0, 0.02, 1e-4))
    return at + np.random.default_rng(seed).normal(0.0, 2e-5, len(turns))


@pytest.mark.parametrize("slip", [-9, -2, -1, 1, 3, 20])
def test_a_count_that_slipped_in_a_silence_is_put_right(slip: int) -> None:
    heard = np.r_[0:60, 100:150]
    wrong = heard + np.where(heard >= 100, slip, 0)
    np.testing.assert_array_equal(settle(ticks(heard), wrong), heard)


def test_two_silences_are_put_right_together() -> None:
    heard = np.r_[0:50, 70:100, 120:150]
    wrong = heard + np.where(heard >= 70, 2, 0) + np.where(heard >= 120, -3, 0)
    np.testing.assert_array_equal(settle(ticks(heard), wrong), heard)


def test_a_right_count_is_left_alone() -> None:
    heard = np.r_[0:60, 100:150]
    np.testing.assert_array_equal(settle(ticks(heard), heard), heard)


def test_a_silence_with_hardly_any_ticks_after_it_is_not_touched() -> None:
    heard = np.r_[0:60, 100:103]
    wrong = heard + np.where(heard >= 100, 1, 0)
    np.testing.assert_array_equal(settle(ticks(heard), wrong), wrong)


@pytest.mark.parametrize(
    ("turns", "sure"),
    [
        (np.arange(50), 50),
        (np.r_[0:40, 47, 48, 55, 61, 70], 40),
        (np.r_[0:40, 60:100], 80),
        (np.arange(0, 300, 6), 50),
    ],
)
def test_sparse_last_ticks_are_told_from_dense_ones(turns: NDArray[np.int64], sure: int) -> None:
    assert dense(turns) == sure
