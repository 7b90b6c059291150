"""Reel sheets in a real browser: the drawing under thumb and keyboard, a version written by hand."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Locator, Page, expect

from spoolwright.sheets import reel_sheet
from spoolwright.shop.acts.add_sheet_version import add_sheet_version
from tests.unit.papers.section import reels

RESULTS = Path(__file__).parents[2] / "test-results"
TEXT = reel_sheet.shipped()["tarvak-54c"]
WRONG = TEXT.replace('width = "32 mm"', 'width = "-32 mm"')
CHANGED = TEXT.replace('line_level = "2.0 mm"', 'line_level = "2.5 mm"')


@pytest.fixture
def shelf(shop: Any) -> None:
    """The round reels and a bare fly reel; a test that looks at another takes it in itself."""
    texts = reel_sheet.shipped()
    for text in (*(texts[slug] for slug in reels.ROUND), reels.FLY):
        add_sheet_version(hand=shop.owner, toml=text)


def pictured(page: Page, name: str) -> None:
    RESULTS.mkdir(exist_ok=True)
    # A hidden caret is a style of its own, which the page's policy forbids.
    page.screenshot(path=RESULTS / f"{name}.png", full_page=True, caret="initial")


def seen(page: Page, size: str) -> Locator:
    """The one of the two drawings that this window shows."""
    return page.locator(".on-phone svg" if size == "phone" else ".at-desk svg")


@pytest.mark.parametrize(("size", "look"), [("desk", "light"), ("phone", "dark")])
def test_every_page_of_the_sheets_is_accessible(
    new_page: Callable[..., Page], shop: Any, shelf: None, axe: Callable[[Page], None], size: str, look: str
) -> None:
    page = new_page(size, shop.owner, color_scheme=look)
    rooms = {
        "sheets": "/sheets/",
        "sheet": "/sheets/tarvak-54c/?part=bearing-handle",
        "parts": "/sheets/tarvak-54c/parts/",
        "versions": "/sheets/tarvak-54c/versions/",
        "new-version": "/sheets/tarvak-54c/new-version/",
        "fly": "/sheets/brekkas-89/",
    }
    for name, room in rooms.items():
        page.goto(room)
        expect(page.locator("h1")).to_be_visible()
        if page.locator("[data-chart]").count():
            expect(page.locator("body")).to_have_attribute("data-charts-drawn", re.compile("[0-9]"))
        axe(page)
        assert page.evaluate("document.documentElement.scrollWidth") <= page.viewport_size["width"]
        pictured(page, f"reel-sheet-{name}-{size}-{look}")


@pytest.mark.parametrize("size", ["desk", "phone"])
def test_a_reel_of_every_kind_is_drawn_for_both_widths(
    new_page: Callable[..., Page], shop: Any, size: str
) -> None:
    page = new_page(size, shop.owner)
    for slug in ("tarvak-58r", *reels.OTHERS):
        add_sheet_version(hand=shop.owner, toml=reel_sheet.shipped()[slug])
        page.goto(f"/sheets/{slug}/")
        expect(seen(page, size)).to_be_visible()
        name = seen(page, size).locator("text.name").first
        # CSS pixels: the names can be read on a phone at arm's length.
        assert name.evaluate("e => e.getBoundingClientRect().height") >= 11
        pictured(page, f"drawing-{slug}-{size}")


@pytest.mark.parametrize("size", ["desk", "phone"])
def test_a_touched_part_opens_beside_or_below_without_leaving(
    new_page: Callable[..., Page], shop: Any, shelf: None, size: str
) -> None:
    page = new_page(size, shop.owner)
    page.goto("/sheets/tarvak-54c/")
    name = seen(page, size).get_by_text("pinion", exact=True)
    name.tap() if size == "phone" else name.click()
    expect(page.locator("#known h2")).to_have_text("Pinion, 10 teeth")
    expect(page.locator("#known")).to_be_focused()
    expect(page.locator("#known")).to_be_in_viewport()
    expect(page).to_have_url(re.compile(r"part=pinion"))
    expect(seen(page, size).locator(".part.chosen")).to_have_attribute("data-part", "pinion")
    drawing, known = (page.locator(one).bounding_box() or {} for one in ("#drawing", "#known"))
    beside = known["x"] >= drawing["x"] + drawing["width"]
    assert beside if size == "desk" else known["y"] >= drawing["y"] + drawing["height"]
    page.reload()
    expect(page.locator("#known h2")).to_have_text("Pinion, 10 teeth")


def test_a_thumb_that_misses_a_thin_disc_is_given_the_nearest(phone_page: Page, shelf: None) -> None:
    phone_page.goto("/sheets/tarvak-54c/")
    disc = seen(phone_page, "phone").locator('a.part[data-part="drag-7"] path').last
    disc.scroll_into_view_if_needed()
    box = disc.bounding_box() or {}
    phone_page.touchscreen.tap(box["x"] + box["width"] + 5, box["y"] + box["height"] / 2)
    expect(phone_page.locator("#known h2")).to_have_text("Inner eared disc")


def test_the_keyboard_walks_through_the_drawing(desk_page: Page, shelf: None) -> None:
    desk_page.goto("/sheets/tarvak-54c/")
    desk_page.get_by_label("together").focus()
    stops = []
    for _ in range(3):
        desk_page.keyboard.press("Tab")
        key = desk_page.evaluate("document.activeElement.dataset.part")
        title = desk_page.evaluate("document.activeElement.querySelector('title').textContent")
        expect(desk_page.locator("#known h2")).to_have_text(title)
        stops.append(key)
    assert len(set(stops)) == 3
    assert None not in stops


def test_the_slider_draws_the_line_and_the_number_follows(desk_page: Page, shelf: None) -> None:
    desk_page.goto("/sheets/tarvak-54c/")
    slider = desk_page.get_by_label("Line on the spool", exact=True)
    slider.focus()
    for _ in range(5):
        desk_page.keyboard.press("PageDown")
    expect(desk_page.get_by_label("Line level", exact=True)).to_have_value("6.97")
    expect(desk_page.locator("#drawing figcaption")).to_contain_text("50 % of a full spool")
    expect(slider).to_be_focused()
    level = desk_page.get_by_label("Line level", exact=True)
    level.fill("50 mm")
    level.press("Tab")
    expect(desk_page.locator("#level-field .field-error")).to_contain_text("Accepted: 2.00 mm (full)")
    level.fill("2 mm")
    level.press("Tab")
    expect(desk_page.locator("#drawing figcaption")).to_contain_text("The spool is full")
    expect(desk_page.locator("#level-field .field-error")).to_have_count(0)
    expect(slider).to_have_value("100")


def test_sizes_and_the_stack_together_are_one_touch_away(phone_page: Page, shelf: None) -> None:
    phone_page.goto("/sheets/tarvak-58r/")
    phone_page.get_by_text("sizes", exact=True).tap()
    expect(seen(phone_page, "phone").get_by_text("Ø 50.0 mm")).to_be_visible()
    phone_page.get_by_text("together", exact=True).tap()
    expect(seen(phone_page, "phone").locator(".slip")).to_have_count(0)
    pictured(phone_page, "drawing-sizes-together-phone")
    expect(phone_page).to_have_url(re.compile("stack=together"))


def test_a_pull_that_is_asked_for_is_answered_in_words(desk_page: Page, shelf: None) -> None:
    desk_page.goto("/sheets/tarvak-52/")
    desk_page.get_by_label("A pull at a full spool").fill("12 lb")
    desk_page.get_by_role("button", name="Find what reaches it").click()
    expect(desk_page.locator("#target-answer")).to_contain_text("What would have to change")
    desk_page.get_by_label("A pull at a full spool").fill("soft")
    desk_page.get_by_role("button", name="Find what reaches it").click()
    expect(desk_page.locator("#target-answer")).to_contain_text("does not begin with a number")


def test_a_version_is_written_by_hand_from_a_file(
    desk_page: Page,
    shelf: None,
    tmp_path: Path,
    axe: Callable[[Page], None],
    expect_trouble: Callable[[str], None],
) -> None:
    expect_trouble("422")
    wrong, right = tmp_path / "wrong.toml", tmp_path / "right.toml"
    wrong.write_text(WRONG, encoding="utf-8")
    right.write_text(CHANGED, encoding="utf-8")
    desk_page.goto("/sheets/tarvak-54c/")
    desk_page.get_by_role("link", name="write a further version").click()
    field = desk_page.get_by_label("The sheet’s text")
    field.fill("half a thought of mine")
    desk_page.get_by_label("A file").set_input_files(wrong)
    expect(field).to_have_value(WRONG)
    expect(desk_page.get_by_label("what was typed before")).to_have_value("half a thought of mine")
    desk_page.get_by_role("button", name="Look it through").click()
    expect(desk_page.locator(".text-faults")).to_contain_text("spool.width")
    axe(desk_page)
    pictured(desk_page, "reel-sheet-faults")
    desk_page.locator(".text-faults a").click()
    chosen = desk_page.evaluate(
        "() => { const f = document.activeElement; return f.value.slice(f.selectionStart, f.selectionEnd); }"
    )
    assert chosen == 'width = "-32 mm"'
    desk_page.get_by_label("A file").set_input_files(right)
    desk_page.get_by_role("button", name="Look it through").click()
    expect(desk_page.locator(".changes")).to_contain_text("Spool, line level: 2.5 mm in place of 2 mm.")
    pictured(desk_page, "reel-sheet-changes")
    desk_page.get_by_label("What is new in it").fill("measured on three reels")
    desk_page.get_by_role("button", name="Write version 2").click()
    expect(desk_page.locator(".said")).to_contain_text("Version 2 of the Tarvak 54C is written.")
    desk_page.goto("/sheets/tarvak-54c/versions/")
    expect(desk_page.locator(".changes")).to_contain_text("2.5 mm in place of 2 mm")


def test_what_was_typed_into_a_sheet_survives_a_reload(desk_page: Page, shelf: None) -> None:
    desk_page.goto("/sheets/tarvak-54c/new-version/")
    desk_page.get_by_label("The sheet’s text").fill(CHANGED)
    desk_page.reload()
    expect(desk_page.get_by_label("The sheet’s text")).to_have_value(CHANGED)


def test_it_all_works_without_any_script(new_page: Callable[..., Page], shop: Any, shelf: None) -> None:
    page = new_page("phone", shop.owner, java_script_enabled=False)
    page.goto("/sheets/tarvak-54c/")
    page.get_by_label("Line level", exact=True).fill("6 mm")
    page.get_by_role("button", name="Draw it so").click()
    expect(page.locator("#drawing figcaption")).to_contain_text("6.00 mm below the lip")
    page.locator(".parts-by-name summary").click()
    page.locator(".parts-by-name").get_by_role("link", name="Spool shaft", exact=True).click()
    expect(page.locator("#known h2")).to_have_text("Spool shaft")
    expect(page.locator("#drawing figcaption")).to_contain_text("6.00 mm below the lip")
    page.get_by_label("A pull at a full spool").fill("18 lb")
    page.get_by_role("button", name="Find what reaches it").click()
    expect(page.locator("#target-answer")).to_contain_text("star about")
