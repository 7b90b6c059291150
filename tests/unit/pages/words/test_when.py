"""Days and hours as the shop says them. 3 June 2025 was a Tuesday (any printed calendar)."""

from datetime import UTC, date, datetime

import pytest

from spoolwright.pages.words import when

TUESDAY = date(2025, 6, 3)
MORNING = datetime(2025, 6, 3, 7, 12, tzinfo=UTC)  # 09:12 in Oslo, two hours ahead of UTC in summer


def test_a_day_has_its_weekday_and_the_year_only_when_it_is_another() -> None:
    assert when.day(TUESDAY, now=TUESDAY) == "Tue 3 June"
    assert when.day(TUESDAY, now=date(2026, 1, 1)) == "Tue 3 June 2025"


def test_an_hour_is_the_shops_own() -> None:
    assert when.hour(MORNING) == "09:12"
    assert when.day(datetime(2025, 6, 2, 22, 30, tzinfo=UTC), now=TUESDAY) == "Tue 3 June"


@pytest.mark.parametrize(
    ("now", "said"),
    [
        (date(2025, 6, 3), "09:12 today"),
        (date(2025, 6, 4), "09:12 yesterday"),
        (date(2025, 6, 6), "Tuesday"),
        (date(2025, 6, 10), "3 June"),
        (date(2026, 6, 10), "3 June 2025"),
    ],
)
def test_since_when(now: date, said: str) -> None:
    assert when.since(MORNING, now) == said


@pytest.mark.parametrize(("count", "said"), [(0, "0 min"), (6, "6 min"), (60, "1 h"), (80, "1 h 20 min")])
def test_minutes(count: int, said: str) -> None:
    assert when.minutes(count) == said


@pytest.mark.parametrize(
    ("likely", "late", "said"),
    [
        (date(2025, 6, 7), date(2025, 6, 14), "7–14 June"),
        (date(2025, 6, 27), date(2025, 7, 2), "27 June – 2 July"),
        (date(2025, 6, 7), date(2025, 6, 7), "7 June"),
        (None, None, "no day promised yet"),
    ],
)
def test_a_promise_is_a_spread(likely: date | None, late: date | None, said: str) -> None:
    assert when.spread(likely, late, TUESDAY) == said


def test_days_between_holds_both_ends() -> None:
    assert when.days_between(TUESDAY, date(2025, 6, 5)) == [TUESDAY, date(2025, 6, 4), date(2025, 6, 5)]


def test_a_paper_never_leaves_out_the_year() -> None:
    assert when.dated(TUESDAY) == "3 June 2025"
    assert when.dated(datetime(2025, 12, 31, 23, 30, tzinfo=UTC)) == "1 January 2026"
