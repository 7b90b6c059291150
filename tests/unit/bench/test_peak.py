"""The highest pull: what noise adds and what hides between samples."""

import numpy as np
import pytest

from spoolwright.bench import peak


@pytest.mark.parametrize("n", [1, 2, 5, 10, 60, 300])
def test_the_highest_of_n_is_what_drawing_shows(n: int) -> None:
    drawn = np.random.default_rng(2).normal(size=(20_000, n)).max(axis=1)
    mean, spread = peak._of_highest(n)
    assert mean == pytest.approx(drawn.mean(), abs=0.04)
    assert -0.02 < spread - drawn.std() < 0.2


def test_noise_on_a_level_does_not_pass_for_a_peak() -> None:
    rng = np.random.default_rng(4)
    time = np.arange(30) / 100.0
    found = [peak.highest(time, 20.0 + rng.normal(0, 0.2, 30), 0, 30, 0.2) for _ in range(200)]
    off = np.array([p.value - 20.0 for p in found])
    spread = np.array([np.hypot(p.from_noise, p.between_samples) for p in found])
    assert np.mean(np.abs(off) < 2 * spread) > 0.9


@pytest.mark.parametrize("shift", [0.0, 0.2, 0.5, 0.8])
def test_a_peak_between_two_samples_lies_inside_its_limits(shift: float) -> None:
    time = np.arange(0.0, 1.0, 0.02)
    at = 0.5 + shift * 0.02
    force = np.where(time < at, 30.0 * time / at, 20.0 + 10.0 * np.exp(-(time - at) / 0.06))
    start = int(np.argmax(force)) - 2
    found = peak.highest(time, force, start, start + 15, 0.0)
    assert abs(found.value - 30.0) <= 2 * found.between_samples + 1e-9


def test_a_slow_gauge_only_brackets_the_peak() -> None:
    quick, slow = np.arange(0.0, 1.0, 0.01), np.arange(0.0, 1.0, 0.1)
    shape = lambda t: np.where(t < 0.5, 60.0 * t, 20.0 + 10.0 * np.exp(-(t - 0.5) / 0.06))  # noqa: E731
    narrow = peak.highest(quick, shape(quick), 45, 80, 0.0)
    wide = peak.highest(slow, shape(slow), 4, 8, 0.0)
    assert wide.between_samples > 5 * narrow.between_samples


@pytest.mark.parametrize("rate", [8.0, 12.0, 16.0])
def test_a_slow_gauge_is_neither_far_too_high_nor_far_too_low_on_average(rate: float) -> None:
    rng = np.random.default_rng(6)
    off, told = [], []
    for _ in range(200):
        climb, fall, high = rng.choice([0.05, 0.2, 0.5]), rng.choice([0.03, 0.1, 0.3]), rng.uniform(1.0, 2.0)
        time = np.arange(rng.uniform(0.0, 1.0 / rate), 4.0, 1.0 / rate)
        force = np.where(
            time < 1.0 + climb,
            20.0 * high * np.clip((time - 1.0) / climb, 0.0, 1.0),
            20.0 + 20.0 * (high - 1.0) * np.exp(-(time - 1.0 - climb) / fall),
        )
        start = int(np.argmax(force > 14.0))
        found = peak.highest(time, force, start, start + 5, 0.0)
        off.append(found.value / (20.0 * high) - 1.0)
        told.append(2 * found.between_samples / (20.0 * high))
    assert abs(np.mean(off)) < 0.06
    assert np.mean(np.abs(off) <= np.array(told) + 1e-9) > 0.9
