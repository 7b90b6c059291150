"""An envelope has a number of its own, once."""

from __future__ import annotations

from typing import Any

import pytest
from django.db import IntegrityError, transaction

from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_a_number_hangs_on_one_envelope(hand: Any) -> None:
    parcel = walk.arrived(hand).parcel
    parcel.pk = None
    parcel._state.adding = True
    with pytest.raises(IntegrityError), transaction.atomic():
        parcel.save()


def test_it_holds_what_came_in_it(hand: Any) -> None:
    visit = walk.arrived(hand)
    assert list(visit.parcel.visits.all()) == [visit]
