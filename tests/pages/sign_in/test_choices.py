"""Units and look: each person's own, kept with the person."""

from __future__ import annotations

import pytest
from django.test import Client

from spoolwright.shop.questions.people import person
from tests.people import bench_hand, owner

pytestmark = pytest.mark.django_db


def client_of(somebody: object) -> Client:
    client = Client()
    client.force_login(somebody)
    return client


def test_units_are_ones_own() -> None:
    first, second = owner(), bench_hand()
    client_of(second).post("/units/", {"units": "imperial", "back": "/shop/"})
    assert person("torbal").units == "imperial"
    assert person(first.username).units == "metric"


def test_a_look_shows_on_the_next_page() -> None:
    client = client_of(owner())
    response = client.post("/look/", {"look": "dark", "back": "/shop/"})
    assert response["Location"] == "/shop/"
    assert 'data-look="dark"' in client.get("/shop/").content.decode()


@pytest.mark.parametrize(("address", "what"), [("/units/", "units"), ("/look/", "look")])
def test_what_is_not_on_offer_is_refused_and_nothing_changes(address: str, what: str) -> None:
    somebody = owner()
    response = client_of(somebody).post(address, {what: "cubits"})
    assert response.status_code == 422
    assert getattr(person("ingjerd"), what) == getattr(somebody, what)
