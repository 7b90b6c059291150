"""Heat into a thick body: worked examples, a heat-transfer integral, and small steps."""

from __future__ import annotations

from math import pi, sqrt

import numpy as np
import pytest
from scipy.integrate import quad

from spoolwright.mechanics import heat
from tests.reference.published import Published, each

CHECKS = [
    Published(
        "surface of a steel slab after 30 s of 3.2e5 W/m2, deg C",
        lambda: 35 + heat.semi_infinite_rise(3.2e5, 30.0, 45.0, 45.0 / 1.4e-5, 1.0),
        199.4,
        0.06,
        "Holman, Heat Transfer, ex. 4.2 (k 45, alpha 1.4e-5, from 35 deg C)",
        "opened: notebook of the textbook companion project, printed output",
    ),
    Published(
        "surface of a copper slab after 120 s of 3e5 W/m2, deg C",
        lambda: 20 + heat.semi_infinite_rise(3e5, 120.0, 401.0, 401.0 / 117e-6, 1.0),
        120.0,
        0.1,
        "Incropera et al., ch. 5 finite-difference example (k 401, alpha 117e-6, from 20 deg C)",
        "from memory; the companion notebook prints 25.6 through a slip of its own",
    ),
]


@each(CHECKS)
def test_printed(check: Published) -> None:
    check.agrees()


def test_the_notebook_with_the_wrong_time_is_not_followed() -> None:
    assert 20 + heat.semi_infinite_rise(3e5, 120.0, 401.0, 401.0 / 117e-6, 1.0) > 100


def test_rivals_closed_form_and_pulses_added_up() -> None:
    """A pulse q dt leaves q dt / sqrt(pi k rho c (t - s)) at the surface (Carslaw & Jaeger, from memory)."""
    q, t, k, rho, c = 2e5, 1.7, 17.0, 7900.0, 460.0
    added = quad(lambda x: 2 * q / sqrt(pi * k * rho * c), 0, sqrt(t))[0]  # s = t - x^2
    assert heat.semi_infinite_rise(q, t, k, rho, c) == pytest.approx(added, rel=1e-12)


def test_rivals_closed_form_and_small_steps() -> None:
    """Explicit steps on a bar long enough not to feel its far end; the heat put in is in the bar."""
    q, k, rho, c, end = 2e5, 17.0, 7900.0, 460.0, 0.5
    dx = 2e-5
    alpha = k / (rho * c)
    dt = 0.4 * dx**2 / alpha
    bar = np.zeros(int(6 * sqrt(alpha * end) / dx))
    steps = int(round(end / dt))
    for _ in range(steps):
        flow = -k * np.diff(bar) / dx
        bar[0] += dt / (rho * c * dx / 2) * (q - flow[0])
        bar[1:-1] += dt / (rho * c * dx) * (flow[:-1] - flow[1:])
    assert heat.semi_infinite_rise(q, steps * dt, k, rho, c) == pytest.approx(bar[0], rel=5e-3)


def test_twice_the_time_is_root_two_the_rise() -> None:
    """The surface follows the square root of time (any heat transfer text)."""
    rise = heat.semi_infinite_rise(1e5, np.array([0.0, 1.0, 2.0, 4.0]), 17.0, 7900.0, 460.0)
    assert rise / rise[1] == pytest.approx(np.sqrt([0.0, 1.0, 2.0, 4.0]))  # type: ignore[index]
