"""A customer's card is changed by one hand at a time, and search follows."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.add_customer import NewCustomer, add_customer
from spoolwright.shop.acts.change_customer import change_customer
from spoolwright.shop.acts.refused import SomeoneElseWroteFirst
from spoolwright.shop.questions.customers import customer
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
