"""A part held against its limit: three answers, and how often each of the two firm ones is wrong."""

from __future__ import annotations

import math

import numpy as np
import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.guard_band import Call, Limits, call


def at(value: float, u: float = 0.01) -> Measured:
    return Measured(value, u, "length")


@pytest.mark.parametrize(
    ("value", "verdict"),
    [(1.1, "accept"), (1.017, "accept"), (1.016, "too close to call"), (1.0, "too close to call"),
     (0.984, "too close to call"), (0.983, "reject"), (0.5, "reject")],
)  # fmt: skip
def test_the_guard_band_is_1_645_uncertainties_either_side(value: float, verdict: str) -> None:
    assert call(at(value), Limits(low=1.0)).verdict == verdict


def test_the_chance_of_a_wrong_call_is_said_with_it() -> None:
    accepted = call(at(1.02), Limits(low=1.0))
    assert accepted.chance_wrong == pytest.approx(0.02275, abs=1e-5)
    rejected = call(at(0.98), Limits(low=1.0))
    assert rejected.chance_wrong == pytest.approx(0.02275, abs=1e-5)
    assert rejected.chance_good == pytest.approx(0.02275, abs=1e-5)
    assert call(at(1.0), Limits(low=1.0)).chance_wrong is None
    assert accepted.guard == pytest.approx(0.01645, abs=1e-5)


def test_between_two_limits_both_tails_count() -> None:
    """A tolerance narrower than the uncertainty can be rejected and never accepted."""
    narrow = Limits(0.99, 1.01)
    assert call(at(1.0), narrow).verdict == "too close to call"
    assert call(at(1.0), narrow).chance_good == pytest.approx(0.6827, abs=1e-4)
    assert call(at(1.1), narrow).verdict == "reject"


def test_a_limit_that_is_known_only_from_here_to_there() -> None:
    worm = Limits(high=0.10, reject_high=0.20)
    verdicts = [call(at(value), worm).verdict for value in (0.05, 0.12, 0.18, 0.25)]
    assert verdicts == ["accept", "too close to call", "too close to call", "reject"]


def test_without_uncertainty_the_limit_itself_is_still_good() -> None:
    assert call(at(1.0, 0.0), Limits(low=1.0)) == Call("accept", 1.0, 0.0, 0.0)
    assert call(at(0.999, 0.0), Limits(low=1.0)).verdict == "reject"


@pytest.mark.parametrize("limits", [Limits(2.0, 1.0), Limits(1.0, 2.0, reject_low=1.5), Limits(1.0, 1.0)])
def test_limits_out_of_order_are_refused(limits: Limits) -> None:
    with pytest.raises(ValueError, match="order"):
        call(at(1.0), limits)


def test_firm_calls_are_seldom_wrong() -> None:
    """Sizes that lie anywhere about the limit, measured with known spread: at most 5 % of what is called."""
    rng = np.random.default_rng(3)
    truth = rng.uniform(0.9, 1.1, 20_000)
    read = truth + rng.normal(0, 0.01, truth.size)
    for verdict, wrong in (("accept", truth < 1.0), ("reject", truth >= 1.0)):
        edge = 1.0 + math.copysign(call(at(1.0), Limits(low=1.0)).guard, 1 if verdict == "accept" else -1)
        called = read >= edge if verdict == "accept" else read <= edge
        assert wrong[called].mean() < 0.05
