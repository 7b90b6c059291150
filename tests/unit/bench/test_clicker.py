"""Clicks over the teeth of their wheel are turns; a missed or doubled click does not count."""

from math import pi

import numpy as np
import pytest

from spoolwright.bench import clicker
from spoolwright.bench.unreadable import Unreadable


def test_the_speed_is_the_one_that_clicked() -> None:
    rng = np.random.default_rng(2)
    clicks = np.cumsum(rng.normal(1 / (24 * 3.0), 2e-4, 200))
    found = clicker.speed(np.sort(np.append(np.delete(clicks, [20, 90]), clicks[50] + 0.001)), 24)
    assert found.value == pytest.approx(2 * pi * 3.0, abs=4 * found.uncertainty)
    assert 0 < found.uncertainty < 0.01 * found.value


@pytest.mark.parametrize(("count", "teeth"), [(5, 20), (50, 1)])
def test_too_few_clicks_or_teeth_are_refused(count: int, teeth: int) -> None:
    with pytest.raises(Unreadable):
        clicker.speed(np.arange(count) * 0.01, teeth)
