"""The front door: passwords, links that work once, and out again."""

from __future__ import annotations

from datetime import timedelta

import pytest
from django.test import Client
from django.urls import reverse
from django.utils import timezone

from spoolwright.shop.acts import clock
from spoolwright.shop.acts.change_person import change_person
from spoolwright.shop.acts.make_sign_in_link import make_sign_in_link
from tests.people import PASSWORD, bench_hand, owner

pytestmark = pytest.mark.django_db
INSIDE = "/shop/people/"


def is_in(client: Client) -> bool:
    return client.get(INSIDE).status_code == 200


def sign_in(client: Client, password: str, **more: str) -> object:
    return client.post("/sign-in/", {"username": "ingjerd", "password": password} | more)


def test_name_and_password_open_the_door() -> None:
    owner()
    client = Client()
    assert sign_in(client, PASSWORD)["Location"] == "/"
    assert is_in(client)


def test_one_comes_back_to_where_one_was_going() -> None:
    owner()
    response = sign_in(Client(), PASSWORD, next="/shop/change/")
    assert response["Location"] == "/shop/change/"


@pytest.mark.parametrize(
    "next_", ["https://elsewhere.example/", "//elsewhere.example/", "javascript:alert(1)"]
)
def test_nobody_is_sent_out_of_the_house(next_: str) -> None:
    owner()
    assert sign_in(Client(), PASSWORD, next=next_)["Location"] == "/"


def test_a_wrong_password_says_so_and_keeps_the_name_only() -> None:
    owner()
    response = sign_in(Client(), "not-this-one-at-all")
    assert response.status_code == 422
    page = response.content.decode()
    assert "do not belong together" in page
    assert 'value="ingjerd"' in page
    assert "not-this-one-at-all" not in page


def test_a_name_that_is_not_ours_is_told_the_same() -> None:
    owner()
    known = sign_in(Client(), "wrong-wrong").content
    response = Client().post("/sign-in/", {"username": "nobody", "password": "wrong-wrong"})
    assert b"do not belong together" in known
    assert b"do not belong together" in response.content


def test_five_wrong_tries_shut_the_door_even_for_the_right_password() -> None:
    owner()
    client = Client()
    last = [sign_in(client, "wrong-every-time").status_code for _ in range(5)][-1]
    assert last == 429
    shut = sign_in(client, PASSWORD)
    assert shut.status_code == 429
    assert "15 minutes" in shut.content.decode()
    assert not is_in(client)


def test_somebody_no_longer_with_us_does_not_come_in() -> None:
    change_person(hand=owner(), person=bench_hand(), is_active=False)
    client = Client()
    client.post("/sign-in/", {"username": "torbal", "password": PASSWORD})
    assert not is_in(client)


def test_opening_a_link_does_not_use_it_up_and_using_it_does() -> None:
    person = bench_hand()
    address = reverse("sign_in:once", args=[make_sign_in_link(hand=None, person=person)])
    client = Client()
    assert [client.get(address).status_code, client.get(address).status_code] == [200, 200]
    assert not is_in(client)
    assert client.post(address).status_code == 302
    assert is_in(client)
    second = Client()
    response = second.post(address)
    assert response.status_code == 422
    assert "does not open any more" in response.content.decode()
    assert not is_in(second)


def test_a_link_that_has_run_out_does_not_open() -> None:
    with clock.as_of(timezone.now() - timedelta(hours=1)):
        token = make_sign_in_link(hand=None, person=owner())
    client = Client()
    assert client.post(reverse("sign_in:once", args=[token])).status_code == 422
    assert not is_in(client)


def test_the_door_and_the_link_are_kept_by_no_cache() -> None:
    owner()
    for address in ("/sign-in/", "/sign-in/some-token/"):
        assert Client().get(address)["Cache-Control"] == "no-store"


def test_signing_out_shuts_the_door_behind_one() -> None:
    client = Client()
    client.force_login(owner())
    assert client.post("/sign-out/")["Location"] == "/sign-in/"
    assert not is_in(client)


def test_a_form_without_its_token_is_refused_in_words() -> None:
    owner()
    client = Client(enforce_csrf_checks=True)
    response = client.post("/sign-in/", {"username": "ingjerd", "password": PASSWORD})
    assert response.status_code == 403
    assert "Nothing was written" in response.content.decode()
