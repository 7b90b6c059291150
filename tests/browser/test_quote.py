"""The quote in a real browser: put together at a desk, shown on a phone, asked by keyboard, with no script.

Sums: the trade handbook, chapter 9, scenario 1.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from spoolwright.shop.records.quote import Quote
from tests.pages import pier_reel
from tests.shop import walk

SHOTS = Path("test-results")
THUMB = 48
TOO_LOW = """least => [...document.querySelectorAll('main button, main select,'
    + 'main input:not([type=hidden], [type=checkbox]), main textarea, main .tick, '
    + 'main .choice, main summary')]
    .filter(e => e.offsetParent && e.getBoundingClientRect().height < least - 0.5).map(e => e.outerHTML)"""


@pytest.fixture
def visit(shop: Any) -> Any:
    return pier_reel.found(shop.bench)


def address(visit: Any) -> str:
    return f"/visits/{visit.tag}/quote/"


def total(page: Page, name: str) -> Any:
    return page.get_by_role("region", name=name).locator("dd.sum")


def shoot(page: Page, name: str) -> None:
    SHOTS.mkdir(exist_ok=True)
    page.screenshot(path=SHOTS / f"quote-{name}.png", full_page=True)


def drawn(page: Page, count: int) -> None:
    page.wait_for_selector(f"body[data-charts-drawn='{count}']")
    assert page.locator("[data-chart][data-drawn='no']").count() == 0


@pytest.mark.parametrize(("size", "look"), [("desk", "light"), ("phone", "dark")])
def test_both_pages_are_accessible_a_thumb_high_and_fit(
    new_page: Callable[..., Page], shop: Any, visit: Any, axe: Callable[[Page], None], size: str, look: str
) -> None:
    page = new_page(size, shop.bench, color_scheme=look)
    page.goto(address(visit))
    for fold in page.locator("main summary").all():
        fold.click()
    axe(page)
    assert page.evaluate(TOO_LOW, THUMB) == []
    assert page.evaluate("document.documentElement.scrollWidth") <= page.viewport_size["width"]
    shoot(page, f"making-{size}-{look}")
    page.get_by_role("button", name="Ask the customer").click()
    expect(page.locator("h1")).to_have_text("What we would do to your Tarvak 58R")
    drawn(page, 3)
    axe(page)
    assert page.evaluate("document.documentElement.scrollWidth") <= page.viewport_size["width"]
    shoot(page, f"customer-{size}-{look}")


def test_sums_and_predictions_follow_the_ticks_while_one_looks(desk_page: Page, visit: Any) -> None:
    page = desk_page
    page.goto(address(visit))
    expect(total(page, "Improve")).to_have_text("1,104.00\u00a0kr")
    pawl = page.get_by_role("group", name="New level-wind pawl")
    pawl.get_by_label("improve").uncheck()
    expect(total(page, "Improve")).to_have_text("1,009.00\u00a0kr")
    expect(total(page, "Put right")).to_have_text("744.00\u00a0kr")
    pawl.get_by_label("pawl", exact=True).fill("80 kr")
    pawl.get_by_label("improve").check()
    expect(total(page, "Improve")).to_have_text("1,089.00\u00a0kr")
    ratio = page.get_by_role("region", name="Improve").get_by_role("group", name="Start-up ratio")
    expect(ratio.get_by_label("at most")).to_have_value("1.14")
    page.get_by_role("group", name="Carbon drag set, greased").get_by_label("improve").uncheck()
    expect(ratio).to_have_count(0)
    pawl.get_by_label("pawl", exact=True).fill("cheap")
    pawl.get_by_label("pawl", exact=True).blur()
    expect(page.locator("#outcomes .fault-list")).to_contain_text("is not an amount")


def test_by_keyboard_alone_it_is_asked_and_what_was_typed_goes_along(desk_page: Page, visit: Any) -> None:
    page = desk_page
    page.goto(address(visit))
    page.get_by_label("A word to the customer").focus()
    page.keyboard.type("We can begin on Monday.")
    page.reload()
    expect(page.get_by_label("A word to the customer")).to_have_value("We can begin on Monday.")
    expect(total(page, "Improve")).to_have_text("1,104.00\u00a0kr")
    page.get_by_role("button", name="Ask the customer").focus()
    page.keyboard.press("Enter")
    expect(page.locator("main")).to_contain_text("We can begin on Monday.")
    expect(page.locator(".finding").first).to_be_attached()
    quote = Quote.objects.get()
    assert [option.total_minor for option in quote.options.all()][:2] == [744_00, 1104_00]


def test_without_scripts_it_works_out_again_and_asks(
    new_page: Callable[..., Page], shop: Any, visit: Any
) -> None:
    page = new_page("phone", shop.bench, java_script_enabled=False)
    page.goto(address(visit))
    page.get_by_role("group", name="New spool bearings, stainless").get_by_label("improve").uncheck()
    page.get_by_role("button", name="Work it out again").click()
    expect(total(page, "Improve")).to_have_text("934.00\u00a0kr")
    page.get_by_role("button", name="Ask the customer").click()
    expect(page.locator("main")).to_contain_text("934.00\u00a0kr")
    assert Quote.objects.get().options.all()[1].total_minor == 934_00


def test_an_extra_on_the_phone_is_65_more_and_the_old_answer_stays(
    phone_page: Page, shop: Any, visit: Any
) -> None:
    page = phone_page
    page.goto(address(visit))
    page.get_by_role("button", name="Ask the customer").click()
    expect(page.locator("h1")).to_contain_text("What we would do to your")
    pier_reel.answered(shop.bench, Quote.objects.get())
    walk.write_finding(
        hand=shop.bench, visit=visit, part="idler cog", fault="F16", evidence="split, seen at the strip-down"
    )
    page.goto(address(visit))
    expect(page.locator("main")).to_contain_text("“yes, up to 1,200”; cap 1,200.00\u00a0kr")
    expect(total(page, "Found since")).to_have_text("65.00\u00a0kr")
    expect(page.locator("main")).to_contain_text("1,169.00\u00a0kr")
    shoot(page, "extra-phone")
    page.get_by_role("button", name="Ask the customer").click()
    expect(page.locator("h1")).to_have_text("We found something more in your Tarvak 58R")
    expect(page.locator("main")).to_contain_text("together with what you said yes to before")
    shoot(page, "extra-customer-phone")


def test_on_real_paper_the_customers_page_has_no_buttons(desk_page: Page, visit: Any) -> None:
    page = desk_page
    page.goto(address(visit))
    page.get_by_role("button", name="Ask the customer").click()
    expect(page.get_by_role("link", name="The paper to print")).to_be_visible()
    paper = page.get_by_role("link", name="The paper to print").get_attribute("href")
    answer = page.request.get(paper)
    assert answer.headers["content-type"] == "application/pdf"
    page.emulate_media(media="print")
    expect(page.get_by_role("link", name="Write the answer")).to_be_hidden()
    expect(page.get_by_role("link", name="The paper to print")).to_be_hidden()
