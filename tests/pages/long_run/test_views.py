"""The page at its three addresses, whole and as the piece that htmx asks for."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from tests.pages import pier_reel
from tests.people import owner
from tests.shop import walk

SHORT = "distance=20+m&pull=1+kg"


@pytest.fixture
def visit(db: None) -> Any:
    hand = owner()
    found = pier_reel.on_the_mat(hand)
    offered = walk.replace(walk.option(), works=[walk.OfferedWork("carbon-drag-set", "Carbon set", 20)])
    walk.quoted(hand, found, offered)
    return found


def page(visit: Any, address: str, **more: Any) -> str:
    client = Client()
    client.force_login(owner())
    response = client.get(address.format(tag=visit.tag, reel=visit.reel_id), **more)
    assert response.status_code == 200
    return response.content.decode()


def test_the_option_is_beside_today_with_both_cautions(visit: Any) -> None:
    html = page(visit, "/diary/{tag}/long-run/?" + SHORT)
    assert "<dt>Put right</dt>" in html
    for name in ("heating", "cooling", "tightening"):
        assert f'data-chart="chart-{name}"' in html
    assert html.count('class="caution"') == 2
    assert "steam scalds" in html


def test_htmx_gets_the_answer_alone_with_what_it_puts_right(visit: Any) -> None:
    asked = "/reels/{reel}/long-run/?distance=20+m&fill=50+%25&fill_slide=50&fill_was=100"
    html = page(visit, asked, headers={"HX-Request": "true"})
    assert html.lstrip().startswith('<div id="answer">')
    assert "<html" not in html
    assert 'id="id_fill_typed" hx-swap-oob="true"' in html


def test_what_was_typed_wrong_stands_beside_its_field(visit: Any) -> None:
    html = page(visit, "/sheets/tarvak-58r/long-run/?distance=20+m&line=spaghetti&speed=fast")
    assert "spaghetti" in html
    assert "fast" in html
    assert html.count("Accepted:") >= 2
