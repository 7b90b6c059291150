"""A reel is somebody's, its marks are in ink, its sheet may come later."""

from __future__ import annotations

from typing import Any

import pytest
from django.db import IntegrityError, transaction

from spoolwright.shop.records.ink import InkWasDry
from spoolwright.shop.records.reel import Reel
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_a_mark_is_not_scratched_out(hand: Any) -> None:
    mark = walk.arrived(hand).reel.marks.get()
    mark.words = "5802"
    with pytest.raises(InkWasDry):
        mark.save()


def test_a_reel_is_somebodys_and_its_sheet_may_come_later(hand: Any) -> None:
    reel = walk.arrived(hand).reel
    assert reel.sheet_version is None
    with pytest.raises(IntegrityError), transaction.atomic():
        Reel.objects.filter(pk=reel.pk).update(customer=None)
