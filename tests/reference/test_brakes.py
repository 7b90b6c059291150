"""Brakes of a free spool against worked pages and textbooks; rows of the trade's reference table named."""

from __future__ import annotations

from math import pi

import numpy as np
import pytest
from numpy.typing import NDArray
from scipy.integrate import solve_bvp, solve_ivp

from spoolwright.mechanics import brakes
from tests.reference.published import Published, each

Array = NDArray[np.float64]

CLUTCH = "formula page with worked numbers: friction torque on a centrifugal clutch (S-CAST-084)"
CHECKS = [
    Published(
        "four shoes of 3.7 kg between 52.36 and 78.54 rad/s",
        lambda: brakes.centrifugal(4, 3.7, 0.140, 0.165, 0.2) * (78.54**2 - 52.36**2),
        234.322,
        1e-3,
        CLUTCH,
        "opened",
    ),
    Published(
        "an eddy brake a tenth of the way to its critical speed",
        lambda: brakes.eddy_share(0.1),
        0.990,
        1e-3,
        "Smythe 1942, Wouterse 1991: F = 2 Fmax / (v/vc + vc/v) (S-CAST-083)",
        "from memory",
    ),
    Published(
        "energy left in an eddy-braked disc at a tenth of its speed",
        lambda: _energy_left(),
        0.01,
        1e-4,
        "physics problem page on a circular eddy brake: the energy goes with the square (S-CAST-079)",
        "opened",
    ),
]


def _energy_left() -> float:
    """The time to a tenth by w0 exp(-c t / I), then what SciPy says is left of the energy."""
    c, inertia = float(brakes.eddy(0.1, 1e-4, 1e-3, 0.02, 4e-8)), 8e-6
    end = inertia / c * 2.302585092994046
    run = solve_ivp(lambda t, w: -c * w / inertia, (0.0, end), [500.0], rtol=1e-9, atol=1e-9)
    return float((run.y[0, -1] / 500.0) ** 2)


@each(CHECKS)
def test_printed(check: Published) -> None:
    check.agrees()


def test_a_page_that_takes_turns_a_minute_for_turns_a_second_is_not_followed() -> None:
    """Worked eddy-brake page (opened; S-CAST-076): it prints 0.3931 m/s for 1 rpm at 62.5 mm, without the 60.
    Braking at that speed would be sixty times too strong."""
    torque = brakes.eddy(0.1, 1e-4, 1e-3, 0.0625, 2.65e-8) * (2 * pi / 60)
    speed = torque / brakes.eddy(0.1, 1e-4, 1e-3, 1.0, 2.65e-8) / 0.0625
    assert speed == pytest.approx(0.3931 / 60, rel=2e-3)


def test_the_disc_in_air_agrees_with_von_karmans_flow_solved_again() -> None:
    """Rival: Cochran's G'(0) = -0.6159 (Schlichting, Boundary-Layer Theory, table of the rotating disc, from
    memory): the moment of one face is -0.5 pi rho R^4 sqrt(nu w^3) G'(0), both faces twice that."""
    radius, density, viscosity, speed = 0.024, 1.225, 1.46e-5, 3182.0
    both = 2 * 0.5 * pi * density * radius**4 * (viscosity * speed**3) ** 0.5 * 0.6159
    assert brakes.disc_windage(radius, density, viscosity) * speed**1.5 == pytest.approx(both, rel=1e-3)


def test_cochrans_slope_itself_comes_out_of_the_equations_of_the_rotating_disc() -> None:
    """Source: von Karman's similarity equations for a disc turning in still fluid (any text on boundary
    layers): 2F + H' = 0, F'' = F^2 - G^2 + F'H, G'' = 2FG + G'H, solved here by SciPy."""

    def rise(z: Array, y: Array) -> Array:
        f, df, g, dg, h = y
        return np.vstack([df, f**2 - g**2 + df * h, dg, 2 * f * g + dg * h, -2 * f])

    def ends(disc: Array, far: Array) -> Array:
        return np.array([disc[0], disc[2] - 1.0, disc[4], far[0], far[2]])

    z = np.linspace(0.0, 12.0, 80)
    fade = np.exp(-z)
    guess = np.vstack([0.2 * z * fade, 0.2 * fade, fade, -fade, -0.8 * (1 - fade)])
    solved = solve_bvp(rise, ends, z, guess, tol=1e-6)
    assert solved.success
    assert -solved.sol(0.0)[3] == pytest.approx(brakes.LAMINAR_MOMENT, abs=5e-4)
