"""A sheet has one slug, and each number of a version stands once."""

from __future__ import annotations

from typing import Any

import pytest
from django.db import IntegrityError, transaction

from spoolwright.shop.records.reel_sheet import Sheet, SheetVersion
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_one_slug_one_sheet_one_number_one_version(hand: Any) -> None:
    walk.everything(hand)
    version = SheetVersion.objects.get()
    assert version.sheet.shown == "Tarvak 58R"
    with pytest.raises(IntegrityError), transaction.atomic():
        Sheet.objects.create(slug=version.sheet.slug, maker="Ostrell", model="S71", kind="fly")
    again = {
        f.attname: getattr(version, f.attname) for f in SheetVersion._meta.concrete_fields if f.name != "id"
    }
    with pytest.raises(IntegrityError), transaction.atomic():
        SheetVersion(**again).save()
