"""A visit is open until it is sent home, has one number, and lies in a place that exists."""

from __future__ import annotations

from typing import Any

import pytest
from django.db import IntegrityError, transaction

from spoolwright.shop.records.visit import Visit
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_it_is_open_until_it_is_sent_home(hand: Any) -> None:
    visit = walk.agreed(hand)
    assert visit.is_open
    walk.gone(hand, visit)
    assert not Visit.objects.get(pk=visit.pk).is_open


def test_two_visits_cannot_have_one_tag(hand: Any) -> None:
    first, second = walk.arrived(hand), walk.arrived(hand, name="Jonna Fure")
    with pytest.raises(IntegrityError), transaction.atomic():
        Visit.objects.filter(pk=second.pk).update(tag=first.tag)
