"""A long run, in a real browser: slid and typed, at both widths."""

from __future__ import annotations

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
def test_the_heat_follows_what_is_slid_and_typed(
    new_page: Callable[..., Page], shop: Any, tag: int, axe: Callable[[Page], None], size: str
) -> None:
    page = new_page(size, shop.owner)
    page.goto(f"/diary/{tag}/long-run/?distance=100+m&pull=2+kg")
    heat = page.locator("#heat")
    expect(heat).to_contain_text("100 m of line in 25 s against")
    distance = page.get_by_label("or typed: How far it runs")
    distance.fill("40")
    distance.press("Tab")
    expect(heat).to_contain_text("40 m of line in 10 s against")
    slider = page.get_by_label("The fish runs at", exact=True)
    slider.focus()
    slider.press("ArrowRight")
    expect(page.locator("#id_speed")).to_have_value("4.5")
    expect(slider).to_be_focused()
    expect(heat).not_to_contain_text("in 10 s against")
    page.get_by_text("by its star", exact=True).click()
    expect(page.locator("#judder")).to_contain_text("lets go at")
    page.wait_for_function("!document.querySelector('[data-chart]:not([data-drawn])')")
    axe(page)
    assert page.evaluate("document.documentElement.scrollWidth") <= page.viewport_size["width"]
    RESULTS.mkdir(exist_ok=True)
    page.screenshot(path=RESULTS / f"long-run-{size}.png", full_page=True, caret="initial")
