"""Run tests, worked out once for what was asked and kept in this process."""

from __future__ import annotations

from functools import lru_cache

from spoolwright.judgement.book_lessons import Lessons
from spoolwright.judgement.fish_run import FishRun
from spoolwright.judgement.run_test import RunTest, run_test
from spoolwright.pages.gathered import kept_known
from spoolwright.pages.gathered.kept_readings import FrozenTaken, thawed
from spoolwright.pages.gathered.subject import State, Subject
from spoolwright.sheets.reel_sheet import ReelSheet

KEPT = 64
SAMPLES = 400
"""Draws of the judder; the heat follows some of them."""


def test_of(subject: Subject, state: State, fish: FishRun) -> RunTest:
    """The run against one state of the subject."""
    return _tested(subject.sheet, subject.taken, state.works, fish, subject.learned)


@lru_cache(maxsize=KEPT)
def _tested(
    sheet: ReelSheet,
    taken: tuple[FrozenTaken, ...],
    works: tuple[str, ...],
    fish: FishRun,
    learned: Lessons,
) -> RunTest:
    known = kept_known.known(sheet, taken, learned, SAMPLES)
    return run_test(sheet, thawed(taken), works, fish=fish, known=known)
