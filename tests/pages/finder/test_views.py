"""Search over everything, with and without htmx."""

from __future__ import annotations

import pytest
from django.test import Client

from spoolwright.shop.acts.add_customer import add_customer
from tests.people import owner

pytestmark = pytest.mark.django_db


@pytest.fixture
def desk() -> Client:
    hand = owner()
    for name, address in (("Ragna Solbu", "Grånesvåg"), ("Aslak Rein", "MS Havskjær <b>pier</b>")):
        add_customer(hand=hand, name=name, address=address)
    client = Client()
    client.force_login(hand)
    return client


@pytest.mark.parametrize(
    ("asked", "found"),
    [
        ("ragna", "Ragna"),
        ("RAGNA solbu", "Solbu"),
        ("grånes", "Grånesvåg"),
        ("granesvag", "Grånesvåg"),
        ("havskj", "Havskjær"),
    ],
)
def test_words_are_found_from_their_beginning_whatever_their_accents(
    desk: Client, asked: str, found: str
) -> None:
    assert f"<mark>{found}</mark>" in desk.get("/find/", {"q": asked}).content.decode()


def test_htmx_gets_the_lines_alone_and_a_page_from_history_whole(desk: Client) -> None:
    piece = desk.get("/find/", {"q": "ragna"}, headers={"HX-Request": "true"})
    assert "<html" not in piece.content.decode()
    assert "HX-Request" in piece["Vary"]
    again = {"HX-Request": "true", "HX-History-Restore-Request": "true"}
    assert "<html" in desk.get("/find/", {"q": "ragna"}, headers=again).content.decode()


@pytest.mark.parametrize(
    "asked",
    ["", " ", "zzz", '"', "a AND b OR", "*", "(((", "'; DROP TABLE x; --", "\x00", "x" * 5000, "٣", "%"],
)
def test_anything_may_be_typed(desk: Client, asked: str) -> None:
    assert desk.get("/find/", {"q": asked}).status_code == 200


def test_what_somebody_typed_and_what_is_found_are_text_and_not_markup(desk: Client) -> None:
    page = desk.get("/find/", {"q": "pier <script>alert(1)</script>"}).content.decode()
    assert "<script>alert" not in page
    page = desk.get("/find/", {"q": "pier"}).content.decode()
    assert "<b>" not in page
    assert "<mark>pier</mark>" in page


def test_a_number_that_hangs_on_no_reel_is_looked_for_as_a_word(desk: Client) -> None:
    response = desk.get("/find/", {"q": "99999"})
    assert response.status_code == 200
    assert "Nothing here" in response.content.decode()
