"""Faces that slide."""

from __future__ import annotations

import numpy as np
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


def test_a_worn_part_has_less_left_and_a_spent_one_nothing() -> None:
    new = wear.life(2e-4, 1e-15, 1e6, 300.0)
    assert wear.life(2e-4, 1e-15, 1e6, 300.0, 1e-4) == pytest.approx(new / 2)
    assert wear.life(2e-4, 1e-15, 1e6, 300.0, 3e-4) == 0.0


def test_what_nothing_wears_lasts_for_ever() -> None:
    assert wear.life(2e-4, 0.0, 1e6, 300.0) == np.inf
    assert wear.life(2e-4, 0.0, 1e6, 300.0, 3e-4) == 0.0


def test_life_ends_where_the_depth_is_the_limit() -> None:
    uses = wear.life(2e-4, 3e-15, 2e6, 250.0)
    assert wear.archard_depth(3e-15, 2e6, 250.0 * float(uses)) == pytest.approx(2e-4)


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda: wear.life(0.0, 1e-15, 1e6, 1.0), "reject_depth must be above zero"),
        (lambda: wear.life(1e-4, 1e-15, 1e6, 1.0, -1e-5), "worn must be zero or more"),
        (lambda: wear.life_band(1e-4, 1e-14, 1e-15, 1e6, 1.0), "rate_high must be rate_low or more"),
        (lambda: wear.life_band(1e-4, 0.0, 1e-15, 1e6, 1.0), "rate_low must be above zero"),
        (lambda: wear.specific_rate(1e-4, 0.0), "hardness must be above zero"),
        (lambda: wear.track_depth(1e-15, 1.0, 1.0, 0.0, 1.0), "width must be above zero"),
    ],
)
def test_more_bad_values_are_refused_by_name(call: object, named: str) -> None:
    with pytest.raises(ValueError, match=named):
        call()  # type: ignore[operator]
