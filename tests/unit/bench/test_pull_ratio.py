"""One pull over another of the same gauge: does the interval hold what it says?"""

import numpy as np
import pytest

from spoolwright.bench import pull_reading
from spoolwright.bench.gauge import Gauge
from spoolwright.bench.propagation import Known, propagate
from spoolwright.bench.pull_ratio import interval, ratio_interval
from spoolwright.bench.trace import Found, PullTrace
from spoolwright.bench.uncertainty import Measured


def force(value: float, uncertainty: float) -> Measured:
    return Measured(value, uncertainty, "force")


def test_a_scale_that_both_share_cancels() -> None:
    assert interval(force(12, 0.24), force(10, 0.2), 1.0) == pytest.approx((1.2, 1.2))


def test_it_is_that_of_the_law_of_propagation_where_the_lower_value_is_well_known() -> None:
    both = {"top": Known("top", force(12, 0.06)), "bottom": Known("bottom", force(10, 0.05))}
    found, _ = propagate("r", "ratio", lambda x: x["top"] / x["bottom"], both, {("top", "bottom"): 0.4})
    low, high = interval(force(12, 0.06), force(10, 0.05), 0.4)
    assert low == pytest.approx(found.value - found.expanded, abs=3e-4)
    assert high == pytest.approx(found.value + found.expanded, abs=3e-4)


@pytest.mark.parametrize("correlation", [0.0, 0.6, 0.9])
def test_nineteen_of_twenty_intervals_hold_the_truth_even_with_a_poor_scale(correlation: float) -> None:
    rng = np.random.default_rng(7)
    a, b, ua, ub = 13.0, 10.0, 1.0, 1.2
    cov = [[ua**2, correlation * ua * ub], [correlation * ua * ub, ub**2]]
    drawn = rng.multivariate_normal([a, b], cov, 3000)
    ends = [interval(force(x, ua), force(y, ub), correlation) for x, y in drawn]
    held = np.mean([low <= a / b <= high for low, high in ends])
    assert held == pytest.approx(0.9545, abs=0.012)


def test_a_lower_value_that_may_be_nothing_leaves_everything_open() -> None:
    assert interval(force(12, 1), force(10, 6)) == (-np.inf, np.inf)


@pytest.mark.parametrize(
    ("top", "bottom", "correlation", "words"),
    [
        (force(1, 0), force(0, 0), 0.0, "above zero"),
        (force(1, 0), Measured(1, 0, "length"), 0.0, "one kind"),
        (force(1, 0), force(1, 0), 1.5, "between"),
    ],
)
def test_nonsense_is_refused(top: Measured, bottom: Measured, correlation: float, words: str) -> None:
    with pytest.raises(ValueError, match=words):
        interval(top, bottom, correlation)
    with pytest.raises(ValueError, match="factor"):
        interval(force(1, 0), force(1, 0), factor=0)


@pytest.mark.parametrize("gauge", [Gauge(), Gauge(accuracy_of_reading=0.05), Gauge(0.01, 0.02, 0.01, 100.0)])
def test_the_interval_of_one_pull_agrees_with_the_ratio_of_its_reading(gauge: Gauge) -> None:
    time = np.arange(0.0, 6.0, 0.01)
    force_ = np.clip(60 * (time - 0.5), 0, 30) * (time < 5.2) + np.random.default_rng(1).normal(0, 0.1, 600)
    trace = PullTrace(time, force_, Found("utf-8", "comma", "point", (), "", "", "s", "N", 100.0, 600))
    read = pull_reading.analyse(trace, gauge)
    low, high = ratio_interval(read)
    assert low < read.start_up_ratio.value < high
    assert (high - low) / 2 == pytest.approx(read.start_up_ratio.expanded, rel=0.1)
