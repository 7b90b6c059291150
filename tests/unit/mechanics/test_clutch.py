"""What the drag stack does, in sentences."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.mechanics import clutch

OUTER, INNER = 0.0125, 0.0075


def test_twice_the_faces_slip_at_twice_the_torque() -> None:
    one = clutch.friction_torque(400.0, OUTER, INNER, 0.15)
    assert clutch.friction_torque(400.0, OUTER, INNER, 0.15, faces=2) == pytest.approx(2 * one)


def test_no_force_no_torque() -> None:
    assert clutch.friction_torque(0.0, OUTER, INNER, 0.15) == 0.0
    assert clutch.clamp_force(0.0, OUTER, INNER, 0.15) == 0.0


def test_a_full_disc_has_a_radius_but_no_peak_under_wear() -> None:
    assert clutch.effective_radius(OUTER, 0.0) == OUTER / 2
    with pytest.raises(ValueError, match="inner_radius must be above zero"):
        clutch.peak_pressure(400.0, OUTER, 0.0)
    assert clutch.peak_pressure(400.0, OUTER, 0.0, "uniform-pressure") > 0


@pytest.mark.parametrize(
    ("change", "named"),
    [
        ({"clamp_force": -1.0}, "clamp_force must be zero or more"),
        ({"outer_radius": 0.0}, "outer_radius must be above zero"),
        ({"inner_radius": OUTER}, "inner_radius must be less than outer_radius"),
        ({"inner_radius": -0.001}, "inner_radius must be zero or more"),
        ({"friction": float("nan")}, "friction must be zero or more"),
        ({"faces": 0}, "faces must be a whole number of 1 or more"),
        ({"faces": 2.5}, "faces must be a whole number of 1 or more"),
        ({"model": "worn"}, 'model must be "uniform-wear" or "uniform-pressure"'),
    ],
)
def test_bad_values_are_refused_by_name(change: dict[str, object], named: str) -> None:
    good = {"clamp_force": 400.0, "outer_radius": OUTER, "inner_radius": INNER, "friction": 0.15}
    with pytest.raises(ValueError, match=named):
        clutch.friction_torque(**(good | change))  # type: ignore[arg-type]


def test_no_friction_asks_for_a_clamp_force_that_does_not_exist() -> None:
    with pytest.raises(ValueError, match="friction must be above zero"):
        clutch.clamp_force(1.0, OUTER, INNER, 0.0)


def test_an_array_of_frictions_is_one_call() -> None:
    torque = clutch.friction_torque(400.0, OUTER, INNER, np.array([0.1, 0.2]), faces=np.array([[1], [3]]))
    assert np.shape(torque) == (2, 2)
    assert torque[1, 1] == pytest.approx(6 * torque[0, 0])  # type: ignore[index]
