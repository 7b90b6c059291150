"""A passport grows: every visit, every result, every part; struck entries count for nothing in it."""

from __future__ import annotations

from typing import Any

import pytest
from django.db import connection
from django.test.utils import CaptureQueriesContext

from spoolwright.shop.acts.receive_parcel import ArrivingReel, receive_parcel
from spoolwright.shop.acts.strike_entry import strike_entry
from spoolwright.shop.acts.write_work import Fitted
from spoolwright.shop.questions.passport import passport
from tests.shop import walk

pytestmark = pytest.mark.django_db


def another_visit(hand: Any, reel: Any) -> Any:
    received = receive_parcel(hand=hand, customer=reel.customer, reels=[ArrivingReel(reel=reel)])
    visit = received.written[0].entry.visit
    walk.read(hand, visit, "pull_full", 60.0, 0.5, "force")
    walk.answered(hand, walk.quoted(hand, visit))
    walk.worked(hand, visit, parts=[Fitted("pawl")])
    walk.read(hand, visit, "pull_full", 66.0, 0.5, "force")
    walk.gone(hand, visit)
    return visit


def test_over_the_visits(hand: Any) -> None:
    first = walk.everything(hand)
    second = another_visit(hand, first.reel)
    page = passport(first.reel_id)
    assert [stay.visit.tag for stay in page.visits] == [first.tag, second.tag]
    assert [(r.tag, r.after_work) for r in page.readings_of("pull_full")] == [
        (1, False),
        (1, True),
        (2, False),
        (2, True),
    ]
    assert page.readings[0].conditions["radius"] == 0.0235
    assert [(p.part.what, p.tag) for p in page.parts] == [("pawl", 1), ("check spring", 1), ("pawl", 2)]
    assert [mark.words for mark in page.marks] == ["5801"]


def test_what_is_struck_is_not_counted_but_is_still_there(hand: Any) -> None:
    visit = walk.everything(hand)
    strike_entry(hand=hand, entry=visit.entries.filter(kind="reading").first(), reason="scale not at zero")
    page = passport(visit.reel_id)
    assert len(page.readings_of("pull_full")) == 1
    assert len(page.visits[0].blocks) == 13


def test_five_visits_take_no_more_queries_than_one(hand: Any) -> None:
    visit = walk.everything(hand)
    with CaptureQueriesContext(connection) as one:
        passport(visit.reel_id)
    for _ in range(4):
        another_visit(hand, visit.reel)
    with CaptureQueriesContext(connection) as five:
        assert len(passport(visit.reel_id).visits) == 5
    assert len(five) == len(one) <= 30


def test_no_such_reel() -> None:
    assert passport(1) is None
