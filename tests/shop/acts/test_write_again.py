"""Writing an entry again: the old one is struck and points at the new one, or neither happens."""

from __future__ import annotations

import pytest

from spoolwright.shop.acts.refused import WordsWereMissing
from spoolwright.shop.acts.strike_entry import EntryWasAlreadyStruck, strike_entry
from spoolwright.shop.acts.write_again import write_again
from spoolwright.shop.acts.write_word import write_word
from spoolwright.shop.records.entry import Entry, Strike
from tests.people import bench_hand, owner
from tests.shop.walk import arrived

pytestmark = pytest.mark.django_db


def test_the_old_entry_points_at_the_new_one() -> None:
    hand = bench_hand()
    visit = arrived(hand)
    old = write_word(hand=hand, visit=visit, words="radius 28 mm").entry
    written = write_again(
        hand=owner(),
        entry=old,
        reason="read at the lip",
        write=lambda: write_word(hand=owner(), visit=visit, words="radius 23.5 mm"),
    )
    strike = Strike.objects.get(entry=old)
    assert (strike.replaced_by, strike.reason, strike.author) == (written.entry, "read at the lip", owner())


def test_a_refused_new_entry_leaves_the_old_one_standing() -> None:
    hand = bench_hand()
    visit = arrived(hand)
    old = write_word(hand=hand, visit=visit, words="radius 28 mm").entry
    with pytest.raises(WordsWereMissing):
        write_again(
            hand=hand,
            entry=old,
            reason="wrong",
            write=lambda: write_word(hand=hand, visit=visit, words=" "),
        )
    assert not Strike.objects.exists()


def test_a_refused_strike_leaves_no_new_entry() -> None:
    hand = bench_hand()
    visit = arrived(hand)
    old = write_word(hand=hand, visit=visit, words="radius 28 mm").entry
    strike_entry(hand=hand, entry=old, reason="wrong diary")
    count = Entry.objects.count()
    with pytest.raises(EntryWasAlreadyStruck):
        write_again(
            hand=hand,
            entry=old,
            reason="again",
            write=lambda: write_word(hand=hand, visit=visit, words="new"),
        )
    assert Entry.objects.count() == count


def test_a_reason_is_needed_before_anything_is_written() -> None:
    hand = bench_hand()
    visit = arrived(hand)
    old = write_word(hand=hand, visit=visit, words="radius 28 mm").entry
    count = Entry.objects.count()
    with pytest.raises(WordsWereMissing):
        write_again(
            hand=hand, entry=old, reason="", write=lambda: write_word(hand=hand, visit=visit, words="new")
        )
    assert Entry.objects.count() == count
