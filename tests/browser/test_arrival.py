"""The arrival in a real browser: by thumb on a phone, by keyboard at a desk, with and without scripts."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from spoolwright.shop.acts.add_customer import add_customer
from spoolwright.shop.acts.receive_parcel import ArrivingReel, Envelope, receive_parcel
from spoolwright.shop.questions.by_number import visit_tagged
from tests.browser import the_line
from tests.shop import walk

SHOTS = Path("test-results")
THUMB = 48  # CSS pixels, of the look
TOO_LOW = """least => [...document.querySelectorAll('main button, main input:not([type=hidden], [type=radio],'
    + '[type=checkbox]), main select, main textarea, main .choice, main summary')]
    .filter(e => e.offsetParent && e.getBoundingClientRect().height < least - 0.5).map(e => e.outerHTML)"""


def shoot(page: Page, name: str) -> None:
    SHOTS.mkdir(exist_ok=True)
    page.screenshot(path=SHOTS / f"arrival-{name}.png", full_page=True)


@pytest.mark.parametrize(("size", "look"), [("desk", "light"), ("phone", "dark")])
def test_it_is_accessible_and_a_thumb_high(
    new_page: Callable[..., Page], shop: Any, axe: Callable[[Page], None], size: str, look: str
) -> None:
    add_customer(hand=shop.owner, name="Ragna Solbu", address="Moloveien 3")
    page = new_page(size, shop.owner, color_scheme=look)
    page.goto("/arrival/?reels=2")
    page.get_by_label("Whose is it?").press_sequentially("ragna")
    expect(page.get_by_text("Moloveien 3")).to_be_visible()
    for fold in page.locator("summary").all():
        fold.click()
    page.locator("#reel-1").get_by_label("yes").first.check()
    axe(page)
    assert page.evaluate(TOO_LOW, THUMB) == []
    assert page.evaluate("document.documentElement.scrollWidth") <= page.viewport_size["width"]
    shoot(page, f"{size}-{look}")


def test_by_thumb_on_a_phone_a_new_customers_reel_is_written(phone_page: Page, shop: Any) -> None:
    page = phone_page
    page.goto("/arrival/")
    page.get_by_label("Whose is it?").fill("Jonna Fure")
    expect(page.locator("#known")).to_contain_text("A new customer will be written down")
    page.get_by_label("over the counter").check()
    expect(page.get_by_label("Mass of the closed parcel")).to_be_hidden()
    page.get_by_role("button", name="one more: spare spool").click()
    page.get_by_label("What stands on it").fill("Ostrell S71")
    page.get_by_label("What it does wrong").fill("fell into the sea at the pier")
    page.locator(".under-water").get_by_label("yes").check()
    expect(page.locator(".when .turn-not")).to_contain_text("Do not turn the handle")
    hour_ago = page.evaluate("new Date(Date.now() - 36e5).toISOString()")[:16]
    page.get_by_label("When did it come out?").fill(hour_ago)
    page.get_by_label("Photos").set_input_files(
        {"name": "slate.jpg", "mimeType": "image/jpeg", "buffer": walk.PHOTO}
    )
    page.get_by_role("button", name="Write the arrival").click()
    expect(page.locator("h1")).to_have_text("Number 1")
    expect(page.locator(".given .turn-not")).to_contain_text("Do not turn the handle")
    shoot(page, "given-phone")
    page.goto("/")
    expect(page.locator(".reel-line")).to_contain_text("Do not turn the handle")


def test_by_keyboard_a_known_reel_comes_in_again_beside_a_new_one(
    desk_page: Page, shop: Any, axe: Callable[[Page], None]
) -> None:
    gone = walk.everything(shop.bench)
    page = desk_page
    page.goto("/arrival/")
    expect(page.get_by_label("Whose is it?")).to_be_focused()
    page.keyboard.type("solbu")
    page.get_by_label(re.compile("^Ragna Solbu")).focus()
    page.keyboard.press("Space")
    expect(page.get_by_text("Telephone, e-mail and address")).to_be_hidden()
    page.get_by_label(re.compile("^Tarvak 58R5801")).check()
    expect(page.get_by_label("What stands on it")).to_be_hidden()
    page.get_by_role("button", name="One more reel in this parcel").press("Enter")
    expect(page.get_by_label("reel", exact=True)).to_have_value("2")
    second = page.locator("#reel-2")
    expect(second.get_by_text("Which reel is it?")).to_be_visible()
    second.get_by_label("What stands on it").fill("Tarvak 52")
    axe(page)
    shoot(page, "two-desk")
    page.get_by_role("button", name="Write the arrival").press("Enter")
    expect(page.locator("h1")).to_have_text("Numbers 2 and 3")
    assert visit_tagged(2).reel_id == gone.reel_id


def test_everything_typed_survives_a_reload_and_two_reels_stay_two(desk_page: Page) -> None:
    page = desk_page
    page.goto("/arrival/")
    page.get_by_role("button", name="one more: reel").click()
    page.locator("#reel-2").get_by_label("What it does wrong").fill("slips in the cold")
    page.get_by_label("Carrier").fill("Havnepost")
    page.get_by_label("Whose is it?").fill("Sigrun Tveit")
    for address in ("?reels=2", ""):
        page.goto(f"/arrival/{address}")
        expect(page).to_have_url(re.compile(r"/arrival/\?reels=2$"))
        expect(page.get_by_label("Carrier")).to_have_value("Havnepost")
        expect(page.locator("#known")).to_contain_text("Nobody of that name is known yet")
        expect(page.locator("#reel-2").get_by_label("What it does wrong")).to_have_value("slips in the cold")
    page.get_by_role("button", name="one fewer: reel").click()
    expect(page.locator("#reel-2")).to_be_hidden()


def test_a_lost_connection_keeps_the_page_and_its_photo(
    phone_page: Page, expect_trouble: Callable[[str], None]
) -> None:
    expect_trouble("ERR_INTERNET_DISCONNECTED")
    page = phone_page
    page.goto("/arrival/")
    page.get_by_label("Whose is it?").fill("Peder Lien")
    expect(page.locator("#known")).to_contain_text("Nobody of that name is known yet")
    page.get_by_label("What stands on it").fill("Lumvik 4000")
    page.get_by_label("Photos").set_input_files(
        {"name": "slate.jpg", "mimeType": "image/jpeg", "buffer": walk.PHOTO}
    )
    the_line.lose(page)
    page.get_by_role("button", name="Write the arrival").click()
    expect(page.locator(".kept-words")).to_contain_text("Not sent")
    the_line.find_again(page)
    page.get_by_role("button", name="Send it again").click()
    expect(page.locator("h1")).to_have_text("Number 1")
    page.goto("/arrival/")
    expect(page.get_by_label("Whose is it?")).to_have_value("")


def test_without_scripts_the_whole_way(
    new_page: Callable[..., Page], shop: Any, expect_trouble: Callable[[str], None]
) -> None:
    expect_trouble("422")
    known = walk.arrived(shop.owner).reel.customer
    page = new_page("phone", shop.owner, java_script_enabled=False)
    page.goto("/arrival/")
    page.get_by_label("Whose is it?").fill("ragna")
    page.get_by_label("What stands on it").fill("Pellmar 70")
    page.get_by_role("button", name="Look for this name").click()
    page.get_by_label(re.compile("^Ragna Solbu")).check()
    page.get_by_label("Mass of the reel").fill("338")
    page.get_by_role("button", name="Write the arrival").click()
    expect(page.locator(".fault-list")).to_contain_text("Nothing was written")
    page.get_by_label("with its line").check()
    page.get_by_role("button", name="Write the arrival").click()
    expect(page.locator("h1")).to_have_text("Number 2")
    assert visit_tagged(2).reel.customer_id == known.pk


def test_a_reel_that_its_customer_waits_for_needs_three_answers(desk_page: Page, shop: Any) -> None:
    page = desk_page
    page.goto("/arrival/")
    page.get_by_label("Whose is it?").fill("Peder Lien")
    page.get_by_label("over the counter").check()
    page.get_by_label("The customer waits for it").check()
    expect(page.get_by_text("on the mat", exact=True)).to_be_hidden()
    expect(page.get_by_label("Mass of the reel")).to_be_hidden()
    shoot(page, "waiting-desk")
    page.get_by_label("What stands on it").fill("Lumvik 4000")
    page.get_by_label("What it does wrong").fill("wind knots")
    page.get_by_role("button", name="Write the arrival").click()
    expect(page.locator("h1")).to_have_text("Number 1")
    page.goto("/")
    expect(page.locator(".reel-line")).to_contain_text("The customer is waiting in the shop")


def test_a_second_hand_is_told_that_the_reel_is_here_already(
    desk_page: Page, shop: Any, expect_trouble: Callable[[str], None]
) -> None:
    expect_trouble("422")
    gone = walk.everything(shop.bench)
    page = desk_page
    page.goto("/arrival/")
    page.get_by_label("Whose is it?").fill("solbu")
    page.get_by_label(re.compile("^Ragna Solbu")).check()
    page.get_by_label(re.compile("^Tarvak 58R5801")).check()
    receive_parcel(
        hand=shop.bench, customer=gone.reel.customer, envelope=Envelope(), reels=[ArrivingReel(gone.reel)]
    )
    page.get_by_role("button", name="Write the arrival").click()
    expect(page.locator(".fault-list")).to_contain_text("Choose once more")
    expect(page.locator(".which")).to_contain_text("Here already: Tarvak 58R, number 2, on the mat")
