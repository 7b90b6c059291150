"""Several results of one thing: they agree, or it is said which does not."""

import numpy as np
import pytest
from scipy import stats

from spoolwright.bench import consistency
from spoolwright.bench.uncertainty import Measured


def m(value: float, spread: float) -> Measured:
    return Measured(value, spread, "inertia")


def test_the_surer_one_weighs_more() -> None:
    found = consistency.combine([m(10, 0.1), m(11, 1.0)])
    assert found.mean.value == pytest.approx(10 + 1 / 101)
    assert found.agree


def test_the_chance_is_that_of_chi_squared() -> None:
    """Source: scipy.stats.chi2."""
    found = consistency.combine([m(10, 0.3), m(10.9, 0.4), m(9.7, 0.2)])
    assert found.chance == pytest.approx(float(stats.chi2.sf(found.chi_squared, 2)))
    assert found.birge == pytest.approx(np.sqrt(found.chi_squared / 2))


def test_one_that_lies_apart_is_named_and_the_mean_widened() -> None:
    results = [m(10, 0.1), m(10.1, 0.1), m(9.95, 0.1), m(12, 0.2)]
    found = consistency.combine(results)
    assert not found.agree
    assert found.apart == 3
    assert found.apart_by > 1
    assert found.mean.uncertainty == pytest.approx(found.birge / np.sqrt(3 / 0.01 + 1 / 0.04))


def test_chance_disagrees_once_in_twenty() -> None:
    """Seeded: of 400 sets drawn from one truth 5 % are called apart, within three deviations of a count."""
    drawn = np.random.default_rng(3).normal(10.0, [0.1, 0.2, 0.3], size=(400, 3))
    apart = sum(
        not consistency.combine([m(v, u) for v, u in zip(row, (0.1, 0.2, 0.3), strict=True)]).agree
        for row in drawn
    )
    assert abs(apart - 20) <= 3 * np.sqrt(400 * 0.05 * 0.95)


def test_normalised_error_at_its_edges() -> None:
    assert consistency.normalised_error(m(1, 0), m(1, 0)) == 0.0
    assert consistency.normalised_error(m(1, 0), m(2, 0)) == float("inf")


@pytest.mark.parametrize("results", [[m(1, 0.1)], [m(1, 0.1), m(1, 0.0)]])
def test_too_few_or_exact_results_are_refused(results: list[Measured]) -> None:
    with pytest.raises(ValueError, match="result"):
        consistency.combine(results)
