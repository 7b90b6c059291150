"""A finding is one entry's, and cannot be written without one."""

from __future__ import annotations

from typing import Any

import pytest
from django.db import IntegrityError, transaction

from spoolwright.shop.records.finding import Finding
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_a_finding_belongs_to_an_entry(hand: Any) -> None:
    finding = walk.everything(hand).entries.get(kind="finding").finding
    assert finding.entry.author == hand
    with pytest.raises(IntegrityError), transaction.atomic():
        Finding(entry=finding.entry, part="pawl", evidence="again").save()
