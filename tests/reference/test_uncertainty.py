"""Uncertainty against the worked examples of the Guide (JCGM 100:2008) and textbooks of statistics."""

import numpy as np
import pytest
from scipy import stats

from spoolwright.bench import coast_fit, scatter
from spoolwright.bench.budget import RECTANGLE, ROUNDING, Contribution, combined
from spoolwright.bench.gauge import Gauge
from spoolwright.bench.torque import pull_torque
from spoolwright.bench.uncertainty import COVERAGE_FACTOR, Measured

# JCGM 100:2008, table 1: twenty readings of a temperature in degrees Celsius, from memory; the mean and the
# deviation printed in 4.4.3 come out of them, which is why we trust them.
TWENTY = np.array(
    [96.90, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07]
    + [100.33, 100.42, 100.68, 100.95, 101.11, 101.20, 101.57, 101.84, 102.36, 102.72]
)

# JCGM 100:2008, H.3: readings of a thermometer and its corrections; opened in GTC's documentation (GUM_H3).
THERMOMETER = np.array(
    [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511]
)
CORRECTION = -np.array([171, 169, 166, 159, 164, 165, 156, 157, 159, 161, 160]) / 1000


def test_mean_and_deviation_of_twenty_readings() -> None:
    # JCGM 100:2008, 4.4.3: mean 100.14 (100.145 rounded down), s of the mean 0.333, from memory.
    level, _, _ = scatter.line_through(np.arange(20.0), TWENTY)
    assert level == pytest.approx(100.14, abs=0.006)
    white = np.random.default_rng(1).permutation(TWENTY) - TWENTY.mean()
    stated = scatter.error_of_mean(white) / np.sqrt(scatter.correlation_samples(white))
    # Ours takes a slope out as well, so it has one degree of freedom less: sqrt(19/18) more.
    assert stated * np.sqrt(18 / 19) == pytest.approx(0.333, abs=0.0005)


def test_a_rectangle_of_four_degrees_either_way() -> None:
    # JCGM 100:2008, 4.4.5: 96 to 104 degrees, all equally likely: u = 4 / sqrt 3 = 2.3, from memory.
    half_width = 4.0
    assert half_width * RECTANGLE == pytest.approx(2.3, abs=0.05)
    assert Gauge(accuracy_of_reading=4.0).gain == pytest.approx(2.3, abs=0.05)


def test_the_step_of_a_display() -> None:
    # JCGM 100:2008, F.2.2.1: u = 0.29 of a step, from memory.
    assert pytest.approx(0.29, abs=0.002) == ROUNDING


def test_end_gauge_budget() -> None:
    # JCGM 100:2008, H.1, table H.1: contributions 25, 9.7, 2.9 and 16.6 nm give u = 32 nm (+-0.5); rows from
    # memory, sum opened in GTC's documentation (GUM_H1).
    rows = [Contribution("length", f"row {n}", "B", u) for n, u in enumerate((25.0, 9.7, 2.9, 16.6))]
    assert combined(rows) == pytest.approx(32.0, abs=0.5)


def test_thermometer_line() -> None:
    # JCGM 100:2008, H.3: intercept at 20 degrees -0.1712, slope 0.00218, u of the slope 0.00067 where the
    # readings are independent. Opened: GTC docs, GUM_H3.
    level, slope, rest = scatter.line_through(THERMOMETER, CORRECTION)
    assert level - slope * (THERMOMETER.mean() - 20.0) == pytest.approx(-0.1712, abs=5e-5)
    assert slope == pytest.approx(0.00218, abs=5e-6)
    together = np.sqrt(scatter.correlation_samples(rest))
    assert scatter.error_of_slope(THERMOMETER, rest) / together == pytest.approx(0.00067, abs=5e-6)


def test_a_product_adds_relative_parts_in_squares() -> None:
    # JCGM 100:2008, 5.1.6: for y = x1 x2 the relative variances add (from memory).
    torque = pull_torque(Measured(25.5, 0.51, "force"), Measured(0.0235, 0.000235, "length"))
    assert torque.uncertainty / torque.value == pytest.approx(np.hypot(0.02, 0.01))


@pytest.mark.parametrize(("memory", "together"), [(0.0, 1.0), (0.5, 3.0), (0.8, 9.0), (0.9, 19.0)])
def test_samples_that_remember_the_last_one(memory: float, together: float) -> None:
    # A first-order autoregressive record counts n (1 - phi) / (1 + phi) independent samples: any text on time
    # series, for example Priestley, Spectral Analysis and Time Series, 5.3 (from memory). One record of 20000
    # samples knows that to about a tenth.
    rng = np.random.default_rng(5)
    shocks = rng.normal(size=20_000)
    record = np.zeros(20_000)
    for i in range(1, 20_000):
        record[i] = memory * record[i - 1] + shocks[i]
    assert scatter.correlation_samples(record) == pytest.approx(together, rel=0.15, abs=0.2)


def test_spans_of_known_shapes() -> None:
    # Normal: 2 x 1.645 deviations between the 5th and the 95th percentile, any table of the normal law. Sine:
    # arithmetic on the arcsine law, 2 sin(0.45 pi) = 1.9754 amplitudes.
    normal = stats.norm.ppf((np.arange(100_000) + 0.5) / 100_000)
    assert scatter.span(normal) == pytest.approx(2 * 1.645, abs=0.001)
    sine = np.sin(np.linspace(0, 20 * np.pi, 100_001))
    assert scatter.span(sine) == pytest.approx(1.9754, abs=0.0005)


@pytest.mark.parametrize(
    ("freedom", "t"), [(4, 2.87), (6, 2.52), (8, 2.37), (10, 2.28), (20, 2.13), (50, 2.05)]
)
def test_coverage_with_few_degrees_of_freedom(freedom: int, t: float) -> None:
    # JCGM 100:2008, table G.2, column 95.45 %, from memory; scipy.stats gives the same to its last digit.
    assert stats.t.ppf(0.97725, freedom) == pytest.approx(t, abs=0.006)
    assert COVERAGE_FACTOR * np.sqrt(coast_fit._few(freedom)) == pytest.approx(t, rel=0.01)


def test_k_of_two_covers_about_95_per_cent() -> None:
    # JCGM 100:2008, 6.3.3 and G.6.6: k = 2 for about 95 %, from memory.
    assert 2 * stats.norm.cdf(COVERAGE_FACTOR) - 1 == pytest.approx(0.95, abs=0.005)
