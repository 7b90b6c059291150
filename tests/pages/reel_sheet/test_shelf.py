"""The shelf: kind by kind, with a mark, and how many of ours have it."""

from __future__ import annotations

from typing import Any, get_args

import pytest
from django.test import Client

from spoolwright.pages.reel_sheet import shelf as page_shelf
from spoolwright.sheets.sheet_tables import Kind
from spoolwright.shop.acts.add_sheet_version import add_sheet_version
from tests.unit.papers.section import reels

pytestmark = pytest.mark.django_db


def test_sheets_stand_under_their_kind_in_the_order_of_kinds(shelf: Any, hand: Any) -> None:
    add_sheet_version(hand=hand, toml=reels.FLY)
    found = page_shelf.kinds()
    assert [kind for kind, _ in found] == ["round multiplier", "fly"]
    assert [one.shown for one in found[0][1]] == ["Pellmar 70", "Tarvak 52", "Tarvak 54C", "Tarvak 58R"]
    assert {slug for slug, _ in page_shelf.not_ours()} == set(reels.OTHERS)


def test_nothing_is_offered_that_the_shop_has(shelf: Any) -> None:
    taken = {slug: shelf[slug] for slug in reels.OTHERS}
    assert page_shelf.not_ours() == []
    assert [kind for kind, _ in page_shelf.kinds()] == list(get_args(Kind))
    assert len(taken) == 4


def test_an_empty_shelf_offers_what_comes_with_the_program(desk: Client) -> None:
    page = desk.get("/sheets/").content.decode()
    assert "The shop holds no sheet yet." in page
    assert "/sheets/new/?from=tarvak-52" in page


def test_each_line_has_its_mark_and_its_count(desk: Client, shelf: Any) -> None:
    page = desk.get("/sheets/").content.decode()
    assert page.count('class="section-mark"') == 4
    assert page.count("none of our reels yet") == 4


def test_the_name_is_that_of_the_version_that_stands(shelf: Any, hand: Any) -> None:
    text = shelf["tarvak-52"].toml.replace('model = "52"', 'model = "52 B"')
    add_sheet_version(hand=hand, toml=text, after=1)
    names = [one.shown for _, lines in page_shelf.kinds() for one in lines]
    assert "Tarvak 52 B" in names


def test_a_script_in_a_name_stays_a_name(desk: Client, hand: Any) -> None:
    add_sheet_version(hand=hand, toml=reels.FLY.replace("Brekkås", "<script>alert(1)</script>"))
    for address in (
        "/sheets/",
        "/sheets/brekkas-89/",
        "/sheets/brekkas-89/parts/",
        "/sheets/brekkas-89/versions/",
    ):
        page = desk.get(address).content.decode()
        assert "<script>alert" not in page
        assert "&lt;script&gt;alert" in page
