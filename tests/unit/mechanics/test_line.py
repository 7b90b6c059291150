"""Line as a round rod."""

from __future__ import annotations

import pytest

from spoolwright.mechanics import line


def test_four_times_the_weight_is_twice_the_diameter() -> None:
    assert line.diameter_from_tex(400.0, 1140.0) == pytest.approx(2 * line.diameter_from_tex(100.0, 1140.0))


def test_twice_the_length_is_half_as_stiff() -> None:
    assert line.stiffness(2e9, 0.4e-3, 100.0) == pytest.approx(line.stiffness(2e9, 0.4e-3, 50.0) / 2)


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda: line.diameter_from_tex(0.0, 1140.0), "tex must be above zero"),
        (lambda: line.diameter_from_tex(81.0, float("nan")), "density must be above zero"),
        (lambda: line.stiffness(-2e9, 0.4e-3, 50.0), "modulus must be above zero"),
        (lambda: line.stiffness(2e9, 0.0, 50.0), "diameter must be above zero"),
        (lambda: line.stiffness(2e9, 0.4e-3, float("inf")), "length must be above zero"),
    ],
)
def test_bad_values_are_refused_by_name(call: object, named: str) -> None:
    with pytest.raises(ValueError, match=named):
        call()  # type: ignore[operator]
