"""Judder for any spool and line: it scales, its pulls stand in order, and damping calms it."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from spoolwright.mechanics import judder

few = settings(max_examples=10, deadline=None)
mass = st.floats(1e-3, 2.0)
stiff = st.floats(1.0, 5e3)
speed = st.floats(1e-3, 10.0)
kinetic = st.floats(1.0, 200.0)
ratio = st.floats(1.0, 2.0)
damped = st.floats(0.0, 2.5)


def told(m: float, k: float, v: float, f: float, up: float, z: float) -> judder.StickSlip:
    return judder.stick_slip(m, k, v, up * f, f, 1.0, damping=2 * z * np.sqrt(k * m), times=np.zeros(1))


@few
@given(mass, stiff, speed, kinetic, ratio, damped)
def test_the_pulls_stand_in_order(m: float, k: float, v: float, f: float, up: float, z: float) -> None:
    found = told(m, k, v, f, up, z)
    assert found.start_up_peak >= up * f * (1 - 1e-12)
    assert found.lowest_pull <= f * (1 + 1e-12) <= found.highest_pull * (1 + 1e-9)
    assert found.runs_smooth == (found.frequency == 0.0)


@few
@given(mass, stiff, speed, kinetic, ratio, damped, st.floats(0.1, 10.0))
def test_everything_scales(m: float, k: float, v: float, f: float, up: float, z: float, by: float) -> None:
    """Masses, stiffness and forces by one factor change pulls alone; lengths by one factor change speeds."""
    plain, heavier = told(m, k, v, f, up, z), told(by * m, by * k, v, by * f, up, z)
    assert heavier.start_up_peak == pytest.approx(by * plain.start_up_peak, rel=1e-9)
    assert heavier.frequency == pytest.approx(plain.frequency, rel=1e-6)
    assert heavier.smooth_above == pytest.approx(plain.smooth_above, rel=1e-6)
    longer = told(m, k, by * v, by * f, up, z)
    assert longer.swing == pytest.approx(by * plain.swing, rel=1e-6, abs=1e-9)


@few
@given(mass, stiff, speed, kinetic, st.floats(1.01, 2.0), st.floats(0.001, 0.4))
def test_more_damping_runs_smooth_at_a_lower_speed(
    m: float, k: float, v: float, f: float, up: float, z: float
) -> None:
    little, more = told(m, k, v, f, up, z), told(m, k, v, f, up, 2 * z)
    assert more.smooth_above < little.smooth_above
    assume(abs(little.smooth_above / v - 1) > 1e-6)
    assert little.runs_smooth == (v > little.smooth_above)


@few
@given(mass, stiff, speed, kinetic, st.floats(1.01, 1.9))
def test_a_larger_step_of_friction_starts_harder_and_swings_wider(
    m: float, k: float, v: float, f: float, up: float
) -> None:
    small, large = told(m, k, v, f, up, 0.0), told(m, k, v, f, up + 0.1, 0.0)
    assert large.start_up_peak > small.start_up_peak
    assert large.swing > small.swing
