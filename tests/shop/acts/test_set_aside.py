"""A proof is set aside with a reason, once; only what the book learns from can be."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.refused import WordsWereMissing
from spoolwright.shop.acts.set_aside import EntryHadNothingToTeach, WasSetAsideAlready, set_aside
from spoolwright.shop.acts.take_back import take_back
from tests.shop import walk

pytestmark = pytest.mark.django_db


@pytest.fixture
def reading(hand: Any) -> Any:
    return walk.read(hand, walk.arrived(hand), "pull_full", 60.0, 0.5, "force").entry


def test_it_keeps_who_when_and_why(hand: Any, reading: Any) -> None:
    aside = set_aside(hand=hand, entry=reading, reason="gauge not at zero", coefficient="friction-felt")
    assert (aside.author, aside.reason, aside.coefficient) == (hand, "gauge not at zero", "friction-felt")
    assert not hasattr(reading, "strike")


@pytest.mark.parametrize("reason", ["", "  "])
def test_without_a_reason_it_is_refused(hand: Any, reading: Any, reason: str) -> None:
    with pytest.raises(WordsWereMissing):
        set_aside(hand=hand, entry=reading, reason=reason)


def test_what_is_aside_for_all_is_not_set_aside_again_for_one(hand: Any, owner: Any, reading: Any) -> None:
    aside = set_aside(hand=owner, entry=reading, reason="wet felt")
    with pytest.raises(WasSetAsideAlready, match="wet felt"):
        set_aside(hand=hand, entry=reading, reason="again", coefficient="friction-felt")
    take_back(hand=owner, set_aside=aside)
    assert set_aside(hand=hand, entry=reading, reason="again", coefficient="friction-felt").pk


def test_a_word_teaches_nothing(hand: Any, reading: Any) -> None:
    word = walk.write_word(hand=hand, visit=reading.visit, words="hello").entry
    with pytest.raises(EntryHadNothingToTeach, match="word"):
        set_aside(hand=hand, entry=word, reason="why not")
