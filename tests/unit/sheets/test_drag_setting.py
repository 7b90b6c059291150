"""Words for where a star, a knob or a lever stands."""

from __future__ import annotations

import pytest

from spoolwright.sheets import reel_sheet
from spoolwright.sheets.drag_setting import DragSetting, setting_of


@pytest.mark.parametrize(
    ("slug", "turns", "short", "whole", "along"),
    [
        ("tarvak-54c", 1.0, "1 turn", "star 1 turns from free", "turns of the star from free"),
        ("lumvik-4000", 2.5, "2.5 turns", "knob 2.5 turns from free", "turns of the knob from free"),
        ("pellmar-30-2", 0.7, "70 % of its way", "lever at 70 % of its way",
         "way of the lever from free, 1 is full"),
    ],
)  # fmt: skip
def test_a_place_on_the_way_is_said(slug: str, turns: float, short: str, whole: str, along: str) -> None:
    setting = setting_of(reel_sheet.load(slug))
    assert (setting.at(turns), setting.stands(turns), setting.along) == (short, whole, along)


def test_a_lever_whose_way_is_counted_otherwise_is_still_told_in_shares() -> None:
    assert DragSetting("lever", whole=10.0).at(7.0) == "70 % of its way"


def test_where_nothing_is_known_a_star_is_meant() -> None:
    assert setting_of(None) == DragSetting("star")
    assert DragSetting().by == "turns of the star"
