"""Pieces that change while somebody types; asked for alone they lead to the page that they belong to."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from spoolwright.shop.acts.add_customer import add_customer
from tests.people import bench_hand
from tests.shop import walk

pytestmark = pytest.mark.django_db


def piece(desk: Client, what: str, **asked: Any) -> str:
    response = desk.get(f"/arrival/{what}/", asked, headers={"HX-Request": "true"})
    assert response.status_code == 200
    page = response.content.decode()
    assert "<html" not in page
    return page


def test_known_customers_appear_while_one_types(desk: Client) -> None:
    add_customer(hand=bench_hand(), name="Åse Ødegård", address="Sjøgata 4")
    found = piece(desk, "known", who="ase od")
    assert "Åse Ødegård" in found
    assert "Sjøgata 4" in found
    assert "somebody new" in found


def test_nobody_known_is_said(desk: Client) -> None:
    assert "Nobody of that name is known yet" in piece(desk, "known", who="Jonna")
    assert "<p" not in piece(desk, "known", who="")


def test_the_reels_of_the_chosen_one_appear_for_every_reel_on_the_page(desk: Client) -> None:
    gone = walk.everything(bench_hand())
    found = piece(desk, "reels", customer=gone.reel.customer_id, count_0="2")
    assert found.count("hx-swap-oob") == 2
    assert f'value="reel-{gone.reel_id}"' in found
    assert "fieldset" not in piece(desk, "reels", customer="new", count_0="1")


def test_one_more_reel_is_asked_about_by_its_own_names(desk: Client) -> None:
    found = piece(desk, "reel", count_0="3")
    assert 'name="r2_described"' in found
    assert 'name="r1_described"' not in found


@pytest.mark.parametrize("what", ["known", "reels", "reel"])
def test_a_piece_alone_is_no_page(desk: Client, what: str) -> None:
    response = desk.get(f"/arrival/{what}/", {"who": "x\x00y", "customer": "9" * 300})
    assert response.headers["Location"] == "/arrival/"
