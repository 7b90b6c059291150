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


# kappa, eC Cu / P and the factor: arithmetic on the standard's equations in the collection of references.
FACTORS = [(0.2, 0.05, 0.1647), (0.5, 0.1, 0.52948), (2.0, 0.1, 4.2016), (4.0, 1.0, 50.0)]


@pytest.mark.parametrize(("kappa", "dirt", "factor"), FACTORS)
def test_life_factor_worked_by_hand(kappa: float, dirt: float, factor: float) -> None:
    assert rolling.life_factor_iso(kappa, dirt, 25.0, 25.0) == pytest.approx(factor, rel=1e-3)


def test_a_pure_radial_load_is_its_own_equivalent() -> None:
    assert rolling.equivalent_load(50.0, 0.0, 218.0) == 50.0
    assert rolling.equivalent_load(0.0, 0.0, 218.0) == 0.0


def test_the_equivalent_load_never_falls_as_the_thrust_grows() -> None:
    load = rolling.equivalent_load(50.0, np.linspace(0, 120, 2000), 218.0)
    assert np.all(np.diff(load) >= 0)


def test_half_the_load_is_eight_lives() -> None:
    assert rolling.rating_life(630.0, 31.5) == pytest.approx(8 * rolling.rating_life(630.0, 63.0))


def test_faster_and_larger_bearings_make_do_with_thinner_oil() -> None:
    assert np.all(np.diff(rolling.reference_viscosity(np.geomspace(10, 20000, 200), 0.0065)) < 0)
    assert np.all(np.diff(rolling.reference_viscosity(2000.0, np.linspace(0.004, 0.02, 50))) < 0)


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda: rolling.equivalent_load(-1.0, 1.0, 218.0), "radial must be zero or more"),
        (lambda: rolling.equivalent_load(1.0, float("nan"), 218.0), "axial must be zero or more"),
        (lambda: rolling.equivalent_load(1.0, 1.0, 0.0), "static_rating must be above zero"),
        (lambda: rolling.equivalent_load(1.0, 1.0, 218.0, 0.0), "f0 must be above zero"),
        (lambda: rolling.rating_life(630.0, 0.0), "load must be above zero"),
        (lambda: rolling.rating_life(-1.0, 63.0), "dynamic_rating must be above zero"),
        (lambda: rolling.reference_viscosity(0.0, 0.01), "speed_rpm must be above zero"),
        (lambda: rolling.reference_viscosity(10.0, -0.01), "pitch_diameter must be above zero"),
        (
            lambda: rolling.life_factor_iso(0.05, 0.5, 10.0, 100.0),
            "kappa must be 0.1 or more and finite; came 0.05",
        ),
        (lambda: rolling.life_factor_iso(1.0, 1.2, 10.0, 100.0), "contamination must be between 0 and 1"),
        (lambda: rolling.life_factor_iso(1.0, 0.5, 0.0, 100.0), "fatigue_limit must be above zero"),
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
