"""Scenario 1 as the demonstration tells it. Source of every number: trade handbook, chapter 9 (invented)."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from spoolwright.demo.scenarios import pier_reel
from spoolwright.shop.questions.owed import paid
from tests.unit.demo.conftest import TUESDAY


@pytest.fixture
def read(shop: Any, tell: Callable[..., list[Any]]) -> Any:
    return tell(pier_reel.story(shop, TUESDAY))[0]


def values(read: Any, kind: str) -> list[float]:
    """Every result of one kind in the diary, in order."""
    return [
        value.value_si
        for block in read.of_kind("reading")
        for value in block.part.values.all()
        if value.kind == kind and value.repeat == 0
    ]


def test_what_was_read(read: Any) -> None:
    start, run = values(read, "pull_start"), values(read, "pull_run")
    assert [round(one / other, 2) for one, other in zip(start, run, strict=True)] == [1.50, 1.07]
    assert run[0] * pier_reel.RADIUS == pytest.approx(0.599, abs=0.001)
    assert values(read, "pull_full")[1] * pier_reel.RADIUS == pytest.approx(1.590, abs=0.0005)
    assert values(read, "spin_time") == [11.0, 31.0]
    assert values(read, "end_float") == pytest.approx([0.42e-3, 0.09e-3])
    assert values(read, "feel")[0] == 3


def test_what_was_asked_answered_and_billed(read: Any) -> None:
    quote, extra = read.of_kind("quote")
    improve = next(option for option in quote.part.options.all() if option.key == "improve")
    assert sorted(line.gross_minor for line in improve.lines.all()) == [95_00, 129_00, 170_00, 190_00, 520_00]
    assert (improve.total_minor, improve.minutes) == (1104_00, 68)
    assert extra.part.options.get().whole_minor == 1169_00
    (answer,) = read.of_kind("answer")
    assert (answer.part.exact_words, answer.part.cap_minor) == ("yes, up to 1,200", 1200_00)
    (invoice,) = read.of_kind("invoice")
    bill = invoice.part
    assert (bill.total_minor, bill.tax_minor) == (1169_00, 233_80)
    assert (bill.deposit_minor, bill.due_minor) == (200_00, 969_00)
    assert "65.00 kr more" in bill.why_more
    assert paid(read.visit.pk) == bill.total_minor


def test_it_took_74_minutes_and_was_told_by_picture(read: Any) -> None:
    (work,) = read.of_kind("work")
    assert work.part.minutes == 74
    cog = next(block for block in read.of_kind("finding") if block.part.part == "idler cog")
    assert cog.attached[0].attachment.is_photo


def test_one_of_the_five_star_turns_gives_what_was_asked(read: Any) -> None:
    said = next(block.entry.words for block in read.blocks if "star about" in block.entry.words)
    assert said.startswith("2.70 kg at a full spool")
    assert "of 5 turns" in said
