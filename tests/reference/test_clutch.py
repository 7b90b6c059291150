"""Friction clutches: worked examples of the textbooks, and the two wear laws against each other."""

from __future__ import annotations

from math import pi

import numpy as np
import pytest
from scipy.integrate import quad

from spoolwright.mechanics import clutch
from tests.reference.published import Published, each

MM = 1e-3
INCH, POUND = 0.0254, 4.4482216152605
POUND_INCH = INCH * POUND
PSI = POUND / INCH**2
KHURMI = "Khurmi & Gupta, Theory of Machines"
OPENED = "opened: notebook of the textbook companion project, printed output"


def rate(rpm: float) -> float:
    return rpm * 2 * pi / 60


def force_at(peak: float, outer: float, inner: float) -> float:
    """Clamp force that brings a run-in face to a peak pressure: peak pressure is proportional to force."""
    return peak / clutch.peak_pressure(1.0, outer, inner)


CHECKS = [
    Published(
        "peak pressure at the inner edge",
        lambda: clutch.peak_pressure(4000, 100 * MM, 50 * MM) / 1e6,
        0.2546,
        5e-5,
        f"{KHURMI}, ex. 10.22",
        OPENED,
    ),
    Published(
        "power of a single plate, both sides, kW",
        lambda: (
            clutch.friction_torque(force_at(0.1e6, 0.150, 0.100), 0.150, 0.100, 0.3, faces=2)
            * rate(2500)
            / 1e3
        ),
        61.685,
        0.0005,
        f"{KHURMI}, ex. 10.23",
        OPENED,
    ),
    Published(
        "peak pressure of the face of 96 mm that carries 25 kW",
        lambda: (
            clutch.peak_pressure(
                clutch.clamp_force(25e3 / rate(3000), 0.120, 0.096, 0.255, faces=2), 0.120, 0.096
            )
            / 1e6
        ),
        0.1,
        0.002,  # the book rounds 95.94 mm to 96, and the pressure goes with the third power
        f"{KHURMI}, ex. 10.24",
        OPENED,
    ),
    Published(
        "power of four pairs, kW",
        lambda: (
            clutch.friction_torque(force_at(0.127e6, 0.125, 0.075), 0.125, 0.075, 0.3, faces=4)
            * rate(500)
            / 1e3
        ),
        18.8,
        0.05,
        f"{KHURMI}, ex. 10.28",
        OPENED,
    ),
    Published(
        "peak pressure, three driving and two driven discs",
        lambda: (
            clutch.peak_pressure(
                clutch.clamp_force(25e3 / rate(1575), 0.120, 0.060, 0.3, faces=3 + 2 - 1), 0.120, 0.060
            )
            / 1e6
        ),
        0.062,
        0.0005,
        f"{KHURMI}, ex. 10.29",
        OPENED,
    ),
    Published(
        "power left after the linings have worn, kW",
        lambda: (
            clutch.friction_torque(
                clutch.clamp_force(25e3 / rate(1575), 0.120, 0.060, 0.3, 4, "uniform-pressure")
                - 8 * 1.25e-3 * 13e3 * 6,
                0.120,
                0.060,
                0.3,
                4,
            )
            * rate(1575)
            / 1e3
        ),
        10.21,
        0.02,
        f"{KHURMI}, ex. 10.30",
        OPENED,
    ),
    Published(
        "power eaten by collars, kW",
        lambda: clutch.friction_torque(100e3, 0.300, 0.150, 0.12) * rate(90) / 1e3,
        25.45,
        0.005,
        f"{KHURMI}, ex. 10.19",
        OPENED,
    ),
    Published(
        "pressure under uniform pressure",
        lambda: (
            clutch.peak_pressure(
                clutch.clamp_force(15e3 / rate(1400), 0.080, 0.050, 0.25, 6, "uniform-pressure"),
                0.080,
                0.050,
                "uniform-pressure",
            )
            / 1e6
        ),
        0.084,
        0.0005,
        "Jindal, Machine Design, ex. 22-5",
        OPENED,
    ),
    Published(
        "axial force of five steel and four bronze discs",
        lambda: force_at(0.3e6, 0.075, 0.0375),
        2650.72,
        0.005,
        "Bhandari, Design of Machine Elements, ex. 11.8",
        "opened: result file of the textbook companion project",
    ),
    Published(
        "power of the same, kW",
        lambda: (
            clutch.friction_torque(force_at(0.3e6, 0.075, 0.0375), 0.075, 0.0375, 0.1, 8) * rate(750) / 1e3
        ),
        9.368,
        0.0005,
        "Bhandari, Design of Machine Elements, ex. 11.8",
        "opened: result file of the textbook companion project",
    ),
    Published(
        "one face, pound inches",
        lambda: clutch.friction_torque(120 * POUND, 12 * INCH, 9 * INCH, 0.3) / POUND_INCH,
        378,
        0.05,
        "Wentzell, Machine Design, ex. 16.1",
        OPENED,
    ),
    Published(
        "pressure at the outer edge of a run-in face, psi",
        lambda: (
            clutch.peak_pressure(
                clutch.clamp_force(2 * 1890.8 * POUND_INCH, 3.5 * INCH, 2.5 * INCH, 0.2, 2),
                3.5 * INCH,
                2.5 * INCH,
            )
            * 2.5
            / 3.5  # pressure of a run-in face falls as 1 / r
            / PSI
        ),
        143,
        0.6,
        "Juvinall & Marshek, Fundamentals of Machine Component Design, ch. 18 problem",
        "opened: worked solution",
    ),
]


@each(CHECKS)
def test_textbook(check: Published) -> None:
    check.agrees()


RATIOS = np.linspace(0.0, 0.999, 50)


def test_rivals_two_wear_laws_over_the_whole_range() -> None:
    """Uniform wear never promises more; the two meet for a narrow face and part by a third at a full disc."""
    worn = clutch.effective_radius(1.0, RATIOS)
    new = clutch.effective_radius(1.0, RATIOS, "uniform-pressure")
    gap = new / worn - 1
    assert np.all(gap > 0)
    assert np.all(np.diff(gap) < 0)
    assert gap[0] == pytest.approx(1 / 3, rel=1e-12)  # 2/3 R against R/2, from memory
    assert gap[-1] < 1e-6


@pytest.mark.parametrize("ratio", [0.05, 0.3, 0.5, 0.63, 0.9, 0.99])
@pytest.mark.parametrize("model", clutch.MODELS)
def test_rivals_closed_form_against_the_pressure_integral(ratio: float, model: str) -> None:
    """T = integral of mu p(r) r 2 pi r dr, p constant or falling as 1/r (Shigley ch. 16, from memory)."""

    def pressure(r: float) -> float:
        return 1.0 if model == "uniform-pressure" else 1 / r

    force = quad(lambda r: pressure(r) * 2 * pi * r, ratio, 1.0)[0]
    torque = quad(lambda r: pressure(r) * 2 * pi * r**2, ratio, 1.0)[0]
    assert clutch.friction_torque(force, 1.0, ratio, 1.0, model=model) == pytest.approx(torque, rel=1e-9)
    peak = 1.0 if model == "uniform-pressure" else 1 / ratio
    assert clutch.peak_pressure(force, 1.0, ratio, model) == pytest.approx(peak, rel=1e-9)
