"""The database itself knows the kinds, the places and the numbering of a diary."""

from __future__ import annotations

from typing import Any

import pytest
from django.db import IntegrityError, transaction
from django.utils import timezone

from spoolwright.shop.records.entry import Entry
from spoolwright.shop.records.visit import Visit
from tests.shop import walk

pytestmark = pytest.mark.django_db


@pytest.mark.parametrize(
    "wrong", [{"kind": "ticket"}, {"moved_to": "in progress"}, {"seq": 1}, {"kind": "word", "seq": 1}]
)
def test_what_is_no_entry_is_refused_below_the_code(hand: Any, wrong: dict[str, Any]) -> None:
    visit = walk.arrived(hand)
    right = {"seq": 2, "kind": "word", "moved_to": "", "author": hand, "written_at": timezone.now()}
    with pytest.raises(IntegrityError), transaction.atomic():
        Entry(visit=visit, **{**right, **wrong}).save()
    Entry(visit=visit, **right).save()


def test_so_are_a_place_and_a_spread_that_cannot_be(hand: Any) -> None:
    from datetime import date

    visit = walk.arrived(hand)
    for wrong in ({"place": "done"}, {"promised_p50": date(2026, 3, 9), "promised_p90": date(2026, 3, 4)}):
        with pytest.raises(IntegrityError), transaction.atomic():
            Visit.objects.filter(pk=visit.pk).update(**wrong)
