"""Ratchet, dog and rollers."""

from __future__ import annotations

from math import radians

import numpy as np
import pytest

from spoolwright.mechanics import anti_reverse

TOOTH = (0.008, 0.8e-3, 2.0e-3, 1.5e-3)
CLUTCH = (8, 2e-3, 8e-3, 5e-3, 3e9)


def test_two_dogs_halve_it_and_a_wider_tooth_too() -> None:
    one = anti_reverse.ratchet_stress(2.0, *TOOTH)
    for other in (
        anti_reverse.ratchet_stress(2.0, *TOOTH, dogs=2.0),
        anti_reverse.ratchet_stress(2.0, *TOOTH[:3], 3.0e-3),
    ):
        assert other["shear"] == pytest.approx(one["shear"] / 2)
        assert other["bending"] == pytest.approx(one["bending"] / 2)


def test_a_dog_that_bears_at_the_root_bends_nothing() -> None:
    assert anti_reverse.ratchet_stress(2.0, 0.008, 0.0, 2e-3, 1.5e-3)["bending"] == 0.0


def test_a_worn_tip_presses_harder() -> None:
    depth = np.linspace(0.2e-3, 1e-3, 9)
    assert np.all(np.diff(anti_reverse.dog_pressure(2.0, 0.008, depth, 1.5e-3)) < 0)


def test_a_ratchet_of_twice_the_size_under_eight_times_the_torque_is_stressed_alike() -> None:
    small = anti_reverse.ratchet_stress(2.0, *TOOTH)
    large = anti_reverse.ratchet_stress(16.0, *(2 * length for length in TOOTH))
    assert large["shear"] == pytest.approx(small["shear"])
    assert large["bending"] == pytest.approx(small["bending"])


def test_rollers_hold_with_the_square_of_the_pressure_and_with_their_number() -> None:
    held = anti_reverse.roller_clutch_torque(*CLUTCH)
    assert anti_reverse.roller_clutch_torque(*CLUTCH[:4], 1.5e9) == pytest.approx(held / 4)
    assert anti_reverse.roller_clutch_torque(4, *CLUTCH[1:]) == pytest.approx(held / 2)


def test_a_slippery_or_a_steep_wedge_holds_nothing() -> None:
    assert anti_reverse.roller_clutch_torque(*CLUTCH, friction=0.05) == 0.0
    assert anti_reverse.roller_clutch_torque(*CLUTCH, wedge_angle=radians(12)) == 0.0
    assert anti_reverse.roller_clutch_torque(*CLUTCH, friction=0.07) > 0.0


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda: anti_reverse.ratchet_stress(-1.0, *TOOTH), "torque must be zero or more"),
        (lambda: anti_reverse.ratchet_stress(1.0, 0.008, 1e-3, 0.0, 1e-3), "root must be above zero"),
        (lambda: anti_reverse.dog_pressure(1.0, 0.008, 0.0, 1e-3), "contact_depth must be above zero"),
        (lambda: anti_reverse.roller_clutch_torque(2.5, *CLUTCH[1:]), "rollers must be a whole number of 1"),
        (
            lambda: anti_reverse.roller_clutch_torque(*CLUTCH, wedge_angle=1.0),
            "wedge_angle must be above 0 and at most 0.523599",
        ),
    ],
)
def test_bad_values_are_refused_by_name(call: object, named: str) -> None:
    with pytest.raises(ValueError, match=named):
        call()  # type: ignore[operator]
