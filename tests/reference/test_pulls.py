"""Series of pulls, their ratios and corrections, against the Guide (JCGM 100:2008), textbooks and SciPy."""

from __future__ import annotations

from math import exp, pi

import numpy as np
import pytest
from scipy import optimize, stats

from spoolwright.bench import pull_fade, pull_series, pull_speed, pulls
from spoolwright.bench.pull_corrections import pulley
from spoolwright.bench.pull_ratio import interval
from spoolwright.bench.pulls import OnePull, Scatter
from spoolwright.bench.student import widening
from spoolwright.bench.uncertainty import Measured

NOISE = np.random.default_rng(5).normal(0, 0.02, 12)


@pytest.mark.parametrize(
    ("freedom", "factor"), [(1, 13.97), (2, 4.53), (5, 2.65), (10, 2.28), (20, 2.13), (50, 2.05)]
)
def test_students_factor_for_few_readings(freedom: int, factor: float) -> None:
    # JCGM 100:2008, table G.2, column 95.45 %, from memory.
    assert 2 * widening(freedom) == pytest.approx(factor, abs=0.005)


def test_the_ends_of_a_ratio_are_where_its_squared_misfit_reaches_four() -> None:
    # Fieller 1954 (from memory), the two roots found by scipy.optimize.brentq instead of the quadratic.
    top, bottom, rho = Measured(13.0, 0.7, "force"), Measured(10.0, 0.8, "force"), 0.5

    def misfit(r: float) -> float:
        spread = 0.7**2 - 2 * r * rho * 0.7 * 0.8 + (r * 0.8) ** 2
        return float((13.0 - r * 10.0) ** 2 / spread) - 4.0

    low, high = interval(top, bottom, rho)
    assert low == pytest.approx(optimize.brentq(misfit, 0.5, 1.3), rel=1e-9)
    assert high == pytest.approx(optimize.brentq(misfit, 1.3, 3.0), rel=1e-9)


def test_a_pulley_tried_both_ways_is_rope_friction() -> None:
    # Euler and Eytelwein's rope friction, any statics text: a sixteenth of a turn with friction 0.311.
    eased = exp(0.311 * pi / 8)
    tried = pulley(Measured(150 * eased, 0.0, "force"), Measured(150 / eased, 0.0, "force"))
    assert tried.factor.value == pytest.approx(eased)
    assert tried.weight.value == pytest.approx(150.0)


def test_the_step_of_a_display() -> None:
    # JCGM 100:2008, F.2.2.1: u = 0.29 of a step, from memory.
    [one] = pulls.settings_of([OnePull(1, 1000.0, step=100.0)], Scatter(1e-9, 1e9, 0))
    assert one.running.uncertainty == pytest.approx(29.0, abs=0.3)


def test_a_fade_is_the_regression_line() -> None:
    # Source: scipy.stats.linregress on the same pulls.
    taken = [OnePull(n, 50.0 * (1 - 0.02 * n + NOISE[n])) for n in range(12)]
    found = pull_fade.fit(taken)
    line = stats.linregress([p.at for p in taken], [p.running for p in taken])
    assert found.first.value == pytest.approx(line.intercept)
    assert found.change.value == pytest.approx(line.slope * 11 / line.intercept)


def test_pull_against_the_logarithm_of_speed() -> None:
    # Source: scipy.stats.linregress on the same pulls, divided by their mean.
    speeds = np.geomspace(0.02, 0.8, 12)
    taken = [OnePull(v, 30.0 * (1 - 0.1 * np.log10(v) + e)) for v, e in zip(speeds, NOISE, strict=True)]
    pull = np.array([p.running for p in taken])
    line = stats.linregress(np.log10(speeds), pull / pull.mean())
    assert pull_speed.fit(taken).per_tenfold.value == pytest.approx(line.slope)


def test_a_series_is_the_weighted_fit_of_a_line_with_a_foot() -> None:
    # Source: scipy.optimize.curve_fit of the same broken line with the same weights. It tells the best line,
    # ours the mean over all that fit: a tenth of what is left open may lie between them, a twentieth between
    # their spreads.
    turns = np.repeat([0.5, 1.0, 1.5, 2.0, 2.5, 3.0], 2)
    true = 12.0 * np.clip(turns - 0.8, 0, None)
    found = pull_series.fit([OnePull(t, f * (1 + e)) for t, f, e in zip(turns, true, NOISE, strict=True)])
    at = np.array([one.at for one in found.settings])
    pull = np.array([one.running.value for one in found.settings])
    sigma = np.array([one.running.uncertainty for one in found.settings])

    def line(x: np.ndarray, slope: float, onset: float) -> np.ndarray:
        return slope * np.clip(x - onset, 0, None)

    best, covariance = optimize.curve_fit(line, at, pull, (10.0, 0.7), sigma, absolute_sigma=True)
    spread = np.sqrt(np.diag(covariance))
    assert found.per_turn.value == pytest.approx(best[0], abs=0.1 * spread[0])
    assert found.onset.value == pytest.approx(best[1], abs=0.1 * spread[1])
    assert found.per_turn.uncertainty == pytest.approx(spread[0], rel=0.05)
    assert found.onset.uncertainty == pytest.approx(spread[1], rel=0.05)
