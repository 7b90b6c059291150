"""The cast beside closed forms of mechanics and beside SciPy's integrator with located events."""

from __future__ import annotations

from math import atan, cos, log, pi, radians, sin, sqrt, tan
from typing import Any

import numpy as np
import pytest

from spoolwright.command import scipy_cast
from spoolwright.command.some_casts import one, some_casts
from spoolwright.mechanics import cast

GRAVITY = 9.80665
CASES = 50
NOTHING: dict[str, Any] = {
    "spool_inertia": 0.0,
    "full_radius": 0.02,
    "arbor_radius": 0.01,
    "spool_width": 0.04,
    "packing": 0.7,
    "line_diameter": 0.0,
    "line_density": 0.0,
    "line_length": 1e6,
}
"""A reel that is not there: no inertia, no line."""


@pytest.mark.parametrize("degrees", [5, 30, 45, 60, 85])
@pytest.mark.parametrize("height", [0.0, 2.0, 30.0])
def test_without_air_line_and_spool_the_range_is_the_closed_form(degrees: float, height: float) -> None:
    """Source: any mechanics text, v^2 sin 2a / 2g (1 + sqrt(1 + 2 g h / (v sin a)^2)), from memory."""
    speed, angle = 40.0, radians(degrees)
    up = speed * sin(angle)
    wanted = speed**2 * sin(2 * angle) / (2 * GRAVITY) * (1 + sqrt(1 + 2 * GRAVITY * height / up**2))
    flown = cast.simulate(
        payload_mass=0.1,
        payload_drag_area=0.0,
        release_speed=speed,
        release_angle=angle,
        release_height=height,
        **NOTHING,
    )
    assert flown.distance == pytest.approx(wanted, rel=1e-9)
    assert flown.flight_time == pytest.approx((up + sqrt(up**2 + 2 * GRAVITY * height)) / GRAVITY, rel=1e-9)


@pytest.mark.parametrize("speed", [5.0, 36.0, 120.0])
def test_straight_up_through_air_it_comes_back_as_the_closed_form_says(speed: float) -> None:
    """Source: Timmerman and van der Weele, Am. J. Phys. 67 (1999) 538, from memory: terminal speed vt, height
    vt^2 / 2g ln(1 + v^2 / vt^2), back at v / sqrt(1 + v^2 / vt^2); times vt / g atan(v / vt) up and
    vt / g arcosh(exp(g H / vt^2)) down."""
    mass, area, density = 0.142, 1.3e-3, 1.225
    terminal = sqrt(2 * mass * GRAVITY / (density * area))
    height = terminal**2 / (2 * GRAVITY) * log(1 + (speed / terminal) ** 2)
    up = terminal / GRAVITY * atan(speed / terminal)
    down = terminal / GRAVITY * np.arccosh(np.exp(GRAVITY * height / terminal**2))
    flown = cast.trace(
        payload_mass=mass,
        payload_drag_area=area,
        air_density=density,
        release_speed=speed,
        release_angle=pi / 2,
        release_height=0.0,
        rtol=1e-9,
        points=20,
        **NOTHING,
    )
    assert flown.summary.flight_time == pytest.approx(up + down, rel=1e-7)
    assert flown.summary.arc == pytest.approx(2 * height, rel=1e-6)
    assert flown.y.max() == pytest.approx(height, rel=1e-3)
    assert flown.speed[-1] == pytest.approx(speed / sqrt(1 + (speed / terminal) ** 2), rel=1e-7)


def test_a_spool_on_a_massless_line_slows_the_payload_as_a_flywheel_does() -> None:
    """Source: any mechanics text (kinematics of a mass that turns a wheel): along a nearly straight path with
    no gravity to speak of, a torque M on a spool of inertia I takes M / r over m + I / r^2."""
    mass, inertia, radius, torque = 1.0, 2e-4, 0.02, 0.2
    flown = cast.trace(
        **{
            **NOTHING,
            "payload_mass": mass,
            "payload_drag_area": 0.0,
            "release_speed": 100.0,
            "release_angle": 0.0,
            "release_height": 0.05,
            "spool_inertia": inertia,
            "full_radius": radius,
            "bearing_constant": torque,
        }
    )
    time, speed = flown.time[-1], flown.speed[-1]
    slowing = torque / radius / (mass + inertia / radius**2)
    along = 100.0 - slowing * time
    assert speed == pytest.approx(sqrt(along**2 + (GRAVITY * time) ** 2), rel=2e-5)
    assert flown.spool_speed[-1] == pytest.approx(speed / radius, rel=1e-9)


def test_a_spool_that_empties_freely_turns_by_its_own_angular_momentum() -> None:
    """Source: angular momentum of what leaves and what stays (any mechanics text): without torque and without
    tension the spool keeps its speed, however much line leaves it."""
    flown = cast.trace(
        payload_mass=0.02,
        payload_drag_area=5e-3,
        release_speed=30.0,
        release_angle=radians(40),
        spool_inertia=1e-5,
        full_radius=0.02,
        arbor_radius=0.012,
        spool_width=0.04,
        packing=0.7,
        line_diameter=0.4e-3,
        line_density=1140.0,
        line_length=150.0,
    )
    assert flown.slack[-1] > 1.0
    assert np.all(np.abs(flown.spool_speed / flown.spool_speed[0] - 1) < 1e-12)


@pytest.fixture(scope="module")
def by_scipy() -> tuple[dict[str, Any], dict[str, np.ndarray]]:
    """Source: SciPy solve_ivp, DOP853 with located events, rtol 1e-10, run here on equations written anew."""
    drawn = some_casts(CASES, 1)
    flights = [
        scipy_cast.fly(one(drawn, number), method="DOP853", rtol=1e-10, atol=1e-9, max_step=0.15)
        for number in range(CASES)
    ]
    return drawn, {name: np.array([flight[name] for flight in flights]) for name in flights[0]}


def test_random_casts_land_where_scipy_lands_them(by_scipy: Any) -> None:
    """Source: SciPy, see the fixture. At the tolerance that is usual here, within 0.02 %."""
    drawn, theirs = by_scipy
    ours = cast.simulate(**drawn)
    assert ours.distance == pytest.approx(theirs["distance"], rel=2e-4)
    assert ours.flight_time == pytest.approx(theirs["flight_time"], rel=2e-4)
    assert ours.line_out == pytest.approx(theirs["line_out"], rel=2e-4)
    assert np.array_equal(ours.landed, theirs["landed"] > 0)
    assert np.sum(theirs["joins"] > 0) > 10


def test_and_closely_where_both_try_hard(by_scipy: Any) -> None:
    """Source: SciPy, see the fixture."""
    drawn, theirs = by_scipy
    ours = cast.simulate(**drawn, rtol=1e-11)
    assert ours.distance == pytest.approx(theirs["distance"], rel=2e-8)
    assert ours.join_energy == pytest.approx(theirs["join_energy"], rel=1e-4, abs=1e-8)
    assert np.all(ours.peak_slack >= theirs["peak_slack"] * (1 - 1e-9))


@pytest.mark.parametrize("variant", ["ideal thumb", "fixed spool"])
def test_the_variants_land_where_scipy_lands_them(variant: str) -> None:
    """Source: SciPy solve_ivp, DOP853 with located events, run here on equations written anew."""
    drawn = some_casts(3, 5)
    ours = cast.simulate(**drawn, variant=variant, rtol=1e-10)
    for number in range(3):
        theirs = scipy_cast.fly(one(drawn, number), variant, method="DOP853", rtol=1e-9, atol=1e-9)
        assert ours.distance[number] == pytest.approx(theirs["distance"], rel=1e-6)


def test_a_hard_thrown_payload_flies_at_the_best_angle_of_the_closed_form() -> None:
    """Source: any mechanics text, without air from a height h: tan a = v / sqrt(v^2 + 2 g h), from memory."""
    speed, height = 14.0, 2.1
    angles = np.radians(np.linspace(30, 55, 251))
    far = cast.simulate(
        payload_mass=0.1,
        payload_drag_area=0.0,
        release_speed=speed,
        release_angle=angles,
        release_height=height,
        **NOTHING,
    ).distance
    assert tan(angles[np.argmax(far)]) == pytest.approx(
        speed / sqrt(speed**2 + 2 * GRAVITY * height), abs=0.004
    )
    assert cos(angles[np.argmax(far)]) > cos(pi / 4)
