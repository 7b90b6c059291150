"""Faces that slide."""

from __future__ import annotations

import pytest

from spoolwright.mechanics import wear


def test_depth_goes_with_each_of_the_three() -> None:
    base = wear.archard_depth(1e-15, 2e6, 1e5)
    assert wear.archard_depth(2e-15, 2e6, 1e5) == pytest.approx(2 * base)
    assert wear.archard_depth(1e-15, 4e6, 1e5) == pytest.approx(2 * base)
    assert wear.archard_depth(1e-15, 2e6, 2e5) == pytest.approx(2 * base)


@pytest.mark.parametrize(
    ("values", "named"),
    [
        ((-1e-15, 2e6, 1e5), "wear_rate must be zero or more"),
        ((1e-15, float("nan"), 1e5), "pressure must be zero or more"),
        ((1e-15, 2e6, float("inf")), "sliding_distance must be zero or more"),
    ],
)
def test_bad_values_are_refused_by_name(values: tuple[float, float, float], named: str) -> None:
    with pytest.raises(ValueError, match=named):
        wear.archard_depth(*values)
