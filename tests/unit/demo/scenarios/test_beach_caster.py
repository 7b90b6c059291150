"""Scenario 10: tuned, sent, not heard of. Source of every number: trade handbook, chapter 9 (invented)."""

from __future__ import annotations

from collections.abc import Callable
from datetime import timedelta
from typing import Any

import pytest

from spoolwright.demo.scenarios import beach_caster
from tests.unit.demo.conftest import TUESDAY


@pytest.fixture
def read(shop: Any, tell: Callable[..., list[Any]]) -> Any:
    return tell(beach_caster.story(shop, TUESDAY))[0]


def typed(read: Any, kind: str) -> list[float]:
    rows = [value for block in read.of_kind("reading") for value in block.part.values.all()]
    return [value.value_si for value in rows if value.kind == kind and value.repeat == 0]


def test_spin_float_bill_and_insured_value(read: Any) -> None:
    assert typed(read, "spin_time") == [14.0, 52.0]
    assert typed(read, "stop_time") == pytest.approx([14.0, 52.0], rel=0.01)
    assert typed(read, "end_float") == pytest.approx([0.30e-3, 0.08e-3])
    (invoice,), (dispatch,) = read.of_kind("invoice"), read.of_kind("dispatch")
    assert invoice.part.total_minor == 1150_00 + 360_00 + 149_00
    assert dispatch.part.insured_minor == 5000_00
    assert dispatch.part.mass_kg == pytest.approx(0.735)
    (quote,) = read.of_kind("quote")
    assert "flange" in quote.part.options.get().warnings[0], "the next limit is named"


def test_the_carriers_window_and_whose_metres_they_are(read: Any) -> None:
    sent = read.visit.sent_home_at.date()
    opens, closes = sent + timedelta(days=30), sent + timedelta(days=90)
    words = read.blocks[-1].entry.words
    assert "4,859" in words
    assert f"{opens.day} {opens:%B}" in words
    assert f"{closes.day} {closes:%B}" in words
    said = next(block.entry.words for block in read.blocks if "127 m" in block.entry.words)
    assert "His measurement, not ours" in said
