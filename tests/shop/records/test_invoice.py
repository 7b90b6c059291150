"""A bill that does not add up is refused below the code."""

from __future__ import annotations

from typing import Any

import pytest
from django.db import IntegrityError, transaction

from spoolwright.shop.acts.write_word import write_word
from spoolwright.shop.records.invoice import Invoice, InvoiceLine
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_net_and_tax_make_the_total_and_the_number_stands_once(hand: Any) -> None:
    visit = walk.agreed(hand)
    invoice = walk.billed(hand, visit)
    held = {f.attname: getattr(invoice, f.attname) for f in Invoice._meta.concrete_fields}
    wrong = (
        {"net_minor": 1},
        {"tax_minor": 1},
        {"due_minor": 1},
        {"deposit_minor": 1},
        {"total_minor": 1},
        {},
    )
    for number, change in enumerate(wrong):
        entry = write_word(hand=hand, visit=visit, words="again").entry
        again = {**held, "entry_id": entry.pk, "number": 50 + number if change else invoice.number, **change}
        with pytest.raises(IntegrityError), transaction.atomic():
            Invoice(**again).save()


def test_a_line_adds_up_too(hand: Any) -> None:
    invoice = walk.billed(hand, walk.agreed(hand))
    line = InvoiceLine(
        invoice=invoice, position=9, kind="part", what="x", net_minor=80, tax_minor=20, gross_minor=101
    )
    with pytest.raises(IntegrityError), transaction.atomic():
        line.save()
