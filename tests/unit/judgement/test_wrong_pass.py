"""A reading and what was expected before it, joined; without an expectation the reading stands alone."""

import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.proof import Promise, chance_outside, decide, wrong_pass_said
from spoolwright.judgement.wrong_pass import Expected, joined

ATMOST = Promise(None, 1.15, "ratio")
READ = Measured(1.11, 0.02, "ratio")


def test_the_joined_value_lies_between_and_is_surer_than_either() -> None:
    told = joined(READ, Expected(1.05, 0.03))
    assert 1.05 < told.value < 1.11
    assert told.uncertainty < 0.02


@pytest.mark.parametrize("expected", [None, Expected(1.05, 0.0)])
def test_without_a_spread_nothing_was_expected(expected: Expected | None) -> None:
    assert joined(READ, expected) is READ


def test_an_expectation_on_the_good_side_lowers_the_risk_and_on_the_bad_side_raises_it() -> None:
    alone = chance_outside(ATMOST, READ)
    assert chance_outside(ATMOST, READ, Expected(1.07, 0.03)) < alone
    assert chance_outside(ATMOST, READ, Expected(1.25, 0.03)) > alone


def test_a_wide_expectation_changes_nothing() -> None:
    assert chance_outside(ATMOST, READ, Expected(0.0, 1e6)) == pytest.approx(chance_outside(ATMOST, READ))


def test_it_moves_the_risk_and_never_the_decision() -> None:
    assert decide(ATMOST, READ, expected=Expected(1.4, 0.001)).kind == decide(ATMOST, READ).kind == "shown"


def test_both_chances_are_said_where_they_differ() -> None:
    assert wrong_pass_said(ATMOST, READ, Expected(1.09, 0.03)) == "0.3 % (2.3 % by the reading alone)"
    assert wrong_pass_said(ATMOST, READ) == "2.3 %"


def test_the_rule_says_what_the_chance_is() -> None:
    assert "true value lies outside the promise" in decide(ATMOST, READ).rule
