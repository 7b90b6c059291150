"""Screws that lift: further worked examples of two textbooks, square, trapezoidal and V threads."""

from __future__ import annotations

from math import pi, radians

from spoolwright.mechanics import threads
from tests.reference.published import Published, each

MM = 1e-3
KHURMI = "Khurmi & Gupta, Theory of Machines"
JINDAL = "Jindal, Machine Design"
OPENED = "opened: notebook of the textbook companion project, printed output"
HALVED = (
    "opened: as above; its integer division cuts halves of a millimetre off, and those sizes are taken here"
)


def lift(
    force: float, lead: float, mean: float, friction: float, flank: float, radius: float, collar: float
) -> float:
    """Torque, N m; sizes in mm, flank angle in degrees."""
    return float(
        threads.tightening_torque(force, lead * MM, mean * MM, friction, radians(flank), radius * MM, collar)
    )


def efficiency(force: float, lead: float, *rest: float) -> float:
    """Work out over work in, %."""
    return 100 * force * lead * MM / (2 * pi * lift(force, lead, *rest))


CHECKS = [
    Published(
        "efficiency of a jack whose load turns with it, %",
        lambda: efficiency(20e3, 10, 50, 0.08, 0, 0, 0),
        44.1,
        0.3,  # the book rounds its angles to two figures
        f"{KHURMI}, ex. 10.11",
        OPENED,
    ),
    Published(
        "efficiency of the same with a collar, %",
        lambda: efficiency(20e3, 10, 50, 0.08, 0, 17.5, 0.08),
        31.8,
        0.3,
        f"{KHURMI}, ex. 10.11",
        OPENED,
    ),
    Published(
        "work to lift by 170 mm with the collar, N m",
        lambda: lift(20e3, 10, 50, 0.08, 0, 17.5, 0.08) * 2 * pi * 17,
        10710,
        30,
        f"{KHURMI}, ex. 10.11",
        OPENED,
    ),
    Published(
        "turnbuckle with two V threads, N m",
        lambda: 2 * lift(40e3, 3, 22, 0.15, 30, 0, 0),
        191.87,
        0.3,  # two roundings on the way
        f"{KHURMI}, ex. 10.13",
        OPENED,
    ),
    Published(
        "Acme screw of 30 mm with its collar, N m",
        lambda: lift(5e3, 5, 28, 0.15, 14.5, 22, 0.15),
        31.456,
        0.0005,
        f"{JINDAL}, ex. 16-3",
        HALVED,
    ),
    Published(
        "the same with balls under the collar, N m",
        lambda: lift(5e3, 5, 28, 0.15, 14.5, 22, 0.02),
        17.156,
        0.0005,
        f"{JINDAL}, ex. 16-3",
        HALVED,
    ),
    Published(
        "efficiency of the latter, %",
        lambda: efficiency(5e3, 5, 28, 0.15, 14.5, 22, 0.02),
        23.19,
        0.005,
        f"{JINDAL}, ex. 16-3",
        HALVED,
    ),
    Published(
        "force of a two-start press from 392.4 N at 250 mm, kN",
        lambda: threads.axial_force(392.4 * 0.250, 16 * MM, 21 * MM, 0.14, 0.0) / 1e3,
        23.6,
        0.05,
        f"{JINDAL}, ex. 16-5",
        OPENED,
    ),
    Published(
        "efficiency of a feed screw with its collar, %",
        lambda: efficiency(2.2e3, 8, 48, 0.15, 14.5, 22, 0.12),
        16.59,
        0.005,
        f"{JINDAL}, ex. 16-6",
        HALVED,
    ),
    Published(
        "punch with a two-start square thread, N m",
        lambda: lift(pi * 25 * 460, 12, 27, 0.15, 0, 0, 0),
        145.242,
        0.0005,
        f"{JINDAL}, ex. 16-8",
        OPENED,
    ),
    Published(
        "its efficiency, %",
        lambda: efficiency(pi * 25 * 460, 12, 27, 0.15, 0, 0, 0),
        47.51,
        0.005,
        f"{JINDAL}, ex. 16-8",
        OPENED,
    ),
]


@each(CHECKS)
def test_textbook(check: Published) -> None:
    check.agrees()
