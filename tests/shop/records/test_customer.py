"""A customer whose reels are here cannot be deleted away."""

from __future__ import annotations

from typing import Any

import pytest
from django.db import IntegrityError, transaction

from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_a_customer_stays_while_a_reel_names_them(hand: Any) -> None:
    from django.db.models import ProtectedError

    customer = walk.arrived(hand).reel.customer
    with pytest.raises(ProtectedError):
        customer.delete()


def test_a_customer_was_written_down_by_somebody(hand: Any) -> None:
    customer = walk.arrived(hand).reel.customer
    customer.added_by = None
    with pytest.raises(IntegrityError), transaction.atomic():
        customer.save()
