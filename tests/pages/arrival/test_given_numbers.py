"""The numbers given, and the ways from each: its tag, its diary, its passport."""

from __future__ import annotations

import pytest
from django.test import Client
from django.urls import reverse

from spoolwright.pages.arrival.given_numbers import given
from spoolwright.shop.questions import by_number
from tests.pages.arrival.sending import send, visit

pytestmark = pytest.mark.django_db


def test_each_number_leads_to_its_own_passport_and_next_deed(desk: Client) -> None:
    send(desk, count_0="2", r1_described="Tarvak 52")
    numbers = given(by_number.visits_of_parcel(by_number.parcel(1)))
    assert [one.visit.tag for one in numbers] == [1, 2]
    assert [one.next.act for one in numbers] == ["reading", "reading"]
    assert [one.passport for one in numbers] == [
        reverse("passport:passport", args=[visit(tag).reel_id]) for tag in (1, 2)
    ]


def test_the_page_tells_whom_to_tell(desk: Client) -> None:
    page = desk.get(send(desk, outer_damage="wet").headers["Location"]).content.decode()
    assert "Tell Ragna Solbu today" in page
    assert "the carrier and the sender are told today" in page
