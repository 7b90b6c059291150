"""The star's thread and other screws."""

from __future__ import annotations

import math

import pytest

from spoolwright.mechanics import threads

STAR = {"pitch": 0.75e-3, "pitch_diameter": 5.5e-3, "thread_friction": 0.12}


def test_force_and_torque_are_each_others_inverse() -> None:
    torque = threads.tightening_torque(600.0, **STAR)
    assert threads.axial_force(torque, **STAR) == pytest.approx(600.0, rel=1e-12)


def test_a_rubbing_shoulder_adds_its_own_torque() -> None:
    bare = threads.tightening_torque(600.0, **STAR)
    full = threads.tightening_torque(600.0, **STAR, bearing_radius=4e-3, bearing_friction=0.1)
    assert full - bare == pytest.approx(600.0 * 4e-3 * 0.1)


def test_metric_flanks_unless_said_otherwise() -> None:
    assert threads.tightening_torque(600.0, **STAR) == threads.tightening_torque(
        600.0, **STAR, flank_angle=math.radians(30)
    )


@pytest.mark.parametrize(
    ("change", "named"),
    [
        ({"axial_force": -1.0}, "axial_force must be zero or more"),
        ({"pitch": 0.0}, "pitch must be above zero"),
        ({"pitch_diameter": math.inf}, "pitch_diameter must be above zero"),
        ({"thread_friction": -0.1}, "thread_friction must be zero or more"),
        ({"flank_angle": math.pi / 2}, "flank_angle must be 0 or more and below"),
        ({"bearing_radius": math.nan}, "bearing_radius must be zero or more"),
        ({"bearing_friction": -0.2}, "bearing_friction must be zero or more"),
        (
            {"pitch": 0.05, "thread_friction": 0.5},
            "thread_friction must be less than the value at which",
        ),
    ],
)
def test_bad_values_are_refused_by_name(change: dict[str, float], named: str) -> None:
    with pytest.raises(ValueError, match=named):
        threads.tightening_torque(**({"axial_force": 600.0} | STAR | change))


def test_a_negative_torque_is_refused() -> None:
    with pytest.raises(ValueError, match="torque must be zero or more"):
        threads.axial_force(-0.1, **STAR)
