"""A reel lies in one place; two hands that carry it at once do not lose it; a promise is a spread."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.move_reel import move_reel
from spoolwright.shop.acts.refused import FieldWasRefused, SomeoneElseWroteFirst
from spoolwright.shop.questions.by_number import visit as visit_by_id
from spoolwright.shop.questions.choices import PLACES
from tests import people
from tests.shop import walk
from tests.shop.at_once import at_once


@pytest.mark.django_db
def test_through_every_place(hand: Any) -> None:
    visit = walk.arrived(hand)
    for place in (*PLACES[1:], PLACES[0]):
        written = move_reel(hand=hand, visit=visit, to=place, version=visit.version)
        visit = written.entry.visit
        assert (visit.place, visit.place_since) == (place, written.entry.written_at)
    assert list(visit.entries.values_list("moved_to", flat=True))[1:] == [*PLACES[1:], PLACES[0]]


@pytest.mark.django_db
def test_there_are_places_and_no_others(hand: Any) -> None:
    visit = walk.arrived(hand)
    for place in ("in progress", "Mat", "done"):
        with pytest.raises(FieldWasRefused, match="There is no such place"):
            move_reel(hand=hand, visit=visit, to=place, version=visit.version)


def test_of_two_who_carry_it_one_is_told_where_it_is(own_database: None) -> None:
    owner, hand = people.owner(), people.bench_hand()
    visit = walk.arrived(owner)
    came = at_once(
        [
            lambda: move_reel(hand=owner, visit=visit, to="bath", version=visit.version),
            lambda: move_reel(hand=hand, visit=visit, to="jig", version=visit.version),
        ]
    )
    (told,) = [thing for thing in came if isinstance(thing, SomeoneElseWroteFirst)]
    assert f"(now: {visit_by_id(visit.pk).place})" in told.words
