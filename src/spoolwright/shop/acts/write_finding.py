"""Write a finding: the part, the fault where the table has one, and the evidence."""

from __future__ import annotations

from django.db import transaction

from spoolwright.shop.acts.open_diary import NOTHING_BESIDE, Beside, Written, open_diary
from spoolwright.shop.acts.put import needed, put
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.records.finding import Finding
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.visit import Visit

FAULTS = tuple(f"F{number:02d}" for number in range(1, 71))


class FaultWasUnknown(Refused):
    def __init__(self, typed: str) -> None:
        super().__init__(
            f"{typed!r} is no row of the fault table. Accepted: {FAULTS[0]} to {FAULTS[-1]}, or nothing.",
            "fault",
        )


@transaction.atomic
def write_finding(
    *,
    hand: Person,
    visit: Visit,
    part: str,
    evidence: str,
    fault: str = "",
    touched: str = "",
    beside: Beside = NOTHING_BESIDE,
) -> Written:
    """`touched` is the id of the part that was touched on the section drawing."""
    if fault and fault not in FAULTS:
        raise FaultWasUnknown(fault)
    needed(part, "part", "The part")
    needed(evidence, "evidence", "The evidence")
    diary = open_diary(hand, visit)
    written = diary.write("finding", beside, [part, fault, evidence])
    put(Finding(entry=written.entry, part=part, fault=fault, evidence=evidence, touched=touched))
    return written
