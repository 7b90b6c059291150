"""Values of a fitted coast-down: torques with an inertia, per inertia without, time to rest by the law."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.bench import coast_values
from spoolwright.bench.coast_fit import CoastFit
from spoolwright.bench.uncertainty import Measured
from spoolwright.mechanics import coastdown

LAW = np.array([0.0, 100.0, 2.0, 0.02, 1e-4])
FIT = CoastFit(LAW, np.diag([0, 0.01, 1e-4, 1e-8, 1e-13]), np.ones(0, dtype=bool), np.zeros(0))


def test_values_and_their_dimensions() -> None:
    plain = coast_values.values(FIT, None).measured
    heavy = coast_values.values(FIT, Measured(3e-5, 3e-6, "inertia"))
    assert [one.dimension for one in plain] == ["rotation", "deceleration", "frequency", "ratio", "time"]
    assert heavy.measured[1].value == pytest.approx(6e-5)
    assert heavy.measured[1].uncertainty == pytest.approx(np.hypot(3e-5 * 0.01, 2.0 * 3e-6))
    assert {row.source for row in heavy.budget} == {"scatter of the ticks", "inertia"}


def test_time_to_rest_moves_with_the_drags_as_the_law_says() -> None:
    stop = coast_values.values(FIT, None).measured[4]
    assert stop.value == pytest.approx(float(coastdown.stop_time(100.0, 1.0, 2.0, 0.02, 1e-4)))
    more = float(coastdown.stop_time(100.0, 1.0, 2.01, 0.02, 1e-4))
    assert stop.uncertainty > abs(more - stop.value) * 0.9
