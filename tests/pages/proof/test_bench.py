"""What lies on the bench before a proof."""

from __future__ import annotations

from typing import Any

import pytest

from tests.people import owner
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_pairs_are_the_promises_that_can_be_proved(hand: Any, visit: Any, bench: Any) -> None:
    assert bench(visit).pairs == []
    walk.read(hand, visit, "pull_full", 6.9 * walk.G, 0.5, "force")
    found = bench(visit)
    assert [pair.promise.kind for pair in found.pairs] == ["pull_full"]
    assert [row.title for row in found.unmeasured] == ["Start-up ratio"]


def test_the_gate_knows_what_was_read_since_the_last_work(hand: Any, visit: Any, bench: Any) -> None:
    walk.read(hand, visit, "start_up_ratio", 1.07, 0.02, "ratio")
    stands = {row.key: row.stand for row in bench(visit).measured_gate}
    assert stands["start_up"] == "met"
    walk.worked(hand, visit)
    assert {row.stand for row in bench(visit).measured_gate} == {"to measure"}


def test_a_proof_counts_until_more_work_is_done(hand: Any, visit: Any, bench: Any) -> None:
    measured = walk.result(walk.read(hand, visit, "pull_full", 6.9 * walk.G, 0.5, "force"))
    pair = walk.ProofPair(walk.promise_of("pull_full"), measured)
    entry = walk.prove(hand=hand, visit=visit, pairs=[pair]).entry
    assert bench(visit).written.entry == entry
    assert not bench(visit).may_sign
    assert bench(visit, owner()).may_sign
    walk.sign_proof(hand=owner(), proof=entry.proof)
    assert not bench(visit, owner()).may_sign
    assert [e.author for e in bench(visit).signs] == [owner()]
    walk.worked(hand, visit)
    assert bench(visit).written is None


def test_a_pull_after_the_work_is_drawn_and_one_before_it_is_not(hand: Any, visit: Any, bench: Any) -> None:
    from tests.pages import pier_reel

    assert bench(visit).pull is None
    pier_reel.pull(hand, visit, 2.7, 1.07)
    assert "starts smoothly" in bench(visit).pull.says
    assert bench(visit).spin is None
