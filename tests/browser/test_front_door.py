"""The front door in a real browser: who comes in and how, and what is too large to carry."""

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from spoolwright.shop.acts.make_sign_in_link import make_sign_in_link
from tests.people import PASSWORD


@pytest.mark.parametrize(("size", "scheme"), [("desk", "light"), ("phone", "dark")])
def test_the_door_is_accessible_at_both_widths_and_in_both_lights(
    new_page: Callable[..., Page], axe: Callable[[Page], None], size: str, scheme: str
) -> None:
    page = new_page(size, color_scheme=scheme)
    page.goto("/sign-in/")
    expect(page.get_by_role("heading", level=1)).to_be_visible()
    axe(page)
    assert page.evaluate("document.documentElement.scrollWidth <= window.innerWidth"), "it scrolls sideways"


def test_a_password_opens_it_with_the_keyboard_alone(stranger_page: Page, shop: Any) -> None:
    stranger_page.goto("/sign-in/?next=/find/")
    stranger_page.get_by_label("Your name at the door").focus()
    stranger_page.keyboard.type(shop.owner.username)
    stranger_page.keyboard.press("Tab")
    stranger_page.keyboard.type(PASSWORD)
    stranger_page.keyboard.press("Enter")
    expect(stranger_page).to_have_url(f"{shop.address}/find/")


def try_password(page: Page, shop: Any, password: str) -> int:
    page.get_by_label("Your name at the door").fill(shop.owner.username)
    page.get_by_label("Password").fill(password)
    with page.expect_response(lambda answer: answer.request.method == "POST") as answered:
        page.keyboard.press("Enter")
    page.wait_for_load_state()
    return answered.value.status


def test_a_wrong_password_keeps_the_name_and_five_shut_the_door(
    stranger_page: Page, shop: Any, expect_trouble: Callable[[str], None]
) -> None:
    for status in ("422", "429"):
        expect_trouble(f"status of {status}")
    stranger_page.goto("/sign-in/")
    assert [try_password(stranger_page, shop, "not the password") for _ in range(4)] == [422] * 4
    expect(stranger_page.get_by_role("alert").first).to_be_visible()
    assert stranger_page.get_by_label("Your name at the door").input_value() == shop.owner.username
    assert try_password(stranger_page, shop, "not the password") == 429
    expect(stranger_page.get_by_role("heading", level=1)).to_contain_text("shut")
    stranger_page.goto("/sign-in/")
    assert try_password(stranger_page, shop, PASSWORD) == 429, "the right one does not open it meanwhile"


def test_a_link_signs_in_once(
    new_page: Callable[..., Page], shop: Any, expect_trouble: Callable[[str], None]
) -> None:
    expect_trouble("status of 422")
    token = make_sign_in_link(hand=None, person=shop.owner)
    first, second = new_page(), new_page()
    for page, status in ((first, 302), (second, 422)):
        page.goto(f"/sign-in/{token}/")
        with page.expect_response(lambda answer: answer.request.method == "POST") as answered:
            page.locator("main").get_by_role("button").click()
        assert answered.value.status == status
    expect(second.get_by_role("alert")).to_contain_text("does not open any more")
    first.goto("/find/")
    expect(first.get_by_role("heading", level=1)).to_be_visible()
    assert first.url.endswith("/find/")


def test_the_policy_holds_in_the_browser(stranger_page: Page, expect_trouble: Callable[[str], None]) -> None:
    """A script that found its way into the page does not run, and the browser says so."""
    expect_trouble("Content Security Policy")
    expect_trouble("violates the following")
    stranger_page.goto("/sign-in/")
    stranger_page.evaluate(
        "() => { const s = document.createElement('script'); s.textContent = 'window.ran = 1';"
        "document.body.append(s); }"
    )
    assert stranger_page.evaluate("window.ran") is None


def test_a_file_of_200_mb_is_refused_with_a_page_and_not_with_a_dead_line(
    desk_page: Page, tmp_path: Path, expect_trouble: Callable[[str], None]
) -> None:
    expect_trouble("status of 413")
    large = tmp_path / "a whole day of video.mp4"
    with large.open("wb") as file:
        file.truncate(200 * 1024 * 1024)
    desk_page.goto("/find/")
    desk_page.evaluate(
        "() => { const f = document.createElement('form'); f.method = 'post'; f.id = 'large';"
        "f.enctype = 'multipart/form-data'; f.action = '/units/'; const i = document.createElement('input');"
        "i.type = 'file'; i.name = 'file'; f.append(i); document.body.append(f); }"
    )
    desk_page.locator("#large input").set_input_files(large)
    with desk_page.expect_navigation(timeout=60_000):
        desk_page.evaluate("document.getElementById('large').submit()")
    expect(desk_page.get_by_role("alert")).to_contain_text("200 MB")
