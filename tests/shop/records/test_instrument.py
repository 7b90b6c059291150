"""The tables of the shop's instruments: what is unique in them, and what a reading keeps of them."""

from __future__ import annotations

from typing import Any

import pytest
from django.db import IntegrityError, connection, transaction

from spoolwright.shop.records.instrument import GaugeTrial, Instrument, InstrumentVersion
from spoolwright.shop.records.reading import Reading
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_a_mark_a_version_and_a_try_stand_once(hand: Any) -> None:
    kept = walk.measured_with(hand)
    for model, changed in (
        (Instrument, {"kind": "micrometer"}),
        (InstrumentVersion, {"name": "another"}),
        (GaugeTrial, {"value_si": 1.0}),
    ):
        row = model.objects.values().first()
        row.pop("id")
        with pytest.raises(IntegrityError), transaction.atomic():
            model(**{**row, **changed}).save()
    assert list(Instrument.objects.all()) == [kept]


def test_a_reading_may_name_its_instrument_and_need_not(hand: Any) -> None:
    visit = walk.arrived(hand)
    reading = walk.read(hand, visit, "pull_full", 60.0, 0.5, "force").entry.reading
    assert reading.instrument is None
    with connection.cursor() as cursor:
        columns = {c.name: c for c in connection.introspection.get_table_description(cursor, "shop_reading")}
    assert columns["instrument_id"].null_ok
    field = Reading._meta.get_field("instrument")
    assert field.null
    assert field.related_model is Instrument
