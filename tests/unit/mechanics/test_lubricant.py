"""Oil in the cold and in the warm."""

from __future__ import annotations

import warnings

import numpy as np
import pytest

from spoolwright.mechanics import lubricant, rolling


@pytest.mark.parametrize(("forty", "hundred"), [(1.5, 0.6), (5.0, 1.7), (32.0, 5.4), (460.0, 30.0)])
def test_the_curve_runs_through_its_own_two_points(forty: float, hundred: float) -> None:
    both = lubricant.viscosity_at(np.array([313.15, 373.15]), forty * 1e-6, hundred * 1e-6)
    assert both == pytest.approx(np.array([forty, hundred]) * 1e-6, rel=1e-9)


def test_the_two_procedures_of_the_index_meet_at_one_hundred() -> None:
    index = np.asarray(lubricant.viscosity_index(np.linspace(50e-6, 70e-6, 20001), 8e-6))
    assert index[0] > 110
    assert index[-1] < 90
    assert np.max(np.abs(np.diff(index))) < 0.01


def test_an_index_can_be_below_zero() -> None:
    assert lubricant.viscosity_index(400e-6, 8e-6) < 0


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda: lubricant.viscosity_at(0.0, 32e-6, 5.4e-6), "temperature must be above zero"),
        (lambda: lubricant.viscosity_at(300.0, 5e-6, 32e-6), "viscosity_100 must be less than viscosity_40"),
        (
            lambda: lubricant.viscosity_at(300.0, 1e-6, 0.1e-6),
            "viscosity_100 must be 2.1e-07 or more and finite",
        ),
        (
            lambda: lubricant.viscosity_at(150.0, 32e-6, 5.4e-6),
            "temperature must keep the oil between 0.21 and",
        ),
        (
            lambda: lubricant.viscosity_at(900.0, 2e-6, 0.8e-6),
            "temperature must keep the oil between 0.21 and",
        ),
        (
            lambda: lubricant.viscosity_at(np.array([300.0, 900.0]), 2e-6, 0.8e-6),
            "temperature must keep .* came 300 to 900 K",
        ),
        (
            lambda: lubricant.viscosity_index(10e-6, 1.9e-6),
            "viscosity_100 must be 2e-06 or more and finite",
        ),
        (lambda: lubricant.viscosity_index(float("nan"), 5e-6), "viscosity_40 must be above zero"),
    ],
)
def test_bad_values_are_refused_by_name(call: object, named: str) -> None:
    with pytest.raises(ValueError, match=named):
        call()  # type: ignore[operator]


@pytest.mark.parametrize("kelvin", [1.0, 50.0, 100.0, 1e4])
def test_a_temperature_far_outside_the_curve_is_refused_without_a_warning(kelvin: float) -> None:
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        with pytest.raises(ValueError, match="temperature must keep the oil between"):
            lubricant.viscosity_at(kelvin, 32e-6, 5.4e-6)


def test_kappa_is_the_viscosity_over_the_one_that_is_needed() -> None:
    needed = rolling.reference_viscosity(5000.0, 7e-3)
    thick = lubricant.viscosity_at(300.0, 32e-6, 5.4e-6)
    assert lubricant.kappa(300.0, 32e-6, 5.4e-6, 5000.0, 7e-3) == pytest.approx(thick / needed)
    assert lubricant.kappa(280.0, 32e-6, 5.4e-6, 5000.0, 7e-3) > lubricant.kappa(
        300.0, 32e-6, 5.4e-6, 5000.0, 7e-3
    )


def test_stiffer_grease_holds_more_and_none_holds_nothing() -> None:
    stiff, soft = (lubricant.grease_yield_stress(p) for p in (26.5e-3, 38.5e-3))
    assert stiff > 2 * soft
    assert lubricant.grease_hold(stiff, 3.5e-3, 4e-3, 0.0) == 0.0
    with pytest.raises(ValueError, match="penetration must be between"):
        lubricant.grease_yield_stress(0.1)
    with pytest.raises(ValueError, match="share must be between"):
        lubricant.grease_hold(stiff, 3.5e-3, 4e-3, 1.2)
