"""A lever bent and twisted at once, and rollers wedged on a sleeve."""

from __future__ import annotations

from math import radians, tan

import pytest

from spoolwright.mechanics import anti_reverse, gears, handle
from tests.reference.published import Published, each

SHIGLEY = "Shigley's Mechanical Engineering Design, ex. 5-3: lever on a one-inch bar of AISI 1035"

CHECKS = [
    Published(
        "stress in bending alone, psi for each pound",
        lambda: handle.stud_stress(1.0, 14.0, 1.0),
        142.6,
        0.05,
        SHIGLEY,
        "from memory",
    ),
    Published(
        "equivalent stress, psi for each pound",
        lambda: handle.shaft_stress(14.0, 15.0, 1.0),
        194.5,
        0.05,
        SHIGLEY,
        "from memory",
    ),
    Published(
        "force at the lever's end at yield, lbf",
        lambda: 81e3 / handle.shaft_stress(14.0, 15.0, 1.0),
        416,
        0.5,
        SHIGLEY,
        "from memory",
    ),
    Published(
        "stress of a square bar under a central load, psi, as two arms of half its span",
        lambda: handle.arm_stress(1500.0, 18.0, 2.0, 2.0),
        20250,
        0.5,
        "Wentzell, Machine Design, ex. 3.2",
        "opened: notebook of the textbook companion project, printed output",
    ),
]


@each(CHECKS)
def test_printed(check: Published) -> None:
    check.agrees()


def test_rivals_a_roller_and_hertz_two_ways() -> None:
    """At the torque that a clutch is said to hold, its rollers press as Hertz says (Johnson, from memory)."""
    torque = anti_reverse.roller_clutch_torque(8, 2e-3, 8e-3, 5e-3, 3e9)
    each_roller = torque / (8 * 5e-3 * tan(radians(4)))
    steel = (208e9, 0.3, 208e9, 0.3)
    assert gears.hertz_line_stress(each_roller, 8e-3, 1e-3, 5e-3, *steel) == pytest.approx(3e9, rel=1e-9)


def test_a_short_thick_tooth_is_a_short_thick_cantilever() -> None:
    """6 F l / (b h^2) and F / (b h) of any text on beams, the tooth as a bar of 2 by 1.5 mm, 0.8 mm long."""
    stress = anti_reverse.ratchet_stress(2.0, 8e-3, 0.8e-3, 2e-3, 1.5e-3)
    force = 2.0 / 8e-3
    section = 1.5e-3 * 2e-3**2 / 6
    assert stress["bending"] == pytest.approx(force * 0.8e-3 / section)
    assert stress["shear"] == pytest.approx(force / (2e-3 * 1.5e-3))
    assert stress["bending"] / stress["shear"] == pytest.approx(6 * 0.8 / 2)
