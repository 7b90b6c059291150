"""What a bearing stands still, and what follows from its balls."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.mechanics import bearing_ratings, rolling


def test_thrust_counts_half_and_never_eases() -> None:
    load = bearing_ratings.static_load(100.0, np.array([0.0, 80.0, 400.0]))
    assert load.tolist() == [100.0, 100.0, 260.0]  # type: ignore[union-attr]
    assert rolling.static_safety is bearing_ratings.static_safety


def test_more_and_larger_balls_carry_more() -> None:
    for rating in (bearing_ratings.static_rating, bearing_ratings.dynamic_rating):
        assert rating(8, 1.588e-3, 8e-3) > rating(7, 1.588e-3, 8e-3)
        assert rating(7, 1.7e-3, 8e-3) > rating(7, 1.588e-3, 8e-3)


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda: bearing_ratings.static_safety(100.0, 0.0, 0.0), "load must be above zero"),
        (lambda: bearing_ratings.static_load(-1.0, 0.0), "radial must be zero or more"),
        (lambda: bearing_ratings.static_rating(6.5, 1e-3, 8e-3), "balls must be a whole number"),
        (lambda: bearing_ratings.static_rating(7, 4e-3, 8e-3), "ball_diameter must be at most"),
        (lambda: bearing_ratings.dynamic_rating(7, 30e-3, 0.2), "ball_diameter must be above 0 and at most"),
    ],
)
def test_bad_values_are_refused_by_name(call: object, named: str) -> None:
    with pytest.raises(ValueError, match=named):
        call()  # type: ignore[operator]
