"""Backing under a top shot."""

from __future__ import annotations

import pytest

from spoolwright.judgement.top_shot import top_shot
from spoolwright.quantities import NotAQuantity
from spoolwright.sheets import reel_sheet

PIER = reel_sheet.load("tarvak-58r")


def test_the_longer_the_top_shot_the_less_backing() -> None:
    short, long = (top_shot(PIER, length=length) for length in (50.0, 150.0))
    assert long.backing_length.middle < short.backing_length.middle
    assert long.join_radius.middle < short.join_radius.middle
    assert long.pull_at_join > short.pull_at_join > 1.0
    assert long.turn_at_join < long.turn_full  # type: ignore[operator]


def test_too_much_line_is_said_so() -> None:
    found = top_shot(PIER, top="nylon 0.50 mm", length=1000.0)
    assert found.backing_length.middle == 0.0
    assert "more than goes on" in found.words


def test_braid_on_a_bare_arbor_is_warned_of() -> None:
    assert any("slips" in note for note in top_shot(PIER, length=3000.0).notes)


def test_a_fly_reel_has_no_line_for_a_turn_of_gears() -> None:
    assert top_shot(reel_sheet.load("brekkas-9-10")).turn_full is None


def test_what_cannot_be_is_refused() -> None:
    with pytest.raises(ValueError, match="length"):
        top_shot(PIER, length=-1.0)
    with pytest.raises(NotAQuantity):
        top_shot(PIER, backing="string")
