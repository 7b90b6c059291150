"""The rows of an uncertainty."""

from math import sqrt

import numpy as np
import pytest

from spoolwright.bench.budget import RECTANGLE, ROUNDING, Contribution, combined, measured


def test_rows_add_in_squares() -> None:
    rows = [Contribution("running", "scatter", "A", 0.3), Contribution("running", "gauge", "B", 0.4)]
    assert combined(rows) == pytest.approx(0.5)
    assert measured(7, "force", rows).uncertainty == pytest.approx(0.5)


def test_no_rows_are_no_uncertainty() -> None:
    assert combined([]) == 0.0


def test_the_factors_are_those_of_a_rectangle_drawn_at_random() -> None:
    drawn = np.random.default_rng(1).uniform(-1.0, 1.0, 400_000)
    assert drawn.std() == pytest.approx(RECTANGLE, rel=0.01)
    assert (drawn / 2).std() == pytest.approx(ROUNDING, rel=0.01)
    assert pytest.approx(sqrt(3) / 6) == ROUNDING
