"""The shop is open Monday to Friday, half past eight to half past four."""

from __future__ import annotations

from datetime import date

import pytest

from spoolwright.demo.shop_hours import at, onwards, open_day, working_days

FRIDAY, SATURDAY, MONDAY = date(2026, 6, 5), date(2026, 6, 6), date(2026, 6, 8)


def test_a_moment_is_said_as_the_diary_says_it() -> None:
    assert at(FRIDAY, "09:12").strftime("%a %H:%M") == "Fri 09:12"


def test_a_weekend_gives_way_to_monday_or_back_to_friday() -> None:
    assert open_day(SATURDAY) == MONDAY
    assert open_day(SATURDAY, back=True) == FRIDAY
    assert open_day(FRIDAY) == FRIDAY


@pytest.mark.parametrize(
    ("day", "count", "then"),
    [(FRIDAY, 1, MONDAY), (MONDAY, -1, FRIDAY), (SATURDAY, 0, MONDAY), (FRIDAY, 5, date(2026, 6, 12))],
)
def test_working_days_leave_the_weekends_out(day: date, count: int, then: date) -> None:
    assert working_days(day, count) == then


@pytest.mark.parametrize(
    ("clock", "minutes", "then"),
    [
        ("09:00", 30, at(FRIDAY, "09:30")),
        ("16:00", 60, at(MONDAY, "09:00")),
        ("07:00", 10, at(FRIDAY, "08:40")),
        ("20:00", 10, at(MONDAY, "08:40")),
    ],
)
def test_what_does_not_fit_goes_on_the_next_morning(clock: str, minutes: int, then: object) -> None:
    assert onwards(at(FRIDAY, clock), minutes) == then


def test_many_minutes_run_over_many_days() -> None:
    assert onwards(at(MONDAY, "08:30"), 8 * 60 * 5 + 1) == at(date(2026, 6, 15), "08:31")
