"""One slip, from breaking away to standing still."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.mechanics.slip_motion import Slip, smooth_step


def slip(ratio: float, speed: float = 0.1, pull: float = 4.0) -> Slip:
    parts = (1.0, 10.0, ratio * 10.0, speed, 2.5, pull)
    return Slip(*(np.asarray(part) for part in parts))


@pytest.mark.parametrize("ratio", [0.0, 0.05, 0.9, 1.0, 1.0 + 1e-9, 3.0])
def test_it_starts_at_rest_and_at_the_pull_that_broke_it_loose(ratio: float) -> None:
    begun = slip(ratio)
    zero = np.asarray(0.0)
    assert begun.tension(zero) == pytest.approx(4.0)
    assert begun.stretch_rate(zero) == pytest.approx(0.1)
    assert begun.stretch(zero) == pytest.approx((4.0 - 2 * ratio * 10 * 0.1) / 100)


@pytest.mark.parametrize("ratio", [0.0, 0.05, 0.9, 1.0, 3.0])
def test_rates_are_the_slopes_and_forces_balance_on_the_way(ratio: float) -> None:
    begun, step = slip(ratio), 1e-6
    t = np.linspace(0.01, 1.0, 7)
    slope = (begun.stretch(t + step) - begun.stretch(t - step)) / (2 * step)
    assert begun.stretch_rate(t) == pytest.approx(slope, rel=1e-6, abs=1e-8)
    line = 100 * begun.stretch(t) + 2 * ratio * 10 * begun.stretch_rate(t)
    assert begun.tension(t) == pytest.approx(line, rel=1e-9)


def test_peak_and_trough_bound_what_is_seen_on_the_way() -> None:
    for ratio in (0.0, 0.1, 0.6, 2.0):
        begun = slip(ratio)
        until = begun.stops_after()
        seen = begun.tension(np.linspace(0.0, min(float(until), 3.0), 4001))
        assert begun.peak() == pytest.approx(seen.max(), rel=1e-5)
        assert begun.trough(until) <= seen.min() + 1e-5


def test_it_stands_still_where_the_ends_keep_pace() -> None:
    begun = slip(0.02)
    assert begun.stretch_rate(begun.stops_after()) == pytest.approx(0.1, rel=1e-12)
    assert slip(1.0).stops_after() == np.inf


def test_more_damping_bears_a_larger_step_of_friction() -> None:
    steps = smooth_step(np.array([0.0, 0.01, 0.1, 0.5, 0.9, 1.0]))
    assert steps[0] == 0.0
    assert np.all(np.diff(steps) > 0)
