"""Steps follow one another within opening hours; a reel's coming is reckoned back from where it lies."""

from __future__ import annotations

from datetime import date
from random import Random

import pytest

from spoolwright.demo.pace import LONG, SHORT, WINDING, Steps, latest_coming, moments
from spoolwright.demo.shop_hours import OPENS, SHUTS, at

DAY = date(2026, 6, 2)


@pytest.mark.parametrize("steps", [LONG, SHORT, WINDING])
@pytest.mark.parametrize("seed", range(10))
def test_steps_follow_one_another_while_the_shop_is_open(steps: Steps, seed: int) -> None:
    found = list(moments(steps, DAY, Random(seed)).values())
    assert found == sorted(found)
    assert found[0].date() == DAY
    assert all(moment.weekday() < 5 and OPENS <= moment.time() <= SHUTS for moment in found)


def test_a_small_job_is_over_within_the_hour() -> None:
    for seed in range(10):
        found = list(moments(SHORT, DAY, Random(seed)).values())
        assert (found[-1] - found[0]).total_seconds() < 3600


def test_seven_answers_of_ten_come_within_a_day() -> None:
    """Trade handbook, 7.2: 70 % within a day, 12 % after three (judgement prior)."""
    waited = []
    for seed in range(400):
        found = moments(LONG, DAY, Random(seed))
        waited.append((found["answer"] - found["ask"]).days)
    assert 0.6 < sum(days < 1 for days in waited) / len(waited) < 0.85
    assert 0.05 < sum(days >= 3 for days in waited) / len(waited) < 0.2


@pytest.mark.parametrize("last", ["find", "ask", "bath", "rack", "prove", "bill"])
def test_it_came_as_late_as_it_can_have_come(last: str) -> None:
    by = at(date(2026, 6, 12), "23:00")
    came = latest_coming(LONG, last, by, lambda: Random(4))
    assert moments(LONG, came, Random(4))[last] <= by
    assert came.weekday() < 5
