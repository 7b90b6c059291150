"""Flanges and arbors under wound line."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.mechanics import plates

FLANGE = (0.010, 0.020, 1.5e-3)


def test_no_line_no_stress() -> None:
    assert plates.flange_stress(0.0, *FLANGE) == 0.0
    assert plates.flange_spread(0.0, *FLANGE, 70e9) == 0.0
    assert plates.arbor_hoop_stress(0.0, 0.010, 1e-3) == 0.0


def test_a_thicker_flange_bends_less_and_a_deeper_pack_bends_it_more() -> None:
    thickness = np.linspace(1e-3, 3e-3, 9)
    assert np.all(np.diff(plates.flange_stress(400.0, 0.010, 0.020, thickness)) < 0)
    assert np.all(np.diff(plates.flange_spread(400.0, 0.010, np.linspace(0.012, 0.03, 9), 1.5e-3, 70e9)) > 0)


def test_pressure_near_the_root_bends_less_than_the_same_force_spread_out() -> None:
    assert plates.flange_stress(400.0, *FLANGE) < plates.flange_stress(400.0, *FLANGE, load="even")


def test_a_flange_of_twice_the_size_under_four_times_the_force_is_stressed_alike() -> None:
    double = tuple(2 * length for length in FLANGE)
    assert plates.flange_stress(1600.0, *double) == pytest.approx(plates.flange_stress(400.0, *FLANGE))
    small, large = plates.flange_spread(400.0, *FLANGE, 70e9), plates.flange_spread(1600.0, *double, 70e9)
    assert large == pytest.approx(2 * small)


def test_a_thin_arbor_is_squeezed_as_a_thin_ring_and_a_thick_one_at_least_doubly() -> None:
    assert plates.arbor_hoop_stress(1e6, 0.010, 1e-6) == pytest.approx(1e6 * 0.010 / 1e-6, rel=1e-3)
    assert plates.arbor_hoop_stress(1e6, 0.010, 0.00999) == pytest.approx(2e6, rel=1e-3)


def test_the_squeeze_at_the_bore_is_lames() -> None:
    lame = plates.ring_stress(0.0085, 0.0085, 0.010, outer_pressure=1e7)
    assert plates.arbor_hoop_stress(1e7, 0.010, 0.0015) == pytest.approx(-lame)


def test_a_shorter_and_a_thicker_arbor_stand_more() -> None:
    assert np.all(np.diff(plates.arbor_buckling_pressure(0.010, 1e-3, np.linspace(0.02, 0.06, 9), 70e9)) < 0)
    assert np.all(np.diff(plates.arbor_buckling_pressure(0.010, np.linspace(5e-4, 2e-3, 9), 0.03, 70e9)) > 0)


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda: plates.flange_stress(-1.0, *FLANGE), "force must be zero or more"),
        (lambda: plates.flange_stress(1.0, 0.02, 0.01, 1e-3), "inner_radius must be less than outer_radius"),
        (lambda: plates.flange_stress(1.0, *FLANGE, load="rising"), 'load must be "falling" or "even"'),
        (lambda: plates.flange_spread(1.0, *FLANGE, 0.0), "youngs_modulus must be above zero"),
        (lambda: plates.ring_stress(0.02, 0.005, 0.01), "radius must be at most outer_radius"),
        (lambda: plates.ring_stress(0.002, 0.005, 0.01), "radius must be inner_radius or more"),
        (lambda: plates.arbor_hoop_stress(1.0, 0.01, 0.01), "wall must be less than outer_radius"),
        (lambda: plates.arbor_buckling_pressure(0.01, 1e-3, 0.0, 70e9), "length must be above zero"),
        (lambda: plates.arbor_buckling_pressure(0.01, 1e-3, 0.03, 70e9, 0.7), "poisson must be between 0"),
    ],
)
def test_bad_values_are_refused_by_name(call: object, named: str) -> None:
    with pytest.raises(ValueError, match=named):
        call()  # type: ignore[operator]
