"""A line on a quote or a bill adds up, below the code too; kinds are those that are priced."""

from __future__ import annotations

from typing import Any

import pytest
from django.db import IntegrityError, transaction

from spoolwright.shop.records.money import LINE_KINDS, PricedLine
from spoolwright.shop.records.quote import QuoteLine
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_a_line_adds_up(hand: Any) -> None:
    option = walk.quoted(hand, walk.arrived(hand)).options.get()
    columns = {"option": option, "position": 9, "kind": "part", "what": "pawl"}
    with pytest.raises(IntegrityError), transaction.atomic():
        QuoteLine(**columns, net_minor=76_00, tax_minor=19_00, gross_minor=95_01).save()
    QuoteLine(**columns, net_minor=76_00, tax_minor=19_00, gross_minor=95_00).save()


def test_both_papers_have_the_same_columns() -> None:
    from spoolwright.shop.records.invoice import InvoiceLine

    shared = {field.name for field in PricedLine._meta.get_fields()}
    for table in (QuoteLine, InvoiceLine):
        assert shared <= {field.name for field in table._meta.get_fields()}
    assert len(set(LINE_KINDS)) == len(LINE_KINDS)
