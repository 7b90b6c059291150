"""What disc springs do, alone and in packs."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.mechanics import springs

SIZE = (12.5e-3, 6.2e-3, 0.5e-3, 0.35e-3)
SOFT = (12.5e-3, 6.2e-3, 0.2e-3, 0.4e-3)
"""Cone twice the thickness: snaps through."""


def test_nested_springs_share_the_force_and_opposed_ones_the_deflection() -> None:
    one = springs.disc_spring_force(0.2e-3, *SIZE)
    assert springs.stack_force(0.2e-3, *SIZE, "(") == pytest.approx(one)
    assert springs.stack_force(0.2e-3, *SIZE, "))") == pytest.approx(2 * one)
    assert springs.stack_force(0.4e-3, *SIZE, "()") == pytest.approx(one)
    assert springs.stack_force(0.4e-3, *SIZE, "(())") == pytest.approx(2 * one)


def test_a_pack_reads_the_same_from_either_end() -> None:
    assert springs.stack_force(0.5e-3, *SIZE, "(()") == pytest.approx(
        springs.stack_force(0.5e-3, *SIZE, "())")
    )


@pytest.mark.parametrize("arrangement", ["(", "()", "(())", "(()", "()()"])
def test_deflection_and_force_are_each_others_inverse(arrangement: str) -> None:
    flat = springs.stack_deflection(1e9, *SIZE, arrangement)
    pressed = np.linspace(0, 0.999, 25) * flat
    force = springs.stack_force(pressed, *SIZE, arrangement)
    assert springs.stack_deflection(force, *SIZE, arrangement) == pytest.approx(pressed, rel=1e-9, abs=1e-15)


def test_a_force_that_lays_the_pack_flat_goes_no_further() -> None:
    assert springs.stack_deflection(1e6, *SIZE, "()()") == pytest.approx(4 * 0.35e-3, rel=1e-12)


def test_a_soft_spring_snaps_flat_past_the_hump() -> None:
    s = np.linspace(0, 0.4e-3, 400)
    hump = float(np.max(springs.disc_spring_force(s, *SOFT)))
    before = springs.stack_deflection(0.999 * hump, *SOFT, "(")
    assert before < 0.3e-3
    assert springs.stack_deflection(1.001 * hump, *SOFT, "(") == pytest.approx(0.4e-3)


@pytest.mark.parametrize("arrangement", ["", "x", "(]", "2x", None, 3])
def test_an_arrangement_is_brackets(arrangement: object) -> None:
    with pytest.raises(ValueError, match="arrangement must be brackets"):
        springs.stack_force(0.1e-3, *SIZE, arrangement)  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("place", "bad", "named"),
    [
        (0, -1e-6, "deflection must be zero or more"),
        (0, 0.36e-3, "deflection must be at most cone_height; came 0.00036 with cone_height 0.00035"),
        (1, 6.0e-3, "inner_diameter must be less than outer_diameter"),
        (2, 0.0, "inner_diameter must be above zero"),
        (3, float("nan"), "thickness must be above zero"),
        (4, -0.1e-3, "cone_height must be above zero"),
        (5, 0.0, "youngs_modulus must be above zero"),
        (6, 0.7, "poisson must be between 0 and 0.5"),
    ],
)
def test_bad_values_are_refused_by_name(place: int, bad: float, named: str) -> None:
    values = [0.2e-3, *SIZE, 206e9, 0.3]
    values[place] = bad
    with pytest.raises(ValueError, match=named):
        springs.disc_spring_force(*values)


def test_a_ring_as_narrow_as_a_hair_keeps_its_digits() -> None:
    outer, s, t, h = 8e-3, 1e-4, 0.4e-3, 0.2e-3
    for width in (1e-3, 1e-5, 1e-7, 1e-10):
        u = np.log1p(width / (outer - width))
        # Almen and Laszlo's K1 for a narrow ring: the limit 6 u / pi of its definition.
        k1 = 6 * u / np.pi
        limit = 4 * 206e9 / 0.91 * t**3 * s / (k1 * outer**2) * ((h - s) / t * (h - s / 2) / t + 1)
        force = springs.disc_spring_force(s, outer, outer - width, t, h)
        assert force == pytest.approx(limit, rel=1.1 * u + 1e-6)


def test_a_pack_pressed_beyond_flat_is_refused() -> None:
    springs.stack_force(0.7e-3, *SIZE, "()")
    with pytest.raises(ValueError, match="deflection must be at most cone_height of all groups"):
        springs.stack_force(0.71e-3, *SIZE, "()")
