"""The engine behind every prediction: same seed, same answer; readings pull draws towards themselves."""

import numpy as np
import pytest

from spoolwright.judgement import monte_carlo as mc


def test_the_same_seed_gives_the_same_answer() -> None:
    inputs = {"a": mc.Rectangular(0.0, 1.0), "b": mc.Triangular(2.0, 3.0)}
    first = mc.propagate(lambda a, b: a * b, inputs, samples=500, seed=7)
    again = mc.propagate(lambda a, b: a * b, inputs, samples=500, seed=7)
    other = mc.propagate(lambda a, b: a * b, inputs, samples=500, seed=8)
    assert np.array_equal(first.sample, again.sample)
    assert not np.array_equal(first.sample, other.sample)


def test_a_model_that_does_not_vary_has_no_spread() -> None:
    fixed = mc.propagate(lambda a: 3.0, {"a": mc.Normal(0.0, 1.0)}, samples=200)
    assert fixed.mean == 3.0
    assert fixed.symmetric() == (3.0, 3.0)


def test_a_triangle_stays_between_its_ends_and_is_narrower_than_a_rectangle() -> None:
    drawn = mc.draw({"t": mc.Triangular(1.0, 3.0), "r": mc.Rectangular(1.0, 3.0)}, samples=20000, seed=1)
    assert drawn["t"].min() >= 1.0
    assert drawn["t"].max() <= 3.0
    assert drawn["t"].std() == pytest.approx(2 / 24**0.5, rel=0.02)
    assert drawn["r"].std() == pytest.approx(2 / 12**0.5, rel=0.02)


def test_the_shortest_interval_is_not_longer_than_the_symmetric_one() -> None:
    skewed = mc.propagate(lambda a: a**2, {"a": mc.Normal(0.0, 1.0)}, samples=20000)
    low, high = skewed.symmetric(0.95)
    short_low, short_high = skewed.shortest(0.95)
    assert short_high - short_low < high - low


def test_a_reading_pulls_the_draws_towards_itself() -> None:
    prior = mc.draw({"x": mc.Normal(30.0, 4.0)}, samples=50000, seed=3)["x"]
    chosen = prior[mc.resample(mc.weights_for(prior, 34.0, 1.0), 20000, seed=1)]
    assert 33.0 < chosen.mean() < 34.0
    assert chosen.std() < 1.1


def test_readings_far_from_the_draws_leave_few_that_count() -> None:
    prior = mc.draw({"x": mc.Normal(0.0, 1.0)}, samples=5000, seed=3)["x"]
    assert mc.effective(mc.weights_for(prior, 0.0, 1.0)) > 3000
    assert mc.effective(mc.weights_for(prior, 6.0, 0.1)) < 5


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda: mc.draw({}, samples=10, seed=1), "samples"),
        (lambda: mc.weights_for(np.zeros(3), 1.0, 0.0), "deviation"),
        (lambda: mc.resample(np.zeros(3), 0, 1), "samples"),
    ],
)
def test_what_cannot_be_is_refused_by_name(call, named: str) -> None:
    with pytest.raises(ValueError, match=named):
        call()
