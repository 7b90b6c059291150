"""The proof in a real browser: looked at, written by one hand on the phone, signed by another at the desk.

Readings: the trade handbook, chapter 9, scenario 1.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from spoolwright.shop.records.proof import Proof
from tests.pages import pier_reel
from tests.shop import walk

SHOTS = Path("test-results")


@pytest.fixture
def visit(shop: Any) -> Any:
    return pier_reel.ready_to_prove(shop.bench, pier_reel.signed_in(shop.bench))


def address(visit: Any) -> str:
    return f"/visits/{visit.tag}/proof/"


def shoot(page: Page, name: str) -> None:
    SHOTS.mkdir(exist_ok=True)
    page.screenshot(path=SHOTS / f"proof-{name}.png", full_page=True)


@pytest.mark.parametrize(("size", "look"), [("desk", "light"), ("phone", "dark")])
def test_it_is_accessible_drawn_and_fits(
    new_page: Callable[..., Page], shop: Any, visit: Any, axe: Callable[[Page], None], size: str, look: str
) -> None:
    page = new_page(size, shop.bench, color_scheme=look)
    page.goto(address(visit))
    page.wait_for_selector("body[data-charts-drawn='5']")
    assert page.locator("[data-chart][data-drawn='no']").count() == 0
    axe(page)
    assert page.evaluate("document.documentElement.scrollWidth") <= page.viewport_size["width"]
    shoot(page, f"{size}-{look}")


def test_one_hand_writes_it_and_another_signs(new_page: Callable[..., Page], shop: Any, visit: Any) -> None:
    torbal = new_page("phone", shop.bench)
    torbal.goto(address(visit))
    torbal.get_by_label("Level wind: ten full runs").check()
    torbal.get_by_label("The empty tray photographed").check()
    torbal.get_by_label("A word about it").fill("Runs like new.")
    torbal.get_by_role("button", name="Write the proof").click()
    expect(torbal.locator(".said")).to_contain_text("A second person winds it blind")
    expect(torbal.locator("main")).to_contain_text("Whoever wrote it does not sign it")
    ingjerd = new_page("desk", shop.owner)
    ingjerd.goto(address(visit))
    ingjerd.get_by_role("button", name="I wound it blind, and sign").focus()
    ingjerd.keyboard.press("Enter")
    expect(ingjerd.locator(".gate")).to_contain_text("winds it blind and signs: Ingjerd Vannes")
    paper = ingjerd.get_by_role("link", name="The proof on paper").get_attribute("href")
    assert ingjerd.request.get(paper).headers["content-type"] == "application/pdf"
    assert [check.key for check in Proof.objects.get().checks.all()] == ["level_wind", "tray"]
    shoot(ingjerd, "signed-desk")


def test_a_reading_taken_meanwhile_is_seen_before_it_is_written(
    phone_page: Page, shop: Any, visit: Any, expect_trouble: Callable[[str], None]
) -> None:
    expect_trouble("422")
    page = phone_page
    page.goto(address(visit))
    page.get_by_label("A word about it").fill("Runs like new.")
    pier_reel.read(shop.bench, visit, "pull_full", 5.0 * walk.G, 0.5, "force", **pier_reel.HALF)
    page.get_by_role("button", name="Write the proof").click()
    expect(page.locator(".fault-list")).to_contain_text("Readings were taken or struck since")
    expect(page.get_by_label("A word about it")).to_have_value("Runs like new.")
    expect(page.locator("main")).to_contain_text("Failed.")


def test_without_scripts_the_numbers_stand_and_it_is_written(
    new_page: Callable[..., Page], shop: Any, visit: Any
) -> None:
    page = new_page("desk", shop.bench, java_script_enabled=False)
    page.goto(address(visit))
    expect(page.locator("main")).to_contain_text("6.90 kg ± 0.10 kg")
    page.get_by_role("button", name="Write the proof").click()
    expect(page.locator(".said")).to_contain_text("Written.")
