"""The clock of a coast-down: what it leaves open is what another clock would have found."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.bench import spin_clock, spin_reading
from spoolwright.bench.budget import combined
from spoolwright.bench.uncertainty import Measured
from spoolwright.mechanics import coastdown

TICKS = 20 - np.sqrt(400 - 4 * np.pi * np.arange(0, 150) / 5)
HEAVY = Measured(3e-6, 1e-7, "inertia")


def drawn(seed: int = 1) -> np.ndarray:
    return TICKS + np.random.default_rng(seed).normal(0, 1e-4, len(TICKS))


@pytest.mark.parametrize("inertia", [None, HEAVY])
def test_each_value_moves_with_the_clock_as_its_row_says(inertia: Measured | None) -> None:
    # By doing it: the same ticks on a clock that runs fast by 0.2 %.
    share, ticks = 0.002, drawn()
    true = spin_reading.read(ticks, inertia)
    fast = spin_reading.read(ticks * (1 + share), inertia)
    told = spin_clock.with_clock(true, share)
    rows = {row.result: row.uncertainty for row in told.budget if row.source == spin_clock.WORDS}
    for key in ("initial_speed", "constant", "stop_time"):
        moved = abs(getattr(fast, key).value - getattr(true, key).value)
        assert rows[key] * np.sqrt(3) == pytest.approx(moved, rel=0.02), key
    assert "quadratic" not in rows


def test_the_power_of_time_in_each_drag_is_that_of_the_law() -> None:
    # The law itself (mechanics.coastdown): with time stretched by s, drags over s^2, s and 1 stop at s times.
    s = 1.01
    stop = float(coastdown.stop_time(100.0, 1.0, 2.0, 0.02, 1e-4))
    stretched = float(coastdown.stop_time(100.0 / s, 1.0, 2.0 / s**2, 0.02 / s, 1e-4))
    assert stretched == pytest.approx(s * stop, rel=1e-9)


def test_the_rows_make_up_the_uncertainty_and_the_values_stay() -> None:
    spin = spin_reading.read(drawn(), HEAVY)
    told = spin_clock.with_clock(spin, 0.01)
    for key in spin_clock.POWERS:
        one = getattr(told, key)
        assert one.value == getattr(spin, key).value
        rows = [row for row in told.budget if row.result == key]
        assert one.uncertainty == pytest.approx(combined(rows)), key


def test_a_true_clock_adds_nothing_and_one_below_zero_is_none() -> None:
    spin = spin_reading.read(drawn())
    assert spin_clock.with_clock(spin, 0.0) is spin
    with pytest.raises(ValueError, match="zero or more"):
        spin_clock.with_clock(spin, -0.1)
