"""Invoice numbers have no gaps: not when two are made at once, not when one is refused or falls over."""

from __future__ import annotations

from typing import Any

import pytest
from django.db import transaction

from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.acts.take_number import take_number
from spoolwright.shop.records.invoice import Invoice
from tests import people
from tests.shop import walk
from tests.shop.at_once import at_once


def test_two_counters_at_once_leave_no_gap(own_database: None) -> None:
    """Each counter bills twelve reels; every third bill is refused, and its number is not lost."""
    owner, hand = people.owner(), people.bench_hand()
    visits = [walk.agreed(owner, name=f"Customer {i}") for i in range(24)]

    def bills(person: Any, mine: list[Any]) -> Any:
        def write() -> tuple[int, int]:
            issued = refused = 0
            for place, visit in enumerate(mine):
                try:
                    with transaction.atomic():
                        walk.billed(person, visit)
                        if place % 3 == 0:
                            raise RuntimeError("the power went off")
                    issued += 1
                except RuntimeError:
                    refused += 1
            return issued, refused

        return write

    counted = at_once([bills(owner, visits[:12]), bills(hand, visits[12:])])
    assert counted == [(8, 4), (8, 4)]
    assert sorted(Invoice.objects.values_list("number", flat=True)) == list(range(1, 17))


def test_tags_and_envelopes_at_once_are_one_each(own_database: None) -> None:
    owner, hand = people.owner(), people.bench_hand()

    def arrive(person: Any) -> Any:
        return lambda: [walk.arrived(person, name=f"{person.username} {i}").tag for i in range(8)]

    tags = at_once([arrive(owner), arrive(hand)])
    assert sorted(tags[0] + tags[1]) == list(range(1, 17))


@pytest.mark.django_db
def test_a_refused_bill_takes_no_number(hand: Any) -> None:
    visit = walk.agreed(hand)
    for _ in range(3):
        with pytest.raises(Refused):
            walk.billed(hand, visit, *walk.CHARGES, *[walk.COG] * 4, why_more="four cogs")
    assert walk.billed(hand, visit).number == 1


@pytest.mark.django_db
def test_a_struck_bill_keeps_its_number(hand: Any) -> None:
    from spoolwright.shop.acts.strike_entry import strike_entry

    visit = walk.agreed(hand)
    first = walk.billed(hand, visit)
    strike_entry(hand=hand, entry=first.entry, reason="wrong address")
    assert (first.number, walk.billed(hand, visit).number) == (1, 2)


def test_a_number_is_taken_inside_an_act_only(own_database: None) -> None:
    with pytest.raises(RuntimeError, match="inside the act's own transaction"):
        take_number("invoice")
