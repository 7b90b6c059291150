"""The reel's frame under the pull of the line."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest

from spoolwright.mechanics import frame

ROUND: dict[str, Any] = {
    "plate_spacing": 0.038,
    "plate_radius": 0.031,
    "plate_thickness": 0.002,
    "pillars": 4,
    "pillar_diameter": 0.005,
    "pillar_circle": 0.027,
    "youngs_modulus": 97e9,
}


def test_a_pull_nearer_the_gear_side_leans_the_axis_more_the_more_it_is_off_the_middle() -> None:
    tilt = frame.spool_axis_tilt(np.array([0.002, 0.008, 0.014, 0.019]), 0.0, **ROUND).tilt
    assert np.all(np.diff(tilt) < 0)
    assert tilt[-1] == pytest.approx(0.0, abs=1e-12)  # type: ignore[index]


def test_the_torque_of_the_pull_leans_it_even_from_the_middle() -> None:
    assert frame.spool_axis_tilt(0.019, 0.022, **ROUND).tilt > 1e-8


def test_twice_the_stiffness_leans_half_as_far_and_floats_stay_floats() -> None:
    soft = frame.spool_axis_tilt(0.01, 0.022, **ROUND)
    stiff = frame.spool_axis_tilt(0.01, 0.022, **ROUND | {"youngs_modulus": 194e9})
    for one, other in zip(soft, stiff, strict=True):
        assert type(one) is float
        assert other == pytest.approx(one / 2)


def test_a_frame_of_twice_the_size_leans_a_quarter_as_far() -> None:
    """An angle for a newton goes with one over modulus and length squared."""
    lengths = [k for k in ROUND if k not in ("pillars", "youngs_modulus")]
    double = ROUND | {k: 2 * ROUND[k] for k in lengths}
    small, large = frame.spool_axis_tilt(0.01, 0.022, **ROUND), frame.spool_axis_tilt(0.02, 0.044, **double)
    assert large.tilt == pytest.approx(small.tilt / 4)
    assert large.mesh == pytest.approx(small.mesh / 4)
    assert large.give == pytest.approx(small.give / 2)


@pytest.mark.parametrize("part", ["plate_thickness", "pillar_diameter"])
def test_whatever_is_thicker_leans_less(part: str) -> None:
    before = frame.spool_axis_tilt(0.008, 0.022, **ROUND)
    after = frame.spool_axis_tilt(0.008, 0.022, **ROUND | {part: 1.2 * ROUND[part]})
    assert after.tilt < before.tilt
    assert after.give < before.give


def test_positions_radii_moduli_and_slopes_broadcast() -> None:
    lean = frame.spool_axis_tilt(
        np.array([0.008, 0.019, 0.03]), np.array([[0.012], [0.022]]), **ROUND | {"shaft_slope": 1e-6}
    )
    for part in lean:
        assert np.shape(part) == (2, 3)
    alone = frame.spool_axis_tilt(0.03, 0.012, **ROUND | {"shaft_slope": 1e-6})
    assert lean.mesh[0, 2] == pytest.approx(alone.mesh)  # type: ignore[index]


def test_a_shaft_that_bends_takes_the_pinion_with_it() -> None:
    rigid = frame.spool_axis_tilt(0.019, 0.0, **ROUND)
    bent = frame.spool_axis_tilt(0.019, 0.0, **ROUND | {"shaft_slope": 1e-5})
    assert bent.tilt == rigid.tilt
    assert abs(bent.mesh - 1e-5) <= rigid.mesh + 1e-15


def test_the_same_frame_is_solved_once() -> None:
    frame.spool_axis_tilt(0.01, 0.022, **ROUND)
    solved = frame._compliance.cache_info().misses
    frame.spool_axis_tilt(0.02, 0.018, **ROUND | {"youngs_modulus": 70e9})
    assert frame._compliance.cache_info().misses == solved


def test_what_holds_a_frame_carries_what_pulls_it() -> None:
    rod = frame.Bar(0, 1, 1e-4, 1e-9, 1e-9, 2e-9)
    moved = frame.joint_movements(
        [(0, 0, 0), (0.5, 0, 0)], [rod], {0: frame.CLAMPED}, [{1: (1, 2, 3, 0, 0, 0)}], 2e11, 8e10
    )
    assert moved.reactions[0, 0, :3] == pytest.approx([-1, -2, -3])
    assert moved.movements.shape == (1, 2, 6)


@pytest.mark.parametrize(
    ("changed", "named"),
    [
        ({"pillars": 2}, "pillars must be a whole number of 3 or more"),
        ({"pillars": 13}, "pillars must be between 3 and 12"),
        ({"pillar_circle": 0.04}, "pillar_circle must be at most plate_radius"),
        ({"plate_thickness": 0.0}, "plate_thickness must be above zero"),
        ({"youngs_modulus": -1.0}, "youngs_modulus must be above zero"),
        ({"foot_share": 1.0}, "foot_share must be above 0 and at most 0.99"),
        ({"shaft_slope": math.nan}, "shaft_slope must be a finite number"),
        ({"poisson": 0.6}, "poisson must be between 0 and 0.5"),
    ],
)
def test_bad_sizes_are_refused_by_name(changed: dict[str, float], named: str) -> None:
    with pytest.raises(ValueError, match=named):
        frame.spool_axis_tilt(0.01, 0.022, **ROUND | changed)


def test_a_line_off_the_spool_and_a_frame_without_hold_are_refused() -> None:
    with pytest.raises(ValueError, match="line_position must be at most plate_spacing"):
        frame.spool_axis_tilt(0.05, 0.022, **ROUND)
    with pytest.raises(ValueError, match="held must hold at least one joint"):
        frame.joint_movements([(0, 0, 0)], [], {}, [], 1e9, 1e9)
    with pytest.raises(ValueError, match='base must be "fixed" or "pinned"'):
        frame.portal_sway(1.0, 1.0, 1.0, 1e9, 1e-9, 1e-9, base="hinged")
