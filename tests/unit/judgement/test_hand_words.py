"""The verdict in a sentence, always with how likely it is to be wrong."""

from __future__ import annotations

import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.guard_band import Limits, call
from spoolwright.judgement.hand_words import call_said, limits_said


@pytest.mark.parametrize(
    ("limits", "said"),
    [
        (Limits(low=0.64e-3), "at least 0.64 mm is asked for"),
        (Limits(high=0.3e-3), "at most 0.3 mm is asked for"),
        (Limits(1e-5, 3e-4), "from 0.01 mm to 0.3 mm is asked for"),
        (Limits(high=1e-4, reject_high=2e-4), "good is at most 0.1 mm, rejected is what is above 0.2 mm"),
        (Limits(low=2e-4, reject_low=1e-4), "good is at least 0.2 mm, rejected is what is below 0.1 mm"),
        (
            Limits(2e-4, 3e-4, 1e-4, 4e-4),
            "good is from 0.2 mm to 0.3 mm, rejected is what is below 0.1 mm or above 0.4 mm",
        ),
    ],
)
def test_limits_as_the_bench_says_them(limits: Limits, said: str) -> None:
    assert limits_said(limits, "length") == said


def test_each_verdict_has_its_sentence() -> None:
    limit = Limits(low=0.64e-3)

    def said(value: float) -> str:
        size = Measured(value, 0.01e-3, "length")
        return call_said(call(size, limit), size, limit)

    asked = "at least 0.64 mm is asked for"
    assert said(0.70e-3) == f"Accepted: {asked}. The chance that this is wrong is less than 0.1 %."
    assert said(0.62e-3) == f"Rejected: {asked}. The chance that this is wrong is 2.3 %."
    assert said(0.64e-3).startswith(f"Too close to call: {asked}; the chance that it is good is 50 %.")
    assert "Measure again" in said(0.64e-3)
