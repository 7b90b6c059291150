"""The passport and the customer in a real browser: charts with their numbers, marks written by hand."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from spoolwright.shop.acts.describe_reel import describe_reel
from spoolwright.shop.questions import by_number, reel_sheets
from tests.shop import walk

SHOTS = Path("test-results")


@pytest.fixture
def reel(shop: Any) -> Any:
    """The pier reel of scenario 1 after its visit, with its sheet."""
    gone = walk.everything(shop.bench)
    known = by_number.reel(gone.reel_id)
    version = reel_sheets.version("tarvak-58r")
    return describe_reel(hand=shop.bench, reel=known, sheet_version=version, version=known.version)


@pytest.mark.parametrize(("size", "look"), [("desk", "light"), ("phone", "dark")])
def test_it_is_accessible_and_fits(
    new_page: Callable[..., Page], shop: Any, reel: Any, axe: Callable[[Page], None], size: str, look: str
) -> None:
    page = new_page(size, shop.bench, color_scheme=look)
    for name, address in (
        ("passport", f"/reels/{reel.pk}/"),
        ("customer", f"/customers/{reel.customer_id}/"),
    ):
        page.goto(address)
        if name == "passport":
            expect(page.locator("body")).to_have_attribute("data-charts-drawn", "1")
        axe(page)
        assert page.evaluate("document.documentElement.scrollWidth") <= page.viewport_size["width"]
        SHOTS.mkdir(exist_ok=True)
        page.screenshot(path=SHOTS / f"{name}-{size}-{look}.png", full_page=True)


def test_the_numbers_of_a_chart_are_one_key_away(desk_page: Page, reel: Any) -> None:
    desk_page.goto(f"/reels/{reel.pk}/")
    history = desk_page.locator("#reading-pull-full")
    expect(history.locator("svg")).to_be_visible()
    expect(history.get_by_role("cell", name="6.900 kg")).to_be_hidden()
    desk_page.keyboard.press("n")
    expect(history.get_by_role("cell", name=re.compile(r"^6\.900 kg"))).to_be_visible()
    expect(history).to_contain_text("after the work")


def test_a_mark_is_written_by_keyboard(desk_page: Page, reel: Any) -> None:
    desk_page.goto(f"/reels/{reel.pk}/")
    desk_page.keyboard.press("k")
    desk_page.get_by_label("What it is").select_option("engraving")
    desk_page.get_by_label("The mark").fill("R.S. 1962")
    desk_page.keyboard.press("Enter")
    expect(desk_page.locator(".said")).to_have_text("The mark is written.")
    expect(desk_page.locator(".opening")).to_contain_text("engraving R.S. 1962")


def test_a_part_on_the_drawing_leads_to_its_sheet(desk_page: Page, reel: Any) -> None:
    desk_page.goto(f"/reels/{reel.pk}/")
    desk_page.get_by_role("link", name="Spool", exact=True).press("Enter")
    expect(desk_page).to_have_url(re.compile(r"/sheets/tarvak-58r/"))


def test_a_customer_and_a_reel_are_written_down_by_hand(
    phone_page: Page, axe: Callable[[Page], None]
) -> None:
    page = phone_page
    page.goto("/arrival/")
    page.get_by_role("link", name="a customer").click()
    axe(page)
    page.get_by_label("Name").fill("Sigrun Tveit")
    page.get_by_label("fresh").check()
    page.get_by_role("button", name="Write down this customer").click()
    expect(page.locator("h1")).to_have_text("Sigrun Tveit")
    page.get_by_role("link", name="Write down a reel of Sigrun Tveit").click()
    axe(page)
    page.get_by_label("What stands on it").fill("Brekkås 8/9")
    page.get_by_role("button", name="Write down this reel").click()
    expect(page.locator("h1")).to_have_text("Brekkås 8/9, of Sigrun Tveit")
    expect(page.locator("main")).to_contain_text("it has not been here yet")
