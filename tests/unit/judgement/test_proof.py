"""Shown, not shown, failed: by the guard band, with the rule beside it."""

import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.proof import Promise, chance_outside, chance_said, decide

ATMOST = Promise(None, 1.15, "ratio")


@pytest.mark.parametrize(
    ("value", "kind"),
    [(1.07, "shown"), (1.11, "shown"), (1.13, "not shown"), (1.17, "not shown"), (1.19, "failed")],
)
def test_the_guard_band_decides(value: float, kind: str) -> None:
    assert decide(ATMOST, Measured(value, 0.02, "ratio")).kind == kind


def test_a_promise_with_two_ends_needs_both() -> None:
    promised = Promise(70.0, 80.0, "force")
    assert decide(promised, Measured(75.0, 1.0, "force")).kind == "shown"
    assert decide(promised, Measured(90.0, 1.0, "force")).kind == "failed"
    assert decide(promised, Measured(60.0, 1.0, "force")).kind == "failed"


def test_a_promise_narrower_than_the_reading_says_so() -> None:
    told = decide(Promise(74.0, 76.0, "force"), Measured(75.0, 2.0, "force"))
    assert told.kind == "not shown"
    assert "narrower" in told.words


def test_the_rule_is_printed_and_the_chance_of_a_wrong_pass_with_it() -> None:
    told = decide(ATMOST, Measured(1.11, 0.02, "ratio"))
    assert "Guard band of 2 standard" in told.rule
    assert told.chance_of_wrong_pass == pytest.approx(0.0228, abs=1e-4)
    assert decide(ATMOST, Measured(1.13, 0.02, "ratio")).chance_of_wrong_pass is None


def test_simple_acceptance_says_what_it_risks() -> None:
    told = decide(ATMOST, Measured(1.15, 0.02, "ratio"), guard_factor=0.0)
    assert told.kind == "shown"
    assert told.chance_of_wrong_pass == pytest.approx(0.5)
    assert "half of the time" in told.rule


def test_a_reading_without_uncertainty_is_in_or_out() -> None:
    assert chance_outside(ATMOST, Measured(1.0, 0.0, "ratio")) == 0.0
    assert chance_outside(ATMOST, Measured(1.2, 0.0, "ratio")) == 1.0


@pytest.mark.parametrize(
    ("promised", "measured", "named"),
    [
        (Promise(None, None, "ratio"), Measured(1.0, 0.1, "ratio"), "neither"),
        (Promise(2.0, 1.0, "ratio"), Measured(1.0, 0.1, "ratio"), "lowest"),
        (Promise(2.0, None, "force"), Measured(1.0, 0.1, "ratio"), "a force was promised"),
    ],
)
def test_a_promise_that_is_none_is_refused(promised: Promise, measured: Measured, named: str) -> None:
    with pytest.raises(ValueError, match=named):
        decide(promised, measured)


def test_why_is_the_last_sentence_alone() -> None:
    shown, failed = (decide(ATMOST, Measured(value, 0.02, "ratio")) for value in (1.07, 1.19))
    assert shown.why == "Chance that this is wrong: less than 0.1 %."
    assert shown.words.endswith(f": shown. {shown.why}")
    assert failed.why == "The reading lies outside by more than its uncertainty."
    assert chance_said(0.5) == "50.0 %"
