"""The ways out of a diary lead to pages that are there."""

from __future__ import annotations

from typing import Any

import pytest
from django.urls import resolve

from spoolwright.pages.diary import ways
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_every_way_out_leads_somewhere(torbal: Any) -> None:
    visit = walk.agreed(torbal)
    quote = visit.entries.get(kind="quote")
    found = {
        "quote": ways.to_quote(visit.tag),
        "customer's view": ways.to_customers_view(quote),
        "proof": ways.to_proof(visit.tag),
        "passport": ways.to_passport(visit.reel_id),
        "owner": ways.to_customer(visit.reel.customer_id),
        "sheet": ways.to_sheet("tarvak-58r"),
        **{name: ways.to_paper(name, 1) for name in ("bag_tag", "quote", "proof", "invoice")},
    }
    assert [name for name, way in found.items() if not way] == []
    for way in found.values():
        assert resolve(way).view_name
