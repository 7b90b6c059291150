"""The proof as the diary tells it."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from spoolwright.pages.diary.told import proofs
from spoolwright.shop.questions.diary import diary
from tests.pages import pier_reel
from tests.pages.diary.at_the_desk import text
from tests.pages.sent import as_shown
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_promised_stands_beside_measured_and_before(bench: Client, torbal: Any) -> None:
    # Handbook scenario 1 (invented sums): full drag 5.8 kg before, 6.9 kg after.
    visit = walk.everything(torbal)
    facts = proofs.of_proof(diary(visit.pk).of_kind("proof")[0], "metric")
    row = facts["rows"][0]
    assert row.what == "Pull with the drag hard on"
    assert row.promised.replace("\u00a0", " ") == "6.0 to 8.0 kg"
    assert row.measured.startswith("6.9")
    assert row.before.startswith("5.8")
    assert (row.decision, len(facts["rules"])) == ("shown", 1)
    assert "promised 6.0 to 8.0 kg" in text(bench.get(f"/diary/{visit.tag}/"))


def test_a_share_is_told_in_percent_as_everywhere_else(bench: Client, torbal: Any) -> None:
    visit = pier_reel.ready_to_prove(torbal, bench)
    bench.post(f"/visits/{visit.tag}/proof/", as_shown(bench, f"/visits/{visit.tag}/proof/", "moved_to"))
    rows = proofs.of_proof(diary(visit.pk).of_kind("proof")[0], "metric")["rows"]
    judder = next(row for row in rows if row.what == "Judder")
    assert judder.promised.endswith("%")
    for said in (judder.measured, judder.spread, judder.before):
        assert said.endswith("%"), said
