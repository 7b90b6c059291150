"""A reel that was under water must not be turned for two days."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import Any

import pytest

from spoolwright.shop.acts import clock
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_dunked_an_hour_ago_must_not_be_turned_for_two_days(hand: Any) -> None:
    dunked = datetime(2026, 6, 6, 14, 10, tzinfo=UTC)
    with clock.as_of(dunked + timedelta(minutes=55)):
        arrival = walk.arrived(hand, under_water_at=dunked).entries.get().arrival
    assert arrival.must_not_be_turned(dunked + timedelta(hours=1))
    assert arrival.must_not_be_turned(dunked + timedelta(hours=47))
    assert not arrival.must_not_be_turned(dunked + timedelta(hours=49))


def test_a_dry_reel_may_be_turned(hand: Any) -> None:
    arrival = walk.arrived(hand).entries.get().arrival
    assert not arrival.must_not_be_turned(clock.now())
