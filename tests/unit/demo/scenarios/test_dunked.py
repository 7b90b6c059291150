"""Scenario 3: dropped into the sea. Source of every number: trade handbook, chapter 9 (invented)."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from typing import Any

import pytest

from spoolwright.demo.scenarios import dunked
from spoolwright.demo.shop_hours import at

SATURDAY = date(2026, 6, 6)


@pytest.fixture
def read(shop: Any, tell: Callable[..., list[Any]]) -> Any:
    return tell(dunked.story(shop, SATURDAY))[0]


def test_do_not_turn_is_said_at_once(read: Any) -> None:
    first, second = read.blocks[:2]
    assert first.part.must_not_be_turned(at(SATURDAY, "16:00"))
    assert second.entry.words.startswith("Do not turn the handle")
    assert second.entry.written_at == first.entry.written_at


def test_she_was_asked_before_1300_was_passed_and_her_answer_is_kept(read: Any) -> None:
    first, extra = read.of_kind("quote")
    assert first.part.options.get().total_minor == 1120_00
    assert extra.part.options.get().whole_minor == 1470_00
    assert extra.entry.written_at == at(SATURDAY, "16:40")
    before, raised = read.of_kind("answer")
    assert (before.part.cap_minor, raised.part.cap_minor) == (1300_00, 1500_00)
    assert raised.part.answered_at == at(SATURDAY, "16:52")
    assert raised.part.exact_words
    (work,) = read.of_kind("work")
    assert work.entry.written_at > raised.entry.written_at
    (warned,) = read.of_kind("quote")[1].part.options.get().warnings
    assert "1,470.00 kr, 77% of the 1,900.00 kr" in warned
    assert "more than such a repair is usually worth" in warned
    (invoice,) = read.of_kind("invoice")
    assert invoice.part.total_minor == 1470_00
    assert {line.what: line.gross_minor for line in invoice.part.lines.all()}["Bearings"] == 300_00
