"""A reel that is only written down: first whose it is, then what it is."""

from __future__ import annotations

import pytest
from django.test import Client

from spoolwright.shop.acts.add_customer import add_customer
from spoolwright.shop.questions.customers import reels_of
from tests.people import bench_hand

pytestmark = pytest.mark.django_db


def test_whose_it_is_comes_first(desk: Client) -> None:
    ragna = add_customer(hand=bench_hand(), name="Ragna Solbu")
    page = desk.get("/reels/new/", {"who": "ragna"}).content.decode()
    assert f'href="?customer={ragna.pk}"' in page
    assert "Nobody of that name is known" in desk.get("/reels/new/", {"who": "x\x00y"}).content.decode()
    assert desk.post("/reels/new/", {"described": "Tarvak 52"}).status_code == 200


def test_then_the_reel_is_written_and_leads_to_its_passport(desk: Client) -> None:
    ragna = add_customer(hand=bench_hand(), name="Ragna Solbu")
    sent = {"described": "Tarvak 52", "winding_hand": "left", "serial": "77"}
    response = desk.post(f"/reels/new/?customer={ragna.pk}", sent)
    (reel,) = reels_of(ragna.pk)
    assert response.headers["Location"] == f"/reels/{reel.pk}/"
    assert (reel.described, reel.winding_hand) == ("Tarvak 52", "left")
    assert "Tarvak 52 of Ragna Solbu is written down." in desk.get(f"/reels/{reel.pk}/").content.decode()


def test_a_twin_is_asked_for_its_difference_beside_the_field(desk: Client) -> None:
    ragna = add_customer(hand=bench_hand(), name="Ragna Solbu")
    address = f"/reels/new/?customer={ragna.pk}"
    desk.post(address, {"described": "Tarvak 52"})
    response = desk.post(address, {"described": "Tarvak 52", "serial": "kept"})
    page = response.content.decode()
    assert response.status_code == 422
    assert 'id="id_twin_mark_error"' in page
    assert 'value="kept"' in page


@pytest.mark.parametrize("sent", [{}, {"sheet": "no-such"}, {"described": "x" * 300}])
def test_what_cannot_be_written_is_refused(desk: Client, sent: dict[str, str]) -> None:
    ragna = add_customer(hand=bench_hand(), name="Ragna Solbu")
    assert desk.post(f"/reels/new/?customer={ragna.pk}", sent).status_code == 422


@pytest.mark.parametrize("customer", ["999", "9" * 18])
def test_nobody_has_no_reel(desk: Client, customer: str) -> None:
    assert desk.get("/reels/new/", {"customer": customer}).status_code == 404
