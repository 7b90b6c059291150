"""Which reel: those of the customer that can come in, and those that are here already."""

from __future__ import annotations

import pytest
from django.test import Client

from spoolwright.pages.arrival.which import NOTHING_KNOWN, known_reels
from spoolwright.shop.acts.add_reel import NewReel, add_reel
from tests.pages.arrival.sending import refused, send, visit
from tests.people import bench_hand
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_a_reel_that_is_here_is_named_and_not_offered() -> None:
    here = walk.arrived(bench_hand())
    known = known_reels(here.reel.customer)
    assert known.choices == ()
    assert known.here == (f"Tarvak 58R, number {here.tag}, on the mat",)


def test_a_reel_that_went_home_comes_again_or_comes_back() -> None:
    gone = walk.everything(bench_hand())
    fresh, back = known_reels(gone.reel.customer).choices
    assert (fresh.value, fresh.return_of) == (f"reel-{gone.reel_id}", None)
    assert (back.value, back.return_of.pk) == (f"back-{gone.pk}", gone.pk)
    assert "5801" in fresh.says


def test_a_reel_only_written_down_can_come_in() -> None:
    customer = walk.arrived(bench_hand()).reel.customer
    added = add_reel(hand=bench_hand(), customer=customer, reel=NewReel("Pellmar 70"))
    assert [choice.value for choice in known_reels(customer).choices] == [f"reel-{added.pk}"]
    assert known_reels(None) == NOTHING_KNOWN


def test_what_comes_back_is_tied_to_the_visit_that_it_comes_back_about(desk: Client) -> None:
    gone = walk.everything(bench_hand())
    customer = str(gone.reel.customer_id)
    chosen = {"customer": customer, "r0_described": ""}
    assert send(desk, **chosen, r0_which=f"back-{gone.pk}").status_code == 302
    back = visit(gone.tag + 1)
    assert (back.reel_id, back.return_of_id) == (gone.reel_id, gone.pk)
    assert refused(send(desk, **chosen, r0_which=f"reel-{gone.reel_id}"), "r0_which"), "it is here by now"


def test_another_customers_reel_cannot_be_taken_by_its_number(desk: Client) -> None:
    other = walk.everything(bench_hand())
    assert refused(send(desk, who="Sigrun Tveit", r0_which=f"reel-{other.reel_id}"), "r0_which")
