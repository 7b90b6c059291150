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


CHECKS += [
    Published(
        "drum diameter after winding, mm",
        lambda: 2 * spool.fill_radius(0.025, 20.0, 0.060, 6e-3, packing=pi / 4) * 1e3,
        133.337,
        0.001,
        "school problem 8298: 20 m of rope 6 mm on a drum 50 mm by 60 mm, square order",
        "opened: hackmath.net",
    ),
    Published(
        "winch with rope of 7/8 in, feet",
        lambda: 399 * winch(7 / 8) / winch(3 / 4),
        287,
        9,  # 3 %: a table of rounded layers
        "winch maintenance manual, fig. 3: 399 ft of 3/4 in",
        "opened: easymanua.ls",
    ),
    Published(
        "winch with rope of 1 in, feet",
        lambda: 399 * winch(1.0) / winch(3 / 4),
        223,
        7,
        "winch maintenance manual, fig. 3: 399 ft of 3/4 in",
        "opened: easymanua.ls",
    ),
    Published(
        "rope for one turn of a drum 200 mm, m/s at 30 rpm",
        lambda: spool.line_per_turn(0.1, 1.0) * 30 / 60,
        0.31,
        0.005,
        "note on drums and rope",
        "opened: firgelliauto.com",
    ),
    Published(
        "line for one turn near an arbor of 1 in, inches",
        lambda: spool.line_per_turn(0.5 * INCH, 1.0) / INCH,
        3.14,
        0.3,
        "saltwater magazine on large arbors: little more than 3 in; almost 6.5 in for 2 in",
        "opened: saltwatersportsman.com",
    ),
    Published(
        "line for one turn near an arbor of 2 in, inches",
        lambda: spool.line_per_turn(1.0 * INCH, 1.0) / INCH,
        6.28,
        0.3,
        "saltwater magazine on large arbors",
        "opened: saltwatersportsman.com",
    ),
    Published(
        "pull at half the radius, over that at the full one",
        lambda: spool.line_pull(1.0, 1.0, 0.01) / spool.line_pull(1.0, 1.0, 0.02),
        2,
        1e-12,
        "magazine: drag is torque, the same whatever the radius",
        "opened: sportfishingmag.com",
    ),
    Published(
        "lever drag, rise of pull for 100 yd of 30 lb line, lb",
        lambda: 14 * (0.050 / spool.radius_at_line_out(0.025, 0.050, yards_out()) - 1),
        0.5,
        0.15,
        "magazine test 2011: 14 lb reel; the test gives no spool size, 50 by 50 mm was chosen to fit",
        "opened: sportfishingmag.com; size assumed by the collection of references",
    ),
    Published(
        "winch of 9500 lb at its fifth layer, lb",
        lambda: 9500 * spool.line_pull(1.0, 1.0, 0.0366 + 4 * 9.2e-3) / spool.line_pull(1.0, 1.0, 0.0366),
        5000,
        500,
        "4x4 magazine: 4500 to 5500 lb; drum 64 mm and rope 9.2 mm assumed",
        "opened: pressreader.com; size assumed by the collection of references",
    ),
]


def winch(inches: float) -> float:
    """Rope on a drum, up to a constant."""
    return float(spool.line_length(0.1, 0.2, 0.3, inches * INCH))


def yards_out() -> float:
    """100 yd as a share of a spool of 50 mm radius and width filled with 0.55 mm line at 0.8."""
    return 91.44 / float(spool.line_length(0.025, 0.050, 0.050, 0.55e-3, packing=0.8))


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


def test_half_of_the_line_out_does_not_double_the_pull() -> None:
    """A page (opened: studentmobilelist.com) says it does; with an arbor of half the radius it is 1.26."""
    radius = spool.radius_at_line_out(0.01, 0.02, 0.5)
    assert spool.line_pull(1.0, 1.0, radius) / spool.line_pull(1.0, 1.0, 0.02) == pytest.approx(
        1.26491, abs=1e-5
    )


def test_line_for_a_turn_has_pi_in_it() -> None:
    """A reel explainer (opened: digit-fishing.com) multiplies 5 cm by 7 and says 35 cm; it is 110 cm."""
    assert spool.line_per_turn(0.025, 7.0) == pytest.approx(1.10, abs=0.005)
    assert spool.line_per_turn(0.025, 7.0) > 3 * 0.35


@pytest.mark.parametrize(("packing", "printed"), [(pi / 4, 0.7854), (pi / (2 * 3**0.5), 0.9069)])
def test_packings_of_square_and_nested_order(packing: float, printed: float) -> None:
    """Square order 0.7854, nested 0.9069 (geometry, from memory): the same spool holds so much more."""
    assert packing == pytest.approx(printed, abs=1e-4)
    ratio = spool.line_length(0.01, 0.02, 0.03, 1e-3, packing) / spool.line_length(0.01, 0.02, 0.03, 1e-3)
    assert ratio == pytest.approx(printed, abs=1e-4)


def test_mixed_lines_keep_the_sum_of_length_and_square_of_diameter() -> None:
    """sum L d^2 is the same whatever lies below (area balance of drums, from memory)."""
    two = spool.mixed_fill(0.011, 0.044, [200.0, 100.0], [0.3e-3, 0.4e-3], 0.7)
    assert two[-1] == pytest.approx(  # type: ignore[index]
        spool.fill_radius(0.011, 200.0 * (0.3 / 0.4) ** 2 + 100.0, 0.044, 0.4e-3, 0.7), rel=1e-12
    )
