"""Casts worked out once for what was asked, and kept in this process."""

from __future__ import annotations

from functools import lru_cache

from spoolwright.judgement.cast_case import CastCase, cast_case
from spoolwright.judgement.cast_compare import Compared, compared
from spoolwright.judgement.cast_matters import Matters, what_matters
from spoolwright.judgement.narrowing import Known, know
from spoolwright.judgement.throw import Throw
from spoolwright.pages.gathered.kept_readings import FrozenTaken, thawed
from spoolwright.pages.gathered.subject import Subject
from spoolwright.sheets.reel_sheet import ReelSheet

SAMPLES, SEED, KEPT = 200, 1, 64
"""Few draws, because a slider waits for them: the ends of a band are sure to a tenth of its width."""

Asked = tuple[ReelSheet, tuple[FrozenTaken, ...], tuple[str, ...]]


def case_of(subject: Subject, throw: Throw) -> CastCase:
    """The throw with the first of the subject's states."""
    return _case((subject.sheet, subject.taken, subject.states[0].works), throw)


def compared_of(subject: Subject, throw: Throw, works: tuple[str, ...]) -> Compared | None:
    """The same throw after some works, beside the first state."""
    return _compared((subject.sheet, subject.taken, subject.states[0].works), throw, works)


def matters_of(subject: Subject, throw: Throw) -> Matters | None:
    """What would change the throw with the first state."""
    return _matters((subject.sheet, subject.taken, subject.states[0].works), throw)


@lru_cache(maxsize=KEPT)
def _known(sheet: ReelSheet, taken: tuple[FrozenTaken, ...]) -> Known:
    return know(sheet, thawed(taken), samples=SAMPLES, seed=SEED)


@lru_cache(maxsize=KEPT)
def _case(asked: Asked, throw: Throw) -> CastCase:
    sheet, taken, works = asked
    return cast_case(sheet, None, works, throw=throw, known=_known(sheet, taken))


@lru_cache(maxsize=KEPT)
def _compared(asked: Asked, throw: Throw, works: tuple[str, ...]) -> Compared | None:
    return compared(_case(asked, throw), works, _known(*asked[:2]))


@lru_cache(maxsize=KEPT)
def _matters(asked: Asked, throw: Throw) -> Matters | None:
    return what_matters(_case(asked, throw))
