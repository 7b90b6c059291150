"""A finding names the part, the row of the fault table, the evidence, and where the drawing was touched."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.refused import WordsWereMissing
from spoolwright.shop.acts.write_finding import FaultWasUnknown, write_finding
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_it_is_kept(hand: Any) -> None:
    visit = walk.arrived(hand)
    entry = write_finding(
        hand=hand,
        visit=visit,
        part="pawl",
        fault="F15",
        evidence="one-sided shine",
        touched="level-wind-pawl",
    ).entry
    finding = entry.finding
    assert (finding.part, finding.fault, finding.touched) == ("pawl", "F15", "level-wind-pawl")


@pytest.mark.parametrize("fault", ["F00", "F71", "f15", "15", "pawl"])
def test_a_fault_is_a_row_of_the_table(hand: Any, fault: str) -> None:
    with pytest.raises(FaultWasUnknown, match="F01 to F70"):
        write_finding(hand=hand, visit=walk.arrived(hand), part="pawl", evidence="worn", fault=fault)


def test_no_evidence_no_finding(hand: Any) -> None:
    visit = walk.arrived(hand)
    for part, evidence in (("", "worn"), ("pawl", " ")):
        with pytest.raises(WordsWereMissing):
            write_finding(hand=hand, visit=visit, part=part, evidence=evidence)
    assert visit.entries.count() == 1
