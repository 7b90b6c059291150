"""Samples that hang together: the stated uncertainty is what a thousand repetitions show."""

import numpy as np
import pytest
from numpy.typing import NDArray

from spoolwright.bench import scatter


def rough(rng: np.random.Generator, n: int, memory: float) -> NDArray[np.float64]:
    """A record in which each sample remembers the one before."""
    shocks = rng.normal(size=n)
    out = np.empty(n)
    out[0] = shocks[0] / np.sqrt(1 - memory**2)
    for i in range(1, n):
        out[i] = memory * out[i - 1] + shocks[i]
    return out


@pytest.mark.parametrize("memory", [0.0, 0.5, 0.9])
def test_the_error_of_a_mean_is_what_repetition_shows(memory: float) -> None:
    rng = np.random.default_rng(4)
    records = [rough(rng, 400, memory) for _ in range(300)]
    shown = np.std([r.mean() for r in records])
    stated = np.mean([scatter.error_of_mean(r - r.mean()) for r in records])
    assert 0.8 < stated / shown < 1.35


def test_the_error_of_a_slope_is_what_repetition_shows() -> None:
    rng = np.random.default_rng(5)
    time = np.arange(400) / 100.0
    fits = [scatter.line_through(time, rough(rng, 400, 0.6)) for _ in range(300)]
    shown = np.std([slope for _, slope, _ in fits])
    stated = np.mean([scatter.error_of_slope(time, rest) for _, _, rest in fits])
    assert 0.75 < stated / shown < 1.35


def test_the_error_of_a_span_is_what_repetition_shows() -> None:
    rng = np.random.default_rng(6)
    records = [rough(rng, 600, 0.5) for _ in range(120)]
    shown = np.std([scatter.span(r) for r in records])
    stated = np.mean([scatter.error_of_span(r) for r in records])
    assert 0.7 < stated / shown < 1.4


def test_neighbours_that_agree_count_for_one() -> None:
    white = np.random.default_rng(7).normal(size=2000)
    assert scatter.correlation_samples(white) < 1.6
    assert scatter.correlation_samples(np.repeat(white, 5)) > 4.0


def test_a_flat_record_has_no_scatter() -> None:
    flat = np.full(50, 3.0)
    assert scatter.correlation_samples(flat - 3.0) == 1.0
    assert scatter.error_of_mean(flat - 3.0) == 0.0


def test_a_straight_line_leaves_nothing_over() -> None:
    time = np.linspace(2.0, 7.0, 60)
    level, slope, rest = scatter.line_through(time, 4.0 + 0.5 * (time - 4.5))
    assert (level, slope) == (pytest.approx(4.0), pytest.approx(0.5))
    assert np.abs(rest).max() < 1e-12


def test_a_long_record_is_thinned_and_gives_the_same_answer_each_time() -> None:
    long = np.random.default_rng(8).normal(size=50_000)
    assert scatter.error_of_span(long) == scatter.error_of_span(long)
