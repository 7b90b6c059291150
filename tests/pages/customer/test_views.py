"""A customer's page: how to reach them, their reels and visits; written down and corrected by hand."""

from __future__ import annotations

import pytest
from django.test import Client

from spoolwright.shop.acts.add_customer import add_customer
from spoolwright.shop.questions.customers import customer, customers
from tests.people import bench_hand
from tests.shop import walk

pytestmark = pytest.mark.django_db


@pytest.fixture
def desk() -> Client:
    client = Client()
    client.force_login(bench_hand())
    return client


def test_the_reels_and_their_visits_stand_on_the_page(desk: Client) -> None:
    visit = walk.arrived(bench_hand())
    page = desk.get(f"/customers/{visit.reel.customer_id}/").content.decode()
    assert "Moloveien 3, Grånesvåg" in page
    assert f'href="/reels/{visit.reel_id}/"' in page
    assert f'href="/diary/{visit.tag}/">number {visit.tag}</a>' in page
    assert "It is on the mat." in page


def test_a_customer_is_written_down_by_hand(desk: Client) -> None:
    response = desk.post("/customers/new/", {"name": "Sigrun Tveit", "water": "fresh", "email": "s@tveit.no"})
    (sigrun,) = customers()
    assert response.headers["Location"] == f"/customers/{sigrun.pk}/"
    assert "Fishes in fresh water." in desk.get(response.headers["Location"]).content.decode()


def test_a_known_name_is_asked_back(desk: Client) -> None:
    add_customer(hand=bench_hand(), name="Åse Ødegård")
    sent = {"name": "åse  ødegård", "note": "kept"}
    first = desk.post("/customers/new/", sent)
    page = first.content.decode()
    assert first.status_code == 422
    assert "This is another person of the same name" in page
    assert "kept</textarea>" in page
    assert desk.post("/customers/new/", sent | {"another": "on"}).status_code == 302


def test_the_second_of_two_who_correct_at_once_is_told(desk: Client) -> None:
    ragna = add_customer(hand=bench_hand(), name="Ragna Solbu")
    address = f"/customers/{ragna.pk}/change/"
    assert desk.post(address, {"name": "Ragna Solbu", "telephone": "1", "version": "1"}).status_code == 302
    second = desk.post(address, {"name": "Ragna S.", "telephone": "2", "version": "1"})
    assert second.status_code == 422
    assert "changed by somebody else" in second.content.decode()
    assert 'value="Ragna S."' in second.content.decode()
    assert customer(ragna.pk).telephone == "1"


@pytest.mark.parametrize("sent", [{"name": ""}, {"name": "x" * 300}, {"name": "Ok", "water": "beer"}])
def test_what_cannot_be_written_is_refused(desk: Client, sent: dict[str, str]) -> None:
    assert desk.post("/customers/new/", sent).status_code == 422


def test_nobody_has_no_page(desk: Client) -> None:
    assert desk.get("/customers/999/").status_code == 404
    assert desk.get("/customers/999/change/").status_code == 404


def test_script_in_a_note_stays_a_note(desk: Client) -> None:
    nobody = add_customer(hand=bench_hand(), name="<b>x</b>", note="<script>alert(1)</script>")
    page = desk.get(f"/customers/{nobody.pk}/").content.decode()
    assert "<script>alert(1)" not in page
    assert "<b>x</b>" not in page
