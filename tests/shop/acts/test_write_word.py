"""A plain word: anybody of ours, at any time, also after the reel went home."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.refused import FieldWasRefused, WordsWereMissing
from spoolwright.shop.acts.write_word import write_word
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_it_is_kept_as_it_was_typed_and_missed_entries_come_with_their_authors(owner: Any, hand: Any) -> None:
    visit = walk.arrived(owner)
    write_word(hand=owner, visit=visit, words="first")
    typed = "  «ring before nine» \n<b>& not later</b>  "
    written = write_word(hand=hand, visit=visit, words=typed, seen=1)
    written.entry.refresh_from_db()
    assert (written.entry.words, written.entry.seq, written.entry.author) == (typed, 3, hand)
    assert [(e.seq, e.author.shown) for e in written.missed] == [(2, "Ingjerd Vannes")]


def test_a_word_has_words(hand: Any) -> None:
    visit = walk.arrived(hand)
    with pytest.raises(WordsWereMissing):
        write_word(hand=hand, visit=visit, words=" \n")
    with pytest.raises(FieldWasRefused, match="zero byte"):
        write_word(hand=hand, visit=visit, words="a\x00b")
    assert visit.entries.count() == 1
