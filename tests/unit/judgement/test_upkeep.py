"""When a reel should come back, by its water."""

from datetime import date

import pytest

from spoolwright.judgement.upkeep import MONTHS_BETWEEN, next_service

# Months between services by water: judgement prior of the trade notes (from few trips to many).
PRIOR = {"fresh": (12, 36), "brackish": (9, 12), "salt": (4, 12)}


def test_the_prior_is_the_trades() -> None:
    assert {water: MONTHS_BETWEEN[water] for water in PRIOR} == PRIOR


@pytest.mark.parametrize("water", ["fresh", "brackish", "salt", ""])
def test_more_use_is_never_later_than_less(water: str) -> None:
    due = next_service(date(2026, 1, 15), water)
    assert date(2026, 1, 15) < due.earliest <= due.latest
    assert due.mark in due.words


def test_salt_comes_back_before_fresh() -> None:
    salt, fresh = (next_service(date(2026, 5, 1), water) for water in ("salt", "fresh"))
    assert salt.earliest < fresh.earliest
    assert salt.latest < fresh.latest


def test_a_short_month_ends_sooner() -> None:
    assert next_service(date(2026, 10, 31), "salt").earliest == date(2027, 2, 28)


def test_it_is_over_on_the_day_after() -> None:
    due = next_service(date(2026, 3, 1), "brackish")
    assert not due.is_over(date(2027, 3, 1))
    assert due.is_over(date(2027, 3, 2))


def test_another_water_is_refused_with_what_is_accepted() -> None:
    with pytest.raises(ValueError, match="'brackish'"):
        next_service(date(2026, 3, 1), "beer")
