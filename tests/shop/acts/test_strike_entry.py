"""A struck entry stays readable with the reason beside it; what was written instead stands beside it too."""

from __future__ import annotations

from typing import Any

import pytest
from django.db import IntegrityError

from spoolwright.shop.acts.refused import WordsWereMissing
from spoolwright.shop.acts.strike_entry import EntryWasAlreadyStruck, ReplacementWasElsewhere, strike_entry
from spoolwright.shop.acts.write_finding import write_finding
from spoolwright.shop.questions.diary import diary
from spoolwright.shop.questions.find import find
from tests import people
from tests.shop import walk
from tests.shop.at_once import at_once


def finding(hand: Any, visit: Any, evidence: str) -> Any:
    return write_finding(hand=hand, visit=visit, part="pawl", fault="F15", evidence=evidence).entry


@pytest.mark.django_db
def test_both_are_kept(hand: Any) -> None:
    visit = walk.arrived(hand)
    wrong = finding(hand, visit, "tip worn on the left")
    right = finding(hand, visit, "tip worn on the right")
    strike_entry(hand=hand, entry=wrong, reason="left and right mixed up", replaced_by=right)
    blocks = diary(visit.pk).blocks
    assert [b.part.evidence for b in blocks[1:]] == ["tip worn on the left", "tip worn on the right"]
    assert [b.is_struck for b in blocks] == [False, True, False]
    strike = blocks[1].strike
    assert (strike.reason, strike.author, strike.replaced_by) == ("left and right mixed up", hand, right)


@pytest.mark.django_db
def test_it_needs_a_reason_and_happens_once(hand: Any, owner: Any) -> None:
    visit = walk.arrived(hand)
    entry = finding(hand, visit, "worn")
    with pytest.raises(WordsWereMissing):
        strike_entry(hand=hand, entry=entry, reason=" ")
    strike_entry(hand=owner, entry=entry, reason="wrong reel")
    with pytest.raises(
        EntryWasAlreadyStruck, match="Ingjerd Vannes has struck this entry already: wrong reel"
    ):
        strike_entry(hand=hand, entry=entry, reason="no, mine")


def test_of_two_who_strike_at_once_one_is_told(own_database: None) -> None:
    owner, hand = people.owner(), people.bench_hand()
    entry = finding(hand, walk.arrived(hand), "worn")
    came_back = at_once(
        [lambda p=person: strike_entry(hand=p, entry=entry, reason=p.username) for person in (owner, hand)]
    )
    assert sorted(type(thing).__name__ for thing in came_back) == ["EntryWasAlreadyStruck", "Strike"]


@pytest.mark.django_db
def test_what_was_written_instead_comes_later_in_the_same_diary(hand: Any) -> None:
    visit = walk.arrived(hand)
    first, second = finding(hand, visit, "one"), finding(hand, visit, "two")
    elsewhere = finding(hand, walk.arrived(hand, name="Jonna Fure"), "three")
    for wrong in (first, elsewhere):
        with pytest.raises(ReplacementWasElsewhere):
            strike_entry(hand=hand, entry=second, reason="again", replaced_by=wrong)


@pytest.mark.django_db
def test_a_struck_entry_is_still_found_with_its_reason(hand: Any) -> None:
    entry = finding(hand, walk.arrived(hand), "crossover notched")
    strike_entry(hand=hand, entry=entry, reason="seen under the wrong lamp")
    assert [f.ref for f in find("notched lamp")] == [entry.pk]


@pytest.mark.django_db
def test_the_database_holds_one_strike_an_entry(hand: Any) -> None:
    from spoolwright.shop.records.entry import Strike

    entry = finding(hand, walk.arrived(hand), "worn")
    strike = strike_entry(hand=hand, entry=entry, reason="once")
    with pytest.raises(IntegrityError):
        Strike(entry=entry, reason="twice", author=hand, written_at=strike.written_at).save()


@pytest.mark.django_db
def test_the_database_holds_the_reason_too(hand: Any) -> None:
    from spoolwright.shop.acts import clock
    from spoolwright.shop.records.entry import Strike

    entry = finding(hand, walk.arrived(hand), "worn")
    with pytest.raises(IntegrityError, match="shop_strike_has_reason"):
        Strike(entry=entry, reason="", author=hand, written_at=clock.now()).save()
