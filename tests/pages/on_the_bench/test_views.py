"""The first page: the places in their order, the reels in them as short lines, in few queries."""

from __future__ import annotations

import re
from datetime import timedelta
from typing import Any

import pytest
from django.db import connection
from django.test import Client
from django.test.utils import CaptureQueriesContext
from django.utils import timezone

from spoolwright.bench import pull_trace
from spoolwright.demo import signals
from spoolwright.shop.acts.promise_date import promise_date
from spoolwright.shop.acts.take_pull import Pulled, take_pull
from spoolwright.shop.questions.by_number import visit as visit_by_id
from spoolwright.shop.questions.choices import PLACES
from tests.pages.coming import came
from tests.people import bench_hand
from tests.shop import walk

pytestmark = pytest.mark.django_db


@pytest.fixture
def desk() -> Client:
    client = Client()
    client.force_login(bench_hand())
    return client


def read(desk: Client) -> str:
    return desk.get("/").content.decode()


def test_an_empty_bench_says_so_place_by_place(desk: Client) -> None:
    page = read(desk)
    assert re.findall(r'<h2 class="margin">([^<]+)</h2>', page) == list(PLACES)
    assert "Nothing lies on the bench." in page
    assert "The jig is free." in page


def test_a_line_says_what_it_waits_for_what_comes_next_and_how_long(desk: Client) -> None:
    visit = came(needed_by=timezone.localdate() + timedelta(days=400))
    page = read(desk)
    assert f'id="reel-{visit.tag}"' in page
    assert "Tarvak 58R, <span>Ragna Solbu</span>" in page
    assert "Waits for its readings since" in page
    assert "Take the readings before anything is cleaned" in page
    assert '<span class="dimension">8 min</span>' in page  # MINUTES["reading"], judgement prior
    assert "Needed by" in page
    assert "no day promised yet" in page


def test_a_promise_is_a_spread_on_a_scale(desk: Client) -> None:
    visit = came()
    fresh, today = visit_by_id(visit.pk), timezone.localdate()
    promise_date(
        hand=bench_hand(), visit=fresh, p50=today, p90=today + timedelta(days=4), version=fresh.version
    )
    assert 'class="day-scale"' in read(desk)


def test_the_latest_pull_is_the_mark_of_a_reel(desk: Client) -> None:
    visit = came()
    assert 'class="trace-mark"' not in read(desk)
    trace = pull_trace.read(signals.pull_trace(seed=4).to_csv())
    pulled = Pulled(trace, pull_trace.analyse(trace, pull_trace.Gauge(accuracy_of_reading=0.005)))
    take_pull(hand=bench_hand(), visit=visit, pulled=pulled, conditions=walk.PULLS)
    page = read(desk)
    assert 'class="trace-mark"' in page
    assert f'aria-label="Latest pull trace of number {visit.tag}"' in page


def test_a_dunked_reel_comes_first_and_nobody_is_told_to_turn_it(desk: Client) -> None:
    came("Ragna Solbu")
    wet = came("Jonna Fure", "Ostrell S71", under_water_at=timezone.now() - timedelta(hours=1))
    page = read(desk)
    assert page.index("Jonna Fure") < page.index("Ragna Solbu")
    assert page.count("Do not turn the handle") == 2
    assert f'<a href="#reel-{wet.tag}">' in page
    assert f"First: number {wet.tag}" in page


def test_a_name_with_script_in_it_is_only_a_name(desk: Client) -> None:
    came("<script>alert(1)</script>", "<b>reel</b>")
    page = read(desk)
    assert "<script>alert(1)" not in page
    assert "&lt;script&gt;alert(1)" in page


def test_a_reel_that_went_home_is_not_on_the_bench(desk: Client) -> None:
    visit = walk.everything(bench_hand())
    assert f'id="reel-{visit.tag}"' not in read(desk)


def queries(desk: Client) -> int:
    with CaptureQueriesContext(connection) as counted:
        desk.get("/")
    return len(counted)


def test_ninety_reels_cost_no_more_queries_than_one(desk: Client, settings: Any, tmp_path: Any) -> None:
    settings.MEDIA_ROOT = tmp_path
    walk.agreed(bench_hand())
    few = queries(desk)
    for number in range(89):
        came(f"Customer {number}")
    assert queries(desk) == few
    assert few <= 20
    assert read(desk).count('class="reel-line"') == 90
