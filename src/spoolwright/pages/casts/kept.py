"""Casts worked out once for what was asked, and kept in this process."""

from __future__ import annotations

from functools import lru_cache

from spoolwright.judgement.book_lessons import Lessons
from spoolwright.judgement.cast_case import CastCase, cast_case
from spoolwright.judgement.cast_compare import Compared, compared
from spoolwright.judgement.cast_matters import Matters, what_matters
from spoolwright.judgement.narrowing import Known
from spoolwright.judgement.throw import Throw
from spoolwright.pages.gathered import kept_known
from spoolwright.pages.gathered.kept_readings import FrozenTaken
from spoolwright.pages.gathered.subject import Subject
from spoolwright.sheets.reel_sheet import ReelSheet

SAMPLES, KEPT = 200, 64
"""Few draws, because a slider waits for them: the ends of a band are sure to a tenth of its width."""

Asked = tuple[ReelSheet, tuple[FrozenTaken, ...], tuple[str, ...], Lessons]


def case_of(subject: Subject, throw: Throw) -> CastCase:
    """The throw with the first of the subject's states."""
    return _case(_asked(subject), throw)


def compared_of(subject: Subject, throw: Throw, works: tuple[str, ...]) -> Compared | None:
    """The same throw after some works, beside the first state."""
    return _compared(_asked(subject), throw, works)


def matters_of(subject: Subject, throw: Throw) -> Matters | None:
    """What would change the throw with the first state."""
    return _matters(_asked(subject), throw)


def _asked(subject: Subject) -> Asked:
    return subject.sheet, subject.taken, subject.states[0].works, subject.learned


def _known(asked: Asked) -> Known:
    sheet, taken, _, learned = asked
    return kept_known.known(sheet, taken, learned, SAMPLES)


@lru_cache(maxsize=KEPT)
def _case(asked: Asked, throw: Throw) -> CastCase:
    return cast_case(asked[0], None, asked[2], throw=throw, known=_known(asked))


@lru_cache(maxsize=KEPT)
def _compared(asked: Asked, throw: Throw, works: tuple[str, ...]) -> Compared | None:
    return compared(_case(asked, throw), works, _known(asked))


@lru_cache(maxsize=KEPT)
def _matters(asked: Asked, throw: Throw) -> Matters | None:
    return what_matters(_case(asked, throw))
