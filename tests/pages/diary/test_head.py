"""The head of a diary."""

from __future__ import annotations

from datetime import date
from typing import Any

import pytest
from django.test import Client

from spoolwright.shop.acts.promise_date import promise_date
from tests.pages.diary.at_the_desk import arrived, text
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_whose_it_is_where_it_is_and_what_it_waits_for(bench: Client, torbal: Any) -> None:
    said = text(bench.get(f"/diary/{arrived(torbal).tag}/"))
    assert "Tarvak 58R, of Ragna Solbu" in said
    assert "On the mat since" in said
    assert "waits for its readings" in said


def test_a_promise_is_a_spread(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    assert "no day promised yet" in text(bench.get(f"/diary/{visit.tag}/"))
    promise_date(hand=torbal, visit=visit, p50=date(2031, 6, 7), p90=date(2031, 6, 14), version=visit.version)
    assert "7–14 June 2031" in text(bench.get(f"/diary/{visit.tag}/"))


def test_a_reel_that_went_home_says_when(bench: Client, torbal: Any) -> None:
    visit = walk.agreed(torbal)
    walk.gone(torbal, visit)
    assert "It went home on" in text(bench.get(f"/diary/{visit.tag}/"))
