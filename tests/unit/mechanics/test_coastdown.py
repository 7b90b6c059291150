"""A spool left spinning."""

from __future__ import annotations

import math

import numpy as np
import pytest

from spoolwright.mechanics import coastdown

SPOOL = {"initial_speed": 250.0, "inertia": 1.1e-5, "constant": 3e-5, "viscous": 2e-7, "quadratic": 1e-9}


def test_it_starts_at_its_speed_and_ends_at_rest_and_stays_there() -> None:
    stop = coastdown.stop_time(**SPOOL)
    assert coastdown.speed(0.0, **SPOOL) == pytest.approx(250.0)
    assert coastdown.speed(stop, **SPOOL) == 0.0
    assert coastdown.speed(stop * 3, **SPOOL) == 0.0
    assert coastdown.angle(stop * 3, **SPOOL) == pytest.approx(coastdown.angle(stop, **SPOOL))


def test_it_only_slows_down_and_only_turns_forward() -> None:
    t = np.linspace(0, 1.2 * float(coastdown.stop_time(**SPOOL)), 400)
    assert np.all(np.diff(coastdown.speed(t, **SPOOL)) <= 0)
    assert np.all(np.diff(coastdown.angle(t, **SPOOL)) >= 0)


def test_without_a_constant_drag_it_never_quite_stops() -> None:
    assert coastdown.stop_time(250.0, 1.1e-5, 0.0, 2e-7) == math.inf
    assert coastdown.stop_time(250.0, 1.1e-5, 0.0, 0.0, 1e-9) == math.inf
    assert coastdown.stop_time(250.0, 1.1e-5, 0.0) == math.inf
    assert coastdown.speed(1e3, 250.0, 1.1e-5, 0.0, 2e-7) > 0


def test_without_any_drag_it_keeps_its_speed() -> None:
    assert coastdown.speed(1e4, 250.0, 1.1e-5, 0.0) == pytest.approx(250.0)
    assert coastdown.angle(1e4, 250.0, 1.1e-5, 0.0) == pytest.approx(2.5e6)
    assert coastdown.time_at_angle(2.5e6, 250.0, 1.1e-5, 0.0) == pytest.approx(1e4)


def test_a_spool_at_rest_is_stopped_already() -> None:
    assert coastdown.stop_time(0.0, 1.1e-5, 3e-5) == 0.0
    assert coastdown.stop_time(0.0, 1.1e-5, 0.0) == 0.0
    assert coastdown.speed(1.0, 0.0, 1.1e-5, 3e-5) == 0.0
    assert coastdown.angle(1.0, 0.0, 1.1e-5, 3e-5) == 0.0


def test_ticks_beyond_the_last_turn_never_come() -> None:
    whole = coastdown.angle(1e6, **SPOOL)
    ticks = coastdown.time_at_angle(np.array([0.5, 0.999, 1.001]) * whole, **SPOOL)
    assert np.all(np.isfinite(ticks[:2]))  # type: ignore[index]
    assert ticks[2] == math.inf  # type: ignore[index]


def test_viscous_drag_alone_has_a_last_turn_but_no_last_moment() -> None:
    whole = 250.0 * 1.1e-5 / 2e-7
    assert math.isfinite(coastdown.time_at_angle(0.999 * whole, 250.0, 1.1e-5, 0.0, 2e-7))
    assert coastdown.time_at_angle(1.001 * whole, 250.0, 1.1e-5, 0.0, 2e-7) == math.inf


def test_drags_per_unit_inertia_are_an_inertia_of_one() -> None:
    per_unit = {name: SPOOL[name] / 1.1e-5 for name in ("constant", "viscous", "quadratic")}
    assert coastdown.stop_time(250.0, 1.0, **per_unit) == pytest.approx(coastdown.stop_time(**SPOOL))


def test_time_at_speed_at_both_ends() -> None:
    assert coastdown.time_at_speed(250.0, **SPOOL) == 0.0
    assert coastdown.time_at_speed(0.0, **SPOOL) == coastdown.stop_time(**SPOOL)


@pytest.mark.parametrize("bad", [-1.0, math.nan, math.inf])
@pytest.mark.parametrize("name", ["initial_speed", "inertia", "constant", "viscous", "quadratic"])
def test_bad_values_are_refused_by_name(name: str, bad: float) -> None:
    for call in (coastdown.speed, coastdown.angle, coastdown.time_at_angle, coastdown.time_at_speed):
        with pytest.raises(ValueError, match=f"{name} must be"):
            call(1.0, **(SPOOL | {name: bad}))
    with pytest.raises(ValueError, match=f"{name} must be"):
        coastdown.stop_time(**(SPOOL | {name: bad}))


def test_bad_times_angles_and_speeds_are_refused_by_name() -> None:
    with pytest.raises(ValueError, match="time must be zero or more"):
        coastdown.speed(-1.0, **SPOOL)
    with pytest.raises(ValueError, match="time must be zero or more"):
        coastdown.angle(math.nan, **SPOOL)
    with pytest.raises(ValueError, match="angle must be zero or more"):
        coastdown.time_at_angle(-1.0, **SPOOL)
    with pytest.raises(
        ValueError, match="slower must be at most initial_speed; came 260 with initial_speed 250"
    ):
        coastdown.time_at_speed(260.0, **SPOOL)
