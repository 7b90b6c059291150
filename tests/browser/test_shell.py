"""The shell in a real browser: the door, the keys, what was typed, the finder, the charts, both looks."""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Any

import pytest
from django.template import Context, Template
from playwright.sync_api import Page, expect

from spoolwright.papers import charts
from tests.browser import the_line
from tests.people import PASSWORD

ROOMS = ("/find/", "/find/?q=zzz", "/shop/", "/shop/change/", "/shop/people/", "/shop/people/torbal/")
THUMB = 48  # CSS pixels, of the look; WCAG 2.2, 2.5.8 asks for 24
LOWER_THAN = """least => [...document.querySelectorAll(
    'button, input:not([type=hidden], [type=radio], [type=checkbox]), select, textarea, .way-round a, .choice'
)].filter(e => e.offsetParent && e.getBoundingClientRect().height < least - 0.5).map(e => e.outerHTML)"""


@pytest.mark.parametrize(("size", "look"), [("desk", "light"), ("phone", "dark")])
def test_every_room_of_the_shell_is_accessible(
    new_page: Callable[..., Page], shop: Any, axe: Callable[[Page], None], size: str, look: str
) -> None:
    page = new_page(size, shop.owner, color_scheme=look)
    for room in ROOMS:
        page.goto(room)
        expect(page.locator("h1")).to_be_visible()
        axe(page)
        assert page.evaluate("document.documentElement.scrollWidth") <= page.viewport_size["width"]


@pytest.mark.parametrize("size", ["desk", "phone"])
def test_the_front_door_is_accessible(
    new_page: Callable[..., Page], axe: Callable[[Page], None], size: str
) -> None:
    page = new_page(size)
    for door in ("/sign-in/", "/sign-in/no-such-token/"):
        page.goto(door)
        axe(page)


def test_buttons_fields_and_ways_are_a_thumb_high(phone_page: Page) -> None:
    for room in ("/shop/", "/shop/people/", "/shop/change/", "/find/"):
        phone_page.goto(room)
        low = phone_page.evaluate(LOWER_THAN, THUMB)
        assert low == []


def test_the_whole_way_in_by_keyboard_alone(stranger_page: Page, shop: Any) -> None:
    page = stranger_page
    page.goto("/shop/")
    expect(page).to_have_url(re.compile(r"/sign-in/\?next=/shop/"))
    page.keyboard.press("Tab")
    expect(page.locator(".skip")).to_be_focused()
    page.get_by_label("Your name at the door").focus()
    page.keyboard.type("ingjerd")
    page.keyboard.press("Tab")
    page.keyboard.type(PASSWORD)
    page.keyboard.press("Enter")
    expect(page).to_have_url(re.compile("/shop/$"))


def test_a_refused_form_takes_the_focus_and_keeps_what_was_typed(
    desk_page: Page, expect_trouble: Callable[[str], None]
) -> None:
    expect_trouble("422")
    desk_page.goto("/shop/change/")
    desk_page.get_by_label("One hour of work").fill("a lot")
    desk_page.get_by_role("button", name="Write the shop’s settings").click()
    expect(desk_page.locator(".fault-list")).to_be_focused()
    field = desk_page.get_by_label("One hour of work")
    expect(field).to_have_value("a lot")
    expect(field).to_have_attribute("aria-invalid", "true")
    described = desk_page.evaluate("e => e.getAttribute('aria-describedby')", field.element_handle())
    assert "Accepted" in desk_page.locator(f"#{described.split()[-1]}").inner_text()


def test_what_was_typed_survives_a_reload_and_can_be_cleared(desk_page: Page) -> None:
    desk_page.goto("/shop/change/")
    desk_page.get_by_label("Name of the shop").fill("Kvie & Vannes")
    desk_page.get_by_label("on each line").check()
    desk_page.reload()
    expect(desk_page.get_by_label("Name of the shop")).to_have_value("Kvie & Vannes")
    expect(desk_page.get_by_label("on each line")).to_be_checked()
    expect(desk_page.locator(".kept-words")).to_contain_text("was kept and is back in its place")
    desk_page.get_by_role("button", name="Clear it").click()
    expect(desk_page.get_by_label("Name of the shop")).to_have_value("Our workshop")
    desk_page.reload()
    expect(desk_page.get_by_label("Name of the shop")).to_have_value("Our workshop")


def test_a_lost_connection_keeps_the_page_and_sends_later(
    desk_page: Page, expect_trouble: Callable[[str], None]
) -> None:
    expect_trouble("ERR_INTERNET_DISCONNECTED")
    desk_page.goto("/shop/change/")
    desk_page.get_by_label("Name of the shop").fill("Kvie & Vannes")
    the_line.lose(desk_page)
    desk_page.get_by_role("button", name="Write the shop’s settings").click()
    expect(desk_page.locator(".kept-words")).to_contain_text("Not sent")
    expect(desk_page.locator(".kept-words")).to_be_in_viewport()
    expect(desk_page.get_by_role("button", name="Send it again")).to_be_focused()
    expect(desk_page.get_by_label("Name of the shop")).to_have_value("Kvie & Vannes")
    the_line.find_again(desk_page)
    desk_page.get_by_role("button", name="Send it again").click()
    expect(desk_page.locator("h1")).to_have_text("Kvie & Vannes")
    expect(desk_page.locator(".said")).to_contain_text("written")
    desk_page.goto("/shop/change/")
    expect(desk_page.locator(".kept-words")).to_have_count(0)


def test_passwords_and_hidden_fields_are_never_kept(desk_page: Page) -> None:
    desk_page.goto("/shop/people/torbal/")
    desk_page.get_by_label("A new password").fill("a-secret-nobody-keeps")
    desk_page.get_by_label("Name beside what is written").fill("T. Kvie")
    kept = desk_page.evaluate("JSON.stringify(localStorage)")
    assert "T. Kvie" in kept
    assert "a-secret-nobody-keeps" not in kept
    assert "csrf" not in kept


def test_one_key_finds_and_one_shows_the_keys(desk_page: Page) -> None:
    desk_page.goto("/shop/")
    desk_page.keyboard.press("?")
    expect(desk_page.locator("#keys")).to_be_visible()
    expect(desk_page.locator("#keys dl")).to_contain_text("Find")
    desk_page.keyboard.press("Escape")
    expect(desk_page.locator("#keys")).to_be_hidden()
    desk_page.keyboard.press("/")
    expect(desk_page).to_have_url(re.compile("/find/$"))
    expect(desk_page.get_by_role("searchbox")).to_be_focused()
    desk_page.keyboard.type("/?h")
    expect(desk_page.get_by_role("searchbox")).to_have_value("/?h")


def test_single_keys_can_be_switched_off(desk_page: Page) -> None:
    desk_page.goto("/shop/")
    desk_page.get_by_role("button", name="keys").click()
    desk_page.get_by_label("Do not listen to single keys").check()
    desk_page.get_by_role("button", name="Shut this").click()
    desk_page.keyboard.press("/")
    expect(desk_page).to_have_url(re.compile("/shop/$"))


def test_the_finder_answers_while_one_types(desk_page: Page, shop: Any) -> None:
    from spoolwright.shop.acts.add_customer import add_customer

    add_customer(hand=shop.owner, name="Ragna Solbu", address="Grånesvåg")
    desk_page.goto("/find/")
    desk_page.get_by_role("searchbox").press_sequentially("granesv")
    expect(desk_page.locator("#found mark")).to_have_text("Grånesvåg")
    expect(desk_page.locator("#found")).to_contain_text("Ragna Solbu")


def test_a_person_chooses_look_and_units_and_they_stay(desk_page: Page) -> None:
    desk_page.goto("/shop/")
    desk_page.get_by_role("button", name="lamp").click()
    expect(desk_page.locator("html")).to_have_attribute("data-look", "dark")
    expect(desk_page).to_have_url(re.compile("/shop/$"))
    ground = desk_page.evaluate("getComputedStyle(document.documentElement).backgroundColor")
    assert ground == "rgb(29, 35, 38)"  # --paper of the slate, house/paper.css
    desk_page.get_by_role("button", name="show imperial").click()
    expect(desk_page.get_by_role("button", name="show metric")).to_be_visible()


def test_a_link_is_shown_once_and_signs_in_once(
    desk_page: Page, new_page: Callable[..., Page], shop: Any, expect_trouble: Callable[[str], None]
) -> None:
    expect_trouble("422")
    desk_page.goto("/shop/people/")
    desk_page.get_by_role("button", name="Make Torbal Kvie a link").click()
    link = desk_page.get_by_label("The link").input_value()
    phone = new_page("phone")
    phone.goto(f"{link}?next=/shop/people/")
    phone.goto(
        f"{link}?next=/shop/people/"
    )  # a mail program that opens the link to look at it does not use it up
    phone.get_by_role("button", name="Sign me in").click()
    expect(phone.get_by_role("button", name="sign out")).to_be_visible()
    other = new_page("desk")
    other.goto(link)
    other.get_by_role("button", name="Sign me in").click()
    expect(other.get_by_role("alert")).to_contain_text("does not open any more")


def test_no_page_grows_a_scroll_bar_at_large_text(desk_page: Page) -> None:
    desk_page.set_viewport_size({"width": 320, "height": 700})  # WCAG 2.2, 1.4.10: 320 CSS pixels
    for room in ROOMS:
        desk_page.goto(room)
        assert desk_page.evaluate("document.documentElement.scrollWidth") <= 320


def chart_page(page: Page) -> None:
    """A page of ours with one chart in it, served from our own address under our own policy."""
    times = [n / 20 for n in range(160)]
    forces = [0.0] * 10 + [38.0] + [26.0] * 140 + [0.0] * 9
    drawn = charts.pull_trace(charts.Pull(times, forces, 0.5, 7.5, measured(38.2), measured(25.5)))
    chart = Template("{% load pictures %}{% chart drawn 'trial' %}{% include '_chart_scripts.html' %}")
    served = page.request.get("/find/")
    body = served.text().replace("</main>", chart.render(Context({"drawn": drawn})) + "</main>")
    policy = {"Content-Security-Policy": served.headers["content-security-policy"]}
    page.route(
        "**/chart-trial/",
        lambda route: route.fulfill(body=body, headers={"Content-Type": "text/html"} | policy),
    )
    page.goto("/chart-trial/")


def measured(newtons: float) -> Any:
    from spoolwright.bench.uncertainty import Measured

    return Measured(newtons, 0.5, "force")


@pytest.mark.parametrize(("look", "live"), [("light", "#4a2a80"), ("dark", "#cbb5fa")])  # --live, paper.css
def test_a_chart_is_drawn_in_the_ink_of_the_page(
    new_page: Callable[..., Page], shop: Any, axe: Callable[[Page], None], look: str, live: str
) -> None:
    page = new_page("phone", shop.owner, color_scheme=look)
    chart_page(page)
    expect(page.locator("body")).to_have_attribute("data-charts-drawn", "1")
    chart = page.locator(".chart")
    expect(chart).to_have_attribute("aria-label", re.compile("Pull trace"))
    assert live in chart.locator("svg").evaluate("e => e.outerHTML")
    assert page.evaluate("document.documentElement.scrollWidth") <= 390
    axe(page)
    expect(page.locator("table")).to_be_hidden()
    page.locator("h1").click()
    page.keyboard.press("n")
    expect(page.get_by_role("columnheader", name="pull")).to_be_visible()
    axe(page)
