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


def test_masses_and_places_may_be_plain_lists() -> None:
    listed = beams.critical_speed([0.02, 0.03], (0.015, 0.03), *SHAFT)
    assert type(listed) is float
    assert listed == beams.critical_speed(np.array([0.02, 0.03]), np.array([0.015, 0.03]), *SHAFT)


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


STEPPED = ([0.01, 0.03, 0.02], [0.003, 0.005, 0.004], 207e9, [0.004, 0.055])


def test_a_stepped_shaft_is_still_over_its_bearings_and_bends_between() -> None:
    bent = beams.stepped_shaft([80.0, 20.0], [0.02, 0.05], *STEPPED, at=[0.004, 0.03, 0.055])
    assert bent.deflection == pytest.approx([0.0, bent.deflection[1], 0.0], abs=1e-16)  # type: ignore[index]
    assert bent.deflection[1] > 0  # type: ignore[index]
    assert np.sum(bent.reactions) == pytest.approx(100.0)


def test_a_line_that_travels_is_a_row_of_loads() -> None:
    """One force at each of many places in one call is the same as one call for each place."""
    places = np.linspace(0.006, 0.054, 7)
    together = beams.stepped_shaft(100.0, places[:, None], *STEPPED, at=[0.03])
    assert np.shape(together.deflection) == (7, 1)
    for i, place in enumerate(places):
        alone = beams.stepped_shaft(100.0, place, *STEPPED, at=0.03)
        assert type(alone.deflection) is type(alone.bending_stress) is float
        assert together.deflection[i, 0] == pytest.approx(alone.deflection)  # type: ignore[index]
        assert together.reactions[i] == pytest.approx(alone.reactions)


def test_at_a_step_the_thinner_side_is_asked() -> None:
    bent = beams.stepped_shaft(100.0, 0.03, *STEPPED, at=0.01)
    assert bent.bending_stress == pytest.approx(32 * bent.moment / (pi * 0.003**3))


def test_a_shaft_of_twice_the_size_bends_half_as_much_under_the_same_force() -> None:
    lengths, diameters, modulus, bearings = STEPPED
    small = beams.stepped_shaft(100.0, 0.03, *STEPPED, at=0.03)
    large = beams.stepped_shaft(
        100.0,
        0.06,
        np.multiply(lengths, 2),
        np.multiply(diameters, 2),
        modulus,
        np.multiply(bearings, 2),
        0.06,
    )
    assert large.deflection == pytest.approx(small.deflection / 2)
    assert large.bending_stress == pytest.approx(small.bending_stress / 4)
    assert large.slope == pytest.approx(small.slope / 4)


def test_a_thicker_step_makes_a_shaft_stiffer_and_its_whipping_faster() -> None:
    thin, thick = ([0.05], [0.004], 207e9, [0.0, 0.05]), ([0.02, 0.03], [0.004, 0.006], 207e9, [0.0, 0.05])
    assert (
        beams.stepped_shaft(9.0, 0.02, *thick, at=0.02).deflection
        < beams.stepped_shaft(9.0, 0.02, *thin, at=0.02).deflection
    )
    assert beams.stepped_critical_speed(0.03, 0.02, *thick) > beams.stepped_critical_speed(0.03, 0.02, *thin)
    assert beams.stepped_critical_speed(0.03, 0.02, *thick, density=7800.0) < beams.stepped_critical_speed(
        0.03, 0.02, *thick
    )


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
        (
            lambda: beams.stepped_shaft(1.0, 0.02, [0.05], [0.004, 0.003], 2e11, [0.0, 0.05], 0.02),
            "diameters must be one for each of the 1 lengths; came 2",
        ),
        (
            lambda: beams.stepped_shaft(1.0, 0.06, [0.05], [0.004], 2e11, [0.0, 0.05], 0.02),
            "positions must be at most the shaft's length",
        ),
        (
            lambda: beams.stepped_shaft(1.0, 0.02, [0.05], [0.004], 2e11, [0.0, 0.06], 0.02),
            "supports must be at most the shaft's length",
        ),
        (
            lambda: beams.stepped_shaft(1.0, 0.02, [0.05], [0.004], 2e11, [0.04, 0.01], 0.02),
            "supports must be less than the second of them",
        ),
        (
            lambda: beams.stepped_shaft(1.0, 0.02, [0.05], [0.004], 2e11, [0.04], 0.02),
            "supports must be two places; came 1",
        ),
        (
            lambda: beams.stepped_critical_speed(0.0, 0.02, [0.05], [0.004], 2e11, [0.0, 0.05]),
            "masses must be above zero",
        ),
    ],
)
def test_bad_values_are_refused_by_name(call: object, named: str) -> None:
    with pytest.raises(ValueError, match=named):
        call()  # type: ignore[operator]
