"""The facts that judgement gets are those of the entries that stand, with caps and totals beside them."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest

from spoolwright.judgement.what_next import what_next
from spoolwright.shop.acts import clock
from spoolwright.shop.acts.record_answer import Said, record_answer
from spoolwright.shop.acts.strike_entry import strike_entry
from spoolwright.shop.questions.by_number import visit as visit_by_id
from spoolwright.shop.questions.facts_for_next import facts_for_next
from tests.shop import walk

pytestmark = pytest.mark.django_db


def facts(visit: Any) -> Any:
    return facts_for_next(visit_by_id(visit.pk))


def test_a_quote_says_its_sum_and_an_answer_its_cap(hand: Any) -> None:
    visit = walk.agreed(hand)
    said = [(e.kind, e.says, e.amount_minor) for e in facts(visit).entries]
    assert said == [("arrival", "", None), ("quote", "", 1104_00), ("answer", "yes", 1200_00)]
    held = facts(visit)
    assert (held.works_left, held.work_minutes, held.posted, held.free, held.quick) == (
        2,
        68,
        True,
        False,
        False,
    )


def test_an_extra_inside_the_cap_does_not_wait_and_one_above_it_does(hand: Any) -> None:
    visit = walk.agreed(hand)
    walk.read(hand, visit, "pull_full", 57.0, 0.5, "force")
    walk.quoted(hand, visit, walk.option(walk.COG, key="cog"))
    assert what_next(facts(visit)).act == "work"
    walk.quoted(hand, visit, walk.option(*[walk.COG] * 2, key="cogs"))
    assert what_next(facts(visit)).act == "answer"


def test_a_no_sends_it_home(hand: Any) -> None:
    visit = walk.arrived(hand)
    walk.read(hand, visit, "pull_full", 57.0, 0.5, "force")
    quote = walk.quoted(hand, visit)
    record_answer(hand=hand, quote=quote, option=None, said=Said("Ragna", "letter", "no"))
    assert what_next(facts(visit)).act == "dispatch"


def test_struck_entries_are_marked_and_count_for_nothing(hand: Any) -> None:
    visit = walk.agreed(hand)
    walk.read(hand, visit, "pull_full", 57.0, 0.5, "force")
    strike_entry(hand=hand, entry=visit.entries.get(kind="answer"), reason="the neighbour rang")
    assert [e.struck for e in facts(visit).entries] == [False, False, True, False]
    assert facts(visit).works_left is None
    assert what_next(facts(visit)).act == "answer"


def test_the_worst_row_speaks_for_a_proof(hand: Any) -> None:
    from spoolwright.shop.acts.prove import ProofPair, prove
    from spoolwright.shop.questions.readings import to_prove

    visit = walk.agreed(hand)
    walk.worked(hand, visit)
    walk.read(hand, visit, "pull_full", 6.9 * walk.G, 0.1, "force")
    walk.read(hand, visit, "start_up_ratio", 1.60, 0.02, "ratio")
    prove(hand=hand, visit=visit, pairs=[ProofPair(r.promise, r.measured) for r in to_prove(visit.pk)])
    assert facts(visit).entries[-1].says == "failed"
    assert what_next(facts(visit)).words.startswith("The proof failed")


def test_a_dunked_reel_is_one_until_the_work_has_begun_or_two_days_are_over(hand: Any) -> None:
    noon = clock.now()
    visit = walk.agreed(hand, under_water_at=noon)
    assert facts_for_next(visit, noon + timedelta(hours=47)).dunked
    assert not facts_for_next(visit, noon + timedelta(hours=49)).dunked
    walk.worked(hand, visit)
    assert not facts_for_next(visit, noon + timedelta(hours=1)).dunked


def test_a_sum_named_at_the_counter_is_known(hand: Any) -> None:
    assert not facts(walk.arrived(hand)).beforehand
    assert facts(walk.arrived(hand, name="Peder Lien", up_to_minor=300_00)).beforehand


def test_a_silent_customer_is_asked_again_as_the_shop_has_decided(hand: Any) -> None:
    visit = walk.arrived(hand)
    walk.read(hand, visit, "pull_full", 57.0, 0.5, "force")
    walk.quoted(hand, visit)
    later = facts_for_next(visit_by_id(visit.pk), clock.now() + timedelta(days=8))
    assert later.silence_days == (7, 14, 28)
    assert what_next(later).words.startswith("No answer for 8 days: ask again")
