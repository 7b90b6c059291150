"""Scenario 2: twelve reels, three at a time. Source of every number: trade handbook, chapter 9 (invented)."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from spoolwright.demo.scenarios import charter_fleet
from spoolwright.demo.signals import KILOGRAM as KG
from tests.unit.demo.conftest import TUESDAY


@pytest.fixture
def fleet(shop: Any, tell: Callable[..., list[Any]]) -> list[Any]:
    return tell(*charter_fleet.stories(shop, TUESDAY))


def results(read: Any, kind: str) -> list[float]:
    rows = [value for block in read.of_kind("reading") for value in block.part.values.all()]
    return [value.value_si for value in rows if value.kind == kind and value.repeat == 0]


def test_twelve_reels_none_mistaken_for_another_and_the_boat_never_left_short(fleet: list[Any]) -> None:
    assert len(fleet) == 12
    assert {read.customer.name for read in fleet} == {"Aslak Rein"}
    marks = [mark.words for read in fleet for mark in read.reel.marks.all() if mark.kind == "twin mark"]
    assert len(set(marks)) == 12
    for moment in {read.visit.arrived_at for read in fleet}:
        here = [read for read in fleet if read.visit.arrived_at <= moment < read.visit.sent_home_at]
        assert 12 - len(here) >= 8


def test_their_sums_and_their_tax(fleet: list[Any]) -> None:
    bills = [read.of_kind("invoice")[0].part for read in fleet]
    assert sum(bill.total_minor for bill in bills) == 13_820_00
    assert sum(bill.tax_minor for bill in bills) == 2_764_00
    lines = [line for bill in bills for line in bill.lines.all()]
    assert sum(line.gross_minor for line in lines if line.kind in ("tier", "discount")) == 12_420_00
    assert sum(line.gross_minor for line in lines if line.what == "Pinion bearing") == 440_00
    assert sum(line.gross_minor for line in lines if line.what == "Drag plate") == 960_00


def test_strikes_before_and_after_and_the_one_set_too_hard(fleet: list[Any]) -> None:
    before = [results(read, "pull_run")[0] / KG for read in fleet]
    assert (min(before), max(before)) == (pytest.approx(2.6, abs=0.02), pytest.approx(5.1, abs=0.02))
    assert sum(results(read, "start_up_ratio")[0] > 1.5 for read in fleet) == 3
    assert all(3.25 < results(read, "pull_run")[1] / KG < 3.55 for read in fleet)
    proofs = [block.part for read in fleet for block in read.of_kind("proof")]
    assert {row.decision for proof in proofs for row in proof.rows.all()} == {"shown"}
    warned = [block.part.evidence for read in fleet for block in read.of_kind("finding")]
    assert len([words for words in warned if "5.1 kg" in words and "4.49 kg" in words]) == 1
    assert round(charter_fleet.TARGET / KG, 2) == 3.40
    assert round(charter_fleet.LIMIT / KG, 2) == 4.49
