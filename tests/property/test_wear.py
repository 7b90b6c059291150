"""Wear, winding, level wind and bearings for any sizes: scaling, direction, limits."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from spoolwright.mechanics import capstan, level_wind, lubricant, rolling, spool, wear, winding

few = settings(max_examples=25)
factor = st.floats(0.2, 5.0)
rate, pressure, way = st.floats(1e-18, 1e-12), st.floats(1e3, 1e8), st.floats(1e-2, 1e6)
limit, share = st.floats(1e-5, 1e-3), st.floats(0.0, 0.999)
lead, diameter, friction = st.floats(2e-3, 2e-2), st.floats(2e-3, 2e-2), st.floats(0.0, 0.3)


@few
@given(rate, pressure, way, limit, share, factor)
def test_life_scales_as_depth_does(k: float, p: float, s: float, deep: float, gone: float, by: float) -> None:
    """Whatever makes it wear so many times as fast leaves so many times fewer uses; what is gone is gone."""
    life = wear.life(deep, k, p, s)
    for worse in (
        wear.life(deep, k * by, p, s),
        wear.life(deep, k, p * by, s),
        wear.life(deep, k, p, s * by),
    ):
        assert worse * by == pytest.approx(life, rel=1e-9)
    assert wear.life(deep, k, p, s, gone * deep) == pytest.approx((1 - gone) * life, rel=1e-9)


@few
@given(rate, st.floats(1.0, 1e4), pressure, way, limit)
def test_a_band_of_lives_is_in_order_and_closes_with_its_rates(
    k: float, wide: float, p: float, s: float, deep: float
) -> None:
    band = wear.life_band(deep, k, k * wide, p, s)
    assert band["low"] <= band["middle"] <= band["high"]
    assert wear.life(deep, k * wide, p, s) <= band["low"] * (1 + 1e-9)
    assert band["high"] <= wear.life(deep, k, p, s) * (1 + 1e-9)


@few
@given(lead, diameter, friction, st.floats(0.1, 50.0), factor)
def test_a_worm_obeys_its_sizes(long: float, d: float, mu: float, force: float, by: float) -> None:
    """Torque goes with force and size, force on the pawl with force alone; nothing is gained by friction."""
    if mu * long / (np.pi * d) > 0.9:  # the pawl would jam
        return
    torque = level_wind.worm_torque(force, long, d, mu)
    assert level_wind.worm_torque(force, long * by, d * by, mu) == pytest.approx(torque * by, rel=1e-9)
    assert level_wind.pawl_force(force, long * by, d * by, mu) == pytest.approx(
        level_wind.pawl_force(force, long, d, mu), rel=1e-9
    )
    assert level_wind.pawl_force(force, long, d, mu) >= force
    assert 0 < level_wind.worm_efficiency(long, d, mu) <= 1 + 1e-12


@few
@given(st.floats(0.0, 50.0), st.floats(5e-3, 0.03), st.floats(1.0, 3.0), st.floats(1e-4, 1e-3), factor)
def test_a_wound_pack_scales_and_its_band_is_in_order(
    tension: float, hub: float, ratio: float, thick: float, by: float
) -> None:
    """Pressure goes with tension, and with the inverse square of all lengths together."""
    band = winding.pressure_band(tension, thick, thick, hub, hub * ratio)
    assert 0 <= band["low"] <= band["high"]
    larger = winding.pressure_band(tension, thick * by, thick * by, hub * by, hub * ratio * by)
    for end in ("low", "high"):
        assert larger[end] * by**2 == pytest.approx(band[end], rel=1e-6, abs=1e-9)  # type: ignore[literal-required]


@few
@given(st.floats(0.0, 0.5), st.floats(0.0, 6.0), st.floats(0.0, 6.0))
def test_bends_add_up(mu: float, first: float, second: float) -> None:
    both = capstan.pull_ratio(mu, first + second)
    assert both == pytest.approx(capstan.pull_ratio(mu, first) * capstan.pull_ratio(mu, second), rel=1e-9)
    assert both >= 1.0


@few
@given(st.lists(st.floats(0.0, 500.0), min_size=1, max_size=5), st.floats(1e-4, 1e-3), st.floats(0.3, 1.0))
def test_lines_of_one_kind_lie_as_one_long_line(lengths: list[float], thick: float, packing: float) -> None:
    radii = spool.mixed_fill(0.011, 0.044, lengths, [thick] * len(lengths), packing)
    whole = spool.fill_radius(0.011, sum(lengths), 0.044, thick, packing)
    assert radii[-1] == pytest.approx(whole, rel=1e-9)  # type: ignore[index]
    assert np.all(np.diff(radii) >= 0)


@few
@given(st.floats(0.0, 1.0), st.floats(1.0, 4.0))
def test_a_spool_that_empties_lies_between_its_ends(out: float, ratio: float) -> None:
    radius = spool.radius_at_line_out(0.01, 0.01 * ratio, out)
    assert 0.01 * (1 - 1e-12) <= radius <= 0.01 * ratio * (1 + 1e-12)


@few
@given(st.floats(0.0, 900.0), st.floats(1e-3, 900.0), factor)
def test_static_safety_goes_with_rating_over_load(axial: float, radial: float, by: float) -> None:
    safety = rolling.static_safety(1000.0, radial, axial)
    assert rolling.static_safety(1000.0 * by, radial * by, axial * by) == pytest.approx(safety, rel=1e-9)
    assert safety <= 1000.0 / radial * (1 + 1e-12)


@few
@given(st.floats(9e-3, 47e-3), st.floats(9e-3, 47e-3))
def test_softer_grease_holds_less(one: float, other: float) -> None:
    soft, stiff = max(one, other), min(one, other)
    assert lubricant.grease_yield_stress(soft) <= lubricant.grease_yield_stress(stiff)


@few
@given(st.floats(255.0, 330.0), st.floats(255.0, 330.0), st.floats(100.0, 2e4))
def test_colder_oil_makes_a_thicker_film(one: float, other: float, rpm: float) -> None:
    warm, cold = max(one, other), min(one, other)
    at = [lubricant.kappa(t, 32e-6, 5.4e-6, rpm, 7e-3) for t in (cold, warm)]
    assert at[0] >= at[1] * (1 - 1e-12)
