"""A name is kept as it was typed, whatever it looks like."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.add_customer import add_customer
from spoolwright.shop.acts.refused import FieldWasRefused, WordsWereMissing
from spoolwright.shop.questions.customers import customer, customers
from spoolwright.shop.questions.find import find

pytestmark = pytest.mark.django_db


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
