"""Collars, pivots and plates that rub flat: further worked examples of the clutch formulas."""

from __future__ import annotations

from math import pi

from spoolwright.mechanics import clutch
from tests.reference.published import Published, each

MM = 1e-3
KHURMI = "Khurmi & Gupta, Theory of Machines"
OPENED = "opened: notebook of the textbook companion project, printed output"
NEW = "uniform-pressure"


def kilowatts(force: float, outer: float, inner: float, friction: float, rpm: float, model: str) -> float:
    """Power that a flat ring rubs away; radii in mm."""
    torque = clutch.friction_torque(force, outer * MM, inner * MM, friction, model=model)
    return float(torque) * rpm * 2 * pi / 60 / 1e3


def lining_force(pressure: float) -> float:
    """Force on a lining of 113 mm mean radius whose width is a quarter of that, at a mean pressure."""
    return pressure * 2 * pi * 0.11312 * 0.02828


CHECKS = [
    Published(
        "flat pivot of 150 mm, even pressure, W",
        lambda: kilowatts(20e3, 75, 0, 0.05, 100, NEW) * 1e3,
        523.6,
        0.05,
        f"{KHURMI}, ex. 10.16",
        OPENED,
    ),
    Published(
        "collars of 600 and 300 mm, even pressure, kW",
        lambda: kilowatts(100e3, 300, 150, 0.12, 90, NEW),
        26.4,
        0.05,
        f"{KHURMI}, ex. 10.19",
        OPENED,
    ),
    Published(
        "collars of 400 and 250 mm, kW",
        lambda: kilowatts(150e3, 200, 125, 0.05, 105, NEW),
        13.64,
        0.005,
        f"{KHURMI}, ex. 10.20",
        OPENED,
    ),
    Published(
        "collars needed for 0.35 N/mm2",
        lambda: clutch.peak_pressure(150e3, 0.200, 0.125, NEW) / 0.35e6,
        5.6,
        0.4,  # printed as the next whole number, 6
        f"{KHURMI}, ex. 10.20",
        OPENED,
    ),
    Published(
        "power of collars of 498 and 300 mm, kW",
        lambda: kilowatts(200e3, 249, 150, 0.05, 75, NEW),
        16.0,
        0.03,  # the diameter is cut off to a whole millimetre
        f"{KHURMI}, ex. 10.21",
        OPENED,
    ),
    Published(
        "least pressure of a run-in plate, N/mm2",
        lambda: clutch.peak_pressure(4e3, 0.100, 0.050) * 0.050 / 0.100 / 1e6,
        0.1273,
        5e-5,
        f"{KHURMI}, ex. 10.22",
        OPENED,
    ),
    Published(
        "mean pressure of the same, N/mm2",
        lambda: clutch.peak_pressure(4e3, 0.100, 0.050, NEW) / 1e6,
        0.17,
        0.005,
        f"{KHURMI}, ex. 10.22",
        OPENED,
    ),
    Published(
        "thrust of springs on faces of 96 to 120 mm, N",
        lambda: clutch.clamp_force(25e3 / (3000 * 2 * pi / 60), 0.11992, 0.09594, 0.255, faces=2),
        1446,
        1,
        f"{KHURMI}, ex. 10.24 (radii before rounding)",
        OPENED,
    ),
    Published(
        "power of a lining of 113 mm mean radius, kW",
        lambda: (
            clutch.friction_torque(lining_force(0.07e6), 0.127258, 0.098979, 0.25, faces=2)
            * (900 * 2 * pi / 60)
            / 1e3
        ),
        7.5,
        0.01,
        f"{KHURMI}, ex. 10.25",
        OPENED,
    ),
]


@each(CHECKS)
def test_textbook(check: Published) -> None:
    check.agrees()
