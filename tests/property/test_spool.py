"""Line on a spool for any sizes: inverse, adding up, and pulls that keep their torque."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from spoolwright.mechanics import spool

arbor = st.floats(2e-3, 0.1)
grown = st.floats(1.0, 5.0)
width = st.floats(2e-3, 0.2)
line = st.floats(5e-5, 2e-3)
packing = st.floats(0.05, 1.0)


@given(arbor, grown, width, line, packing)
def test_fill_radius_undoes_line_length(r: float, times: float, w: float, d: float, k: float) -> None:
    metres = spool.line_length(r, r * times, w, d, k)
    assert metres >= 0
    assert spool.fill_radius(r, metres, w, d, k) == pytest.approx(r * times, rel=1e-9)


@given(arbor, st.floats(0, 2000), st.floats(0, 2000), width, line, packing)
def test_line_wound_in_two_goes_fills_as_line_wound_in_one(
    r: float, first: float, second: float, w: float, d: float, k: float
) -> None:
    halfway = spool.fill_radius(r, first, w, d, k)
    assert spool.fill_radius(halfway, second, w, d, k) == pytest.approx(
        spool.fill_radius(r, first + second, w, d, k), rel=1e-9
    )


@given(arbor, grown, width, line, packing)
def test_thicker_line_never_holds_more(r: float, times: float, w: float, d: float, k: float) -> None:
    assert spool.line_length(r, r * times, w, d * 1.1, k) <= spool.line_length(r, r * times, w, d, k)


@given(st.floats(0, 50), st.floats(0.1, 10), st.floats(1e-3, 0.1), st.floats(1e-3, 0.1))
def test_the_same_torque_at_every_radius(torque: float, ratio: float, one: float, other: float) -> None:
    assert spool.line_pull(torque, ratio, one) * one == pytest.approx(
        spool.line_pull(torque, ratio, other) * other, rel=1e-12, abs=1e-300
    )


@given(arbor, grown, grown, width, st.floats(500, 2000), packing)
def test_inertia_of_line_adds_up_ring_on_ring(
    r: float, times: float, more: float, w: float, density: float, k: float
) -> None:
    middle, full = r * times, r * times * more
    parts = spool.line_inertia(r, middle, w, density, k) + spool.line_inertia(middle, full, w, density, k)
    assert parts == pytest.approx(spool.line_inertia(r, full, w, density, k), rel=1e-9, abs=1e-15)
