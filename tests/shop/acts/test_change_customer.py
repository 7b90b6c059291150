"""A customer's card is changed by one hand at a time, and search follows."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.add_customer import NewCustomer, add_customer
from spoolwright.shop.acts.change_customer import change_customer
from spoolwright.shop.acts.refused import FieldWasRefused, SomeoneElseWroteFirst, WordsWereMissing
from spoolwright.shop.questions.customers import customer, customers, reels_of
from spoolwright.shop.questions.find import find
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_of_two_screens_the_second_is_told(hand: Any, owner: Any) -> None:
    ragna = add_customer(hand=hand, name="Ragna Solbu")
    change_customer(hand=owner, customer=ragna, to=NewCustomer("Ragna Solbu", telephone="55 01"), version=1)
    with pytest.raises(SomeoneElseWroteFirst):
        change_customer(hand=hand, customer=ragna, to=NewCustomer("Ragna Lien"), version=1)
    assert (customer(ragna.pk).name, customer(ragna.pk).telephone) == ("Ragna Solbu", "55 01")


def test_her_reels_are_found_under_the_new_name(hand: Any) -> None:
    visit = walk.arrived(hand)
    change_customer(hand=hand, customer=visit.reel.customer, to=NewCustomer("Ragna Lien"), version=1)
    assert {f.kind for f in find("Lien")} == {"customer", "reel", "visit"}
    assert find("Solbu") == ()


@pytest.mark.parametrize(
    "name",
    [
        "<script>alert('reel')</script>",
        "Robert'); DROP TABLE shop_customer;--",
        "{{ 7|add:7 }}",
        'a "quoted" name',
        "Žofie Ærø \U0001f41f",
        "  two  spaces  ",
    ],
)
def test_a_name_is_kept_as_it_was_typed(hand: Any, name: str) -> None:
    kept = add_customer(hand=hand, name=name, address=name, note=name)
    fresh = customer(kept.pk)
    assert (fresh.name, fresh.address, fresh.note) == (name, name, name)
    assert customers(name) == (fresh,)
    find(name)


def test_what_no_database_can_hold_is_refused(hand: Any) -> None:
    for name in ("Ragna\x00", "Ragna\ud800", "x" * 201):
        with pytest.raises(FieldWasRefused):
            add_customer(hand=hand, name=name)
    with pytest.raises(FieldWasRefused):
        add_customer(hand=hand, name="Ragna", water="holy")
    with pytest.raises(WordsWereMissing):
        add_customer(hand=hand, name="\n")


def test_a_customers_reels_newest_first(hand: Any) -> None:
    visit = walk.arrived(hand)
    assert [reel.described for reel in reels_of(visit.reel.customer_id)] == ["Tarvak 58R"]
