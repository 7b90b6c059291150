"""Line as a round rod."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.mechanics import line


def test_four_times_the_weight_is_twice_the_diameter() -> None:
    assert line.diameter_from_tex(400.0, 1140.0) == pytest.approx(2 * line.diameter_from_tex(100.0, 1140.0))


def test_twice_the_length_is_half_as_stiff() -> None:
    assert line.stiffness(2e9, 0.4e-3, 100.0) == pytest.approx(line.stiffness(2e9, 0.4e-3, 50.0) / 2)


def test_a_line_of_twice_the_diameter_breaks_at_four_times_the_pull() -> None:
    assert line.break_load(7e8, 0.6e-3) == pytest.approx(4 * line.break_load(7e8, 0.3e-3))


def test_tenacity_times_weight_is_strength_times_area() -> None:
    """One line told two ways: 80 tex at 0.6 N/tex breaks at 48 N."""
    round_line = line.diameter_from_tex(80.0, 1140.0)
    assert line.break_load(line.strength_from_tenacity(0.6, 1140.0), round_line) == pytest.approx(48.0)


def test_the_weakest_knot_decides_and_the_line_where_none_is_weaker() -> None:
    assert line.with_knots(100.0, 0.8) == 80.0
    assert line.with_knots(100.0, np.array([0.9, 0.6, 0.95])) == 60.0
    assert line.with_knots(100.0, np.array([1.0])) == 100.0
    many = line.with_knots(np.array([100.0, 50.0]), np.array([[0.9, 0.6], [0.8, 0.85]]))
    assert many == pytest.approx([60.0, 40.0])


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda: line.diameter_from_tex(0.0, 1140.0), "tex must be above zero"),
        (lambda: line.diameter_from_tex(81.0, float("nan")), "density must be above zero"),
        (lambda: line.stiffness(-2e9, 0.4e-3, 50.0), "modulus must be above zero"),
        (lambda: line.stiffness(2e9, 0.0, 50.0), "diameter must be above zero"),
        (lambda: line.break_load(-1.0, 0.4e-3), "strength must be zero or more"),
        (lambda: line.strength_from_tenacity(0.6, 0.0), "density must be above zero"),
        (lambda: line.with_knots(100.0, 1.2), "kept must be between 0 and 1"),
        (lambda: line.with_knots(-1.0, 0.8), "break_load must be zero or more"),
        (lambda: line.stiffness(2e9, 0.4e-3, float("inf")), "length must be above zero"),
    ],
)
def test_bad_values_are_refused_by_name(call: object, named: str) -> None:
    with pytest.raises(ValueError, match=named):
        call()  # type: ignore[operator]
