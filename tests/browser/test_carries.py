"""What a reel carries, in a real browser: slid and typed, at both widths."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from spoolwright.shop.acts.send_quote import OfferedWork
from tests.pages import pier_reel
from tests.shop import walk

RESULTS = Path(__file__).parents[2] / "test-results"


@pytest.fixture
def tag(shop: Any) -> int:
    """The pier reel at the bench, with one option that changes its drag."""
    visit = pier_reel.on_the_mat(shop.owner)
    works = [OfferedWork("carbon-drag-set", "Carbon set", 20)]
    walk.quoted(shop.owner, visit, replace(walk.option(), works=works))
    return int(visit.tag)


@pytest.mark.parametrize("size", ["desk", "phone"])
def test_the_ladder_follows_what_is_slid_and_typed(
    new_page: Callable[..., Page], shop: Any, tag: int, axe: Callable[[Page], None], size: str
) -> None:
    page = new_page(size, shop.owner)
    page.goto(f"/diary/{tag}/carries/")
    ladder = page.locator(".on-phone .load-ladder" if size == "phone" else ".at-desk .load-ladder")
    expect(ladder).to_be_visible()
    page.get_by_text("Put right", exact=True).first.click()
    expect(page.locator("#ladder")).to_contain_text("Broken outlines: before these works.")
    slider = page.get_by_label("Star, from free", exact=True)
    slider.focus()
    slider.press("PageDown")
    expect(ladder.locator(".setting")).to_have_count(1)
    expect(slider).to_be_focused()
    expect(page.locator("#id_turns")).to_have_value("4.6")
    fill = page.get_by_label("or typed: Line on the spool")
    fill.fill("plenty")
    fill.press("Tab")
    expect(page.locator("#id_fill_faults")).to_contain_text("plenty")
    expect(fill).to_have_value("plenty")
    fill.fill("50")
    fill.press("Tab")
    expect(page.get_by_label("Line on the spool", exact=True)).to_have_value("50")
    expect(page.locator("#id_fill_faults")).not_to_contain_text("plenty")
    expect(page.locator("#pictures a[aria-current]")).to_have_attribute("href", re.compile("fill=50"))
    page.wait_for_function("!document.querySelector('[data-chart]:not([data-drawn])')")
    axe(page)
    assert page.evaluate("document.documentElement.scrollWidth") <= page.viewport_size["width"]
    assert slider.bounding_box()["height"] >= 44
    RESULTS.mkdir(exist_ok=True)
    page.screenshot(path=RESULTS / f"carries-{size}.png", full_page=True, caret="initial")


def test_it_works_without_any_script(new_page: Callable[..., Page], shop: Any, tag: int) -> None:
    page = new_page("phone", shop.owner, java_script_enabled=False)
    page.goto(f"/diary/{tag}/carries/")
    page.get_by_label("Line on it").fill("nylon 0.40 mm")
    page.get_by_label("or typed: Line on the spool").fill("60 %")
    page.get_by_role("button", name="Draw it so").click()
    expect(page.locator("#steps")).to_contain_text("Line at its knot")
    expect(page.locator("#id_fill_said")).to_have_text("60 %")
