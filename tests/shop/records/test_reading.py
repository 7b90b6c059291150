"""A reading knows its conditions; a result without uncertainty is refused below the code."""

from __future__ import annotations

from typing import Any

import pytest
from django.db import IntegrityError, transaction

from spoolwright.shop.records.reading import CONDITION_COLUMNS, Reading, ReadingValue
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_each_condition_has_a_column(hand: Any) -> None:
    columns = {field.name for field in Reading._meta.get_fields()}
    assert set(CONDITION_COLUMNS.values()) <= columns
    visit = walk.arrived(hand)
    reading = walk.read(hand, visit, "pull_full", 57.0, 0.5, "force").entry.reading
    assert reading.conditions == walk.PULLS


def test_a_result_has_its_uncertainty(hand: Any) -> None:
    reading = walk.read(hand, walk.arrived(hand), "pull_full", 57.0, 0.5, "force").entry.reading
    with pytest.raises(IntegrityError), transaction.atomic():
        ReadingValue(reading=reading, kind="pull_run", value_si=1.0, dimension="force").save()
