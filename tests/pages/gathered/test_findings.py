"""What was found, as a paper lists it."""

from __future__ import annotations

from typing import Any

from spoolwright.bench.uncertainty import Measured
from spoolwright.pages.gathered import findings
from spoolwright.shop.questions.diary import diary
from tests.shop import walk


def blocks(visit: Any) -> Any:
    return [block for block in diary(visit.pk).blocks if not block.is_struck]


def test_faults_come_first_and_the_latest_reading_of_each_kind_after_them(hand: Any) -> None:
    visit = walk.arrived(hand)
    walk.read(hand, visit, "pull_full", 50.0, 0.5, "force")
    walk.read(hand, visit, "mass", 0.338, 0.0006, "mass")
    walk.write_finding(hand=hand, visit=visit, part="pawl", fault="F15", evidence="worn")
    walk.read(hand, visit, "pull_full", 5.8 * walk.G, 0.5, "force")
    found = findings.found(blocks(visit), "metric")
    assert [it.what for it in found] == ["Pawl", "Pull with the drag hard on"], (
        "a mass tells a customer nothing"
    )
    assert found[0].value == "worn"
    assert found[1].value == Measured(5.8 * walk.G, 0.5, "force")
    assert "radius 23.5" in found[1].conditions


def test_conditions_that_stand_above_are_not_written_out_again(hand: Any) -> None:
    visit = walk.arrived(hand)
    for kind, value, dimension in (("pull_start", 38.0, "force"), ("pull_run", 25.0, "force")):
        walk.read(hand, visit, kind, value, 0.5, dimension)
    assert [it.conditions for it in findings.found(blocks(visit), "metric")][1] == "as above"


def test_judder_is_said_in_per_cent(hand: Any) -> None:
    visit = walk.arrived(hand)
    value = walk.result(walk.read(hand, visit, "judder", 0.24, 0.01, "ratio"))
    assert findings.figure(value, "metric") == "24.0 % ± 2.0 %"
