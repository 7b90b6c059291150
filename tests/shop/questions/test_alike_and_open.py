"""Two reels of one model in pieces at once are told: the trade keeps one open for each hand."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.move_reel import move_reel
from spoolwright.shop.questions.alike_and_open import OpenReel, alike_and_open
from tests.shop import walk

pytestmark = pytest.mark.django_db


def carried(hand: Any, visit: Any, to: str) -> None:
    visit.refresh_from_db()
    move_reel(hand=hand, visit=visit, to=to, version=visit.version)


def test_one_that_was_worked_on_lies_open_until_its_proof(hand: Any) -> None:
    # Common practice, no source: one reel of one model open for each person.
    other = walk.agreed(hand)
    mine = walk.arrived(hand, name="Liv Langnesvik")
    carried(hand, other, "mat")
    assert alike_and_open(mine) == ()
    walk.worked(hand, other)
    assert alike_and_open(mine) == (OpenReel(other.tag, "Tarvak 58R", "mat", hand.shown),)


def test_one_in_the_bath_lies_open(hand: Any) -> None:
    other, mine = walk.arrived(hand), walk.arrived(hand, name="Liv Langnesvik", reel="tarvak 58r")
    carried(hand, other, "bath")
    assert [reel.tag for reel in alike_and_open(mine)] == [other.tag]


def test_another_model_and_one_that_has_gone_home_do_not(hand: Any) -> None:
    mine = walk.arrived(hand, name="Liv Langnesvik", reel="Pellmar 70")
    other = walk.agreed(hand)
    carried(hand, other, "mat")
    walk.worked(hand, other)
    assert alike_and_open(mine) == ()
    walk.gone(hand, other)
    assert alike_and_open(walk.arrived(hand, name="Aud Bruvoll")) == ()
