"""Casts worked out once and kept."""

from __future__ import annotations

from collections.abc import Callable

from spoolwright.judgement.throw import Throw
from spoolwright.pages.casts import kept
from spoolwright.pages.gathered.subject import Subject
from tests.pages.casts.conftest import MOST, TODAY

THROW = Throw(0.12, 45.0, diameter=0.3e-3)


def test_the_same_question_is_answered_from_what_was_kept(subject_of: Callable[..., Subject]) -> None:
    one, other = subject_of("tarvak-58r", TODAY, MOST), subject_of("tarvak-58r", TODAY, MOST)
    assert kept.case_of(one, THROW) is kept.case_of(other, Throw(0.12, 45.0, diameter=0.3e-3))
    assert kept.compared_of(one, THROW, MOST.works) is kept.compared_of(other, THROW, MOST.works)
    assert kept.matters_of(one, THROW) is kept.matters_of(other, THROW)


def test_the_first_state_may_have_works_of_its_own(subject_of: Callable[..., Subject]) -> None:
    done = subject_of("tarvak-58r", MOST)
    assert kept.case_of(done, THROW).works == MOST.works
