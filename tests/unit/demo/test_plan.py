"""The usual stays: how many, whose, when, and where the reels lie today."""

from __future__ import annotations

from collections import Counter
from datetime import date, timedelta
from typing import Any

import pytest

from spoolwright.demo.cast import Cast
from spoolwright.demo.plan import CUSTOMERS, EARLIEST, LATEST, OPEN, PEACE, planned
from spoolwright.demo.planned import Book, Planned
from spoolwright.demo.shop_hours import at
from spoolwright.shop.questions.choices import PLACES

TODAY = date(2026, 11, 25)


def plan(shop: Any, today: date = TODAY) -> list[Planned]:
    until = at(today - timedelta(days=1), "23:00")
    return planned(shop, Book(), Cast(shop.chance("cast")), until)


@pytest.fixture
def found(shop: Any) -> list[Planned]:
    return plan(shop)


def test_fifty_four_stays_of_twenty_eight_reels_of_twenty_people(found: list[Planned]) -> None:
    assert len(found) == 54
    assert len({one.reel.key for one in found}) == 28
    assert len({one.reel.owner for one in found}) == CUSTOMERS


def test_reels_lie_at_every_place_of_the_bench(found: list[Planned]) -> None:
    lie = Counter(one.at_last for one in found if one.at_last != "home")
    assert set(lie) == set(PLACES)
    assert sum(lie.values()) == len(OPEN)


def test_no_reel_comes_again_before_it_can_be_home(found: list[Planned]) -> None:
    for key in {one.reel.key for one in found}:
        days = sorted(one.came for one in found if one.reel.key == key)
        apart = [later - earlier for earlier, later in zip(days, days[1:], strict=False)]
        assert all(gap >= timedelta(days=PEACE - 3) for gap in apart)


def test_what_is_over_came_within_eight_months_and_not_lately(found: list[Planned]) -> None:
    over = [one.came for one in found if one.at_last == "home"]
    assert min(over) >= TODAY - timedelta(days=EARLIEST + 2)
    assert max(over) <= TODAY - timedelta(days=LATEST - 3)


def test_nobody_has_twins(found: list[Planned]) -> None:
    models = Counter((one.reel.owner, one.reel.slug) for one in {one.reel.key: one for one in found}.values())
    assert max(models.values()) == 1


def test_all_that_can_go_unusually_goes_so_somewhere(found: list[Planned]) -> None:
    turns = {turn for one in found for turn in one.turns}
    assert turns >= {"extra", "struck", "not shown", "failed", "no", "part", "unpaid", "silent", "dunked"}
    assert {one.job for one in found} == {"tune", "counter", "line"}


def test_the_same_day_and_seed_the_same_plan(shop: Any, found: list[Planned]) -> None:
    assert plan(shop) == found
    assert plan(shop, TODAY + timedelta(days=1)) != found
