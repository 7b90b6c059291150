"""Spools of line: drum capacities of the rope trade, and line put on layer by layer."""

from __future__ import annotations

from math import pi

import numpy as np
import pytest
from scipy.integrate import quad

from spoolwright.mechanics import spool
from tests.reference.published import Published, each

INCH, FOOT = 0.0254, 0.3048

CHECKS = [
    Published(
        "drum capacity, feet",
        lambda: spool.line_length(5 * INCH, 10 * INCH, 20 * INCH, 0.5 * INCH, packing=pi / 4) / FOOT,
        (5 + 10) * 5 * 20 * 0.2618 / 0.5**2,
        0.1,
        "wire rope handbooks: (A + B) A C 0.2618 / d^2, depth A 5, barrel B 10, width C 20, rope 1/2 inch",
        "from memory",
    ),
    Published(
        "winch drum, feet",
        lambda: spool.line_length(5 * INCH, 10 * INCH, 12 * INCH, 0.5 * INCH, packing=pi / 4) / FOOT,
        940,
        5,
        "winch drum calculator: barrel 10, flange 20, width 12, rope 1/2 inch, 10 layers, about 940 ft",
        "opened: https://oanor.com/it/tema/cable-drum",
    ),
    Published(
        "drag torque of the pier reel, N m",
        lambda: 1 / spool.line_pull(1.0, 1.0, 0.0235) * 2.6 * 9.80665,
        0.599,
        0.0005,
        "the trade's handbook, scenario 1: 2.6 kg at 23.5 mm",
        "opened: collection of the trade's practice",
    ),
]


@each(CHECKS)
def test_printed(check: Published) -> None:
    check.agrees()


@pytest.mark.parametrize("layers", [1, 5, 20, 60])
def test_rivals_turn_by_turn_in_square_order(layers: int) -> None:
    """Turns side by side, layer on layer, each a circle of its mean radius: exactly packing = pi / 4."""
    d, arbor, turns = 0.40e-3, 12.5e-3, 61
    wound = sum(turns * 2 * pi * (arbor + (layer + 0.5) * d) for layer in range(layers))
    ours = spool.line_length(arbor, arbor + layers * d, turns * d, d, packing=pi / 4)
    assert ours == pytest.approx(wound, rel=1e-12)


def test_nested_turns_hold_no_more_than_the_densest_packing() -> None:
    """Layers that nest rise by d sqrt(3)/2: packing pi / (2 sqrt(3)) = 0.9069 (any geometry text)."""
    d, arbor, turns, layers = 0.40e-3, 12.5e-3, 61, 40
    rise = d * 3**0.5 / 2
    wound = sum(turns * 2 * pi * (arbor + (layer + 0.5) * rise) for layer in range(layers))
    ours = spool.line_length(arbor, arbor + layers * rise, turns * d, d, packing=pi / (2 * 3**0.5))
    assert ours == pytest.approx(wound, rel=1e-12)


def test_inertia_of_line_is_the_integral_over_its_rings() -> None:
    """J = integral of r^2 dm (definition)."""
    arbor, fill, width, density, packing = 0.0125, 0.0235, 0.0245, 1140.0, 0.7
    integral = quad(lambda r: r**2 * density * packing * width * 2 * pi * r, arbor, fill)[0]
    assert spool.line_inertia(arbor, fill, width, density, packing) == pytest.approx(integral, rel=1e-12)


def test_inertia_of_a_solid_disc_is_half_m_r_squared() -> None:
    """A spool whose barrel is all but gone is two discs (any dynamics text: m r^2 / 2)."""
    size = (1e-6, 0.0245, 1e-9, 5e-7, 2700.0)
    mass = spool.spool_mass(*size)
    assert spool.spool_inertia(*size) == pytest.approx(mass * 0.0245**2 / 2, rel=1e-6)


def test_inertia_of_a_thin_tube_is_m_r_squared() -> None:
    """Hardly any flange beyond a thin barrel, long: m r^2 (any dynamics text)."""
    size = (0.0125, 0.0125 * (1 + 1e-9), 10.0, 1e-6, 2700.0, 0.0125)
    assert spool.spool_inertia(*size) == pytest.approx(spool.spool_mass(*size) * 0.0125**2, rel=2e-4)


def test_pull_falls_as_the_spool_fills_and_torque_is_the_same() -> None:
    """Pull times radius times ratio is the drag torque (any statics text)."""
    radius = np.linspace(0.012, 0.025, 20)
    pull = spool.line_pull(3.0, 5.3, radius)
    assert np.all(np.diff(pull) < 0)
    assert pull * radius * 5.3 == pytest.approx(np.full(20, 3.0), rel=1e-12)
