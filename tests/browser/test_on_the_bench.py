"""The bench in a real browser: every line leads to its diary and straight to its next deed."""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest
from django.utils import timezone
from playwright.sync_api import Page, expect

from spoolwright.bench import pull_trace
from spoolwright.demo import signals
from spoolwright.shop.acts.promise_date import promise_date
from spoolwright.shop.acts.take_pull import Pulled, take_pull
from spoolwright.shop.questions.by_number import visit_tagged
from tests.pages.coming import came
from tests.shop import walk

SHOTS = Path("test-results")


@pytest.fixture
def lying_there(shop: Any) -> None:
    """A dunked reel, one whose customer waits, one that was read and promised, one that was asked about."""
    read = came("Ragna Solbu", needed_by=timezone.localdate() + timedelta(days=5))
    trace = pull_trace.read(signals.pull_trace(seed=4).to_csv())
    pulled = Pulled(trace, pull_trace.analyse(trace, pull_trace.Gauge(accuracy_of_reading=0.005)))
    take_pull(hand=shop.bench, visit=read, pulled=pulled, conditions=walk.PULLS)
    fresh, today = visit_tagged(read.tag), timezone.localdate()
    days = (today + timedelta(days=2), today + timedelta(days=9))
    promise_date(hand=shop.bench, visit=fresh, p50=days[0], p90=days[1], version=fresh.version)
    came("Jonna Fure", "Ostrell S71", under_water_at=timezone.now() - timedelta(hours=1))
    came("Peder Lien", "Lumvik 4000", came_by="walk-in", while_you_wait=True)
    walk.quoted(shop.bench, came("Varg Holmen", "Tarvak 58X"))


@pytest.mark.parametrize(("size", "look"), [("desk", "light"), ("phone", "dark")])
def test_it_is_accessible_and_fits(
    new_page: Callable[..., Page],
    shop: Any,
    lying_there: None,
    axe: Callable[[Page], None],
    size: str,
    look: str,
) -> None:
    page = new_page(size, shop.bench, color_scheme=look)
    page.goto("/")
    expect(page.locator(".reel-line")).to_have_count(4)
    axe(page)
    assert page.evaluate("document.documentElement.scrollWidth") <= page.viewport_size["width"]
    SHOTS.mkdir(exist_ok=True)
    page.screenshot(path=SHOTS / f"bench-{size}-{look}.png", full_page=True)


def test_the_dunked_one_is_first_and_its_words_lead_to_it(desk_page: Page, lying_there: None) -> None:
    desk_page.goto("/")
    first = desk_page.locator(".reel-line").first
    expect(first).to_contain_text("Ostrell S71")
    expect(first).to_contain_text("Do not turn the handle")
    desk_page.get_by_role("link", name=re.compile("number 2, Ostrell S71")).click()
    expect(desk_page).to_have_url(re.compile(r"/#reel-2$"))


def test_a_line_leads_to_its_diary_and_its_deed_to_the_form(desk_page: Page, lying_there: None) -> None:
    desk_page.goto("/")
    desk_page.get_by_role("link", name=re.compile("^Strip it at once")).click()
    expect(desk_page).to_have_url(re.compile(r"/diary/2/write/finding/$"))
    desk_page.goto("/")
    line = desk_page.locator("#reel-1")
    line.click(position={"x": 20, "y": 40})  # anywhere on the line but on the deed
    expect(desk_page).to_have_url(re.compile(r"/diary/1/$"))


def test_by_keyboard_alone_from_the_bench_to_the_deed(desk_page: Page, lying_there: None) -> None:
    desk_page.goto("/arrival/")
    desk_page.locator("h1").click()
    desk_page.keyboard.press("b")
    expect(desk_page.locator("h1")).to_have_text("On the bench")
    deed = desk_page.get_by_role("link", name=re.compile("^Strip it at once"))
    for _ in range(40):
        desk_page.keyboard.press("Tab")
        if deed.evaluate("link => link === document.activeElement"):
            break
    expect(deed).to_be_focused()
    desk_page.keyboard.press("Enter")
    expect(desk_page).to_have_url(re.compile(r"/diary/2/write/finding/$"))


def test_an_empty_bench_is_quiet_and_leads_to_the_arrival(phone_page: Page) -> None:
    phone_page.goto("/")
    expect(phone_page.locator(".nothing")).to_have_count(9)
    phone_page.get_by_role("link", name="Write an arrival").click()
    expect(phone_page.locator("h1")).to_have_text("A reel arrives")
