"""One entry with everything in it."""

from __future__ import annotations

from typing import Any

import pytest
from django.db import connection
from django.test.utils import CaptureQueriesContext

from spoolwright.shop.questions.blocks import block, blocks_of
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_one_entry_with_everything_in_it(hand: Any) -> None:
    visit = walk.everything(hand)
    entry = visit.entries.get(kind="invoice")
    with CaptureQueriesContext(connection):
        found = block(entry.pk)
    assert [line.what for line in found.part.lines.all()][-1] == "Idler cog"
    assert found.entry.visit.reel.customer.name == "Ragna Solbu"
    assert block(10**9) is None


def test_a_visit_without_entries_has_no_blocks(hand: Any) -> None:
    visit = walk.arrived(hand)
    found = blocks_of([visit.pk, 10**6])
    assert [b.kind for b in found[visit.pk]] == ["arrival"]
    assert found[10**6] == ()
