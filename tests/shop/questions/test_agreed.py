"""What stands agreed, up to what sum: read from the answers, never from a hope."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.questions.agreed import agreed, may_be_billed
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_nothing_at_first(hand: Any) -> None:
    visit = walk.arrived(hand)
    held = agreed(visit.pk)
    assert (held.answer, held.is_anything, held.said_no) == (None, False, False)
    assert not may_be_billed(visit, 1).allowed


def test_up_to_so_much_without_asking(hand: Any) -> None:
    visit = walk.arrived(hand, up_to_minor=300_00)
    assert agreed(visit.pk).is_anything
    assert may_be_billed(visit, 300_00).allowed
    assert not may_be_billed(visit, 300_01).allowed


def test_a_yes_to_a_quote_takes_the_place_of_what_was_said_before(hand: Any) -> None:
    visit = walk.agreed(hand, up_to_minor=5000_00)
    assert agreed(visit.pk).cap_minor == 1200_00


def test_a_yes_to_an_extra_without_a_new_cap(hand: Any) -> None:
    """Inside the old cap the cap stays; above it exactly what was said yes to is allowed, and no more."""
    visit = walk.agreed(hand)
    walk.answered(hand, walk.quoted(hand, visit, walk.option(walk.COG, key="cog")), cap=None)
    assert (agreed(visit.pk).total_minor, agreed(visit.pk).cap_minor) == (1169_00, 1200_00)
    more = walk.Charge("labour", "Free the seized bearing", 350_00)
    walk.answered(hand, walk.quoted(hand, visit, walk.option(more, key="bearing")), cap=None)
    assert (agreed(visit.pk).total_minor, agreed(visit.pk).cap_minor) == (1519_00, 1519_00)
    assert len(agreed(visit.pk).answers) == 3
    assert agreed(visit.pk).minutes == 3 * 68


def test_where_no_law_caps_a_bill_a_yes_without_a_cap_is_open(owner: Any) -> None:
    from spoolwright.shop.acts.change_settings import change_settings

    change_settings(hand=owner, version=1, legal_ceiling=None)
    visit = walk.arrived(owner)
    walk.answered(owner, walk.quoted(owner, visit), cap=None)
    assert may_be_billed(visit, 9999_00).allowed
    change_settings(hand=owner, version=2, legal_ceiling="0.15")
    assert may_be_billed(visit, 9999_00).allowed, "the quote keeps what stood when it went out"
