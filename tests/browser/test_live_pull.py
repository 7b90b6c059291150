"""A pull typed as it goes, with one thumb on a phone: keys, Enter, Undo, Stop; drawn, written."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from spoolwright.shop.questions.signals import pull_of
from tests.browser.bench_hand import READING_TAKES
from tests.pages.diary.at_the_desk import arrived

SMALL = """least => [...document.querySelectorAll('.live-pad button, .live-pad input')]
    .filter(one => one.getBoundingClientRect().height < least).map(one => one.textContent)"""
REACHED = """() => { const pad = document.querySelector('.live-pad').getBoundingClientRect();
    return [pad.height, pad.width]; }"""


@pytest.fixture(autouse=True)
def files(settings: Any, tmp_path: Path) -> None:
    settings.MEDIA_ROOT = tmp_path / "files"


def press(page: Page, number: str) -> None:
    for mark in number:
        page.get_by_role("button", name="decimal point" if mark == "." else mark, exact=True).click()
    page.get_by_role("button", name="Enter", exact=True).click()


def test_a_pull_is_typed_with_one_thumb_drawn_and_written(new_page: Callable[..., Page], shop: Any) -> None:
    visit = arrived(shop.bench)
    page = new_page("phone", shop.bench)
    page.goto(f"/diary/{visit.tag}/write/live/")
    assert page.evaluate(SMALL, 48) == []
    height, width = page.evaluate(REACHED)
    assert height < 844, "the pad and its number are seen at once"
    assert width <= 390
    page.get_by_role("button", name="Start", exact=True).click()
    for number in ("0", "2.9", "2.41", "2.35", "9.99"):
        press(page, number)
        page.wait_for_timeout(320)  # the start is over after 0.3 s
    page.get_by_role("button", name="Undo the last").click()
    expect(page.get_by_text("Taken back: 9.99 kg.")).to_be_visible()
    page.get_by_label("What the scale shows").press_sequentially("2.38")
    page.get_by_label("What the scale shows").press("Enter")
    expect(page.get_by_text("5 numbers, the last 2.38 kg")).to_be_visible()
    page.get_by_role("button", name="Stop, and draw it").click()
    expect(page.locator(".drawn [data-chart] svg")).to_be_visible(timeout=READING_TAKES)
    page.get_by_label("on the spool").check()
    page.get_by_label("Radius where the line leaves").fill("23.5")
    page.get_by_label("Turns of the star from free").fill("1 1/4")
    page.get_by_label("Temperature at the bench").fill("19")
    page.get_by_role("button", name="Write the reading").click()
    expect(page.locator(".entry .trace-way")).to_be_visible(timeout=READING_TAKES)
    kept = pull_of(visit.entries.order_by("seq").last().reading)
    assert kept is not None
    assert [round(force / 9.80665, 2) for force in kept.forces] == [0, 2.9, 2.41, 2.35, 2.38]
    assert all(later > earlier for earlier, later in zip(kept.times, kept.times[1:], strict=False))


def test_without_scripts_the_rows_are_typed(new_page: Callable[..., Page], shop: Any) -> None:
    visit = arrived(shop.bench)
    page = new_page("phone", shop.bench, java_script_enabled=False)
    page.goto(f"/diary/{visit.tag}/write/live/")
    page.get_by_label("The numbers as they come").fill("0 2.9\n1 2.4\n2 2.35\n3 2.41")
    page.get_by_role("button", name="Draw it").click()
    expect(page.get_by_text("4 rows, seconds and kg")).to_be_visible()
