"""A proof: the promise, the reading after the work, and a decision that the stated rule makes."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.prove import (
    NothingWasProved,
    PromiseWasNotAgreed,
    ProofPair,
    ReadingDidNotServe,
    TriedByHand,
    prove,
)
from spoolwright.shop.acts.send_quote import OfferedPromise
from spoolwright.shop.acts.strike_entry import strike_entry
from spoolwright.shop.acts.take_reading import Value, take_reading
from spoolwright.shop.questions.readings import to_prove
from tests.shop import walk

pytestmark = pytest.mark.django_db


def pull(hand: Any, visit: Any, kg: float, u: float = 0.05, **more: Any) -> Any:
    return walk.result(walk.read(hand, visit, "pull_full", kg * walk.G, u * walk.G, "force", **more))


def proved(hand: Any, visit: Any, measured: Any, promise: Any = None) -> Any:
    pair = ProofPair(promise or walk.promise_of("pull_full"), measured)
    return prove(hand=hand, visit=visit, pairs=[pair]).entry.proof.rows.get()


@pytest.fixture
def visit(hand: Any) -> Any:
    return walk.agreed(hand)


@pytest.mark.parametrize(
    ("kg", "decision"),
    [(6.9, "shown"), (6.05, "not shown"), (5.95, "not shown"), (5.5, "failed"), (9.0, "failed")],
)
def test_the_rule_decides(hand: Any, visit: Any, kg: float, decision: str) -> None:
    """Promised 6 to 8 kg, measured to 0.05 kg: two standard uncertainties from the edge it can tell."""
    walk.worked(hand, visit)
    row = proved(hand, visit, pull(hand, visit, kg))
    assert row.decision == decision
    assert decision in row.words
    assert "standard uncertainties" in row.rule
    assert (row.chance_of_wrong_pass is not None) == (decision == "shown")


def test_a_reading_from_before_the_work_proves_nothing(hand: Any, visit: Any) -> None:
    early = pull(hand, visit, 6.9)
    with pytest.raises(ReadingDidNotServe, match="before the work"):
        proved(hand, visit, early)
    walk.worked(hand, visit)
    with pytest.raises(ReadingDidNotServe, match="before the work"):
        proved(hand, visit, early)


def test_nor_does_one_that_is_struck_elsewhere_another_kind_or_a_single_try(hand: Any, visit: Any) -> None:
    walk.worked(hand, visit)
    struck = pull(hand, visit, 6.9)
    strike_entry(hand=hand, entry=struck.reading.entry, reason="scale not at zero")
    elsewhere = walk.agreed(hand, name="Jonna Fure", reel="Ostrell S71")
    promise = walk.promise_of("pull_full")
    mine = visit.entries.get(kind="quote").quote.options.get().promises.get(kind="pull_full")
    assert promise != mine
    walk.worked(hand, elsewhere)
    ratio = walk.result(walk.read(hand, visit, "start_up_ratio", 1.07, 0.02, "ratio"))
    tries = take_reading(
        hand=hand,
        visit=visit,
        values=[Value("pull_full", 60.0, "force", 0.5), Value("pull_full", 60.5, "force", repeat=1)],
        conditions=walk.PULLS,
    ).entry.reading.values.get(repeat=1)
    fresh = type(struck).objects.get(pk=struck.pk)
    for unfit in (fresh, pull(hand, elsewhere, 6.9), ratio, tries):
        with pytest.raises(ReadingDidNotServe):
            proved(hand, visit, unfit, mine)
    with pytest.raises(PromiseWasNotAgreed):
        proved(hand, visit, pull(hand, visit, 6.9), promise)


def test_other_conditions_are_another_reading(hand: Any) -> None:
    visit = walk.arrived(hand)
    promise = OfferedPromise(
        "pull_full_spool",
        "force",
        low=6 * walk.G,
        reading_kind="pull_full",
        conditions={"radius": 0.0235, "line": "on"},
    )
    walk.answered(hand, walk.quoted(hand, visit, walk.option(promises=(promise,))))
    walk.worked(hand, visit)
    kept = walk.promise_of("pull_full_spool")
    for other in ({"line": "off"}, {"radius": 0.0185}):
        with pytest.raises(ReadingDidNotServe, match="Not comparable"):
            proved(hand, visit, pull(hand, visit, 6.9, conditions=other), kept)
    assert (
        proved(hand, visit, pull(hand, visit, 6.9, conditions={"radius": 0.0236}), kept).decision == "shown"
    )


def test_nothing_is_no_proof(hand: Any, visit: Any) -> None:
    walk.worked(hand, visit)
    with pytest.raises(NothingWasProved):
        prove(hand=hand, visit=visit, pairs=[])


def test_what_there_is_to_prove(hand: Any) -> None:
    visit = walk.arrived(hand)
    before = pull(hand, visit, 5.8)
    walk.answered(hand, walk.quoted(hand, visit))
    walk.worked(hand, visit)
    pull(hand, visit, 6.7)
    after = pull(hand, visit, 6.9)
    rows = {row.promise.kind: (row.measured, row.before) for row in to_prove(visit.pk)}
    assert rows == {"pull_full": (after, before), "start_up_ratio": (None, None)}


def test_a_reading_that_cannot_be_compared_is_not_put_forward(hand: Any) -> None:
    visit = walk.arrived(hand)
    near = pull(hand, visit, 5.8)
    pull(hand, visit, 5.0, conditions={"radius": 0.030})
    promise = OfferedPromise("pull_full", "force", low=6 * walk.G, conditions={"radius": 0.0235})
    walk.answered(hand, walk.quoted(hand, visit, walk.option(promises=(promise,))))
    walk.worked(hand, visit)
    pull(hand, visit, 7.9, conditions={"radius": 0.018})
    assert [(row.measured, row.before) for row in to_prove(visit.pk)] == [(None, near)]
    after = pull(hand, visit, 6.9)
    assert [(row.measured, row.before) for row in to_prove(visit.pk)] == [(after, near)]
    far = visit.entries.filter(kind="reading").order_by("seq")[1].reading.values.get()
    with pytest.raises(ReadingDidNotServe, match="before the work"):
        prove(hand=hand, visit=visit, pairs=[ProofPair(walk.promise_of("pull_full"), after, far)])


def test_what_was_tried_by_hand_is_kept_with_the_proof(hand: Any, visit: Any) -> None:
    walk.worked(hand, visit)
    pair = ProofPair(walk.promise_of("pull_full"), pull(hand, visit, 6.9))
    tried = [TriedByHand("level_wind", "Level wind: ten full runs"), TriedByHand("tray", "The empty tray")]
    proof = prove(hand=hand, visit=visit, pairs=[pair], tried=tried).entry.proof
    assert [(check.key, check.words) for check in proof.checks.all()] == [(t.key, t.words) for t in tried]


def test_what_cannot_stand_beside_the_promise_is_named_with_what_parts_it(hand: Any) -> None:
    visit = walk.arrived(hand)
    promise = OfferedPromise(
        "pull_full_spool", "force", low=6 * walk.G, reading_kind="pull_full", conditions={"radius": 0.0235}
    )
    walk.answered(hand, walk.quoted(hand, visit, walk.option(promises=(promise,))))
    walk.worked(hand, visit)
    worn = pull(hand, visit, 6.9, conditions={"radius": 0.0185})
    (row,) = to_prove(visit.pk)
    assert (row.measured, row.nearest) == (None, worn)
    assert "18.5 mm" in row.parted[0]
    good = pull(hand, visit, 6.9)
    (row,) = to_prove(visit.pk)
    assert (row.measured, row.nearest, row.parted) == (good, None, ())
