"""Where each reel is, what it waits for, what comes next: for many reels in as few queries as for one."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta
from typing import Any

import pytest
from django.db import connection
from django.test.utils import CaptureQueriesContext

from spoolwright.shop.acts import clock
from spoolwright.shop.acts.open_diary import Beside
from spoolwright.shop.acts.promise_date import promise_date
from spoolwright.shop.questions.choices import PLACES
from spoolwright.shop.questions.on_the_bench import on_the_bench
from tests.shop import walk

pytestmark = pytest.mark.django_db
MONDAY = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)


def rows(now: datetime | None = None) -> dict[int, Any]:
    return {reel.tag: reel for place in on_the_bench(now) for reel in place.reels}


def test_every_place_is_there_in_the_order_of_the_bench(hand: Any) -> None:
    walk.arrived(hand)
    assert [place.name for place in on_the_bench()] == list(PLACES)
    assert [len(place.reels) for place in on_the_bench()] == [1, 0, 0, 0, 0, 0, 0, 0, 0]


def test_what_it_waits_for_and_what_comes_next(hand: Any) -> None:
    visit = walk.arrived(hand)
    assert (rows()[1].next.act, rows()[1].waits_for) == ("reading", "its readings")
    walk.read(hand, visit, "pull_full", 57.0, 0.5, "force")
    assert rows()[1].next.act == "finding"
    with clock.as_of(MONDAY):
        quote = walk.quoted(hand, visit)
    row = rows(MONDAY + timedelta(days=3, hours=1))[1]
    assert (row.place, row.waits_for, row.days) == ("asked shelf", "the customer's answer", 3)
    assert row.since == MONDAY
    walk.answered(hand, quote, beside=Beside(moved_to="mat"))
    assert (rows()[1].next.act, rows()[1].next.minutes) == ("work", 68)
    walk.worked(hand, visit)
    assert rows()[1].next.act == "proof"


def test_half_the_agreed_work_is_not_the_work(hand: Any) -> None:
    from spoolwright.shop.acts.write_work import Done, Labour, write_work

    visit = walk.agreed(hand)
    walk.read(hand, visit, "pull_full", 57.0, 0.5, "force")
    write_work(hand=hand, visit=visit, labour=Labour([Done("service", "Strip")], 50))
    assert rows()[1].next.act == "work"
    write_work(hand=hand, visit=visit, labour=Labour([Done("fit pawl", "Fit a pawl")], 20))
    assert rows()[1].next.act == "proof"


def test_the_wet_one_comes_first_then_what_was_promised_first(hand: Any) -> None:
    for tag, name in enumerate(("Ragna", "Sigrun", "Jonna"), start=1):
        visit = walk.arrived(hand, name=name, under_water_at=MONDAY if name == "Jonna" else None)
        assert visit.tag == tag
        if name == "Sigrun":
            day = date(2026, 3, 9)
            promise_date(hand=hand, visit=visit, p50=day, p90=day, version=visit.version)
    order = [reel.tag for reel in on_the_bench(MONDAY + timedelta(hours=2))[0].reels]
    assert order == [3, 2, 1]
    assert [r.must_not_be_turned for r in rows(MONDAY + timedelta(days=3)).values()] == [False] * 3


def test_the_small_picture_is_of_the_latest_trace_that_stands(hand: Any) -> None:
    from spoolwright.shop.acts.strike_entry import strike_entry

    visit = walk.arrived(hand)
    assert rows()[1].trace_entry is None
    first = walk.read(hand, visit, "pull_run", 25.0, 0.3, "force", way="pull trace").entry
    second = walk.read(hand, visit, "pull_run", 26.0, 0.3, "force", way="pull trace").entry
    assert rows()[1].trace_entry == second.pk
    strike_entry(hand=hand, entry=second, reason="rod in the way")
    assert rows()[1].trace_entry == first.pk


def test_twelve_reels_take_no_more_queries_than_one(hand: Any) -> None:
    def one(number: int) -> None:
        visit = walk.agreed(hand, name=f"Customer {number}")
        walk.worked(hand, visit)
        walk.read(hand, visit, "pull_run", 25.0, 0.3, "force", way="pull trace")

    one(0)
    with CaptureQueriesContext(
        connection,
    ) as for_one:
        on_the_bench()
    for number in range(1, 12):
        one(number)
    with CaptureQueriesContext(connection) as for_twelve:
        assert len(rows()) == 12
    assert len(for_twelve) == len(for_one) <= 10
