"""Stepped shafts: worked examples, closed forms of texts, and the beam equation solved by small steps."""

from __future__ import annotations

from math import pi

import numpy as np
import pytest
from scipy.linalg import solveh_banded

from spoolwright.mechanics import beams
from tests.reference.published import Published, each

INCH, POUND = 0.0254, 4.4482216152605
PSI = POUND / INCH**2
SHIGLEY = "Shigley's Mechanical Engineering Design, 8th ed., solution of problem 7-8"
SHIGLEY_HOW = "opened: solution manual, chapter 7, as stored by two document sites"
OPENED = "opened: notebook of the textbook companion project, printed output"
THICK, THIN = 2**0.25 * 0.02, 0.02
"""Diameters of which the thicker has twice the second moment of area of the thinner."""


def geared_shaft(at: float) -> beams.BentShaft:
    """A uniform 1.875 in shaft, 11 in between its bearings, with 1449 lbf at 9 in."""
    return beams.stepped_shaft(
        1449 * POUND,
        9 * INCH,
        [4 * INCH, 7 * INCH],
        [1.875 * INCH] * 2,
        30e6 * PSI,
        [0, 11 * INCH],
        at * INCH,
    )


def stiff_middle(at: float) -> beams.BentShaft:
    """Twice the second moment of area over the middle half, one force in the middle; length 1."""
    return beams.stepped_shaft(1.0, 0.5, [0.25, 0.5, 0.25], [THIN, THICK, THIN], 1.0, [0.0, 1.0], at)


def in_units_of(moment_of: float) -> float:
    return 1 / (pi * moment_of**4 / 64)


def overhung(at: float) -> beams.BentShaft:
    return beams.stepped_shaft(1.0, 1.4, [1.4], [THIN], 1.0, [0.0, 1.0], at)


CHECKS = [
    Published(
        "slope at the left bearing, rad",
        lambda: abs(geared_shaft(0).slope),
        2.823e-4,
        0.5e-7,
        SHIGLEY,
        SHIGLEY_HOW,
    ),
    Published(
        "slope at the right bearing, rad",
        lambda: abs(geared_shaft(11).slope),
        4.342e-4,
        0.5e-7,
        SHIGLEY,
        SHIGLEY_HOW,
    ),
    Published(
        "slope at the gear, rad", lambda: abs(geared_shaft(9).slope), 3.04e-4, 0.5e-6, SHIGLEY, SHIGLEY_HOW
    ),
    Published(
        "bending stress under a central load, psi, as a round bar of the same section modulus",
        lambda: (
            beams.stepped_shaft(
                3000 * POUND,
                18 * INCH,
                [36 * INCH],
                [(32 / pi * 8 / 6) ** (1 / 3) * INCH],
                30e6 * PSI,
                [0, 36 * INCH],
                18 * INCH,
            ).bending_stress
            / PSI
        ),
        20250,
        0.5,
        "Wentzell, Machine Design, ex. 3.2 (2 by 2 in square bar)",
        OPENED,
    ),
    Published(
        "stiff middle half: deflection over P L^3 / (E I)",
        lambda: stiff_middle(0.5).deflection / in_units_of(THIN),
        3 / 256,
        1e-12,
        "Gere & Timoshenko, Mechanics of Materials, simple beam with I and 2 I, 3 P L^3 / 256 E I",
        "from memory",
    ),
    Published(
        "stiff middle half: end slope over P L^2 / (E I)",
        lambda: stiff_middle(0.0).slope / in_units_of(THIN),
        5 / 128,
        1e-12,
        "Gere & Timoshenko, Mechanics of Materials, simple beam with I and 2 I, 5 P L^2 / 128 E I",
        "from memory",
    ),
    Published(
        "overhung load: deflection under it over F a^2 (l + a) / (3 E I)",
        lambda: overhung(1.4).deflection / in_units_of(THIN) / (0.4**2 * 1.4 / 3),
        1.0,
        1e-12,
        "Shigley's Mechanical Engineering Design, table A-9-10, overhanging load",
        "from memory",
    ),
    Published(
        "overhung load: lift between the bearings over F a l^2 / (9 sqrt(3) E I)",
        lambda: -overhung(1 / 3**0.5).deflection / in_units_of(THIN) / (0.4 / (9 * 3**0.5)),
        1.0,
        1e-12,
        "Shigley's Mechanical Engineering Design, table A-9-10, at l / sqrt(3)",
        "from memory",
    ),
]


@each(CHECKS)
def test_printed(check: Published) -> None:
    check.agrees()


def test_diameters_times_1216_bring_a_slope_of_1095_down_to_500() -> None:
    """Shigley's Mechanical Engineering Design, 9th ed., ex. 7-4 (opened), the seven diameters of ex. 7-3."""
    lengths = np.array([1.25, 0.75, 1.5, 4.0, 2.0, 0.75, 1.25]) * INCH
    widths = np.array([1, 1.4, 1.625, 2.0, 1.625, 1.4, 1]) * INCH
    held = (30e6 * PSI, [0.75 * INCH, 10.75 * INCH], 10.75 * INCH)
    forces, places = [540 * POUND, -2431 * POUND], [2.75 * INCH, 8.5 * INCH]
    before = beams.stepped_shaft(forces, places, lengths, widths, *held).slope
    after = beams.stepped_shaft(forces, places, lengths, 1.216 * widths, *held).slope
    assert after / before == pytest.approx(0.0005 / 0.001095, rel=0.003)  # 1.216 is rounded


def test_critical_speed_of_three_discs_and_the_shafts_own_weight() -> None:
    """Sarkar, Theory of Machines, ex. 11-11 (opened) prints 3111.6 rpm by Dunkerley, which is never above.

    For a first mode alone Dunkerley is known to be low by a few per cent (any vibration text).
    """
    density = 1962 / 9.81 / (pi * 0.18**2 / 4)
    ours = beams.stepped_critical_speed(
        [25.0, 50.0, 20.0], [0.6, 1.5, 2.0], [2.5], [0.18], 210e9, [0.0, 2.5], density
    )
    rpm = ours * 60 / (2 * pi)
    assert 3111.6 - 5 < rpm < 1.03 * 3111.6


def test_critical_speed_of_a_shaft_by_itself() -> None:
    """pi^2 sqrt(E I / (m' L^4)), simply supported (any vibration text, from memory)."""
    light = beams.stepped_critical_speed(1e-9, 0.5, [0.4, 0.6], [0.02, 0.02], 200e9, [0.0, 1.0], 7850.0)
    exact = pi**2 * (200e9 * 0.02**2 / (16 * 7850.0)) ** 0.5
    assert light == pytest.approx(exact, rel=1e-3)


def test_critical_speed_of_one_mass_is_the_root_of_g_over_sag() -> None:
    """Sarkar, Theory of Machines, ex. 11-2 (opened): 51.9 Hz with pi taken as 3.147."""
    ours = beams.stepped_critical_speed(981 / 9.81, 0.3, [0.9], [0.06], 200e9, [0.0, 0.9])
    assert ours / (2 * pi) == pytest.approx(51.9, abs=0.1)


def by_small_steps(load: np.ndarray, give: np.ndarray, length: float) -> np.ndarray:
    """y'' = -M / (E I) twice over with central differences; `give` is 1 / (E I) in each inner node."""
    n = len(load)
    step = length / (n + 1)
    second = np.stack([np.full(n, -1.0), np.full(n, 2.0)]) / step**2
    return solveh_banded(second, solveh_banded(second, load / step) * give)


@pytest.mark.parametrize("seed", range(3))
def test_rivals_exact_pieces_and_small_steps(seed: int) -> None:
    rng = np.random.default_rng(seed)
    lengths, widths = rng.dirichlet(np.ones(4)) * 0.06, rng.uniform(0.003, 0.006, 4)
    n = 899
    x = np.linspace(0, 0.06, n + 2)[1:-1]
    width = widths[np.searchsorted(np.cumsum(lengths)[:-1], x)]
    nodes, forces = rng.choice(n, 3, replace=False), rng.uniform(-100, 100, 3)
    load = np.zeros(n)
    load[nodes] = forces
    stepwise = by_small_steps(load, 64 / (pi * 200e9 * width**4), 0.06)
    ours = beams.stepped_shaft(forces, x[nodes], lengths, widths, 200e9, [0.0, 0.06], x)
    assert np.max(np.abs(ours.deflection - stepwise)) < 4e-3 * np.max(np.abs(stepwise))
    assert np.gradient(np.asarray(ours.deflection), x)[1:-1] == pytest.approx(
        np.asarray(ours.slope)[1:-1], abs=4e-3 * float(np.max(np.abs(ours.slope)))
    )


def test_rivals_the_formula_for_a_shaft_of_one_diameter() -> None:
    places = np.linspace(0, 0.05, 21)
    ours = beams.stepped_shaft(100.0, 0.02, [0.01, 0.04], [0.004, 0.004], 207e9, [0.0, 0.05], places)
    simple = beams.simply_supported_point(100.0, 0.02, 0.05, 207e9, pi * 0.004**4 / 64, places)
    assert ours.deflection == pytest.approx(simple, rel=1e-9, abs=1e-15)


def test_force_and_place_may_be_exchanged_on_any_shaft() -> None:
    """Maxwell's theorem (any mechanics text)."""
    shaft = ([0.02, 0.03, 0.02], [0.004, 0.006, 0.003], 200e9, [0.005, 0.06])
    there = beams.stepped_shaft(1.0, 0.012, *shaft, at=0.066).deflection
    back = beams.stepped_shaft(1.0, 0.066, *shaft, at=0.012).deflection
    assert there == pytest.approx(back, rel=1e-9)
