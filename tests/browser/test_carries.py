"""What a reel carries, in a real browser: slid and typed. test_every_page looks at it at both widths."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from spoolwright.shop.acts.send_quote import OfferedWork
from tests.pages import pier_reel
from tests.shop import walk


@pytest.fixture
def tag(shop: Any) -> int:
    """The pier reel at the bench, with one option that changes its drag."""
    visit = pier_reel.on_the_mat(shop.owner)
    works = [OfferedWork("carbon-drag-set", "Carbon set", 20)]
    walk.quoted(shop.owner, visit, replace(walk.option(), works=works))
    return int(visit.tag)


def test_the_ladder_follows_what_is_slid_and_typed(phone_page: Page, tag: int) -> None:
    page = phone_page
    page.goto(f"/diary/{tag}/carries/")
    ladder = page.locator(".on-phone .load-ladder")
    expect(ladder).to_be_visible()
    page.get_by_text("Put right", exact=True).first.click()
    expect(page.locator("#ladder")).to_contain_text("Broken outlines: before these works.")
    slider = page.get_by_label("Star, from free", exact=True)
    slider.focus()
    slider.press("PageDown")
    expect(ladder.locator(".setting")).to_have_count(1)
    expect(slider).to_be_focused()
    expect(page.locator("#id_turns")).to_have_value("4.6")
    fill = page.get_by_label("or typed: Line on the spool")
    fill.fill("plenty")
    fill.press("Tab")
    expect(page.locator("#id_fill_faults")).to_contain_text("plenty")
    expect(fill).to_have_value("plenty")
    fill.fill("50")
    fill.press("Tab")
    expect(page.get_by_label("Line on the spool", exact=True)).to_have_value("50")
    expect(page.locator("#id_fill_faults")).not_to_contain_text("plenty")
    expect(page.locator("#pictures a[aria-current]")).to_have_attribute("href", re.compile("fill=50"))
    assert slider.bounding_box()["height"] >= 44


def test_it_works_without_any_script(new_page: Callable[..., Page], shop: Any, tag: int) -> None:
    page = new_page("phone", shop.owner, java_script_enabled=False)
    page.goto(f"/diary/{tag}/carries/")
    page.get_by_label("Line on it").fill("nylon 0.40 mm")
    page.get_by_label("or typed: Line on the spool").fill("60 %")
    page.get_by_role("button", name="Draw it so").click()
    expect(page.locator("#steps")).to_contain_text("Line at its knot")
    expect(page.locator("#id_fill_said")).to_have_text("60 %")
