"""Scenario 4: nobody is forced through a check-in. Source of every number: trade handbook, chapter 9."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from spoolwright.demo.scenarios import while_you_wait
from tests.unit.demo.conftest import TUESDAY


@pytest.fixture
def read(shop: Any, tell: Callable[..., list[Any]]) -> Any:
    return tell(while_you_wait.story(shop, TUESDAY))[0]


def test_the_thread_test_before_and_after(read: Any) -> None:
    lay = [block.part.values.get(repeat=0).value_si for block in read.of_kind("reading")]
    assert lay == pytest.approx([47.8e-3, 46.2e-3, 47.0e-3, 46.9e-3])
    assert "Before 47.8 and 46.2 mm, now 47.0 and 46.9 mm" in read.of_kind("reading")[-1].entry.words


def test_the_direction_is_said(read: Any) -> None:
    assert "Heavy at the lip: raise the spool" in read.of_kind("reading")[1].entry.words


def test_260_and_22_minutes_while_he_waits(read: Any) -> None:
    (invoice,), (work,) = read.of_kind("invoice"), read.of_kind("work")
    assert invoice.part.total_minor == 260_00
    assert work.part.minutes == 22
    assert (read.visit.sent_home_at - read.visit.arrived_at).total_seconds() <= 30 * 60
    assert {block.kind for block in read.blocks} & {"proof"} == set()
