"""Coasting rotors: a printed example, the textbook laws one drag at a time, and numerical integration."""

from __future__ import annotations

from math import atan, exp, log, pi, sqrt

import numpy as np
import pytest
from scipy.integrate import quad, solve_ivp

from spoolwright.mechanics import coastdown
from tests.reference.published import Published, each

RPM = 2 * pi / 60
FLYWHEEL = "university physics course, angular kinematics: flywheel at 900 rpm, slowed by 5 rpm each second"
FLYWHEEL_HOW = "opened: sample problem of an introductory course, physics.byu.edu, angular kinematics"
W0, J = 200.0, 1.2e-5

CHECKS = [
    Published(
        "stop, s", lambda: coastdown.stop_time(900 * RPM, 1.0, 5 * RPM), 180, 0.5, FLYWHEEL, FLYWHEEL_HOW
    ),
    Published(
        "turns to the stop",
        lambda: coastdown.angle(1e4, 900 * RPM, 1.0, 5 * RPM) / (2 * pi),
        1350,
        0.5,
        FLYWHEEL,
        FLYWHEEL_HOW,
    ),
    Published(
        "speed after 1000 turns, rpm",
        lambda: (
            coastdown.speed(
                coastdown.time_at_angle(1000 * 2 * pi, 900 * RPM, 1.0, 5 * RPM), 900 * RPM, 1.0, 5 * RPM
            )
            / RPM
        ),
        458,
        0.5,
        FLYWHEEL,
        FLYWHEEL_HOW,
    ),
    Published(
        "turns after the speed has halved, over those before, viscous drag alone",
        lambda: (
            coastdown.angle(1e9, 1.0, 1.0, 0.0, 1.0)
            / coastdown.angle(coastdown.time_at_speed(0.5, 1.0, 1.0, 0.0, 1.0), 1.0, 1.0, 0.0, 1.0)
            - 1
        ),
        1,
        1e-9,
        "physics exercise: retardation proportional to speed; n turns to half speed, n more to rest",
        "opened: https://askfilo.com, flywheel with axle friction proportional to angular velocity",
    ),
]


@each(CHECKS)
def test_printed(check: Published) -> None:
    check.agrees()


# Each law by itself, any text on differential equations.


def test_constant_drag_alone() -> None:
    t = np.linspace(0, 20, 50)
    assert coastdown.speed(t, W0, J, 1e-4) == pytest.approx(W0 - 1e-4 / J * t, rel=1e-12)
    assert coastdown.angle(t, W0, J, 1e-4) == pytest.approx(W0 * t - 1e-4 / J * t**2 / 2, rel=1e-12)


def test_viscous_drag_alone() -> None:
    t = np.linspace(0.1, 300, 50)
    fade = np.exp(-1e-6 / J * t)
    assert coastdown.speed(t, W0, J, 0.0, 1e-6) == pytest.approx(W0 * fade, rel=1e-12)
    assert coastdown.angle(t, W0, J, 0.0, 1e-6) == pytest.approx(W0 * J / 1e-6 * (1 - fade), rel=1e-12)


def test_quadratic_drag_alone() -> None:
    t = np.linspace(0.1, 300, 50)
    grown = 1 + 1e-8 * W0 * t / J
    assert coastdown.speed(t, W0, J, 0.0, 0.0, 1e-8) == pytest.approx(W0 / grown, rel=1e-12)
    assert coastdown.angle(t, W0, J, 0.0, 0.0, 1e-8) == pytest.approx(J / 1e-8 * np.log(grown), rel=1e-12)


def test_constant_and_viscous_stop() -> None:
    """t = (J / b) ln(1 + b w0 / a) (any text)."""
    assert coastdown.stop_time(W0, J, 2e-5, 3e-7) == pytest.approx(
        J / 3e-7 * log(1 + 3e-7 * W0 / 2e-5), rel=1e-12
    )


def test_constant_and_quadratic_stop() -> None:
    """t = J / sqrt(a e) atan(w0 sqrt(e / a)) (flywheel with bearing and air drag, any text)."""
    a, e = 2e-5, 3e-9
    assert coastdown.stop_time(W0, J, a, 0.0, e) == pytest.approx(
        J / sqrt(a * e) * atan(W0 * sqrt(e / a)), rel=1e-12
    )


def test_viscous_and_quadratic_speed() -> None:
    """Bernoulli's equation: w = b / ((e + b / w0) exp(b t / J) - e) (any text)."""
    b, e = 1e-6, 4e-9
    for t in (0.3, 5.0, 40.0):
        book = b / ((e + b / W0) * exp(b * t / J) - e)
        assert coastdown.speed(t, W0, J, 0.0, b, e) == pytest.approx(book, rel=1e-11)


# Against scipy, over all regimes: discriminant above, below, at and close to zero; each drag absent or tiny.

TINY = 1e-14
REGIMES = [
    ("real roots", 1e-5, 5e-7, 1e-10),
    ("complex roots", 1e-4, 1e-7, 1e-8),
    ("double root", 1e-5, 2 * sqrt(1e-5 * 1e-9), 1e-9),
    ("just real", 1e-5, 2 * sqrt(1e-5 * 1e-9) * (1 + 1e-9), 1e-9),
    ("just complex", 1e-5, 2 * sqrt(1e-5 * 1e-9) * (1 - 1e-9), 1e-9),
    ("constant only", 1e-5, 0.0, 0.0),
    ("viscous only", 0.0, 3e-7, 0.0),
    ("quadratic only", 0.0, 0.0, 2e-9),
    ("no viscous", 1e-5, 0.0, 2e-9),
    ("no quadratic", 1e-5, 3e-7, 0.0),
    ("no constant", 0.0, 3e-7, 2e-9),
    ("tiny viscous", 1e-5, TINY, 2e-9),
    ("tiny quadratic", 1e-5, 3e-7, TINY * 1e-3),
    ("tiny constant", TINY, 3e-7, 2e-9),
    ("tiny viscous and quadratic", 1e-5, TINY, TINY * 1e-3),
    ("all tiny but one", TINY, 3e-7, TINY * 1e-3),
    ("hardly any drag", TINY, TINY, TINY * 1e-3),
    ("heavy air", 1e-7, 1e-9, 1e-5),
]


def by_quadrature(slower: float, a: float, b: float, e: float, power: int) -> float:
    """Time (power 0) or angle (power 1) from W0 down to a speed, in the logarithm of speed."""

    def share(x: float) -> float:
        w = W0 * exp(-x)
        return J * w ** (power + 1) / (a + b * w + e * w * w)

    return float(quad(share, 0, log(W0 / slower), epsabs=0, epsrel=1e-12, limit=500)[0])


@pytest.mark.parametrize(("name", "a", "b", "e"), REGIMES, ids=[row[0] for row in REGIMES])
@pytest.mark.parametrize("share", [0.999, 0.9, 0.5, 0.1, 1e-3])
def test_rivals_closed_form_and_quadrature(name: str, a: float, b: float, e: float, share: float) -> None:
    drag = (W0, J, a, b, e)
    t = coastdown.time_at_speed(share * W0, *drag)
    assert t == pytest.approx(by_quadrature(share * W0, a, b, e, 0), rel=1e-9)
    assert coastdown.speed(t, *drag) == pytest.approx(share * W0, rel=1e-9)
    turned = coastdown.angle(t, *drag)
    assert turned == pytest.approx(by_quadrature(share * W0, a, b, e, 1), rel=1e-9)
    assert coastdown.time_at_angle(turned, *drag) == pytest.approx(t, rel=1e-9)


@pytest.mark.parametrize(("name", "a", "b", "e"), REGIMES[:6], ids=[row[0] for row in REGIMES[:6]])
def test_rivals_closed_form_and_stepwise_integration(name: str, a: float, b: float, e: float) -> None:
    stop = coastdown.stop_time(W0, J, a, b, e)
    t = np.linspace(0, 0.95 * stop, 12)
    run = solve_ivp(
        lambda _, y: [y[1], -(a + b * y[1] + e * y[1] ** 2) / J],
        (0, t[-1]),
        [0.0, W0],
        method="DOP853",
        t_eval=t,
        rtol=1e-12,
        atol=1e-12,
    )
    assert coastdown.angle(t, W0, J, a, b, e) == pytest.approx(run.y[0], rel=1e-9, abs=1e-9)
    assert coastdown.speed(t, W0, J, a, b, e) == pytest.approx(run.y[1], rel=1e-9, abs=1e-9)


@pytest.mark.parametrize("place", [1, 2, 3])
def test_a_drag_that_vanishes_leaves_the_law_without_it(place: int) -> None:
    """Shrinking any one drag through sixteen decades closes in on the answer without it, step by step."""
    full = [2e-5, 3e-7, 2e-9]
    without = [0.0 if i == place - 1 else value for i, value in enumerate(full)]
    limit = coastdown.angle(20.0, W0, J, *without)
    gaps = []
    for decade in range(16):
        part = [value * (10.0**-decade if i == place - 1 else 1) for i, value in enumerate(full)]
        gaps.append(abs(coastdown.angle(20.0, W0, J, *part) / limit - 1))
    assert all(later <= earlier * 0.2 + 1e-13 for earlier, later in zip(gaps, gaps[1:], strict=False))
