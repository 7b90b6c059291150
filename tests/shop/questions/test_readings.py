"""What a prediction starts from, and what is true now, are the results that stand."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.shop.acts.strike_entry import strike_entry
from spoolwright.shop.questions.readings import as_found, as_it_is, results, taken_after, taken_as_found
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_before_the_work_and_now(hand: Any) -> None:
    visit = walk.agreed(hand)
    walk.read(hand, visit, "pull_full", 55.0, 0.5, "force")
    walk.read(hand, visit, "pull_full", 57.0, 0.4, "force")
    assert as_found(visit.pk) == {"pull_full": Measured(57.0, 0.4, "force")}
    walk.worked(hand, visit)
    walk.read(hand, visit, "pull_full", 68.0, 0.3, "force")
    assert as_found(visit.pk) == {"pull_full": Measured(57.0, 0.4, "force")}
    assert as_it_is(visit.pk) == {"pull_full": Measured(68.0, 0.3, "force")}


def test_a_struck_reading_is_no_result(hand: Any) -> None:
    visit = walk.agreed(hand)
    walk.read(hand, visit, "pull_full", 55.0, 0.5, "force")
    wrong = walk.read(hand, visit, "pull_full", 570.0, 0.4, "force").entry
    strike_entry(hand=hand, entry=wrong, reason="a nought too many")
    assert as_it_is(visit.pk)["pull_full"].value == 55.0
    assert [v.value_si for v in results(visit.pk)] == [55.0]


def test_judgement_is_handed_the_conditions_too(hand: Any) -> None:
    visit = walk.agreed(hand)
    walk.read(hand, visit, "pull_full", 55.0, 0.5, "force")
    walk.read(hand, visit, "pull_full", 57.0, 0.4, "force")
    walk.worked(hand, visit)
    walk.read(hand, visit, "pull_full", 68.0, 0.3, "force")
    (taken,) = taken_as_found(visit.pk)["pull_full"]
    assert taken.measured == Measured(57.0, 0.4, "force")
    assert taken.number("radius") is not None


def test_after_the_last_work_only_what_was_read_since_counts(hand: Any) -> None:
    visit = walk.agreed(hand)
    assert taken_after(visit.pk) == ()
    walk.worked(hand, visit)
    walk.read(hand, visit, "pull_full", 60.0, 0.4, "force")
    walk.worked(hand, visit)
    assert taken_after(visit.pk) == ()
    walk.read(hand, visit, "pull_full", 68.0, 0.4, "force")
    (taken,) = taken_after(visit.pk)
    assert (taken.kind, taken.measured.value, taken.conditions["line"]) == ("pull_full", 68.0, "on")
