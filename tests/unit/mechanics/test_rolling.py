"""Ball bearings turning."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.mechanics import rolling

# Bearing 608 (mean diameter 15 mm), series 60 on grease, f0 = 1.1: arithmetic on factors published in a
# catalogue of rolling bearings (opened), worked out in the collection of references, N mm.
WORKED = [
    ((2000.0, 30e-6, 0.015, 0.0, 1.1, 0.0), 0.56898),
    ((100.0, 10e-6, 0.015, 0.0, 1.1, 0.0), 0.0594),
    ((0.0, 0.0, 0.015, 50.0, 0.0, 0.0007 * (50 / 1370) ** 0.5), 0.1003),
    ((0.0, 0.0, 0.015, max(3.3 * 40 - 0.1 * 20, 20), 0.0, 0.0007 * (32 / 1370) ** 0.5), 0.20862),
]


@pytest.mark.parametrize(("values", "newton_millimetres"), WORKED)
def test_worked_by_hand(values: tuple[float, ...], newton_millimetres: float) -> None:
    assert rolling.friction_torque(*values) * 1e3 == pytest.approx(newton_millimetres, rel=1e-3)


def test_a_bearing_at_rest_still_asks_for_its_slow_torque() -> None:
    slow = rolling.friction_torque(np.array([0.0, 10.0, 60.0]), 20e-6, 0.0075, 0.0, 1.3, 0.0)
    assert np.ptp(slow) == 0.0


def test_oil_and_load_add_up() -> None:
    oil = rolling.friction_torque(3000.0, 20e-6, 0.0075, 0.0, 1.3, 4e-4)
    load = rolling.friction_torque(3000.0, 20e-6, 0.0075, 10.0, 0.0, 4e-4)
    assert rolling.friction_torque(3000.0, 20e-6, 0.0075, 10.0, 1.3, 4e-4) == pytest.approx(oil + load)


def test_the_four_rates_scale_with_speed() -> None:
    one = rolling.defect_frequencies(600.0, 7, 1.588e-3, 6.3e-3)
    two = rolling.defect_frequencies(1200.0, 7, 1.588e-3, 6.3e-3)
    assert set(one) == {"outer", "inner", "ball", "cage"}
    for place in ("outer", "inner", "ball", "cage"):
        assert two[place] == pytest.approx(2 * one[place])  # type: ignore[literal-required]


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda: rolling.friction_torque(-1.0, 2e-5, 0.01, 0.0, 1.0, 0.0), "speed_rpm must be zero or more"),
        (lambda: rolling.friction_torque(1.0, -2e-5, 0.01, 0.0, 1.0, 0.0), "viscosity must be zero or more"),
        (lambda: rolling.friction_torque(1.0, 2e-5, 0.0, 0.0, 1.0, 0.0), "pitch_diameter must be above zero"),
        (lambda: rolling.friction_torque(1.0, 2e-5, 0.01, -1.0, 1.0, 0.0), "load must be zero or more"),
        (lambda: rolling.friction_torque(1.0, 2e-5, 0.01, 0.0, -1.0, 0.0), "f0 must be zero or more"),
        (lambda: rolling.friction_torque(1.0, 2e-5, 0.01, 0.0, 1.0, float("nan")), "f1 must be zero or more"),
        (lambda: rolling.defect_frequencies(-1.0, 7, 1e-3, 6e-3), "rpm must be zero or more"),
        (lambda: rolling.defect_frequencies(1.0, 7.5, 1e-3, 6e-3), "balls must be a whole number"),
        (
            lambda: rolling.defect_frequencies(1.0, 7, 7e-3, 6e-3),
            "ball_diameter must be less than pitch_diameter",
        ),
        (
            lambda: rolling.defect_frequencies(1.0, 7, 1e-3, 6e-3, 2.0),
            "contact_angle must be 0 or more and below",
        ),
    ],
)
def test_bad_values_are_refused_by_name(call: object, named: str) -> None:
    with pytest.raises(ValueError, match=named):
        call()  # type: ignore[operator]
