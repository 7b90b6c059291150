"""A hand at a diary."""

from __future__ import annotations

from typing import Any

import pytest
from django.http import Http404

from spoolwright.shop.acts.write_word import write_word
from tests.pages.diary.at_the_desk import arrived, desk_of

pytestmark = pytest.mark.django_db


def test_it_knows_the_reel_by_its_sheet(torbal: Any) -> None:
    desk = desk_of(torbal, arrived(torbal))
    assert (desk.kind, desk.system) == ("round multiplier", "metric")
    assert "round multiplier" in desk.tags


def test_without_a_sheet_it_knows_nothing_and_says_so(torbal: Any) -> None:
    desk = desk_of(torbal, arrived(torbal, sheet=""))
    assert (desk.sheet, desk.kind, desk.tags) == (None, "", ())


def test_a_tag_of_nobody_is_not_found(torbal: Any) -> None:
    class Nobody:
        tag = 404404

    with pytest.raises(Http404):
        desk_of(torbal, Nobody())


def test_ways_carry_what_they_are_given(torbal: Any) -> None:
    visit = arrived(torbal)
    desk = desk_of(torbal, visit)
    assert desk.way("finding") == f"/diary/{visit.tag}/write/finding/"
    assert desk.way("finding", again=7, quote="") == f"/diary/{visit.tag}/write/finding/?again=7"
    assert desk.typed_way("mass", again=7) == f"/diary/{visit.tag}/reading/mass/?again=7"


def test_after_writing_it_looks_again(torbal: Any) -> None:
    visit = arrived(torbal)
    desk = desk_of(torbal, visit)
    assert len(desk.diary.blocks) == 1
    write_word(hand=torbal, visit=visit, words="one more")
    assert len(desk.diary.blocks) == 1
    desk.look_again()
    assert len(desk.diary.blocks) == 2
