"""Shafts on two supports: worked examples, and the beam equation solved by small steps."""

from __future__ import annotations

from math import pi

import numpy as np
import pytest
from scipy.linalg import eigh

from spoolwright.mechanics import beams
from tests.reference.published import Published, each

OPENED = "opened: notebook of the textbook companion project, printed output"

CHECKS = [
    Published(
        "centre load, mm",
        lambda: beams.simply_supported_point(50e3, 3.0, 6.0, 2.1e11, 78e-6, at=3.0) * 1e3,
        13.736,
        0.0005,
        "Bansal, Strength of Materials, prob. 12.1",
        OPENED,
    ),
    Published(
        "off-centre load, under it, mm",
        lambda: beams.simply_supported_point(5e3, 3.0, 5.0, 2e11, 1e-4, at=3.0) * 1e3,
        0.6,
        0.0005,
        "Bansal, Strength of Materials, prob. 12.4",
        OPENED,
    ),
    Published(
        "off-centre load, 6 of 10 m, under it, mm",
        lambda: beams.simply_supported_point(10e3, 6.0, 10.0, 210e9, 1e-4, at=6.0) * 1e3,
        9.14,
        0.005,
        "Sarkar, Strength of Materials, prob. 6.6",
        OPENED,
    ),
    Published(
        "the most that beam bends anywhere, mm",
        lambda: (
            np.max(beams.simply_supported_point(10e3, 6.0, 10.0, 210e9, 1e-4, at=np.linspace(0, 10, 10001)))
            * 1e3
        ),
        9.41,
        0.005,
        "Sarkar, Strength of Materials, prob. 6.6, on the right branch",
        "corrected: the notebook takes the wrong branch and prints 9.38",
    ),
    Published(
        "uniform load on a timber beam, mm",
        lambda: beams.simply_supported_uniform(9e3, 5.0, 1e10, 0.2 * 0.3**3 / 12, at=2.5) * 1e3,
        16.27,
        0.01,
        "Bansal, Strength of Materials, prob. 12.5",
        OPENED,
    ),
    Published(
        "end slope of the same, rad",
        lambda: beams.simply_supported_uniform(9e3, 5.0, 1e10, 0.2 * 0.3**3 / 12, at=1e-6) / 1e-6,
        0.0104,
        5e-5,
        "Bansal, Strength of Materials, prob. 12.5",
        OPENED,
    ),
    Published(
        "point and uniform load together, inch (kip, inch)",
        lambda: (
            beams.simply_supported_point(5.0, 48.0, 96.0, 30e3, 75.0, at=48.0)
            + beams.simply_supported_uniform(0.125, 96.0, 30e3, 75.0, at=48.0)
        ),
        0.1024,
        5e-5,
        "Gere, Mechanics of Materials, ex. 9.17",
        "corrected: the notebook slips between kip and pound and prints a thousandth of it",
    ),
    Published(
        "natural frequency of a shaft with one mass, Hz",
        lambda: beams.critical_speed(981 / 9.81, 0.3, 0.9, 200e9, pi * 0.06**4 / 64) / (2 * pi),
        51.9,
        0.1,  # the book takes pi as 3.147
        "Sarkar, Theory of Machines, ex. 11-2",
        OPENED,
    ),
]


@each(CHECKS)
def test_printed(check: Published) -> None:
    check.agrees()


def test_the_wrong_branch_stays_wrong() -> None:
    """9.38 mm is printed for the greatest deflection of Sarkar's prob. 6.6 (opened)."""
    most = np.max(beams.simply_supported_point(10e3, 6.0, 10.0, 210e9, 1e-4, at=np.linspace(0, 10, 10001)))
    assert abs(most * 1e3 - 9.38) > 0.02


def stepped(load: np.ndarray, length: float, stiffness: float) -> np.ndarray:
    """E I y'' = -M twice over with central differences; `load` is the force in each inner node."""
    n = len(load)
    step = length / (n + 1)
    second = (np.diag(np.full(n, 2.0)) - np.diag(np.ones(n - 1), 1) - np.diag(np.ones(n - 1), -1)) / step**2
    moment = np.linalg.solve(second, load / step)
    return np.linalg.solve(second, moment / stiffness)


@pytest.mark.parametrize("nodes", [99, 199])
def test_rivals_closed_form_and_small_steps_at_the_rate_of_the_scheme(nodes: int) -> None:
    """Error of central differences falls with the square of the step (numerical analysis text)."""
    length, modulus, moment = 0.05, 207e9, pi * 0.004**4 / 64
    errors = []
    for n in (nodes, 2 * nodes + 1):
        x = np.linspace(0, length, n + 2)[1:-1]
        load = np.full(n, 2000.0 * length / (n + 1))
        exact = beams.simply_supported_uniform(2000.0, length, modulus, moment, at=x)
        errors.append(np.max(np.abs(stepped(load, length, modulus * moment) - exact)))
    assert errors[0] / errors[1] == pytest.approx(4.0, rel=0.05)


def test_rivals_point_load_and_small_steps() -> None:
    length, modulus, moment, n = 0.05, 207e9, pi * 0.004**4 / 64, 499
    x = np.linspace(0, length, n + 2)[1:-1]
    for node in (50, 249, 430):
        load = np.zeros(n)
        load[node] = 100.0
        ours = beams.simply_supported_point(100.0, x[node], length, modulus, moment, at=x)
        assert stepped(load, length, modulus * moment) == pytest.approx(ours, rel=1e-3)


def test_many_point_loads_are_a_uniform_one() -> None:
    places = (np.arange(2000) + 0.5) / 2000 * 0.05
    summed = np.sum(beams.simply_supported_point(2000.0 * 0.05 / 2000, places, 0.05, 207e9, 1e-11, at=0.02))
    assert summed == pytest.approx(
        beams.simply_supported_uniform(2000.0, 0.05, 207e9, 1e-11, at=0.02), rel=1e-6
    )


@pytest.mark.parametrize("seed", range(5))
def test_rivals_rayleigh_is_never_below_the_true_speed_and_dunkerley_never_above(seed: int) -> None:
    """Both bounds of any vibration text (from memory), with the true speed from the eigenvalues."""
    rng = np.random.default_rng(seed)
    masses, places = rng.uniform(5, 50, 4), np.sort(rng.uniform(0.2, 2.3, 4))
    shaft = (2.5, 210e9, pi * 0.18**4 / 64)
    give = beams.simply_supported_point(1.0, places[None, :], *shaft, at=places[:, None])
    true = 1 / np.sqrt(eigh(give, np.diag(1 / masses), eigvals_only=True)[-1])
    rayleigh = beams.critical_speed(masses, places, *shaft)
    dunkerley = 1 / np.sqrt(np.sum(masses * np.diag(give)))
    assert dunkerley <= true * (1 + 1e-9)
    assert true <= rayleigh * (1 + 1e-9)
    assert rayleigh == pytest.approx(true, rel=0.02)


def test_three_discs_bracketed_by_a_printed_dunkerley() -> None:
    """Sarkar, Theory of Machines, ex. 11-11 (opened): 3111.6 rpm with the shaft's own weight, by Dunkerley.

    Without the shaft's weight, and by Rayleigh, the same discs must come out above it.
    """
    ours = beams.critical_speed(
        np.array([25.0, 50.0, 20.0]), np.array([0.6, 1.5, 2.0]), 2.5, 210e9, pi * 0.18**4 / 64
    )
    assert ours * 60 / (2 * pi) > 3111.6
