"""True minutes and true profit of a job."""

from dataclasses import replace
from fractions import Fraction

import pytest

from spoolwright.judgement.earned import earned, hourly_cost, job_earned, needed_per_hour, working_hours
from spoolwright.judgement.price import Charge, price
from spoolwright.judgement.shop_rates import starting_rates

RATES = starting_rates()


def test_post_and_the_cost_of_parts_do_not_feed_the_hands() -> None:
    charges = [
        Charge("tier", "Common tune", 52000),
        Charge("part", "Pawl", 9500, cost_minor=4560),
        Charge("post", "Post", 12900),
    ]
    assert earned(price(charges, RATES), 68, 45800, RATES).left_minor == 41600 + 7600 - 4560


def test_a_job_that_pays_says_so() -> None:
    told = earned(price([Charge("tier", "Full tune", 115000)], RATES), 100, 45800, RATES)
    assert told.short_minor < 0
    assert "to the good" in told.words


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda: earned(price([], RATES), 0, 1, RATES), "minutes"),
        (lambda: hourly_cost(1, Fraction(0)), "hours"),
        (lambda: hourly_cost(1, Fraction(1), Fraction(2)), "billable"),
        (lambda: working_hours([400], Fraction(7)), "days_off"),
    ],
)
def test_what_cannot_be_is_refused_by_name(call, named: str) -> None:
    with pytest.raises(ValueError, match=named):
        call()


def test_a_posted_tune_takes_83_minutes_in_all() -> None:
    """Trade handbook, 7.2 (judgement prior): 83 minutes, of which 58 at the bench; office and post 25."""
    tune = price([Charge("tier", "Common tune", 52000)], RATES)
    told = job_earned(tune, 58, RATES, posted=True, extra=False)
    assert (told.minutes, told.left_minor) == (83, 41600)
    assert job_earned(tune, 58, RATES, posted=False, extra=False).minutes < told.minutes
    assert job_earned(tune, 58, RATES, posted=False, extra=True).minutes == 58 + 5


def test_an_hour_has_to_leave_what_it_is_asked_for_without_its_tax() -> None:
    assert needed_per_hour(RATES) == 48000
    assert needed_per_hour(replace(RATES, prices_include_tax=False)) == 60000
