"""Blocks, magnets and air on a free spool."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.mechanics import brakes, coastdown


def test_twice_the_blocks_brake_twice_as_hard_and_heavier_ones_as_much() -> None:
    base = brakes.centrifugal(2, 0.06e-3, 9e-3, 10e-3, 0.2)
    assert brakes.centrifugal(4, 0.06e-3, 9e-3, 10e-3, 0.2) == pytest.approx(2 * base)
    assert brakes.centrifugal(2, 0.12e-3, 9e-3, 10e-3, 0.2) == pytest.approx(2 * base)
    assert brakes.centrifugal(0, 0.06e-3, 9e-3, 10e-3, 0.2) == 0.0


def test_blocks_alone_slow_a_spool_by_the_law_that_is_stated() -> None:
    k, inertia, first = brakes.centrifugal(2, 0.06e-3, 9e-3, 10e-3, 0.2), 8e-6, 2000.0
    for time in (0.1, 0.7, 3.0):
        slowed = coastdown.speed(time, first, inertia, constant=0.0, quadratic=k)
        assert slowed == pytest.approx(first / (1 + k * first * time / inertia), rel=1e-9)


def test_magnets_grow_with_the_square_of_their_field() -> None:
    assert brakes.eddy(0.2, 1e-4, 1e-3, 0.02, 4e-8) == pytest.approx(
        4 * brakes.eddy(0.1, 1e-4, 1e-3, 0.02, 4e-8)
    )


def test_past_the_critical_speed_the_force_itself_falls() -> None:
    speed = np.linspace(0.1, 4.0, 200)
    force = speed * brakes.eddy_share(speed)
    assert speed[np.argmax(force)] == pytest.approx(1.0, abs=0.03)
    assert np.all(np.diff(force[speed > 1.1]) < 0)


def test_air_grows_with_the_fourth_power_of_the_rim() -> None:
    assert brakes.disc_windage(0.04) == pytest.approx(16 * brakes.disc_windage(0.02))


def test_line_stays_tight_by_itself_where_the_payload_does_not_slow() -> None:
    assert brakes.holding_torque(2e-5, 60.0, -3.0, 0.02, 0.3e-3, 0.04, 0.7) == 0.0


def test_the_falling_radius_helps_to_keep_the_line_tight() -> None:
    thick = brakes.holding_torque(2e-5, 60.0, 10.0, 0.02, 0.35e-3, 0.04, 0.7)
    thin = brakes.holding_torque(2e-5, 60.0, 10.0, 0.02, 0.0, 0.04, 0.7)
    assert thick < thin == pytest.approx(2e-5 * 10.0 / 0.02)


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda: brakes.centrifugal(-1, 1e-4, 0.01, 0.01, 0.2), "blocks must be zero or more"),
        (lambda: brakes.eddy(0.1, 1e-4, 1e-3, 0.02, 0.0), "resistivity must be above zero"),
        (lambda: brakes.eddy(0.1, 1e-4, 1e-3, 0.02, 4e-8, 1.5), "return_path must be between 0 and 1"),
        (lambda: brakes.eddy_share(float("nan")), "speed_over_critical must be zero or more"),
        (lambda: brakes.disc_windage(-0.1), "radius must be zero or more"),
        (lambda: brakes.holding_torque(1e-5, 50, 10, 0.0, 3e-4, 0.04, 0.7), "radius must be above zero"),
    ],
)
def test_bad_values_are_refused_by_name(call: object, named: str) -> None:
    with pytest.raises(ValueError, match=named):
        call()  # type: ignore[operator]
