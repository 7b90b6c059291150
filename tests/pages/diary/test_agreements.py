"""Quote, answer, payment and invoice at their addresses."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from spoolwright.pages.diary import ways
from tests.pages.diary.at_the_desk import way
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_the_quote_has_a_page_of_its_own(bench: Client, torbal: Any) -> None:
    visit = walk.arrived(torbal)
    answer = bench.get(way(visit, "quote"))
    assert answer.headers["Location"] == (ways.to_quote(visit.tag) or f"/diary/{visit.tag}/")


@pytest.mark.parametrize("what", ["answer", "payment", "invoice"])
def test_each_form_stands_in_the_open_block(bench: Client, torbal: Any, what: str) -> None:
    visit = walk.agreed(torbal)
    assert bench.get(way(visit, what)).context["open"].form.what == what
