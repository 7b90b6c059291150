"""One promise beside what was measured."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.pages.proof.beside import beside
from spoolwright.shop.acts.send_quote import OfferedPromise
from spoolwright.shop.questions.readings import to_prove
from tests.pages import pier_reel
from tests.shop import walk

pytestmark = pytest.mark.django_db


def rows(visit: Any, system: str = "metric") -> dict[str, Any]:
    return {row.title: row for row in (beside(it, visit.tag, system) for it in to_prove(visit.pk))}


def test_before_a_reading_it_says_where_one_is_taken(visit: Any) -> None:
    row = rows(visit)["Pull with the drag hard on"]
    assert (row.measured, row.decision, row.chart) == ("", None, None)
    assert row.takes == f"/diary/{visit.tag}/write/pull/"


def test_with_a_reading_it_has_its_decision_and_a_picture(hand: Any, visit: Any) -> None:
    walk.read(hand, visit, "pull_full", 6.9 * walk.G, 0.05 * walk.G, "force")
    row = rows(visit)["Pull with the drag hard on"]
    assert row.decision.kind == "shown"
    assert row.measured == "6.90 kg ± 0.10 kg"
    assert "up from 5.80 kg" in row.chart.says
    assert row.promised.replace("\u00a0", " ") == "6.0 to 8.0 kg"


def test_a_share_said_in_per_cent_has_no_picture_in_plain_numbers(hand: Any) -> None:
    visit = pier_reel.on_the_mat(hand)
    promise = OfferedPromise("judder", "ratio", high=0.09, reading_kind="judder")
    walk.answered(hand, walk.quoted(hand, visit, walk.option(promises=(promise,))))
    walk.worked(hand, visit)
    walk.read(hand, visit, "judder", 0.06, 0.01, "ratio")
    row = rows(visit)["Judder"]
    assert row.chart is None
    assert row.measured == "6.0 % ± 2.0 %"


def test_a_typed_reading_is_taken_at_its_own_form_and_an_unknown_kind_nowhere(hand: Any) -> None:
    visit = pier_reel.on_the_mat(hand)
    promises = (
        OfferedPromise("end_float", "length", high=1e-4, reading_kind="end_float"),
        OfferedPromise("smoothness", "score", high=1.0, words="No grinding"),
    )
    walk.answered(hand, walk.quoted(hand, visit, walk.option(promises=promises)))
    walk.worked(hand, visit)
    found = rows(visit)
    assert found["Spool end-float"].takes == f"/diary/{visit.tag}/reading/end_float/"
    assert found["No grinding"].takes == ""
