"""Rope friction: worked examples of statics texts."""

from __future__ import annotations

from math import exp, pi, radians

import numpy as np
import pytest

from spoolwright.mechanics import capstan
from tests.reference.published import Published, each

NOTEBOOK = "opened: companion notebook of the textbook"
BEER = "Beer & Johnston, Vector Mechanics for Engineers: Statics and Dynamics"

CHECKS = [
    Published(
        "friction from two turns",
        lambda: capstan.friction_of(7500 / 150, 4 * pi),
        0.311,
        0.0005,
        f"{BEER}, sample 8.7 p. 431",
        NOTEBOOK,
    ),
    Published(
        "largest belt torque, lbf in",
        lambda: 600 * (1 - 1 / capstan.pull_ratio(0.25, radians(120))) * 8,
        1957,
        0.6,
        f"{BEER}, sample 8.8 p. 432",
        NOTEBOOK,
    ),
    Published(
        "mass held over two pegs, kg",
        lambda: 500 / capstan.pull_ratio(0.25, 2 * radians(135)) / 9.81,
        15.7,
        0.05,
        "Hibbeler, Engineering Mechanics: Statics, ex. 8.9 p. 324",
        NOTEBOOK,
    ),
    Published(
        "one turn at 0.3",
        lambda: capstan.pull_ratio(0.3, 2 * pi),
        6.6,
        0.05,
        "quiz page on belt friction",
        "opened: openknowledgegraph.com",
    ),
]


@each(CHECKS)
def test_printed(check: Published) -> None:
    check.agrees()


def test_rivals_many_small_bends() -> None:
    """Each small bend presses with T d(beta) and takes mu of that; any statics text has the limit."""
    pull, steps = 1.0, 20000
    for _ in range(steps):
        pull += 0.2 * pull * (pi / steps)
    assert capstan.pull_ratio(0.2, pi) == pytest.approx(pull, rel=1e-4)
    assert capstan.pull_ratio(0.2, pi) == pytest.approx(exp(0.2 * pi))


def test_a_bent_line_presses_as_two_pulls_add_up() -> None:
    """Vector sum of two equal pulls, any statics text."""
    bend = np.linspace(0, pi, 9)
    there = np.stack([np.cos(bend) - 1, np.sin(bend)])
    assert capstan.guide_load(10.0, bend) == pytest.approx(10 * np.hypot(*there))
