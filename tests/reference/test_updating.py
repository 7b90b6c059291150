"""Updating by Bayes' rule against textbook examples and scipy.stats: normal, discrete, beta, the book."""

import numpy as np
import pytest
from scipy import integrate, stats

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.book_fit import APART, SCATTER_WORTH, SCATTERS, Seen, add_up, design, posterior
from spoolwright.judgement.book_kinds import Kind
from spoolwright.judgement.book_rates import beta_after, beta_interval
from spoolwright.judgement.monte_carlo import weights_for
from spoolwright.judgement.proof import Promise, chance_outside
from spoolwright.judgement.wrong_pass import Expected, joined


def kind(name: str, spread: float) -> Kind:
    return Kind(name, "friction", name, 1.0, spread, 0.5, 2.0)


def test_a_normal_mean_with_a_normal_prior() -> None:
    # Bolstad, Introduction to Bayesian Statistics, normal mean: prior N(30, 4^2), 12 readings of mean 32 cm
    # and sigma 2 give 31.96 cm (+-0.005). From memory.
    told = joined(Measured(32.0, 2.0 / np.sqrt(12), "ratio"), Expected(30.0, 4.0))
    assert told.value == pytest.approx(31.96, abs=0.005)


@pytest.mark.parametrize("node", [0, 5, 10])
def test_the_book_given_its_scatter_is_that_conjugate_update(node: int) -> None:
    # The same example: twelve proofs of 32 beside a sheet's 30; the node's factor makes their variance 2^2.
    variance = (2.0 / SCATTERS[node]) ** 2
    seen = [Seen((("k", 1.0),), 2.0, float(variance))] * 12
    held = posterior([kind("k", 4.0)], add_up([kind("k", 4.0)], seen))
    assert 30.0 + held.means[node, 0] == pytest.approx(31.96, abs=0.005)


def test_a_discrete_prior() -> None:
    # Solved exercise, opened (a set of mathematical questions): data 7 2 6 12 10 9, sigma 6, mu one of 8 to
    # 11, all alike: P(mu = 8) 0.3434827 (+-1e-6). The deviation published there, 7.298, divides unweighted
    # squares; right is 1.0441 (+-1e-4).
    means = np.array([8.0, 9.0, 10.0, 11.0])
    logs = sum(weights_for(means, one, 6.0) for one in (7.0, 2.0, 6.0, 12.0, 10.0, 9.0))
    chances = np.exp(logs) / np.exp(logs).sum()
    assert chances[0] == pytest.approx(0.3434827, abs=1e-6)
    mean = float(chances @ means)
    assert np.sqrt(chances @ (means - mean) ** 2) == pytest.approx(1.0441, abs=1e-4)


def test_girls_among_births_with_placenta_praevia() -> None:
    # Gelman and others, Bayesian Data Analysis, 3rd edition, 2.4: 437 girls of 980, uniform prior: mean
    # 0.446, 95 % interval 0.415 to 0.477 (+-0.0005). From memory.
    after = beta_after((1.0, 1.0), 437, 980)
    assert after[0] / sum(after) == pytest.approx(0.446, abs=0.0005)
    assert beta_interval(after, 0.95) == pytest.approx((0.415, 0.477), abs=0.0005)


@pytest.mark.parametrize(("found", "tried"), [(0, 5), (3, 58), (14, 58)])
def test_a_beta_against_scipy(found: int, tried: int) -> None:
    # Source: scipy.stats.beta, another library's quantiles.
    after = beta_after((0.4, 9.6), found, tried)
    reference = stats.beta(0.4 + found, 9.6 + tried - found)
    assert beta_interval(after) == pytest.approx(reference.interval(0.9), rel=1e-6, abs=1e-12)


KINDS = (kind("a", 0.09), kind("b", 0.12), kind("c", 0.2))
PROOFS = [
    Seen((("a", 1.0),), 0.10, 0.003),
    Seen((("a", 0.4), ("b", 0.6)), -0.02, 0.004),
    Seen((("b", 1.0),), 0.05, 0.002),
    Seen((("b", 1.0),), 0.11, 0.003),
]


def test_how_well_each_node_explains_the_proofs_against_scipy() -> None:
    # scipy.stats.multivariate_normal for the proofs, scipy.stats.invgamma for the prior of the squared factor
    # (scaled inverse chi-squared; on the logarithm, hence times the square).
    shares, logs = design(KINDS, PROOFS), np.array([one.log for one in PROOFS])
    spreads, noise = np.array([k.spread for k in KINDS]), np.diag([one.variance for one in PROOFS])
    half = SCATTER_WORTH / 2
    found = []
    for apart in APART:
        prior = np.outer(spreads, spreads) * ((1 - apart) + apart * np.eye(3))
        for factor in SCATTERS:
            covariance = shares @ prior @ shares.T + factor**2 * noise
            fit = stats.multivariate_normal(np.zeros(4), covariance).logpdf(logs)
            before = stats.invgamma(half, scale=half).logpdf(factor**2) + np.log(factor**2)
            found.append(fit + before)
    weights = np.exp(np.array(found) - max(found))
    assert posterior(KINDS, add_up(KINDS, PROOFS)).weights == pytest.approx(weights / weights.sum(), rel=1e-9)


def test_an_unknown_scatter_makes_a_students_t() -> None:
    # Gelman and others, Bayesian Data Analysis, 3rd edition, 2.6: mean known, variance scaled inverse
    # chi-squared: the next one is t with 6 + n degrees of freedom. From memory; scipy.stats.t. Within 2 %:
    # the book's row of scatters is eleven long.
    seen = [Seen((("k", 1.0),), z, 0.01) for z in (0.05, -0.12, 0.2, -0.04, 0.1, -0.16, 0.07, 0.02)]
    known = [kind("k", 1e-6)]
    held = posterior(known, add_up(known, seen))
    squares = sum(one.log**2 / one.variance for one in seen)
    degrees = SCATTER_WORTH + len(seen)
    scale = np.sqrt(0.01 * (SCATTER_WORTH + squares) / degrees)
    _, deviation = held.of(np.ones(1), 0.01)
    assert deviation == pytest.approx(stats.t(degrees, scale=scale).std(), rel=0.02)


@pytest.mark.parametrize(
    ("value", "u", "middle", "spread"), [(1.11, 0.02, 1.09, 0.03), (1.13, 0.01, 1.2, 0.05)]
)
def test_the_specific_consumers_risk_by_its_definition(
    value: float, u: float, middle: float, spread: float
) -> None:
    # JCGM 106:2012, 6 and 9.3.2 (from memory): posterior proportional to prior times likelihood, its share
    # outside the tolerance; integrated by scipy.
    def weight(eta: float) -> float:
        return float(stats.norm.pdf(eta, middle, spread) * stats.norm.pdf(value, eta, u))

    outside = integrate.quad(weight, 1.15, 2.0, points=[1.16, 1.2])[0]
    whole = integrate.quad(weight, 0.5, 2.0, points=[1.0, 1.1, 1.15, 1.2])[0]
    risk = chance_outside(Promise(None, 1.15, "ratio"), Measured(value, u, "ratio"), Expected(middle, spread))
    assert risk == pytest.approx(outside / whole, rel=1e-6)


def test_with_an_even_prior_it_is_the_normal_tail() -> None:
    # Source: scipy.stats.norm; JCGM 106:2012, 7.2, without prior knowledge, from memory.
    risk = chance_outside(Promise(None, 1.15, "ratio"), Measured(1.11, 0.02, "ratio"))
    assert risk == pytest.approx(stats.norm.sf(2.0))


def test_shrinking_errs_less_than_not_shrinking() -> None:
    # Efron and Morris 1975 (from memory): shrunk estimates of several means have together a smaller squared
    # error than the means themselves. Forty invented families of six kinds with three proofs each.
    generator = np.random.default_rng(4)
    kinds = [kind(f"k{n}", 0.1) for n in range(6)]
    shrunk = plain = 0.0
    for _ in range(40):
        truth = 0.1 * (generator.normal() + generator.normal(size=6)) / np.sqrt(2)
        seen = [
            Seen(((f"k{n}", 1.0),), float(generator.normal(truth[n], 0.08)), 0.0064) for n in (*range(6),) * 3
        ]
        held = posterior(kinds, add_up(kinds, seen))
        means = np.array([np.mean([one.log for one in seen if one.shares[0][0] == k.key]) for k in kinds])
        shrunk += float(np.sum((np.array([held.believed(k.key)[0] for k in kinds]) - truth) ** 2))
        plain += float(np.sum((means - truth) ** 2))
    assert shrunk < 0.9 * plain
