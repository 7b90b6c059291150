"""The line of a bent shaft, piece by piece."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.mechanics.bent_line import BentLine


def test_it_lies_on_its_bearings_whatever_the_loads() -> None:
    places = np.array([0.1, 0.9])
    line = BentLine(
        np.array([5.0, -2.0, -3.0]),
        np.array([0.46, 0.1, 0.9]),
        np.array([0.3, 1.0]),
        np.array([0.02, 0.03]),
        200e9,
        places,
    )
    _, _, deflection = line.of(places, (0.1, 0.9))
    assert deflection == pytest.approx([0.0, 0.0], abs=1e-15)


def test_without_loads_it_is_straight() -> None:
    places = np.linspace(0, 1, 5)
    line = BentLine(np.zeros(2), np.array([0.0, 1.0]), np.array([1.0]), np.array([0.02]), 200e9, places)
    for part in line.of(places, (0.0, 1.0)):
        assert part == pytest.approx(np.zeros(5))
