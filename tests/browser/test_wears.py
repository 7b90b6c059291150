"""What wears, in a real browser: slid and typed, at both widths."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from tests.pages import pier_reel

RESULTS = Path(__file__).parents[2] / "test-results"


@pytest.fixture
def tag(shop: Any) -> int:
    """The pier reel at the bench."""
    return int(pier_reel.on_the_mat(shop.owner).tag)


@pytest.mark.parametrize("size", ["desk", "phone"])
def test_sand_and_cold_move_the_pictures(
    new_page: Callable[..., Page], shop: Any, tag: int, axe: Callable[[Page], None], size: str
) -> None:
    page = new_page(size, shop.owner)
    page.goto(f"/diary/{tag}/wears/")
    words = page.locator("#depth p").first
    expect(words).to_contain_text("grit in 1% of the winding")
    slider = page.get_by_label("Wound with sand in the works", exact=True)
    slider.focus()
    slider.press("PageUp")
    expect(words).not_to_contain_text("grit in 1% of the winding")
    expect(slider).to_be_focused()
    page.get_by_text("dry", exact=True).click()
    expect(words).to_contain_text("dry")
    cold = page.get_by_label("or typed: A morning at")
    cold.fill("-10")
    cold.press("Tab")
    expect(page.locator("#cold")).to_contain_text("At -10 °C")
    expect(page.locator("#pictures a[aria-current]")).to_contain_text("what wears")
    page.locator("#parts summary").first.click()
    expect(page.locator("#parts details[open] li").first).to_contain_text("limit:")
    page.wait_for_function("!document.querySelector('[data-chart]:not([data-drawn])')")
    axe(page)
    assert page.evaluate("document.documentElement.scrollWidth") <= page.viewport_size["width"]
    RESULTS.mkdir(exist_ok=True)
    page.screenshot(path=RESULTS / f"wears-{size}.png", full_page=True, caret="initial")
