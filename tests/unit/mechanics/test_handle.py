"""Arm, stud and shaft of a handle."""

from __future__ import annotations

from math import pi

import numpy as np
import pytest

from spoolwright.mechanics import handle


def test_a_longer_arm_bends_more_and_a_wider_one_much_less() -> None:
    stress = handle.arm_stress(60.0, 0.035, 9e-3, 3e-3)
    assert handle.arm_stress(60.0, 0.070, 9e-3, 3e-3) == pytest.approx(2 * stress)
    assert handle.arm_stress(60.0, 0.035, 18e-3, 3e-3) == pytest.approx(stress / 4)


def test_the_hand_on_the_arm_itself_bends_nothing() -> None:
    assert handle.arm_stress(60.0, 0.0, 9e-3, 3e-3) == 0.0
    assert handle.stud_stress(60.0, 0.0, 4e-3) == 0.0


def test_bending_alone_and_torsion_alone_are_the_limits_of_both() -> None:
    assert handle.shaft_stress(1.0, 0.0, 6e-3) == pytest.approx(32 / (pi * 6e-3**3))
    assert handle.shaft_stress(0.0, -2.0, 6e-3) == pytest.approx(3**0.5 * 32 / (pi * 6e-3**3))
    assert np.all(np.diff(handle.shaft_stress(1.0, np.linspace(0, 3, 9), 6e-3)) > 0)


def test_a_stud_is_a_shaft_that_is_only_bent() -> None:
    assert handle.stud_stress(60.0, 0.015, 4e-3) == pytest.approx(handle.shaft_stress(0.9, 0.0, 4e-3))


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda: handle.arm_stress(-1.0, 0.03, 9e-3, 3e-3), "force must be zero or more"),
        (lambda: handle.arm_stress(1.0, 0.03, 0.0, 3e-3), "width must be above zero"),
        (lambda: handle.shaft_stress(float("nan"), 1.0, 6e-3), "bending_moment must be a finite number"),
        (lambda: handle.stud_stress(1.0, 0.01, -4e-3), "diameter must be above zero"),
    ],
)
def test_bad_values_are_refused_by_name(call: object, named: str) -> None:
    with pytest.raises(ValueError, match=named):
        call()  # type: ignore[operator]
