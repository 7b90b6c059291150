"""Scenario 6: it comes back slipping in the cold. Source of every number: trade handbook, chapter 9."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from spoolwright.demo.cast import Cast
from spoolwright.demo.lots import BAD_LOT
from spoolwright.demo.scenarios import cold_slip
from spoolwright.shop.questions.find import find
from tests.unit.demo.conftest import TUESDAY


@pytest.fixture
def found(shop: Any, tell: Callable[..., list[Any]]) -> list[Any]:
    return tell(*cold_slip.stories(shop, TUESDAY, Cast(shop.chance("cast"))))


@pytest.fixture
def back(found: list[Any]) -> Any:
    return next(read for read in found if read.visit.return_of_id and read.customer.name == "Mikkel Dahl")


def slips(read: Any) -> list[tuple[bool, float]]:
    return [
        (block.part.anti_reverse_cold, block.part.values.get(repeat=0).value_si)
        for block in read.of_kind("reading")
        if block.part.anti_reverse_cold is not None
    ]


def test_linked_to_its_parent_mended_and_not_invoiced(found: list[Any], back: Any) -> None:
    first = next(read for read in found if read.visit.pk == back.visit.return_of_id)
    assert first.reel == back.reel
    assert (back.visit.arrived_at.date() - first.visit.sent_home_at.date()).days in (19, 20, 21)
    assert slips(back) == [(False, 0), (True, 7), (True, 0), (False, 0)]
    assert not back.of_kind("invoice")
    assert not back.of_kind("quote")
    (work,) = back.of_kind("work")
    assert work.part.minutes == 35
    assert any("608 kr" in block.entry.words for block in back.blocks)
    assert not back.visit.is_open


def test_the_six_of_the_same_tub_are_found_and_two_of_them_slip(found: list[Any]) -> None:
    worked = {hit.visit_id for hit in find(BAD_LOT, limit=100) if hit.title.startswith("work")}
    assert len(worked) == 6
    came_back = [read for read in found if read.visit.return_of_id]
    assert {read.visit.return_of_id for read in came_back} <= worked
    assert len(came_back) == 2
