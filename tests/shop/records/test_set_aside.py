"""The reason of a setting aside stands in the database too."""

from __future__ import annotations

from typing import Any

import pytest
from django.db import IntegrityError, transaction
from django.utils import timezone

from spoolwright.shop.records.set_aside import SetAside
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_no_reason_is_no_row(hand: Any) -> None:
    entry = walk.read(hand, walk.arrived(hand), "pull_full", 60.0, 0.5, "force").entry
    with pytest.raises(IntegrityError), transaction.atomic():
        SetAside(entry=entry, reason="", author=hand, written_at=timezone.now()).save()
