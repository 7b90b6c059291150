"""What stands open at the end of a diary, stage by stage, and what else is offered."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.pages.diary import due
from spoolwright.shop.acts.send_quote import OfferedPromise
from spoolwright.shop.acts.write_finding import write_finding
from tests.pages.diary.at_the_desk import arrived, desk_of
from tests.shop import walk

pytestmark = pytest.mark.django_db


def open_form(hand: Any, visit: Any) -> Any:
    return due.due(desk_of(hand, visit)).form


def test_the_whole_way_has_its_form_at_each_stage(torbal: Any) -> None:
    visit = arrived(torbal)
    assert open_form(torbal, visit).kind.id == "mass"
    walk.read(torbal, visit, "mass", 0.338, 0.001, "mass")
    assert open_form(torbal, visit).what == "finding"
    write_finding(hand=torbal, visit=visit, part="pawl", evidence="worn")
    assert open_form(torbal, visit) is None
    quote = walk.quoted(torbal, visit)
    assert open_form(torbal, visit).what == "answer"
    walk.answered(torbal, quote)
    assert open_form(torbal, visit).what == "work"
    walk.worked(torbal, visit)
    assert open_form(torbal, visit).what == "pull"


def test_a_proof_first_asks_for_the_readings_it_lacks(torbal: Any) -> None:
    visit = walk.agreed(torbal)
    walk.worked(torbal, visit)
    found = due.due(desk_of(torbal, visit))
    assert found.promised == "Promised: start-up ratio at most 1.15."
    walk.read(torbal, visit, "start_up_ratio", 1.07, 0.01, "ratio")
    walk.read(torbal, visit, "pull_full", 6.9 * walk.G, 0.1, "force")
    assert due.due(desk_of(torbal, visit)).form is None


def test_the_reading_after_the_work_starts_as_the_one_before_it(torbal: Any) -> None:
    visit = walk.arrived(torbal)
    walk.read(torbal, visit, "start_up_ratio", 1.5, 0.01, "ratio", conditions={"star_turns": 2.5})
    walk.answered(torbal, walk.quoted(torbal, visit))
    walk.worked(torbal, visit)
    assert open_form(torbal, visit).initial["star_turns"] == 2.5


def test_what_was_typed_before_the_work_is_asked_for_as_something_to_type(torbal: Any) -> None:
    visit = walk.arrived(torbal)
    walk.read(torbal, visit, "pull_full", 5.8 * walk.G, 0.1, "force")
    walk.answered(torbal, walk.quoted(torbal, visit))
    walk.worked(torbal, visit)
    walk.read(torbal, visit, "start_up_ratio", 1.07, 0.01, "ratio")
    form = open_form(torbal, visit)
    assert form.kind.id == "pull_full"
    assert form.initial["radius"] == pytest.approx(0.0235)


def test_a_promised_spin_time_is_asked_for_from_the_stopwatch(torbal: Any) -> None:
    visit = walk.arrived(torbal)
    promise = OfferedPromise("spin_time", "time", low=17.0, reading_kind="spin_time")
    walk.answered(torbal, walk.quoted(torbal, visit, walk.option(promises=(promise,))))
    walk.worked(torbal, visit)
    assert open_form(torbal, visit).kind.id == "spin_time"


def test_a_reel_gone_home_asks_for_nothing(torbal: Any) -> None:
    visit = walk.agreed(torbal)
    walk.gone(torbal, visit)
    assert open_form(torbal, visit) is None
    assert due.not_taken_ways(desk_of(torbal, visit)) == []


def test_readings_not_taken_are_offered_until_the_work_begins(torbal: Any) -> None:
    visit = walk.agreed(torbal)
    walk.read(torbal, visit, "mass", 0.338, 0.001, "mass")
    assert [way.words for way in due.not_taken_ways(desk_of(torbal, visit))] == [
        "feel of the handle",
        "the pull",
        "spool end-float",
        "the spin",
    ]
    walk.worked(torbal, visit)
    assert due.not_taken_ways(desk_of(torbal, visit)) == []


def test_an_answer_is_offered_only_where_something_was_asked(torbal: Any) -> None:
    visit = walk.arrived(torbal)
    assert "the answer" not in [way.words for way in due.others(desk_of(torbal, visit))]
    walk.quoted(torbal, visit)
    assert "the answer" in [way.words for way in due.others(desk_of(torbal, visit))]
