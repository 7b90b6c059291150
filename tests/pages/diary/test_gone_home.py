"""The proof and the way home at their addresses."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from spoolwright.pages.diary import ways
from tests.pages.diary.at_the_desk import way
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_a_proof_that_lacks_readings_asks_for_them_here(bench: Client, torbal: Any) -> None:
    visit = walk.agreed(torbal)
    walk.worked(torbal, visit)
    page = bench.get(way(visit, "proof"))
    assert page.status_code == 200
    assert page.context["open"].form.what == "pull"


def test_at_any_other_time_it_has_a_page_of_its_own(bench: Client, torbal: Any) -> None:
    visit = walk.agreed(torbal)
    answer = bench.get(way(visit, "proof"))
    assert answer.headers["Location"] == (ways.to_proof(visit.tag) or f"/diary/{visit.tag}/")


def test_the_way_home_stands_in_the_open_block(bench: Client, torbal: Any) -> None:
    assert bench.get(way(walk.agreed(torbal), "dispatch")).context["open"].form.what == "dispatch"
