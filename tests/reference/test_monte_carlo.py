"""Monte Carlo propagation against the worked examples of JCGM 101:2008.

The supplement itself was not open to us; its printed values are recalled, and each says so. Tolerances are
the sources' own rounding, widened by three standard errors of a million draws where that is more.
"""

import numpy as np
import pytest

from spoolwright.judgement.monte_carlo import Normal, Rectangular, propagate

MANY = 1_000_000
HALF = 3.0**0.5  # half-width of a rectangle of standard deviation 1


def add(a, b, c, d):
    return a + b + c + d


def half_width(result) -> float:
    low, high = result.symmetric(0.95)
    return (high - low) / 2


def test_four_normal_inputs() -> None:
    # JCGM 101:2008, 9.2.2: u(Y) = 2.00, 95 % interval [-3.92, 3.92]. From memory.
    result = propagate(add, {name: Normal(0.0, 1.0) for name in "abcd"}, samples=MANY, seed=1)
    assert result.deviation == pytest.approx(2.00, abs=0.005)
    assert half_width(result) == pytest.approx(3.92, abs=0.012)


def test_four_rectangular_inputs_are_not_normal() -> None:
    # JCGM 101:2008, 9.2.3: 95 % interval [-3.88, 3.88], where a normal answer would give 3.92. From memory.
    result = propagate(add, {name: Rectangular(-HALF, HALF) for name in "abcd"}, samples=MANY, seed=1)
    assert half_width(result) == pytest.approx(3.88, abs=0.012)


def test_one_input_that_outweighs_the_rest() -> None:
    # JCGM 101:2008, 9.2.4: u(Y) = 10.1 (10.15), 95 % interval [-17.0, 17.0]; a normal one gives 19.9. From
    # memory.
    inputs = {name: Rectangular(-HALF, HALF) for name in "abc"} | {"d": Rectangular(-10 * HALF, 10 * HALF)}
    result = propagate(add, inputs, samples=MANY, seed=1)
    assert result.deviation == pytest.approx(10.15, abs=0.03)
    assert half_width(result) == pytest.approx(17.0, abs=0.05)


def test_mass_calibration_where_a_first_order_budget_is_a_third_too_small() -> None:
    # JCGM 101:2008, 9.3: 1.234 mg, u 0.0754 mg, shortest 95 % interval [1.0834, 1.3825] mg. From memory.
    def correction(reference, small, air, weight, standard):
        return (reference + small) * (1 + (air - 1.2) * (1 / weight - 1 / standard)) - 100_000.0

    inputs = {
        "reference": Normal(100_000.000, 0.050),
        "small": Normal(1.234, 0.020),
        "air": Rectangular(1.10, 1.30),
        "weight": Rectangular(7000.0, 9000.0),
        "standard": Rectangular(7950.0, 8050.0),
    }
    result = propagate(correction, inputs, samples=MANY, seed=1)
    low, high = result.shortest(0.95)
    assert result.mean == pytest.approx(1.2341, abs=0.0005)
    assert result.deviation == pytest.approx(0.0754, abs=0.0005)
    assert low == pytest.approx(1.0834, abs=0.003)
    assert high == pytest.approx(1.3825, abs=0.003)


def test_comparison_loss_at_zero_reflection() -> None:
    # JCGM 101:2008, 9.4.2, x1 = 0: mean 50e-6, u 50e-6, shortest 95 % interval [0, 150]e-6. From memory; the
    # answer is exponential, and -50e-6 ln(0.05) = 149.8e-6 repeats it.
    inputs = {"real": Normal(0.0, 0.005), "imaginary": Normal(0.0, 0.005)}
    result = propagate(lambda real, imaginary: real**2 + imaginary**2, inputs, samples=MANY, seed=1)
    low, high = result.shortest(0.95)
    assert result.mean * 1e6 == pytest.approx(50, abs=0.5)
    assert result.deviation * 1e6 == pytest.approx(50, abs=0.5)
    assert low * 1e6 == pytest.approx(0, abs=0.5)
    assert high * 1e6 == pytest.approx(150, abs=1.5)


class Student:
    """Scaled and shifted t (JCGM 101:2008, 6.4.9): our own code does not need it, the example does."""

    def __init__(self, mean: float, scale: float, freedom: int) -> None:
        self.mean, self.scale, self.freedom = mean, scale, freedom

    def draw(self, generator, samples):
        return self.mean + self.scale * generator.standard_t(self.freedom, samples)


class Arcsine:
    """U-shaped, for a temperature that cycles (JCGM 101:2008, 6.4.6)."""

    def __init__(self, low: float, high: float) -> None:
        self.low, self.high = low, high

    def draw(self, generator, samples):
        angle = 2 * np.pi * generator.random(samples)
        return (self.low + self.high) / 2 + (self.high - self.low) / 2 * np.sin(angle)


class InexactLimits:
    """Rectangle whose ends are known only to +-d (JCGM 101:2008, 6.4.3)."""

    def __init__(self, low: float, high: float, d: float) -> None:
        self.low, self.high, self.d = low, high, d

    def draw(self, generator, samples):
        low = self.low - self.d + 2 * self.d * generator.random(samples)
        high = self.low + self.high - low
        return low + (high - low) * generator.random(samples)


def test_gauge_block_calibration() -> None:
    # JCGM 101:2008, 9.5, table 11: 838 nm, u 36 nm, shortest 99 % interval [745, 932] nm. From memory; the
    # low end confirmed in an opened excerpt.
    def deviation_from_nominal(length, mean, random, systematic, expansion, room, cycle, difference, offset):
        nominal = 50_000_000.0
        correction = length * (difference * (room + cycle) + expansion * offset)
        return length + mean + random + systematic - correction - nominal

    inputs = {
        "length": Student(50_000_623.0, 25.0, 18),
        "mean": Student(215.0, 6.0, 24),
        "random": Student(0.0, 4.0, 5),
        "systematic": Student(0.0, 7.0, 8),
        "expansion": Rectangular(9.5e-6, 13.5e-6),
        "room": Normal(-0.1, 0.2),
        "cycle": Arcsine(-0.5, 0.5),
        "difference": InexactLimits(-1.0e-6, 1.0e-6, 0.1e-6),
        "offset": InexactLimits(-0.050, 0.050, 0.025),
    }
    result = propagate(deviation_from_nominal, inputs, samples=MANY, seed=1)
    low, high = result.shortest(0.99)
    assert result.mean == pytest.approx(838, abs=0.5)
    assert result.deviation == pytest.approx(36, abs=0.5)
    assert low == pytest.approx(745, abs=1.5)
    assert high == pytest.approx(932, abs=1.5)


def test_a_reading_narrows_a_prior_as_the_normal_theory_says() -> None:
    # Bolstad, Introduction to Bayesian Statistics, normal mean: prior N(30, 4), mean 32 of 12 readings of
    # sigma 2: posterior mean 31.96 (+-0.005 printed). From memory.
    from spoolwright.judgement.monte_carlo import draw, resample, weights_for

    prior = draw({"length": Normal(30.0, 4.0)}, samples=MANY, seed=1)["length"]
    chosen = prior[resample(weights_for(prior, 32.0, 2.0 / 12**0.5), MANY, seed=1)]
    assert chosen.mean() == pytest.approx(31.96, abs=0.008)
    assert chosen.std() == pytest.approx((1 / (1 / 16 + 12 / 4)) ** 0.5, rel=0.01)


def test_weights_on_a_grid_give_the_published_posterior() -> None:
    # Solved exercise in an open mathematics corpus, opened: data 7 2 6 12 10 9, sigma 6,
    # mu in 8..11 equally likely: P(mu = 8) = 0.3434827.
    from spoolwright.judgement.monte_carlo import weights_for

    grid = np.array([8.0, 9.0, 10.0, 11.0])
    log_weights = sum(weights_for(grid, value, 6.0) for value in (7, 2, 6, 12, 10, 9))
    posterior = np.exp(log_weights) / np.exp(log_weights).sum()
    assert posterior[0] == pytest.approx(0.3434827, abs=1e-6)
