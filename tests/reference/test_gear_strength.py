"""Teeth under load: form factors, wear load and sliding against printed tables and worked examples."""

from __future__ import annotations

from math import cos, pi, radians, sin

import numpy as np
import pytest
from scipy.optimize import brentq

from spoolwright.mechanics import gears, mesh
from tests.reference.published import Published, each

INCH, POUND = 0.0254, 4.4482216152605
PSI = POUND / INCH**2
OPENED = "opened: notebook of the textbook companion project, printed output"
MATERIALS = "gear material table of an engineering reference site (roymech.org), Buckingham's K at 20 degrees"
STEEL = (30e6 * PSI, 0.3)


def wear_load(stress: float, module: float, teeth_a: int, teeth_b: int, width: float) -> float:
    """Tangential force at which the pressure reaches a stress, Buckingham's way: cos(alpha) taken as 1."""
    normal_taken_as_tangential = cos(radians(20))
    unit = gears.pitch_point_stress(
        normal_taken_as_tangential, module, teeth_a, teeth_b, width, *STEEL, *STEEL
    )
    return float((stress / unit) ** 2)


def load_stress_factor(stress_psi: float) -> float:
    """K = F / (b d Q) of a pair of 30 and 75 teeth, Q = 2 z2 / (z1 + z2); in psi."""
    module, width = INCH / 5, INCH
    force = wear_load(stress_psi * PSI, module, 30, 75, width)
    return force / (width * 30 * module * 2 * 75 / 105) / PSI


def endurance_behind(factor: float) -> float:
    """Surface stress that belongs to a load-stress factor [Pa], found from the pressure formula alone."""
    return float(brentq(lambda s: load_stress_factor(s / PSI) * PSI - factor, 1e7, 1e10))


CHECKS = [
    Published(
        "separating force at 5 hp and 1725 rpm, 20 teeth, 8 to the inch, lbf",
        lambda: mesh.separating_force(63000 * 5 / 1725 / 1.25),
        53.17,
        0.005,
        "Wentzell, Machine Design, ex. 12.1",
        OPENED,
    ),
    Published(
        "load-stress factor at 50,000 psi", lambda: load_stress_factor(50e3), 41, 0.6, MATERIALS, "opened"
    ),
    Published(
        "load-stress factor at 150,000 psi",
        lambda: load_stress_factor(150e3),
        366,
        0.6 + 0.0006 * 366,  # its 1.4 stands for 4 / (pi (1 - 0.3^2)), which is 1.3992
        MATERIALS,
        "opened",
    ),
    Published(
        "wear load of 30 and 75 teeth of 350 Brinell, N",
        lambda: wear_load(endurance_behind(0.16e6 * 3.5**2), 5e-3, 30, 75, 0.060),
        25200,
        1,  # 1.4 cancels: the stress behind K is found from the same pressure
        "Jindal, Machine Design, ex. 25-3: b d Q K, K = 0.16 (BHN / 100)^2 N/mm2",
        OPENED,
    ),
    Published(
        "fastest sliding, 20 and 40 teeth, mm/s",
        lambda: gears.sliding_speed(1.2 / 0.050, 20, 40, 0.005) * 1e3,
        455.3,
        0.05,
        "Khurmi & Gupta, Theory of Machines, ex. 12.4",
        OPENED,
    ),
    Published(
        "fastest sliding of the same at 2000 rpm, mm/s",
        lambda: gears.sliding_speed(2000 * pi / 30, 20, 40, 0.005) * 1e3,
        3973,
        0.6,
        "Khurmi & Gupta, Theory of Machines, ex. 12.5",
        OPENED,
    ),
    Published(
        "sliding over rolling, 17 and 49 teeth",
        lambda: gears.sliding_speed(1.0, 17, 49, 0.006) / (17 * 0.003),
        0.41,
        0.005,
        "Khurmi & Gupta, Theory of Machines, ex. 12.6",
        OPENED,
    ),
    Published(
        "power of the stock gear with Y looked up, hp",
        lambda: (
            10e3
            * PSI
            / gears.lewis_stress(1.0, INCH / 8, 1.5 * INCH, gears.form_factor(16), (1200 + 628) / 1200)
            / POUND
            * 628
            / 33000
        ),
        6.95,
        0.02,
        "Shigley's Mechanical Engineering Design, ex. 14-1",
        "from memory",
    ),
]


@each(CHECKS)
def test_printed(check: Published) -> None:
    check.agrees()


OTHER_TABLE = {12: 0.245, 14: 0.276, 16: 0.295, 18: 0.308, 20: 0.320, 24: 0.337, 30: 0.358, 40: 0.389}
OTHER_TABLE |= {50: 0.408, 60: 0.421, 75: 0.433, 100: 0.446, 150: 0.458, 300: 0.471}


@pytest.mark.parametrize("teeth", OTHER_TABLE)
def test_form_factor_agrees_with_another_printing(teeth: int) -> None:
    """Source: Lewis factor table of a general gear library (opened), which differs by up to 0.003."""
    assert gears.form_factor(teeth) == pytest.approx(OTHER_TABLE[teeth], abs=0.003)


def test_the_short_formula_is_not_used_where_the_table_stands() -> None:
    """y = 0.154 - 0.912 / z gives 0.340 for 20 teeth, 6 % above the table (opened)."""
    short = pi * (0.154 - 0.912 / 20)
    assert short / gears.form_factor(20) == pytest.approx(1.06, abs=0.01)
    assert abs(gears.form_factor(20) - short) > 0.015


def test_below_the_table_the_short_formula_meets_it() -> None:
    """Lewis's own formula, 20 degrees full depth (Khurmi & Gupta, Machine Design, from memory)."""
    assert pi * (0.154 - 0.912 / 12) == pytest.approx(gears.form_factor(12), abs=0.0005)


def test_form_factor_rises_with_the_teeth_to_that_of_a_rack() -> None:
    """Printed for a rack: 0.485 (Shigley, table 14-2, opened in public copies)."""
    assert np.all(np.diff(gears.form_factor(np.arange(8, 600))) > 0)
    assert gears.form_factor(10_000_000) == pytest.approx(0.485, abs=1e-5)


def test_a_rack_presses_as_a_flat_does() -> None:
    """A gear without end has a flat flank (any gear text): Hertz with one infinite radius."""
    pair = (206e9, 0.3, 97e9, 0.34)
    toothed = gears.pitch_point_stress(100.0, 6e-4, 14, 50_000_000, 4e-3, *pair)
    normal, radius = 100.0 / cos(radians(20)), 14 * 3e-4 * sin(radians(20))
    assert toothed == pytest.approx(
        gears.hertz_line_stress(normal, 4e-3, radius, float("inf"), *pair), rel=1e-6
    )


def test_rivals_sliding_and_the_velocities_of_two_flanks() -> None:
    """Each flank moves along itself at its speed times its distance from where its base circle touches."""
    module, alpha, speed = 0.6e-3, radians(20), 30.0
    for teeth_a, teeth_b in [(12, 50), (20, 20), (60, 13)]:
        line = (teeth_a + teeth_b) * module / 2 * sin(alpha)
        tips = [module * (n / 2 + 1) for n in (teeth_a, teeth_b)]
        bases = [module * n / 2 * cos(alpha) for n in (teeth_a, teeth_b)]
        last = (tips[0] ** 2 - bases[0] ** 2) ** 0.5
        first = line - (tips[1] ** 2 - bases[1] ** 2) ** 0.5
        other = speed * teeth_a / teeth_b
        rub = max(abs(speed * x - other * (line - x)) for x in (first, last))
        assert gears.sliding_speed(speed, teeth_a, teeth_b, module) == pytest.approx(rub, rel=1e-9)
