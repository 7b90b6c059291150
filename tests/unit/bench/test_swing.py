"""A swing that dies away: truth in, truth out at the stated coverage; what is no swing is refused."""

import numpy as np
import pytest

from spoolwright.bench import swing
from spoolwright.bench.unreadable import Unreadable

PERIOD, DECAY = 0.42, 0.23


def record(chance: np.random.Generator, *, noise: float = 0.05, lasts: float = 4.0, rate: float = 100.0):
    t = np.arange(0, lasts, 1 / rate)
    shape = 3 * np.exp(-DECAY * t) * np.cos(2 * np.pi * t / PERIOD + 0.4) + 0.2
    return t + 7.0, shape + noise * chance.normal(size=len(t))


def test_period_and_decay_are_covered_as_often_as_they_say() -> None:
    """Seeded coverage, 60 records: k = 2 is 95 %; at least 51 of 60 (less comes once in a thousand)."""
    chance = np.random.default_rng(4)
    found = [swing.fit(*record(chance)) for _ in range(60)]
    assert sum(abs(one.period.value - PERIOD) <= one.period.expanded for one in found) >= 51
    assert sum(abs(one.decay.value - DECAY) <= one.decay.expanded for one in found) >= 51
    undamped = np.hypot(2 * np.pi / PERIOD, DECAY)
    assert sum(abs(one.damping.value - DECAY / undamped) <= one.damping.expanded for one in found) >= 51


def test_uneven_moments_and_slow_or_fast_swings() -> None:
    chance = np.random.default_rng(2)
    for period in (0.05, 0.9, 6.0):
        t = np.sort(chance.uniform(0, 12 * period, 900))
        found = swing.fit(t, np.exp(-0.1 * t / period) * np.sin(2 * np.pi * t / period))
        assert found.period.value == pytest.approx(period, rel=1e-6)
        assert found.swings == pytest.approx(12, abs=0.1)


def test_few_swings_and_growing_ones_are_said() -> None:
    t = np.arange(0, 2, 0.01)
    found = swing.fit(t, np.exp(0.5 * t) * np.sin(2 * np.pi * t / 0.4))
    assert any("grows" in note for note in found.notes)
    assert any("Only 5 swings" in note for note in found.notes)


@pytest.mark.parametrize(
    ("time", "signal", "said"),
    [
        (np.arange(10.0), np.sin(np.arange(10.0)), "10 samples"),
        (np.zeros(40), np.arange(40.0), "do not rise"),
        (np.arange(40.0), np.full(40, 3.0), "stands still"),
        (np.arange(0, 1, 0.01), np.sin(2 * np.pi * np.arange(0, 1, 0.01) / 0.5), "swings are in the record"),
        (np.arange(0, 40.0), np.sin(2 * np.pi * np.arange(40.0) / 2.7), "samples to a swing"),
        (np.arange(0, 4, 0.01), np.random.default_rng(1).normal(size=400), "Accepted"),
    ],
)
def test_what_is_no_swing_is_refused(time: np.ndarray, signal: np.ndarray, said: str) -> None:
    with pytest.raises(Unreadable, match=said):
        swing.fit(time, signal)


def test_a_record_that_never_ends_is_refused_at_once() -> None:
    long = np.arange(swing.MOST_SAMPLES + 1.0)
    with pytest.raises(Unreadable, match="cut the record"):
        swing.fit(long, np.sin(long))


@pytest.mark.parametrize("seed", range(8))
def test_hostile_signals_are_refused_or_have_a_finite_period(seed: int) -> None:
    """Steps, spikes, walks, ramps, enormous and tiny numbers: never a crash, never a number that is none."""
    chance = np.random.default_rng(seed)
    t = np.cumsum(chance.exponential(10.0 ** chance.integers(-4, 3), 300))
    made = (
        np.cumsum(chance.normal(size=300)),
        np.where(t > t[150], 1.0, 0.0),
        chance.standard_cauchy(300),
        t**3,
        np.exp(np.linspace(0, 60, 300)),
        1e-14 * chance.normal(size=300),
        1e14 * np.sin(np.linspace(0, 90, 300)),
        np.sign(np.sin(np.linspace(0, 60, 300))),
    )[seed]
    try:
        found = swing.fit(t, made)
    except Unreadable:
        return
    assert np.isfinite([found.period.value, found.period.uncertainty, found.decay.value]).all()
    assert found.period.value > 0
