"""The drag stack for any washers: inverse, monotony, and the order of the two wear laws."""

from __future__ import annotations

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from spoolwright.mechanics import clutch

outer = st.floats(1e-3, 0.1)
share = st.floats(0.0, 0.98)
force = st.floats(0.0, 1e4)
friction = st.floats(1e-3, 1.0)
faces = st.integers(1, 20)
model = st.sampled_from(clutch.MODELS)


@given(force, outer, share, friction, faces, model)
def test_clamp_force_undoes_friction_torque(
    clamp: float, ro: float, part: float, mu: float, pairs: int, law: str
) -> None:
    torque = clutch.friction_torque(clamp, ro, part * ro, mu, pairs, law)
    assert clutch.clamp_force(torque, ro, part * ro, mu, pairs, law) == pytest.approx(clamp, rel=1e-12)


@given(outer, share, model)
def test_the_effective_radius_lies_on_the_face(ro: float, part: float, law: str) -> None:
    radius = clutch.effective_radius(ro, part * ro, law)
    assert part * ro <= radius <= ro


@given(outer, share)
def test_a_new_face_never_slips_before_a_worn_one(ro: float, part: float) -> None:
    worn = clutch.effective_radius(ro, part * ro)
    new = clutch.effective_radius(ro, part * ro, "uniform-pressure")
    assert worn <= new * (1 + 1e-12)
    assert new <= worn * 4 / 3 * (1 + 1e-12)


@given(force, outer, st.floats(0.05, 0.9), st.floats(1.001, 1.09), friction, model)
def test_a_wider_reach_holds_more(
    clamp: float, ro: float, part: float, grown: float, mu: float, law: str
) -> None:
    assume(clamp > 1e-6)
    base = clutch.friction_torque(clamp, ro, part * ro, mu, model=law)
    assert clutch.friction_torque(clamp, ro * grown, part * ro, mu, model=law) > base
    assert clutch.friction_torque(clamp, ro, part * ro * grown, mu, model=law) > base


@given(st.floats(1e-3, 1e4), outer, st.floats(0.05, 0.95))
def test_the_run_in_face_has_the_higher_peak(clamp: float, ro: float, part: float) -> None:
    worn = clutch.peak_pressure(clamp, ro, part * ro)
    new = clutch.peak_pressure(clamp, ro, part * ro, "uniform-pressure")
    assert worn >= new * (1 - 1e-12)


@given(st.floats(max_value=-1e-12), outer, share)
def test_a_negative_force_is_always_refused(clamp: float, ro: float, part: float) -> None:
    with pytest.raises(ValueError, match="clamp_force must be zero or more"):
        clutch.friction_torque(clamp, ro, part * ro, 0.2)
