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


def test_a_finer_thread_of_the_same_size_bears_more() -> None:
    assert threads.stress_area(3e-3, 0.35e-3) > threads.stress_area(3e-3, 0.5e-3)
    assert threads.proof_load(3e-3, 0.35e-3, 450e6) > threads.proof_load(3e-3, 0.5e-3, 450e6)


def test_a_deeper_hole_strips_later_and_an_empty_one_at_once() -> None:
    assert threads.strip_force(3e-3, 0.0, 130e6) == 0.0
    assert threads.strip_force(3e-3, 6e-3, 130e6) == pytest.approx(2 * threads.strip_force(3e-3, 3e-3, 130e6))


def test_the_rule_of_thumb_is_near_the_formula_for_usual_friction() -> None:
    thumb = threads.nut_torque(1000.0, 3e-3)
    full = threads.tightening_torque(
        1000.0, 0.5e-3, 2.675e-3, 0.15, bearing_radius=1.95e-3, bearing_friction=0.15
    )
    assert thumb == pytest.approx(full, rel=0.1)


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda: threads.stress_area(0.5e-3, 0.5e-3), "pitch must be less than diameter"),
        (lambda: threads.proof_load(3e-3, 0.5e-3, -1.0), "proof_stress must be zero or more"),
        (lambda: threads.strip_force(3e-3, -1e-3, 1e8), "engagement must be zero or more"),
        (lambda: threads.nut_torque(1.0, 3e-3, 0.0), "factor must be above zero"),
    ],
)
def test_bad_screws_are_refused_by_name(call: object, named: str) -> None:
    with pytest.raises(ValueError, match=named):
        call()  # type: ignore[operator]
