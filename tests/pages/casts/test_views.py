"""The page at its three addresses, whole, as the piece that htmx asks for, and before the cast is ready."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from spoolwright.pages.casts import ready
from spoolwright.sheets import reel_sheet
from spoolwright.shop.acts.add_sheet_version import add_sheet_version
from tests.pages import pier_reel
from tests.people import owner
from tests.shop import walk


@pytest.fixture
def visit(db: None) -> Any:
    hand = owner()
    found = pier_reel.on_the_mat(hand)
    work = walk.OfferedWork("hybrid-spool-bearings", "Hybrids", 20)
    walk.quoted(hand, found, walk.replace(walk.option(), works=[work]))
    return found


def page(address: str, **more: Any) -> Any:
    client = Client()
    client.force_login(owner())
    response = client.get(address, **more)
    assert response.status_code == 200
    return response


def test_the_option_is_beside_today(visit: Any) -> None:
    html = page(f"/diary/{visit.tag}/casts/").content.decode()
    for chart in ("path", "speeds", "slack"):
        assert f'data-chart="chart-{chart}"' in html
    assert "Put right: " in html
    assert "Halving the drag of" in html
    assert 'class="caution"' in html
    assert "<b>A guess:</b>" in html


def test_htmx_gets_the_answer_alone(visit: Any) -> None:
    address = f"/reels/{visit.reel_id}/casts/?payload=150+g"
    html = page(address, headers={"HX-Request": "true"}).content.decode()
    assert html.lstrip().startswith('<div id="answer">')
    assert "<html" not in html
    assert "150 g thrown at" in html


def test_what_was_typed_wrong_stands_beside_its_field(visit: Any) -> None:
    html = page("/sheets/tarvak-58r/casts/?speed=900+m%2Fs&payload=brick").content.decode()
    assert "brick" in html
    assert html.count("Accepted:") >= 2


def test_a_fly_reel_says_why_not_and_asks_nothing(visit: Any) -> None:
    add_sheet_version(hand=owner(), toml=reel_sheet.shipped()["brekkas-9-10"])
    html = page("/sheets/brekkas-9-10/casts/").content.decode()
    assert "cast by the weight of its own line" in html
    assert 'class="sliders"' not in html


def test_before_the_cast_is_ready_the_page_says_so_and_comes_again(
    visit: Any, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(ready, "is_ready", lambda: False)
    answer = page("/sheets/tarvak-58r/casts/")
    assert "being made ready" in answer.content.decode()
    assert answer["Refresh"] == "3"
