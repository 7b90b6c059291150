"""Whose it is: somebody who is known is never written down a second time by a slip."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from spoolwright.shop.acts.add_customer import add_customer
from spoolwright.shop.questions.customers import customers
from tests.pages.arrival.sending import refused, send, visit
from tests.people import bench_hand

pytestmark = pytest.mark.django_db


def test_somebody_of_a_known_name_is_asked_about(desk: Client) -> None:
    ragna = add_customer(hand=bench_hand(), name="Ragna Solbu", address="Moloveien 3")
    response = send(desk, who="ragna")
    assert refused(response, "customer")
    assert "Moloveien 3" in response.content.decode()
    assert send(desk, who="ragna", customer=str(ragna.pk)).status_code == 302
    assert customers() == (ragna,)


def test_somebody_new_may_have_a_known_name(desk: Client) -> None:
    add_customer(hand=bench_hand(), name="Ragna Solbu")
    assert send(desk, customer="new", address="Øvre Fjølvatn").status_code == 302
    assert [one.name for one in customers()] == ["Ragna Solbu"] * 2
    assert visit(1).reel.customer.address == "Øvre Fjølvatn"


def test_the_chosen_one_stays_among_those_offered_whatever_is_typed_then(desk: Client) -> None:
    ragna = add_customer(hand=bench_hand(), name="Ragna Solbu")
    response = send(desk, step="look", who="nobody of that name", customer=str(ragna.pk))
    assert response.context["form"].known == [ragna]


def folds(response: Any) -> tuple[bool, bool, bool]:
    form = response.context["form"]
    return form.reach_is_open, form.rows[0].more_is_open, form.rows[0].asks_for_twin


def test_folds_that_hold_something_stand_open(desk: Client) -> None:
    assert folds(send(desk, step="look")) == (False, False, False)
    held = {"email": "r@solbu.no", "r0_last_opened": "never", "r0_twin_mark": "dot"}
    assert folds(send(desk, step="look", **held)) == (True, True, True)


def test_more_reels_described_than_counted_is_asked_about(desk: Client) -> None:
    assert refused(send(desk, r1_described="Tarvak 52"), "count_0")
    assert send(desk, r1_which="new", r1_mass_unit="g").status_code == 302
