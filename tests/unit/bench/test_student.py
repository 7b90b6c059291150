"""Few readings make a wide interval."""

import numpy as np
import pytest

from spoolwright.bench.student import of_mean, widening


def test_a_mean_of_four_holds_the_truth_as_often_as_it_says() -> None:
    rng = np.random.default_rng(3)
    drawn = rng.normal(10.0, 1.0, (6000, 4))
    half = 2 * widening(3) * drawn.std(axis=1, ddof=1) / 2
    assert np.mean(np.abs(drawn.mean(axis=1) - 10.0) <= half) == pytest.approx(0.9545, abs=0.01)


def test_many_readings_need_no_widening_and_none_cannot_be_widened() -> None:
    assert widening(float("inf")) == pytest.approx(1.0, abs=1e-4)
    assert widening(2) > widening(3) > widening(10) > 1
    with pytest.raises(ValueError, match="freedom"):
        widening(0)


@pytest.mark.parametrize(("tries", "factor"), [(2, 13.97), (3, 4.53), (4, 3.31)])
def test_a_mean_of_few_takes_students_factor(tries: int, factor: float) -> None:
    # JCGM 100:2008, table G.2, column 95.45 %, 1, 2 and 3 degrees of freedom, to two decimals; from memory.
    seen = list(range(tries))
    own = np.std(seen, ddof=1) / np.sqrt(tries)
    assert 2 * of_mean(seen) / own == pytest.approx(factor, abs=0.005)


def test_readings_that_agree_leave_nothing_open_and_one_alone_has_no_scatter() -> None:
    assert of_mean([6.9, 6.9, 6.9]) == 0
    with pytest.raises(ValueError, match="two readings or more; came 1"):
        of_mean([6.9])


def welch(scatter: float, other: float, freedom: int) -> float:
    """Half an interval by effective degrees of freedom: JCGM 100:2008, equation (G.2b), from memory."""
    whole = float(np.hypot(scatter, other))
    return 2 * whole * widening(freedom * (whole / scatter) ** 4)


@pytest.mark.parametrize(("tries", "least_of_welch"), [(2, 0.88), (3, 0.93)])
def test_each_part_widened_covers_what_it_says_and_their_sum_widened_does_not(
    tries: int, least_of_welch: float
) -> None:
    """Truth 0; a part of type B of 0.3 of what the tries' mean scatters by, as normal as they."""
    rng = np.random.default_rng(11)
    trials, other = 6000, 0.3 / np.sqrt(tries)
    seen = rng.normal(0.0, 1.0, (trials, tries)) + rng.normal(0.0, other, (trials, 1))
    own = seen.std(axis=1, ddof=1) / np.sqrt(tries)
    off = np.abs(seen.mean(axis=1))
    covered = np.mean(off <= 2 * np.hypot(widening(tries - 1) * own, other))
    assert 0.95 < covered < 0.98
    by_sum = [welch(u, other, tries - 1) for u in own[:3000]]
    assert np.mean(off[:3000] <= by_sum) == pytest.approx(least_of_welch, abs=0.015)


@pytest.mark.parametrize(("tries", "widened", "by_step"), [(2, 0.932, 0.893), (3, 0.981, 0.960)])
def test_tries_a_step_apart_are_widened_because_the_step_alone_covers_less(
    tries: int, widened: float, by_step: float
) -> None:
    """Frozen: true scatters from none to one step of the display, the truth anywhere between two steps."""
    rng = np.random.default_rng(3)
    scatter = np.repeat(np.linspace(0.0, 1.0, 21), 1000)
    truth = rng.uniform(0.0, 1.0, len(scatter))
    shown = np.round(truth[:, None] + scatter[:, None] * rng.normal(0.0, 1.0, (len(scatter), tries)))
    off, step = np.abs(shown.mean(axis=1) - truth), 1 / np.sqrt(12)
    own = widening(tries - 1) * shown.std(axis=1, ddof=1) / np.sqrt(tries)
    instead = np.where(np.ptp(shown, axis=1) == 1, step, own)
    assert np.mean(off <= 2 * np.hypot(own, step)) == pytest.approx(widened, abs=0.006)
    assert np.mean(off <= 2 * np.hypot(instead, step)) == pytest.approx(by_step, abs=0.006)
