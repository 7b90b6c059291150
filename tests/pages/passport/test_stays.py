"""Each visit in a few lines, newest first."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.pages.passport.stays import stays
from spoolwright.shop.acts.strike_entry import strike_entry
from spoolwright.shop.questions.passport import passport
from tests.pages.coming import came
from tests.people import bench_hand
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_a_visit_tells_what_was_found_done_and_shown(visit: Any) -> None:
    (told,) = stays(passport(visit.reel_id))
    assert told.diary == f"/diary/{visit.tag}/"
    assert [one.part for one in told.found] == ["pawl"]
    assert told.done == ["Strip, wash, regrease", "Fit a pawl"]
    assert told.decisions == [("shown", ["Pull with the drag hard on"])]
    assert [line.mass_kg for line in told.weighed] == [0.338]


def test_what_was_struck_out_is_not_told() -> None:
    hand = bench_hand()
    visit = came(complaint="slips")
    walk.read(hand, visit, "pull_full", 57.0, 0.5, "force")
    from spoolwright.shop.acts.write_finding import write_finding

    entry = write_finding(hand=hand, visit=visit, part="pawl", evidence="worn").entry
    strike_entry(hand=hand, entry=entry, reason="the other reel")
    (told,) = stays(passport(visit.reel_id))
    assert (told.found, told.complaint, told.worked_on) == ([], "slips", None)
