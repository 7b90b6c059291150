"""What is to be watched, each with where it is known from."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from spoolwright.pages.passport.watched import watched
from spoolwright.shop.acts.prove import ProofPair, prove
from spoolwright.shop.questions.passport import passport
from spoolwright.shop.questions.readings import to_prove
from tests.pages.coming import came
from tests.people import bench_hand
from tests.shop import walk

pytestmark = pytest.mark.django_db


def words(visit: Any) -> list[str]:
    return [one.words for one in watched(passport(visit.reel_id), None, "metric")]


def test_a_reading_outside_its_limits_is_watched_until_a_later_one_is_inside() -> None:
    visit = came()
    walk.read(bench_hand(), visit, "start_up_ratio", 1.60, 0.01, "ratio")
    (one,) = watched(passport(visit.reel_id), None, "metric")
    assert one.words == "Start-up ratio 1.600 is to be acted on"
    assert "judgement prior" in one.known_from
    walk.read(bench_hand(), visit, "start_up_ratio", 1.05, 0.01, "ratio")
    assert words(visit) == []


def test_what_the_agreed_option_leaves_undone_is_watched_once() -> None:
    visit = came()
    option = replace(
        walk.option(), left_undone=("spool bearings stay as they are",), warnings=("old frame",) * 2
    )
    walk.answered(bench_hand(), walk.quoted(bench_hand(), visit, option))
    assert words(visit) == ["spool bearings stay as they are", "old frame"]


def test_what_a_proof_did_not_show_is_watched() -> None:
    hand = bench_hand()
    visit = came()
    walk.answered(hand, walk.quoted(hand, visit))
    walk.worked(hand, visit)
    walk.read(hand, visit, "pull_full", 3.0 * walk.G, 0.1, "force")
    pairs = [ProofPair(row.promise, row.measured) for row in to_prove(visit.pk) if row.measured]
    prove(hand=hand, visit=visit, pairs=pairs)
    assert words(visit)[0].startswith("Pull with the drag hard on:")
