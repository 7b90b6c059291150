"""The people of the shop: added, changed, given a link; each their own, the owner everybody's."""

from __future__ import annotations

import re

import pytest
from django.test import Client

from spoolwright.shop.questions.people import person
from tests.people import bench_hand, owner

pytestmark = pytest.mark.django_db
NEW = "torsk-med-gulrot"


def client_of(somebody: object) -> Client:
    client = Client()
    client.force_login(somebody)
    return client


def test_the_owner_gives_somebody_a_hand_and_a_link() -> None:
    desk = client_of(owner())
    desk.post("/shop/people/", {"username": "aslak", "name": "Aslak Rein", "role": "bench"})
    assert person("aslak").name == "Aslak Rein"
    page = desk.post("/shop/people/aslak/link/").content.decode()
    link = re.search(r'value="http://testserver(/sign-in/[^"]+)"', page)[1]
    newcomer = Client()
    assert newcomer.post(link).status_code == 302
    assert "Aslak Rein" in newcomer.get("/shop/people/").content.decode()


def test_a_link_is_kept_by_no_cache_and_shown_on_one_page_only() -> None:
    desk = client_of(owner())
    response = desk.post("/shop/people/ingjerd/link/")
    assert response["Cache-Control"] == "no-store"
    assert "/sign-in/" not in desk.get("/shop/people/").content.decode().replace('/sign-in/"', "")


@pytest.mark.parametrize("username", ["ingjerd", "INGJERD", "", "two words", "<script>"])
def test_a_name_at_the_door_that_will_not_do_is_refused(username: str) -> None:
    desk = client_of(owner())
    response = desk.post("/shop/people/", {"username": username, "name": "Typed <Name>", "role": "bench"})
    assert response.status_code == 422
    assert 'value="Typed &lt;Name&gt;"' in response.content.decode()


def test_a_bench_hand_adds_nobody_and_changes_only_themself() -> None:
    owner()
    bench = client_of(bench_hand())
    assert bench.post("/shop/people/", {"username": "x", "name": "X", "role": "owner"}).status_code == 422
    assert person("x") is None
    assert bench.post("/shop/people/ingjerd/", {"name": "Mine now"}).status_code == 403
    assert bench.post("/shop/people/torbal/", {"name": "T. Kvie", "role": "owner"}).status_code == 302
    assert (person("torbal").name, person("torbal").role) == ("T. Kvie", "bench")
    assert bench.post("/shop/people/ingjerd/link/").status_code == 422


def test_a_new_password_works_and_one_stays_signed_in() -> None:
    owner()
    bench = client_of(bench_hand())
    bench.post("/shop/people/torbal/", {"name": "Torbal Kvie", "password": NEW})
    assert bench.get("/shop/people/").status_code == 200
    assert person("torbal").check_password(NEW)


def test_a_weak_password_is_refused_beside_its_field_and_never_shown_again() -> None:
    owner()
    response = client_of(bench_hand()).post("/shop/people/torbal/", {"name": "Torbal", "password": "torbal"})
    page = response.content.decode()
    assert response.status_code == 422
    assert 'id="id_password_error"' in page
    assert 'value="torbal"' not in page


def test_the_last_owner_stays_the_owner() -> None:
    desk = client_of(owner())
    sent = {"name": "Ingjerd Vannes", "role": "bench", "is_active": "yes"}
    assert desk.post("/shop/people/ingjerd/", sent).status_code == 422
    assert person("ingjerd").is_owner


def test_somebody_who_is_not_here_is_not_found() -> None:
    assert client_of(owner()).get("/shop/people/nobody/").status_code == 404
