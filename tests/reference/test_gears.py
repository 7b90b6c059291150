"""Gears: worked examples of Lewis, contact ratio and Hertz, and pressure solved another way."""

from __future__ import annotations

from math import cos, pi, radians, sqrt

import numpy as np
import pytest

from spoolwright.mechanics import gears
from tests.reference.published import Published, each

INCH, POUND = 0.0254, 4.4482216152605
PSI = POUND / INCH**2
OPENED = "opened: notebook of the textbook companion project, printed output"
MATERIALS = "gear material table of an engineering reference site (roymech.org)"


def lewis_force(
    stress: float, module: float, width: float, form: float, velocity_factor: float = 1.0
) -> float:
    """Force at which the tooth reaches a stress: the stress is proportional to the force."""
    return float(stress / gears.lewis_stress(1.0, module, width, form, velocity_factor))


def elastic_coefficient(youngs_a: float, poisson_a: float, youngs_b: float, poisson_b: float) -> float:
    """Peak pressure of a unit force on a unit line with a unit sum of curvatures."""
    return float(gears.hertz_line_stress(1.0, 1.0, 2.0, 2.0, youngs_a, poisson_a, youngs_b, poisson_b))


CHECKS = [
    Published(
        "allowable force on a pinion, lbf",
        lambda: lewis_force(0.5 * 95e3 * PSI, INCH / 8, INCH, 0.320) / POUND,
        1900,
        0.5,
        "Wentzell, Machine Design, ex. 12.3",
        OPENED,
    ),
    Published(
        "allowable force on its gear, lbf",
        lambda: lewis_force(0.5 * 88e3 * PSI, INCH / 8, INCH, 0.421) / POUND,
        2315.5,
        0.05,
        "Wentzell, Machine Design, ex. 12.3",
        OPENED,
    ),
    Published(
        "power with Barth's velocity factor, hp",
        lambda: (
            lewis_force(0.5 * 55e3 * PSI, INCH / 12, 0.75 * INCH, 0.302, (600 + pi * 2 * 1800 / 12) / 600)
            / POUND
            * 1.0  # pitch radius in inches
            * 1800
            / 63000
        ),
        5.77,
        0.005,
        "Wentzell, Machine Design, ex. 12.5",
        OPENED,
    ),
    Published(
        "transmitted load at 10 kpsi, lbf",
        lambda: lewis_force(10e3 * PSI, INCH / 8, 1.5 * INCH, 0.296, (1200 + 628) / 1200) / POUND,
        365,
        1,
        "Shigley's Mechanical Engineering Design, ex. 14-1",
        "from memory",
    ),
    Published(
        "path of contact, 30 and 80 teeth, mm",
        lambda: gears.contact_ratio(30, 80, 0.012, addendum=10 / 12) * pi * 12 * cos(radians(20)),
        52.3,
        0.1,
        "Khurmi & Gupta, Theory of Machines, ex. 12.3",
        OPENED,
    ),
    Published(
        "angle of the pinion while one pair touches, degrees",
        lambda: gears.contact_ratio(20, 40, 0.005) * 360 / 20,
        29.43,
        0.005,
        "Khurmi & Gupta, Theory of Machines, ex. 12.4",
        OPENED,
    ),
    Published(
        "arc of contact, 30 and 80 teeth, mm",
        lambda: gears.contact_ratio(30, 80, 0.012, addendum=10 / 12) * pi * 12,
        55.61,
        0.005,
        "Khurmi & Gupta, Theory of Machines, ex. 12.3",
        OPENED,
    ),
    Published(
        "angle of the pinion while one pair touches, 17 and 49 teeth, degrees",
        lambda: gears.contact_ratio(17, 49, 0.006) * 360 / 17,
        34.6,
        0.05,
        "Khurmi & Gupta, Theory of Machines, ex. 12.6",
        OPENED,
    ),
    Published(
        "two steel cylinders, MPa",
        lambda: gears.hertz_line_stress(24.1e3, 0.020, 0.040, 0.040, 200e9, 0.29, 200e9, 0.29) / 1e6,
        1445,
        3,
        "Boresi & Schmidt, Advanced Mechanics of Materials, ex. 17.3",
        OPENED,
    ),
    Published(
        "elastic coefficient steel on steel, sqrt(psi)",
        lambda: elastic_coefficient(30e6, 0.3, 30e6, 0.3),
        2291,
        0.6,
        MATERIALS,
        "opened",
    ),
    Published(
        "elastic coefficient steel on cast iron, sqrt(psi)",
        lambda: elastic_coefficient(30e6, 0.3, 22e6, 0.211),
        2077,
        0.6,
        MATERIALS,
        "opened",
    ),
    Published(
        "elastic coefficient of two steels, sqrt(MPa)",
        lambda: elastic_coefficient(206e9, 0.3, 206e9, 0.3) / 1e3,
        189.8,
        0.1,
        "ISO 6336-2, elasticity factor of steel on steel",
        "from memory",
    ),
]


@each(CHECKS)
def test_printed(check: Published) -> None:
    check.agrees()


@pytest.mark.parametrize(("steel", "poisson"), [(206e9, 0.3), (100e9, 0.34)])
@pytest.mark.parametrize("other", [0.004, 0.02, float("inf")])
def test_rivals_hertz_and_the_pressure_that_flattens_the_gap(
    steel: float, poisson: float, other: float
) -> None:
    """Half width b = sqrt(4 w R / (pi E*)) and p0 = 2 w / (pi b) (K. L. Johnson, from memory)."""
    load, radius = 2e4, 0.006
    combined = steel / (2 * (1 - poisson**2))
    curvature = 1 / radius + 1 / other
    half_width = sqrt(4 * load / (curvature * pi * combined))
    ours = gears.hertz_line_stress(load * 0.004, 0.004, radius, other, steel, poisson, steel, poisson)
    assert ours == pytest.approx(2 * load / (pi * half_width), rel=1e-12)


def test_rivals_contact_ratio_and_a_walk_along_the_line_of_action() -> None:
    """Follow one pair from where the gear's tip meets the line to where the pinion's leaves it."""
    for teeth_a, teeth_b in [(12, 62), (20, 40), (17, 17), (30, 100)]:
        module, alpha = 0.6e-3, radians(20)
        base_a, base_b = (module * n / 2 * cos(alpha) for n in (teeth_a, teeth_b))
        tip_a, tip_b = (module * (n / 2 + 1) for n in (teeth_a, teeth_b))
        line = (base_a + base_b) * np.tan(alpha)
        along = np.linspace(-line, 2 * line, 2_000_001)
        inside = (np.hypot(base_a, along) <= tip_a) & (np.hypot(base_b, line - along) <= tip_b)
        walked = np.ptp(along[inside])
        base_pitch = pi * module * cos(alpha)
        assert gears.contact_ratio(teeth_a, teeth_b, module) == pytest.approx(walked / base_pitch, rel=1e-5)


def test_contact_ratio_of_two_racks_is_the_known_ceiling() -> None:
    """Two racks: 4 / (pi sin 2 alpha) = 1.98 at 20 degrees (any gear text, from memory)."""
    assert gears.contact_ratio(200_000, 200_000, 1e-3) == pytest.approx(
        4 / (pi * np.sin(radians(40))), rel=1e-3
    )


def test_more_teeth_touch_longer_and_steeper_flanks_shorter() -> None:
    assert np.all(np.diff(gears.contact_ratio(np.arange(12, 80), 60, 1e-3)) > 0)
    assert np.all(np.diff(gears.contact_ratio(20, 60, 1e-3, np.radians([14.5, 20, 25]))) < 0)


def test_stress_goes_with_force_and_pressure_with_its_root() -> None:
    """Lewis is linear, Hertz a square root (any machine design text)."""
    force = np.array([1.0, 4.0, 9.0])
    assert gears.lewis_stress(force, 1e-3, 5e-3, 0.3) / gears.lewis_stress(
        1.0, 1e-3, 5e-3, 0.3
    ) == pytest.approx(force)
    pressure = gears.hertz_line_stress(force, 1e-2, 1e-2, 1e-2, 2e11, 0.3, 2e11, 0.3)
    assert pressure / pressure[0] == pytest.approx(np.sqrt(force))  # type: ignore[index]
