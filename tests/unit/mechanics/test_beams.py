"""Shafts on two supports."""

from __future__ import annotations

from math import pi

import numpy as np
import pytest

from spoolwright.mechanics import beams

SHAFT = (0.05, 207e9, pi * 0.004**4 / 64)


def test_nothing_bends_over_a_support() -> None:
    for at in (0.0, 0.05):
        assert beams.simply_supported_point(100.0, 0.02, *SHAFT, at=at) == 0.0
        assert beams.simply_supported_uniform(100.0, *SHAFT, at=at) == 0.0


def test_force_and_place_may_be_exchanged() -> None:
    there = beams.simply_supported_point(100.0, 0.012, *SHAFT, at=0.037)
    assert there == pytest.approx(beams.simply_supported_point(100.0, 0.037, *SHAFT, at=0.012))


def test_a_force_the_other_way_bends_the_other_way() -> None:
    down = beams.simply_supported_point(100.0, 0.012, *SHAFT, at=0.02)
    assert beams.simply_supported_point(-100.0, 0.012, *SHAFT, at=0.02) == -down


def test_one_mass_whips_where_its_spring_says() -> None:
    sag = beams.simply_supported_point(1.0, 0.02, *SHAFT, at=0.02)
    assert beams.critical_speed(0.03, 0.02, *SHAFT) == pytest.approx((1 / (0.03 * sag)) ** 0.5)


def test_masses_lie_along_the_last_axis() -> None:
    masses = np.array([[0.02, 0.03], [0.04, 0.05]])
    speeds = beams.critical_speed(masses, np.array([0.015, 0.03]), *SHAFT)
    assert np.shape(speeds) == (2,)
    for i in range(2):
        alone = beams.critical_speed(masses[i], np.array([0.015, 0.03]), *SHAFT)
        assert type(alone) is float
        assert speeds[i] == pytest.approx(alone)  # type: ignore[index]


def test_another_mass_never_raises_the_critical_speed() -> None:
    one = beams.critical_speed(np.array([0.03]), np.array([0.02]), *SHAFT)
    assert beams.critical_speed(np.array([0.03, 0.01]), np.array([0.02, 0.035]), *SHAFT) < one


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda: beams.simply_supported_point(1.0, 0.06, *SHAFT, at=0.02), "position must be at most span"),
        (lambda: beams.simply_supported_point(1.0, -0.01, *SHAFT, at=0.02), "position must be zero or more"),
        (
            lambda: beams.simply_supported_point(1.0, 0.02, *SHAFT, at=0.2),
            "at must be at most span; came 0.2 with",
        ),
        (lambda: beams.simply_supported_point(float("nan"), 0.02, *SHAFT, at=0.02), "force must be a finite"),
        (
            lambda: beams.simply_supported_point(1.0, 0.02, 0.05, 0.0, 1e-11, at=0.02),
            "youngs_modulus must be above",
        ),
        (lambda: beams.simply_supported_uniform(1.0, 0.0, 207e9, 1e-11, at=0.0), "span must be above zero"),
        (
            lambda: beams.simply_supported_uniform(1.0, 0.05, 207e9, -1.0, at=0.0),
            "second_moment must be above",
        ),
        (lambda: beams.critical_speed(0.0, 0.02, *SHAFT), "masses must be above zero"),
        (lambda: beams.critical_speed(0.01, 0.05, *SHAFT), "positions must be less than span"),
        (lambda: beams.critical_speed(0.01, 0.0, *SHAFT), "positions must be above zero"),
    ],
)
def test_bad_values_are_refused_by_name(call: object, named: str) -> None:
    with pytest.raises(ValueError, match=named):
        call()  # type: ignore[operator]
