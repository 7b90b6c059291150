"""What is known of an instrument today: its latest version, check and study, in as many questions for any."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from typing import Any

import pytest
from django.db import connection
from django.test.utils import CaptureQueriesContext

from spoolwright.shop.acts.add_instrument import Known, add_instrument
from spoolwright.shop.acts.change_instrument import change_instrument
from spoolwright.shop.acts.retire_instrument import retire_instrument
from spoolwright.shop.acts.take_by_hand import take_by_hand
from spoolwright.shop.acts.write_gauge_study import write_gauge_study
from spoolwright.shop.questions import instruments
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_the_latest_of_everything_stands_first(hand: Any) -> None:
    kept = walk.measured_with(hand)
    change_instrument(hand=hand, instrument=kept, known=Known("Caliper by the vice", 2e-5, limit=5e-5))
    found = instruments.marked("c1")
    assert found is not None
    assert found.called == "Caliper by the vice (C1)"
    assert [v.number for v in found.versions] == [2, 1]
    assert found.now.limit == 5e-5
    assert found.now.check is not None
    assert found.now.check.off == pytest.approx(1e-5)


def test_the_latest_study_is_in_force(hand: Any) -> None:
    kept = walk.measured_with(hand)
    older = replace(walk.studied((4.0, 4.9, 4.1, 4.8, 4.0, 4.9, 4.1, 4.8)), day=date(2020, 1, 1))
    write_gauge_study(hand=hand, instrument=kept, studied=older)
    found = instruments.marked("C1")
    assert found is not None
    assert found.now.rests_on == "study"
    assert found.now.study is not None
    assert found.now.study.repeatability == pytest.approx(found.studies[0].read.repeatability)
    assert found.now.study.repeatability < 2e-5
    assert found.studies[1].row.day == date(2020, 1, 1)
    assert found.studies[0].tries.parts == ("1", "2")
    assert found.studies[0].tries.persons == ("Ada", "Ole")


def test_without_a_study_what_is_stated_counts(hand: Any) -> None:
    walk.caliper(hand)
    found = instruments.marked("C1")
    assert found is not None
    assert (found.now.rests_on, found.now.study, found.now.check) == ("stated", None, None)


def test_those_in_use_that_measure_such_a_thing(hand: Any) -> None:
    walk.caliper(hand)
    away = walk.caliper(hand, "C2")
    add_instrument(hand=hand, mark="S1", kind="hanging-scale", known=Known("Scale", 0.1, share=0.01))
    retire_instrument(hand=hand, instrument=away, why="lost")
    assert [one.row.mark for one in instruments.measuring("length")] == ["C1"]
    assert [one.row.mark for one in instruments.every()] == ["C1", "C2", "S1"]
    assert [one.row.mark for one in instruments.every(put_away=False)] == ["C1", "S1"]
    assert instruments.marked("X") is None


def test_how_many_readings_were_taken_with_it(hand: Any) -> None:
    kept, visit = walk.caliper(hand), walk.arrived(hand)
    assert instruments.taken_with(kept.pk) == 0
    taken = replace(walk.by_hand(), instrument=kept)
    take_by_hand(hand=hand, visit=visit, taken=taken, conditions={})
    walk.read(hand, visit, "pull_full", 60.0, 0.5, "force")
    assert instruments.taken_with(kept.pk) == 1


def test_one_study_by_its_number(hand: Any) -> None:
    kept = walk.measured_with(hand)
    number = kept.studies.get().pk
    found = instruments.study(number)
    assert found is not None
    assert found[1].row.pk == number
    assert instruments.study(number + 1) is None


def test_ten_instruments_cost_no_more_questions_than_one(hand: Any) -> None:
    walk.measured_with(hand)
    with CaptureQueriesContext(
        connection,
    ) as one:
        instruments.every()
    for number in range(9):
        walk.caliper(hand, f"K{number}")
    with CaptureQueriesContext(connection) as ten:
        instruments.every()
    assert len(ten) == len(one) <= 6


def test_those_that_record_a_signal_stand_before_those_that_measure_what_it_is_made_of(hand: Any) -> None:
    walk.caliper(hand)
    add_instrument(hand=hand, mark="P1", kind="phone", known=Known("Phone", 0.01))
    assert [one.row.mark for one in instruments.taking("spin-down")] == ["P1"]
    assert [one.row.mark for one in instruments.taking("swing", ("length", "angle"))] == ["P1", "C1"]
    assert instruments.taking("", ("mass",)) == ()
