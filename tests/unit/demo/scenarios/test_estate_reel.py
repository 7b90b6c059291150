"""Scenario 8: restore or strip. Source of every number: trade handbook, chapter 9 (invented)."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from spoolwright.demo.scenarios import estate_reel
from tests.unit.demo.conftest import TUESDAY


def test_it_lies_on_the_shelf_with_its_sums(shop: Any, tell: Callable[..., list[Any]]) -> None:
    (read,) = tell(estate_reel.story(shop, TUESDAY))
    assert read.visit.place == "shelf"
    assert read.of_kind("arrival")[0].part.used_value_minor == 1500_00
    said = " ".join(block.entry.words for block in read.blocks)
    for number in ("310", "1,410", "1,500", "90 left", "820", "738", "288", "112", "557"):
        assert number in said


def test_the_sums_are_right() -> None:
    restored = 310 + 700 + 400
    stripped = (180 + 220 + 150 + 120 + 90 + 60) * 9 // 10 - 450
    assert (restored, 1500 - restored) == (1410, 90)
    assert (stripped, 400 - stripped) == (288, 112)
    assert 1500 - 400 - 310 - 70 * 200 // 60 == 557
