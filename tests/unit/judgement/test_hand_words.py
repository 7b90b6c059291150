"""The verdict in a sentence, always with how likely it is to be wrong."""

from __future__ import annotations

import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.guard_band import Limits, call
from spoolwright.judgement.hand_words import call_said, limits_said


@pytest.mark.parametrize(
    ("limits", "said"),
    [
        (Limits(low=0.64e-3), "rejected below 0.64 mm"),
        (Limits(high=0.3e-3), "rejected above 0.3 mm"),
        (Limits(1e-5, 3e-4), "rejected below 0.01 mm and above 0.3 mm"),
        (Limits(high=1e-4, reject_high=2e-4), "good up to 0.1 mm, rejected above 0.2 mm"),
        (Limits(low=2e-4, reject_low=1e-4), "good from 0.2 mm, rejected below 0.1 mm"),
        (
            Limits(2e-4, 3e-4, 1e-4, 4e-4),
            "good from 0.2 mm to 0.3 mm, rejected below 0.1 mm and above 0.4 mm",
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

    assert (
        said(0.70e-3) == "Accepted: rejected below 0.64 mm. The chance that this is wrong is less than 0.1 %."
    )
    assert said(0.62e-3) == "Rejected: rejected below 0.64 mm. The chance that this is wrong is 2.3 %."
    assert said(0.64e-3).startswith(
        "Too close to call: rejected below 0.64 mm; the chance that it is good is 50 %."
    )
    assert "Measure again" in said(0.64e-3)
