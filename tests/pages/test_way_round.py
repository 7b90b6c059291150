"""The line of words at the top, and the names by which pages find one another."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from django.db import connection
from django.test import Client

from spoolwright.pages import doors
from spoolwright.pages.templatetags.house import WAY_ROUND
from tests.people import owner

PAGES = Path(doors.__file__).parent
LED_TO = [("diary:diary", 417), ("passport:passport", 7), ("reel_sheet:sheet", "tarvak-52")]


def is_built(name: str) -> bool:
    return (PAGES / name.partition(":")[0] / "urls.py").exists()


@pytest.mark.django_db
def test_every_page_that_is_built_is_one_word_away() -> None:
    client = Client()
    client.force_login(owner())
    line = re.search(r'<nav class="way-round".*?</nav>', client.get("/shop/").content.decode(), re.DOTALL)[0]
    for name, word, key in WAY_ROUND:
        if is_built(name):
            assert f'href="{doors.way_to(name)}" data-key="{key}"' in line, f"{word} leads nowhere"
    assert line.count('aria-current="page"') == 1


@pytest.mark.parametrize(("name", "given"), LED_TO, ids=[name for name, _ in LED_TO])
def test_what_the_finder_finds_leads_to_its_page(name: str, given: object) -> None:
    assert bool(doors.way_to(name, given)) == is_built(name)


@pytest.mark.django_db
def test_a_stranger_sees_no_way_round() -> None:
    owner()
    assert "way-round" not in Client().get("/sign-in/").content.decode()


@pytest.mark.django_db
@pytest.mark.parametrize("address", ["/nothing-here/", "/shop/people/nobody/"])
def test_what_is_not_here_is_said_in_our_own_words(address: str) -> None:
    client = Client()
    client.force_login(owner())
    response = client.get(address)
    assert response.status_code == 404
    assert "Not here" in response.content.decode()


@pytest.mark.django_db
def test_a_fault_of_ours_is_said_without_its_insides() -> None:
    client = Client(raise_request_exception=False)
    client.force_login(owner())
    with connection.cursor() as cursor:
        cursor.execute("ALTER TABLE shop_findable RENAME TO shop_findable_gone")
    response = client.get("/find/", {"q": "x"})
    assert response.status_code == 500
    page = response.content.decode()
    assert "Something broke in the house" in page
    assert "shop_findable" not in page


@pytest.mark.django_db
@pytest.mark.parametrize("address", ["/shop/", "/find/", "/sign-in/", "/nothing-here/"])
def test_no_page_carries_script_or_style_of_its_own(address: str) -> None:
    client = Client()
    if address != "/sign-in/":
        client.force_login(owner())
    page = client.get(address).content.decode()
    assert not re.search(r"<script(?![^>]*(src=|application/json))|<style|\sstyle=|\son[a-z]+=", page)
    assert "unsafe" not in client.get(address)["Content-Security-Policy"]
