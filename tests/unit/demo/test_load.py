"""The demonstration goes into an empty shop only. What it puts there: see tests/shop/test_demo.py."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta
from typing import Any

import pytest
from django.db import transaction

from spoolwright.demo import timetable
from spoolwright.demo.cast import Cast
from spoolwright.demo.load import MONTHS, ShopWasNotEmpty, _stories, load
from spoolwright.demo.planned import Book
from spoolwright.demo.scenarios import estate_reel
from spoolwright.demo.shop_hours import at
from spoolwright.demo.workshop import open_workshop
from spoolwright.shop.acts import clock
from spoolwright.shop.models import Attachment, Entry, ReadingValue
from spoolwright.shop.questions import by_number
from tests.unit.demo.conftest import TUESDAY


def test_a_shop_with_visits_is_left_alone(shop: Any, tell: Callable[..., list[Any]]) -> None:
    tell(estate_reel.story(shop, TUESDAY))
    with pytest.raises(ShopWasNotEmpty, match="an empty shop only"):
        load(today=date(2026, 11, 25))
    assert by_number.visit_tagged(2) is None


def told(seed: int, today: date) -> list[Any]:
    """What some of the stories leave in the books; all of it is undone again."""
    until = at(today - timedelta(days=1), "23:00")
    with transaction.atomic():
        with clock.as_of(at(today - MONTHS, "08:00")):
            shop = open_workshop(seed)
        stories = list(_stories(shop, Cast(shop.chance("cast")), Book(), until))
        # The first is the pier reel; the last but one and those before it are usual stays.
        timetable.play([stories[0], *stories[-5:-1]], until=until)
        entries = Entry.objects.values_list("visit__tag", "seq", "kind", "written_at", "words", "moved_to")
        values = ReadingValue.objects.values_list("kind", "repeat", "value_si", "standard_uncertainty_si")
        files = Attachment.objects.values_list("original_name", "sha256")
        found = [*entries.order_by("pk"), *values.order_by("pk"), *files.order_by("pk")]
        transaction.set_rollback(True)
    return found


def test_the_same_seed_and_day_make_the_same_records_and_any_other_makes_others(db: None) -> None:
    first = told(1, date(2026, 11, 25))
    assert len(first) > 100
    assert told(1, date(2026, 11, 25)) == first
    assert told(2, date(2026, 11, 25)) != first
    assert told(1, date(2026, 11, 26)) != first
