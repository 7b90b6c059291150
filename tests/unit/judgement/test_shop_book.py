"""The book as a whole: what a hand sets aside is left out and stays in sight."""

from __future__ import annotations

from dataclasses import replace

import pytest

from spoolwright.judgement.book_chapter import now
from spoolwright.judgement.book_evidence import Learnt, Source, of_minutes
from spoolwright.judgement.book_fit import Seen
from spoolwright.judgement.book_kinds import Kind
from spoolwright.judgement.shop_book import Aside, bind

KIND = Kind("friction-felt", "friction", "Felt", 0.18, 0.09, 0.14, 0.22)


def proof(entry: int, log: float) -> Learnt:
    return Learnt((KIND,), Seen(((KIND.key, 1.0),), log, 0.003, entry=entry))


PROOFS = [proof(1, 0.1), proof(2, 0.1), proof(3, -0.4)]


@pytest.mark.parametrize("coefficient", ["", KIND.key])
def test_set_aside_is_left_out_and_told(coefficient: str) -> None:
    book = bind(PROOFS, [Aside(3, coefficient, "wet felt")])
    assert [one.seen.entry for one in book.chapters["friction"].weighed] == [1, 2]
    ((seen, why),) = book.aside_of(KIND.key)
    assert (seen.entry, why.reason) == (3, "wet felt")
    assert now(book.chapters["friction"], KIND).middle > now(bind(PROOFS).chapters["friction"], KIND).middle


def test_set_aside_from_another_coefficient_changes_nothing_here() -> None:
    assert len(bind(PROOFS, [Aside(3, "friction-cork", "wet")]).chapters["friction"].weighed) == 3


def test_taken_back_it_is_as_before() -> None:
    assert bind(PROOFS, []).lessons == bind(PROOFS).lessons


def test_every_chapter_is_there_and_minutes_go_to_theirs() -> None:
    book = bind([*PROOFS, of_minutes("fly", ["set-and-prove"], 6.0, Source(9))])
    assert [len(chapter.weighed) for chapter in book.chapters.values()] == [3, 0, 0, 1]
    assert book.proofs == 4


def test_what_taught_nothing_is_told() -> None:
    book = bind([replace(of_minutes("fly", ["no such work"], 6.0), entry=4)])
    assert book.silent[0][0] == 4


def test_a_coefficient_is_found_by_its_key() -> None:
    found = bind((), known=[KIND]).kind(KIND.key)
    assert found is not None
    assert found[1] is KIND
    assert bind(()).kind("no-such") is None
