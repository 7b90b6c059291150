"""The parts in the order they come off, each with its oil in words and its way to the drawing."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from spoolwright.pages.reel_sheet.parts_off import parts_off
from tests.unit.papers.section import reels

pytestmark = pytest.mark.django_db


@pytest.mark.parametrize("slug", reels.SLUGS)
def test_the_order_is_the_sheets(slug: str) -> None:
    sheet = reels.shipped(slug)
    found = parts_off(sheet)
    assert [one.line for one in found] == list(sheet.parts)
    assert sum(bool(one.key) for one in found) > 0.7 * len(found)


def test_the_page_reads_from_the_handle_to_the_foot(desk: Client, shelf: Any) -> None:
    page = desk.get("/sheets/tarvak-54c/parts/").content.decode()
    order = [
        page.index(name)
        for name in ("<b>Handle arm", "<b>Drag star", "<b>Main gear", "<b>Pinion</b>", "<b>Foot</b>")
    ]
    assert order == sorted(order)
    assert "Gear grease (G2), 0.3 g on the flanks." in page
    assert "gear grease that stands water" in page
    assert "?part=main-gear#known" in page
    assert 'class="caution"' in page


def test_a_sheet_without_a_list_says_so(desk: Client, hand: Any) -> None:
    from spoolwright.shop.acts.add_sheet_version import add_sheet_version

    add_sheet_version(hand=hand, toml=reels.FLY)
    assert "The sheet has no parts list" in desk.get("/sheets/brekkas-89/parts/").content.decode()
