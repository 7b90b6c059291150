"""Things are found by the number that stands on them, and a number that is on nothing finds nothing."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.questions import by_number
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_each_by_its_number(hand: Any) -> None:
    visit = walk.everything(hand)
    assert by_number.visit(visit.pk) == by_number.visit_tagged(visit.tag) == visit
    assert by_number.reel(visit.reel_id) == visit.reel
    assert by_number.invoice(1).entry.visit == visit
    parcel = by_number.parcel(1)
    assert by_number.visits_of_parcel(parcel) == (visit,)
    entry = visit.entries.first()
    assert by_number.entry(entry.pk) == entry
    photo = visit.entries.get(kind="finding").attached.get().attachment
    assert by_number.attachment(photo.pk) == photo


def test_nothing_by_a_number_that_is_on_nothing() -> None:
    asked = (by_number.visit, by_number.visit_tagged, by_number.reel, by_number.entry, by_number.invoice)
    assert [ask(77) for ask in (*asked, by_number.parcel, by_number.attachment)] == [None] * 7
