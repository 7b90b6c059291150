"""What a reel waits for and when it will be ready."""

from datetime import UTC, date, datetime

import pytest

from spoolwright.judgement.waiting import promised_spread, waits
from spoolwright.judgement.what_next import EntryFact, Facts


def at(year: int, month: int, day: int, hour: int = 0) -> datetime:
    return datetime(year, month, day, hour, tzinfo=UTC)


ASKED = [
    EntryFact("arrival", written_at=at(2026, 3, 1, 9)),
    EntryFact("reading"),
    EntryFact("finding"),
    EntryFact("quote", amount_minor=1, written_at=at(2026, 3, 2, 9)),
]
YES = EntryFact("answer", says="yes", written_at=at(2026, 3, 4, 9))


def test_an_unanswered_quote_waits_since_it_was_asked() -> None:
    told = waits(Facts(ASKED, place="asked shelf"), at(2026, 3, 3, 10))
    assert told.words == "waits for the customer's answer, 1 day"
    assert told.since == at(2026, 3, 2, 9)


def test_a_plain_word_does_not_make_the_waiting_shorter() -> None:
    called = EntryFact("word", written_at=at(2026, 3, 3, 9))
    told = waits(Facts([*ASKED, called], place="asked shelf"), at(2026, 3, 5, 10))
    assert told.since == at(2026, 3, 2, 9)
    assert told.days == 3


def test_the_place_says_what_the_work_waits_for() -> None:
    told = waits(Facts([*ASKED, YES], place="waits for a part"), at(2026, 3, 4, 10))
    assert told.words == "waits for a part"


def test_a_visit_without_times_waits_since_nobody_knows_when() -> None:
    assert waits(Facts([]), at(2026, 3, 4)).since is None


def test_more_work_ahead_is_later_and_safe_is_never_before_likely() -> None:
    near = promised_spread(100, 60, date(2026, 3, 2))
    far = promised_spread(3000, 60, date(2026, 3, 2))
    assert near.likely <= near.safe
    assert far.likely > near.likely
    assert near.mark == "judgement prior"


def test_a_date_is_a_working_day() -> None:
    for minutes in range(0, 4000, 300):
        spread = promised_spread(minutes, 60, date(2026, 3, 7))
        assert spread.likely.weekday() < 5
        assert spread.safe.weekday() < 5


def test_a_part_on_its_way_puts_the_date_off() -> None:
    assert promised_spread(100, 60, date(2026, 3, 2), waiting_days=5).likely > date(2026, 3, 8)


@pytest.mark.parametrize(
    "bad", [{"minutes_ahead": -1}, {"own_minutes": -1}, {"hands": 0}, {"waiting_days": -1}]
)
def test_what_cannot_be_is_refused_by_name(bad: dict[str, int]) -> None:
    given = {"minutes_ahead": 1, "own_minutes": 1, **bad}
    with pytest.raises(ValueError, match=next(iter(bad))):
        promised_spread(given.pop("minutes_ahead"), given.pop("own_minutes"), date(2026, 3, 2), **given)
