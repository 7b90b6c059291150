"""Scenario 5: the other hand before opening day. Source of every number: trade handbook, chapter 9."""

from __future__ import annotations

from collections.abc import Callable
from datetime import timedelta
from typing import Any

import pytest

from spoolwright.demo.scenarios import fly_reel
from tests.unit.demo.conftest import TUESDAY


@pytest.fixture
def read(shop: Any, tell: Callable[..., list[Any]]) -> Any:
    return tell(fly_reel.story(shop, TUESDAY))[0]


def test_promised_nine_times_in_ten_before_opening_day(read: Any) -> None:
    assert read.visit.needed_by == TUESDAY + timedelta(days=9)
    assert read.visit.promised_p90 < read.visit.needed_by


def test_the_own_made_part_has_its_wire(read: Any) -> None:
    (work,) = read.of_kind("work")
    part = work.part.parts.get()
    assert (part.count, part.source, part.made_from) == (2, "own-made", "0.8 mm spring wire")
    assert work.part.minutes == 38


def test_the_bill_and_the_word_for_storage(read: Any) -> None:
    (invoice,) = read.of_kind("invoice")
    assert invoice.part.total_minor == 370_00
    assert "turn the check to minimum for storage" in read.blocks[-1].entry.words
    assert read.visit.place == "post table"
    assert read.next.act == "dispatch"
