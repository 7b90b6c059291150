"""The book in the browser: read, a proof set aside with a reason that is kept, and taken back."""

from __future__ import annotations

import re
from typing import Any

import pytest
from django.test import Client

from spoolwright.shop.records.set_aside import SetAside
from tests.people import bench_hand
from tests.shop.proved_reel import CARBON, FAULT

ADDRESS = f"/book/{CARBON}/"


@pytest.fixture
def client(proof: Any) -> Client:
    client = Client()
    client.force_login(bench_hand())
    return client


def text(response: Any) -> str:
    bare = re.sub(r"<[^>]+>", " ", response.content.decode()).replace("\u00a0", " ")
    return " ".join(bare.split())


def test_the_list_has_every_chapter_and_leads_to_each_coefficient(client: Client) -> None:
    shown = client.get("/book/")
    said = text(shown)
    for words in ("friction of the washers", "start-up ratio", "minutes of the works", "No proof is set"):
        assert words in said
    assert f'href="{ADDRESS}"' in shown.content.decode()
    assert "1 proof" in said
    assert "found on 1 of 1" in said


def test_the_shop_page_leads_to_the_book(client: Client) -> None:
    assert 'href="/book/"' in client.get("/shop/").content.decode()


def test_a_coefficient_shows_prior_now_its_proof_and_how_it_moved(client: Client, proof: Any) -> None:
    shown = client.get(ADDRESS)
    said = text(shown)
    assert "before any proof" in said
    assert "0.133 to 0.181 nine times in ten, judgement prior" in said
    assert "pull with the drag hard on 6.9" in said
    assert "narrower than the sheet" in said
    assert f'href="/diary/{proof.visit.tag}/#entry-{proof.pk}"' in shown.content.decode()


@pytest.mark.parametrize("everywhere", [False, True])
def test_set_aside_with_a_reason_and_taken_back(client: Client, proof: Any, everywhere: bool) -> None:
    sent = {"entry": proof.pk, "reason": "gauge not at zero"} | ({"everywhere": "on"} if everywhere else {})
    assert client.post(ADDRESS, sent).status_code == 302
    row = SetAside.objects.get()
    assert (row.coefficient, row.reason) == ("" if everywhere else CARBON, "gauge not at zero")
    said = text(client.get(ADDRESS))
    assert "no proof of its own" in said
    assert "Set aside" in said
    assert "gauge not at zero" in text(client.get("/book/"))
    assert client.post(f"{ADDRESS}back/{row.pk}/").status_code == 302
    assert "1 proof" in text(client.get(ADDRESS))
    again = client.post(f"{ADDRESS}back/{row.pk}/")
    assert again.status_code == 422
    assert "has taken this back already" in text(again)


def test_without_a_reason_it_is_refused_and_what_was_ticked_stays(client: Client, proof: Any) -> None:
    refused = client.post(ADDRESS, {"entry": proof.pk, "reason": " ", "everywhere": "on"})
    assert refused.status_code == 422
    assert "A reason is needed" in text(refused)
    assert "checked" in refused.content.decode()
    assert not SetAside.objects.exists()


def test_twice_is_refused_and_the_reason_typed_stays(client: Client, proof: Any) -> None:
    client.post(ADDRESS, {"entry": proof.pk, "reason": "gauge not at zero", "everywhere": "on"})
    refused = client.post(ADDRESS, {"entry": proof.pk, "reason": "once more"})
    assert refused.status_code == 422
    assert "has set this proof aside already" in text(refused)


def test_how_often_a_fault_is_found_has_its_page_too(client: Client) -> None:
    said = text(client.get(f"/book/{FAULT}/"))
    assert "found on 1 of 1" in said
    assert "pawl: tip worn" in said


@pytest.mark.parametrize("address", ["/book/no-such/", "/book/fault-f99-fly/"])
def test_what_is_not_in_the_book_is_not_found(client: Client, address: str) -> None:
    assert client.get(address).status_code == 404
