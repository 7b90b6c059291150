"""A series is one row by its name, and no number is below one."""

from __future__ import annotations

import pytest
from django.db import IntegrityError, transaction

from spoolwright.shop.acts.take_number import take_number
from spoolwright.shop.records.number_series import NumberSeries

pytestmark = pytest.mark.django_db


def test_each_series_counts_for_itself() -> None:
    assert [take_number("tag"), take_number("tag"), take_number("invoice")] == [1, 2, 1]
    assert dict(NumberSeries.objects.values_list("name", "next_number")) == {"tag": 3, "invoice": 2}


def test_a_number_below_nothing_is_refused() -> None:
    take_number("tag")
    with pytest.raises(IntegrityError), transaction.atomic():
        NumberSeries.objects.update(next_number=-1)
