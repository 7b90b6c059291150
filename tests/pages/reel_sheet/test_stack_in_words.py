"""The stack in order, where it slips, and a washer put in wrong."""

from __future__ import annotations

import pytest

from spoolwright.pages.reel_sheet.stack_in_words import stack_in_words
from spoolwright.sheets import reel_sheet
from tests.unit.papers.section import reels

# Counted by hand from the sheets: each friction disc between two sides that turn differently.
PAIRS = {"tarvak-52": 3, "tarvak-54c": 6, "tarvak-58r": 5, "pellmar-70": 6}


@pytest.mark.parametrize(("slug", "pairs"), PAIRS.items())
def test_it_slips_as_often_as_the_order_says(slug: str, pairs: int) -> None:
    sheet = reels.shipped(slug)
    told = stack_in_words(sheet, "metric")
    assert told is not None
    assert told.pairs == pairs
    assert sum(bool(member.slips) for member in told.members) == pairs
    assert sheet.drag is not None
    assert [member.name for member in told.members] == [washer.name for washer in sheet.drag.stack]


def test_a_member_says_what_turns_it_and_its_sizes() -> None:
    told = stack_in_words(reels.shipped("tarvak-54c"), "metric")
    assert told is not None
    assert told.members[0].words == (
        "carbon steel, turns with the shaft, greased; 27\u00a0mm outside, 7\u00a0mm bore, 1.5\u00a0mm thick"
    )
    assert "lies loose" in told.members[1].words
    assert (
        "26\u00a0mm by 10\u00a0mm; friction 0.12 to 0.19, a guess (judgement prior)" in told.members[0].slips
    )


def test_a_washer_put_in_wrong_loses_a_pair_and_is_said() -> None:
    """An eared disc where a keyed one lies: its neighbours turn with the shaft, and two pairs go."""
    text = reel_sheet.shipped()["tarvak-54c"]
    before, _, after = text.partition('name = "inner eared disc"')
    wrong = (
        before + 'name = "inner eared disc"' + after.replace('turns_with = "gear"', 'turns_with = "shaft"', 1)
    )
    told = stack_in_words(reel_sheet.read(wrong), "metric")
    assert told is not None
    assert told.pairs == 4
    assert any("cannot slip and one pair is lost" in words for words in told.warnings)


def test_a_reel_without_a_drag_has_no_stack() -> None:
    assert stack_in_words(reels.fly(), "metric") is None


def test_the_spool_of_a_fixed_spool_is_a_member_that_the_drawing_shows_elsewhere() -> None:
    told = stack_in_words(reels.fixed_spool(), "metric")
    assert told is not None
    assert told.members[0].name == "spool"
    assert told.members[0].key == ""
    assert told.members[1].key == "drag-1"
