"""Every address that can be opened, in a shop of eight months, at both widths: it fits, it is accessible, no
part of it is missing, and no number stands there without its unit."""

from __future__ import annotations

import re
import shutil
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page

from spoolwright.shop.questions.people import person
from tests.browser.addresses import addresses
from tests.browser.conftest import Shop
from tests.conftest import default_database
from tests.filled import FilledShop
from tests.pages.test_routes import ROWS

OPENED = sorted(row.name for row in ROWS if row.method == "GET" and row.owner in (200, 404))
NO_PAGE = {"diary:file", "diary:gauge", "diary:small", "reel_sheet:schema", "reel_sheet:toml", "sign_in:once"}
PAPERS = {name for name in OPENED if name.startswith("paper:")}
PAGES = [name for name in OPENED if name not in NO_PAGE | PAPERS]
WITHOUT_UNIT = re.compile(r"ratio|feel|slips|teeth|corrosion|colour|turns|count|score", re.IGNORECASE)
BARE = re.compile(r"[-−]?[\d.,\s]+(±\s*[\d.,]+)?")
BROKEN = re.compile(r"\b(None|NaN|nan|undefined|inf|Infinity|\[object|Traceback)\b|{{|}}|{%|&amp;|&lt;")
READINGS = """() => [...document.querySelectorAll('main .reading-line, main .beside')].map(line => [
    (line.querySelector('.quantity') || line).innerText,
    line.querySelector('.value, .measured')?.innerText || ''])"""
LOOK = """width => ({
    wide: document.documentElement.scrollWidth,
    over: [...document.querySelectorAll('main *')]
        .filter(one => one.getBoundingClientRect().right > width + 1).slice(0, 3)
        .map(one => one.outerHTML.slice(0, 160)),
    heads: document.querySelectorAll('h1').length, title: document.title, words: document.body.innerText,
    undrawn: document.querySelectorAll('[data-chart][data-drawn="no"]').length,
    missing: [...document.images].filter(one => one.complete && !one.naturalWidth).map(one => one.src) })"""


@pytest.fixture(scope="module")
def eight_months(
    filled_shop: FilledShop, django_db_blocker: Any, tmp_path_factory: pytest.TempPathFactory
) -> Iterator[FilledShop]:
    """A copy of the filled shop, with its files, in place of the usual database while this file is run."""
    assert filled_shop.returncode == 0, filled_shop.stderr
    copy = tmp_path_factory.mktemp("looked at") / "shop.sqlite3"
    shutil.copy(filled_shop.database, copy)
    with django_db_blocker.unblock(), default_database(str(copy)):
        yield filled_shop


@pytest.fixture
def shop(eight_months: FilledShop, address: str, settings: Any) -> Shop:
    settings.MEDIA_ROOT = Path(eight_months.data) / "files"
    return Shop(address, person("ingjerd"), person("torbal"))


@pytest.mark.parametrize("size", ["phone", "desk"])
@pytest.mark.parametrize("route", PAGES)
def test_it_fits_is_accessible_and_whole(
    new_page: Callable[..., Page], shop: Shop, axe: Callable[[Page], None], route: str, size: str
) -> None:
    page = new_page(size, None if route == "sign_in:page" else shop.owner)
    for number, address in enumerate(addresses(route)):
        answer = page.goto(address)
        assert answer, address
        assert answer.status == 200, address
        page.wait_for_function("!document.querySelector('[data-chart]:not([data-drawn])')")
        whole(page, address)
        if size == "phone" and not number:  # at a desk and at its other addresses stand the same things
            axe(page)


def whole(page: Page, address: str) -> None:
    room = (page.viewport_size or {"width": 0})["width"]
    seen = page.evaluate(LOOK, room)
    assert seen["wide"] <= room, f"{address} is {seen['wide']} px wide: {seen['over']}"
    assert seen["heads"] == 1, f"{address} has {seen['heads']} titles"
    assert seen["title"].strip(), f"{address} has no name for the browser's tab"
    assert not seen["undrawn"], f"{address}: a chart could not be drawn"
    assert not seen["missing"], f"{address}: {seen['missing']}"
    assert not BROKEN.search(seen["words"]), f"{address}: {around(BROKEN, seen['words'])}"
    bare = [line for line in page.evaluate(READINGS) if is_bare(*line)]
    assert not bare, f"{address}: numbers without a unit: {bare}"


def is_bare(quantity: str, value: str) -> bool:
    return bool(BARE.fullmatch(value.strip())) and not WITHOUT_UNIT.search(quantity)


def around(what: re.Pattern[str], text: str) -> str:
    found = what.search(text)
    return text[max(0, found.start() - 60) : found.end() + 60] if found else ""


@pytest.mark.parametrize("route", sorted(PAPERS))
def test_every_paper_is_a_pdf(desk_page: Page, route: str) -> None:
    for address in addresses(route):
        answer = desk_page.context.request.get(address)
        assert answer.status == 200, address
        assert answer.body().startswith(b"%PDF"), address


@pytest.mark.parametrize("route", sorted(NO_PAGE - {"sign_in:once"}))
def test_every_file_comes(desk_page: Page, route: str) -> None:
    for address in addresses(route):
        answer = desk_page.context.request.get(address)
        assert answer.status == 200, address
        assert answer.body(), address


def test_what_is_called_bare() -> None:
    assert is_bare("Running pull", "2.70 ± 0.05")
    assert not is_bare("Running pull", "2.70 kg ± 0.05 kg")
    assert not is_bare("Start-up ratio", "1.07 ± 0.02")
