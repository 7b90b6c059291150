"""Two people who write in one diary at once both keep what they wrote, and the second sees the first."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.move_reel import move_reel
from spoolwright.shop.acts.open_diary import Attached, Beside
from spoolwright.shop.acts.refused import FieldWasRefused, HandWasNotOurs, ReelHadGoneHome
from spoolwright.shop.acts.strike_entry import strike_entry
from spoolwright.shop.acts.write_finding import write_finding
from spoolwright.shop.acts.write_word import write_word
from spoolwright.shop.questions.by_number import visit as visit_by_id
from spoolwright.shop.records.entry import Entry
from spoolwright.shop.records.visit import Visit
from tests import people
from tests.shop import walk
from tests.shop.at_once import at_once


@pytest.mark.django_db
def test_the_second_writer_sees_what_the_first_wrote(owner: Any, hand: Any) -> None:
    visit = walk.arrived(owner)
    both_saw = visit.last_seq
    first = write_word(hand=owner, visit=visit, words="rang the customer", seen=both_saw)
    second = write_finding(hand=hand, visit=visit, part="pawl", evidence="worn", beside=Beside(seen=both_saw))
    assert first.missed == ()
    assert [(e.words, e.author) for e in second.missed] == [("rang the customer", owner)]
    assert [e.seq for e in visit.entries.order_by("seq")] == [1, 2, 3]


@pytest.mark.django_db
def test_who_looked_last_has_missed_nothing(hand: Any) -> None:
    visit = walk.arrived(hand)
    first = write_word(hand=hand, visit=visit, words="one", seen=visit.last_seq)
    second = write_word(hand=hand, visit=visit, words="two", seen=first.entry.seq)
    assert second.missed == ()
    assert write_word(hand=hand, visit=visit, words="three").missed == ()


def test_two_hands_in_threads_lose_nothing(own_database: None) -> None:
    owner, hand = people.owner(), people.bench_hand()
    visit = walk.arrived(owner)

    def writes(person: Any) -> Any:
        def write() -> set[int]:
            missed, seen = set(), visit.last_seq
            for number in range(20):
                written = write_word(hand=person, visit=visit, words=f"{person.username} {number}", seen=seen)
                missed |= {e.pk for e in written.missed}
                seen = written.entry.seq
            return missed

        return write

    owners_missed, hands_missed = at_once([writes(owner), writes(hand)])
    entries = list(Entry.objects.filter(visit=visit).order_by("seq"))
    assert [e.seq for e in entries] == list(range(1, 42))
    for person in (owner, hand):
        said = [e.words for e in entries if e.author == person and e.kind == "word"]
        assert said == [f"{person.username} {number}" for number in range(20)]
    # Between them they were shown each other's entries, and never their own.
    by_owner = {e.pk for e in entries if e.author == owner}
    assert hands_missed <= by_owner
    assert owners_missed.isdisjoint(by_owner)
    last_of_all = entries[-1].author
    everything_before = hands_missed if last_of_all == hand else owners_missed
    assert len(everything_before) == 20


@pytest.mark.django_db
def test_a_stranger_and_somebody_who_left_write_nothing(hand: Any) -> None:
    visit = walk.arrived(hand)
    hand.is_active = False
    for nobody in (people.stranger(), None, hand):
        with pytest.raises(HandWasNotOurs):
            write_word(hand=nobody, visit=visit, words="I was never here")
    assert visit.entries.count() == 1


@pytest.mark.django_db
def test_after_dispatch_only_words_and_strikes(hand: Any) -> None:
    visit = walk.agreed(hand)
    dispatch = walk.gone(hand, visit).entry
    for writing in (
        lambda: walk.worked(hand, visit),
        lambda: write_finding(hand=hand, visit=visit, part="pawl", evidence="worn"),
        lambda: walk.read(hand, visit, "mass", 0.338, 0.001, "mass"),
        lambda: walk.quoted(hand, visit),
        lambda: walk.billed(hand, visit),
        lambda: walk.gone(hand, visit),
        lambda: move_reel(hand=hand, visit=visit, to="mat", version=visit.version),
    ):
        with pytest.raises(ReelHadGoneHome):
            writing()
    written = write_word(hand=hand, visit=visit, words="arrived safely, she wrote")
    strike_entry(hand=hand, entry=written.entry, reason="another reel's letter")
    assert not visit_by_id(visit.pk).is_open
    strike_entry(hand=hand, entry=dispatch, reason="the parcel is still on the table")
    assert visit_by_id(visit.pk).is_open
    walk.worked(hand, visit)


@pytest.mark.django_db
def test_an_entry_can_carry_the_reel_along(hand: Any) -> None:
    visit = walk.arrived(hand)
    write_finding(hand=hand, visit=visit, part="pawl", evidence="worn", beside=Beside(moved_to="bath"))
    moved = Visit.objects.get(pk=visit.pk)
    assert (moved.place, moved.version) == ("bath", visit.version + 1)
    with pytest.raises(FieldWasRefused, match="There is no such place. Accepted: mat, bath"):
        write_finding(hand=hand, visit=visit, part="pawl", evidence="worn", beside=Beside(moved_to="on hold"))
    assert visit.entries.count() == 2


@pytest.mark.django_db
def test_files_are_shown_in_their_order_with_their_words(hand: Any) -> None:
    visit = walk.arrived(hand)
    from spoolwright.shop.acts.attach_file import attach_file

    photos = [
        attach_file(hand=hand, data=walk.PHOTO + bytes([i]), original_name=f"{i}.jpg") for i in range(3)
    ]
    written = write_word(
        hand=hand,
        visit=visit,
        words="see",
        attached=[Attached(p, f"picture {p.original_name}") for p in photos],
    )
    assert [a.caption for a in written.entry.attached.all()] == [f"picture {i}.jpg" for i in range(3)]
