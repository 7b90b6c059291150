"""How it casts, in a real browser: slid and typed, at both widths."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from spoolwright.pages.casts import ready
from tests.pages import pier_reel

RESULTS = Path(__file__).parents[2] / "test-results"


@pytest.fixture
def tag(shop: Any) -> int:
    """The pier reel at the bench, the cast compiled."""
    assert ready.is_ready(patience=600.0)
    return int(pier_reel.on_the_mat(shop.owner).tag)


@pytest.mark.parametrize("size", ["desk", "phone"])
def test_lead_wind_and_brake_move_the_pictures(
    new_page: Callable[..., Page], shop: Any, tag: int, axe: Callable[[Page], None], size: str
) -> None:
    page = new_page(size, shop.owner)
    page.goto(f"/diary/{tag}/casts/")
    told = page.locator("#path p").nth(1)
    expect(page.locator("#path")).to_contain_text("120 g thrown at 45.0 m/s")
    mass = page.get_by_label("Its mass", exact=True)
    mass.focus()
    mass.press("ArrowRight")
    expect(page.locator("#path")).to_contain_text("125 g thrown at")
    expect(mass).to_be_focused()
    brake = page.get_by_label("or typed: Brake, of its hardest")
    brake.fill("0")
    brake.press("Tab")
    expect(page.locator("#path")).to_contain_text("With the brake at 0 % of its hardest")
    wind = page.get_by_label("or typed: Wind from behind")
    wind.fill("gale")
    wind.press("Tab")
    expect(page.locator(".slider-faults", has_text="gale")).to_be_visible()
    expect(page.locator("#pictures a[aria-current]")).to_contain_text("how it casts")
    page.locator("summary", has_text="What the cast rests on").click()
    expect(page.locator("details[open].rests-on li").first).to_contain_text("Reel sheet")
    page.wait_for_function("!document.querySelector('[data-chart]:not([data-drawn])')")
    axe(page)
    assert page.evaluate("document.documentElement.scrollWidth") <= page.viewport_size["width"]
    expect(told).to_be_visible()
    RESULTS.mkdir(exist_ok=True)
    page.screenshot(path=RESULTS / f"casts-{size}.png", full_page=True, caret="initial")
