"""A value that has no meaning for a kind of reel is told in words, for every sheet that comes with us."""

from __future__ import annotations

import pytest

from spoolwright.judgement.meaning import NO_BEARINGS, why_not, without_meaning
from spoolwright.sheets import reel_sheet

NONE_FOR = {
    "fixed spool": {"spin_time", "end_float"},
    "fly": {"spin_time", "end_float", "handle_torque"},
}


@pytest.mark.parametrize("slug", reel_sheet.shipped())
def test_what_is_missing_is_what_the_kind_cannot_have(slug: str) -> None:
    sheet = reel_sheet.load(slug)
    said = without_meaning(sheet)
    assert set(said) == NONE_FOR.get(sheet.reel.kind, set())
    assert all(len(words) > 40 and words.endswith(".") for words in said.values())


def test_a_stop_time_is_a_spin() -> None:
    fly = reel_sheet.load("brekkas-9-10")
    assert why_not(fly, "stop_time") == why_not(fly, "spin_time") != ""
    assert why_not(fly, "pull_full") == ""


def test_a_spool_without_a_bearing_on_its_sheet_cannot_be_reckoned() -> None:
    sheet = reel_sheet.load("tarvak-52").model_copy(update={"bearings": ()})
    assert why_not(sheet, "spin_time") == NO_BEARINGS
