"""Teeth."""

from __future__ import annotations

import math

import pytest

from spoolwright.mechanics import gears


def test_a_wider_tooth_bends_less() -> None:
    assert gears.lewis_stress(100.0, 6e-4, 8e-3, 0.3) == pytest.approx(
        gears.lewis_stress(100.0, 6e-4, 4e-3, 0.3) / 2
    )


def test_it_does_not_matter_which_gear_is_named_first() -> None:
    assert gears.contact_ratio(12, 62, 6e-4) == pytest.approx(gears.contact_ratio(62, 12, 6e-4))
    steel_on_brass = gears.hertz_line_stress(100.0, 4e-3, 2e-3, 9e-3, 206e9, 0.3, 100e9, 0.34)
    brass_on_steel = gears.hertz_line_stress(100.0, 4e-3, 9e-3, 2e-3, 100e9, 0.34, 206e9, 0.3)
    assert steel_on_brass == pytest.approx(brass_on_steel)


def test_a_flat_is_an_infinite_radius() -> None:
    flat = gears.hertz_line_stress(100.0, 4e-3, 2e-3, math.inf, 206e9, 0.3, 206e9, 0.3)
    assert flat == pytest.approx(gears.hertz_line_stress(100.0, 4e-3, 2e-3, 1e9, 206e9, 0.3, 206e9, 0.3))


def test_no_force_no_pressure() -> None:
    assert gears.hertz_line_stress(0.0, 4e-3, 2e-3, 9e-3, 206e9, 0.3, 206e9, 0.3) == 0.0


def test_a_pair_of_teeth_is_pressed_alike_whichever_is_named_first() -> None:
    ours = gears.pitch_point_stress(100.0, 6e-4, 12, 50, 4e-3, 206e9, 0.3, 97e9, 0.34)
    other = gears.pitch_point_stress(100.0, 6e-4, 50, 12, 4e-3, 97e9, 0.34, 206e9, 0.3)
    assert ours == pytest.approx(other)


def test_a_gear_of_twice_the_size_under_four_times_the_force_is_stressed_alike() -> None:
    """Stress is force over the square of a length, whichever way a tooth is looked at."""
    brass = (97e9, 0.34, 97e9, 0.34)
    small = gears.pitch_point_stress(100.0, 6e-4, 12, 50, 4e-3, *brass)
    assert gears.pitch_point_stress(400.0, 1.2e-3, 12, 50, 8e-3, *brass) == pytest.approx(small)
    bent = gears.lewis_stress(100.0, 6e-4, 4e-3, gears.form_factor(12))
    assert gears.lewis_stress(400.0, 1.2e-3, 8e-3, gears.form_factor(12)) == pytest.approx(bent)


def test_teeth_at_rest_do_not_rub_and_faster_ones_rub_faster() -> None:
    assert gears.sliding_speed(0.0, 12, 50, 6e-4) == 0.0
    assert gears.sliding_speed(20.0, 12, 50, 6e-4) == pytest.approx(
        2 * gears.sliding_speed(10.0, 12, 50, 6e-4)
    )


STEEL = (206e9, 0.3, 206e9, 0.3)


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda: gears.lewis_stress(-1.0, 1e-3, 5e-3, 0.3), "tangential_force must be zero or more"),
        (lambda: gears.lewis_stress(1.0, 0.0, 5e-3, 0.3), "module must be above zero"),
        (lambda: gears.lewis_stress(1.0, 1e-3, math.nan, 0.3), "face_width must be above zero"),
        (lambda: gears.lewis_stress(1.0, 1e-3, 5e-3, 0.0), "form_factor must be above zero"),
        (
            lambda: gears.lewis_stress(1.0, 1e-3, 5e-3, 0.3, 0.5),
            "velocity_factor must be 1 or more and finite; came 0.5",
        ),
        (lambda: gears.contact_ratio(12.5, 62, 1e-3), "teeth_a must be a whole number of 3 or more"),
        (lambda: gears.contact_ratio(12, 2, 1e-3), "teeth_b must be a whole number of 3 or more"),
        (lambda: gears.contact_ratio(12, 62, -1e-3), "module must be above zero"),
        (
            lambda: gears.contact_ratio(12, 62, 1e-3, 20.0),
            "pressure_angle must be above 0 and at most 0.785398",
        ),
        (lambda: gears.contact_ratio(12, 62, 1e-3, addendum=0.0), "addendum must be above 0 and at most 1.5"),
        (lambda: gears.form_factor(7), "teeth must be a whole number of 8 or more; came 7"),
        (lambda: gears.form_factor(12.5), "teeth must be a whole number of 8 or more"),
        (
            lambda: gears.pitch_point_stress(-1.0, 1e-3, 12, 50, 4e-3, *STEEL),
            "tangential_force must be zero or more",
        ),
        (
            lambda: gears.pitch_point_stress(1.0, 1e-3, 12, 50.5, 4e-3, *STEEL),
            "teeth_b must be a whole number of 3 or more",
        ),
        (
            lambda: gears.pitch_point_stress(1.0, 1e-3, 12, 50, 4e-3, *STEEL, 0.0),
            "pressure_angle must be above 0 and at most 0.785398",
        ),
        (lambda: gears.sliding_speed(-1.0, 12, 50, 1e-3), "speed_a must be zero or more"),
        (lambda: gears.sliding_speed(1.0, 12, 50, 0.0), "module must be above zero"),
        (lambda: gears.hertz_line_stress(-1.0, 1e-2, 1e-2, 1e-2, *STEEL), "force must be zero or more"),
        (lambda: gears.hertz_line_stress(1.0, 0.0, 1e-2, 1e-2, *STEEL), "length must be above zero"),
        (lambda: gears.hertz_line_stress(1.0, 1e-2, -1e-2, 1e-2, *STEEL), "radius_a must be above zero"),
        (
            lambda: gears.hertz_line_stress(1.0, 1e-2, math.inf, math.inf, *STEEL),
            "curvature_of_the_pair must be above zero",
        ),
        (
            lambda: gears.hertz_line_stress(1.0, 1e-2, 1e-2, 1e-2, 206e9, 0.6, 206e9, 0.3),
            "poisson_a must be between 0 and 0.5",
        ),
    ],
)
def test_bad_values_are_refused_by_name(call: object, named: str) -> None:
    with pytest.raises(ValueError, match=named):
        call()  # type: ignore[operator]
