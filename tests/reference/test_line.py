"""Line as a rod: the textile rule for diameter, and Hooke's law."""

from __future__ import annotations

from math import pi

import pytest

from spoolwright.mechanics import line
from tests.reference.published import Published, each

CHECKS = [
    Published(
        f"{name} of {dtex} dtex, micrometres",
        lambda dtex=dtex, density=density: line.diameter_from_tex(dtex / 10, density * 1000) * 1e6,
        11.28 * (dtex / density) ** 0.5,
        0.0005 * 11.28 * (dtex / density) ** 0.5,  # 11.28 is printed with four figures
        "textile handbooks: 11.28 sqrt(dtex / density), density in g/cm3",
        "from memory",
    )
    for name, dtex, density in [
        ("nylon", 1.0, 1.14),
        ("polyethylene", 220.0, 0.97),
        ("fluorocarbon", 800.0, 1.78),
    ]
]


@each(CHECKS)
def test_textile_rule(check: Published) -> None:
    check.agrees()


def test_tex_is_grams_a_kilometre() -> None:
    """ISO 1144 (from memory): a kilometre of 81 tex weighs 81 g whatever its density."""
    for density in (970.0, 1140.0, 1780.0):
        diameter = line.diameter_from_tex(81.0, density)
        assert pi / 4 * diameter**2 * 1000 * density == pytest.approx(0.081, rel=1e-12)


def test_hooke() -> None:
    """Stress over strain is the modulus (definition)."""
    modulus, diameter, length, stretch = 2.0e9, 0.35e-3, 40.0, 0.5
    pull = line.stiffness(modulus, diameter, length) * stretch
    assert pull / (pi / 4 * diameter**2) / (stretch / length) == pytest.approx(modulus, rel=1e-12)


def test_steel_wire_of_a_millimetre() -> None:
    """1 m of 1 mm wire at 200 GPa stretches 6.37 um a newton (arithmetic on Hooke's law)."""
    assert 1 / line.stiffness(200e9, 1e-3, 1.0) == pytest.approx(6.366e-6, rel=1e-3)
