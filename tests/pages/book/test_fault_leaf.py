"""How often a fault is found, as it is read: every finding behind it, what is set aside."""

from __future__ import annotations

from typing import Any

from django.test import RequestFactory

from spoolwright.pages.book.fault_leaf import FaultLeaf
from spoolwright.shop.acts.set_aside import set_aside
from tests.people import bench_hand
from tests.shop.proved_reel import FAULT


def leaf() -> FaultLeaf:
    request = RequestFactory().get(f"/book/{FAULT}/")
    request.user = bench_hand()
    return FaultLeaf(request, FAULT)


def test_each_finding_stands_behind_the_rate(proof: Any) -> None:
    told = leaf()
    assert [line.read for line in told.proofs] == ["pawl: tip worn"]
    assert told.proofs_said == "found on 1 of 1"
    assert told.now_middle.endswith("of 100 reels")
    assert len(told.chart.rows) == 2


def test_a_finding_set_aside_stands_below_and_no_longer_counts(proof: Any) -> None:
    finding = proof.visit.entries.get(kind="finding")
    set_aside(hand=bench_hand(), entry=finding, reason="it was dirt")
    told = leaf()
    assert told.proofs == []
    assert [line.row.reason for line in told.aside] == ["it was dirt"]
    assert told.proofs_said == "found on 0 of 1"
