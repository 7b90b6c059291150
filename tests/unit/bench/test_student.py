"""Few readings make a wide interval."""

import numpy as np
import pytest

from spoolwright.bench.student import widening


def test_a_mean_of_four_holds_the_truth_as_often_as_it_says() -> None:
    rng = np.random.default_rng(3)
    drawn = rng.normal(10.0, 1.0, (6000, 4))
    half = 2 * widening(3) * drawn.std(axis=1, ddof=1) / 2
    assert np.mean(np.abs(drawn.mean(axis=1) - 10.0) <= half) == pytest.approx(0.9545, abs=0.01)


def test_many_readings_need_no_widening_and_none_cannot_be_widened() -> None:
    assert widening(float("inf")) == pytest.approx(1.0, abs=1e-4)
    assert widening(2) > widening(3) > widening(10) > 1
    with pytest.raises(ValueError, match="freedom"):
        widening(0)
