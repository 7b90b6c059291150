"""Scenario 9: left behind. Source of sums and spans: trade handbook, chapter 9 (invented)."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from typing import Any

import pytest

from spoolwright.demo.scenarios import left_behind
from spoolwright.shop.questions.owed import owed

DONE = date(2026, 3, 12)


@pytest.fixture
def read(shop: Any, tell: Callable[..., list[Any]]) -> Any:
    return tell(left_behind.story(shop, DONE))[0]


def test_it_is_owed_since_a_fortnight_after_the_work(read: Any) -> None:
    (bill,) = owed(date(2026, 6, 4))
    assert bill.owed_minor == 1190_00
    assert bill.due_on == date(2026, 3, 26)
    assert bill.days_overdue == 70


def test_the_dated_chain_stands_in_the_diary(read: Any) -> None:
    said = [(block.entry.written_at.date(), block.entry.words) for block in read.blocks]
    days = [day for day, words in said if "Reminder" in words or "Registered letter" in words]
    assert days == [date(2026, 4, 9), date(2026, 5, 7), date(2026, 6, 4)]
    assert "not before 4 September 2026" in said[-1][1]
    assert "RR 4471 0925" in said[-1][1]


def test_it_still_lies_on_the_post_table(read: Any) -> None:
    assert read.visit.is_open
    assert read.visit.place == "post table"


@pytest.mark.parametrize(
    ("day", "months", "then"),
    [
        (date(2026, 6, 4), 3, date(2026, 9, 4)),
        (date(2026, 11, 30), 3, date(2027, 2, 28)),
        (date(2026, 9, 15), 3, date(2026, 12, 15)),
        (date(2026, 12, 31), 2, date(2027, 2, 28)),
    ],
)
def test_three_months_later(day: date, months: int, then: date) -> None:
    assert left_behind.months_later(day, months) == then
