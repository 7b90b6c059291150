"""The page at its three addresses, whole and as the piece that htmx asks for."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from tests.pages import pier_reel
from tests.people import owner
from tests.shop import walk


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


def test_the_option_is_beside_today(visit: Any) -> None:
    html = page(visit, "/diary/{tag}/wears/?part=disc-hard+fibre")
    assert 'data-chart="chart-depth"' in html
    assert 'data-chart="chart-spin"' in html
    assert "Friction discs of the drag. Today" in html
    assert "Put right: more than 30 years" in html
    assert 'class="caution"' in html


def test_htmx_gets_the_answer_alone(visit: Any) -> None:
    html = page(visit, "/reels/{reel}/wears/?casts=200", headers={"HX-Request": "true"})
    assert html.lstrip().startswith('<div id="answer">')
    assert "<html" not in html
    assert "With 200 casts a week" in html


def test_what_was_typed_wrong_stands_beside_its_field(visit: Any) -> None:
    html = page(visit, "/sheets/tarvak-58r/wears/?grit=90+%25&line=wool")
    assert "wool" in html
    assert html.count("Accepted:") >= 2
