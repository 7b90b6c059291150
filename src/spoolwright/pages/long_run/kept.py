"""Run tests, worked out once for what was asked and kept in this process."""

from __future__ import annotations

from functools import lru_cache

from spoolwright.judgement.fish_run import FishRun
from spoolwright.judgement.narrowing import Known, know
from spoolwright.judgement.run_test import RunTest, run_test
from spoolwright.pages.gathered.kept_readings import FrozenTaken, thawed
from spoolwright.pages.gathered.subject import State, Subject
from spoolwright.sheets.reel_sheet import ReelSheet

KEPT = 64
SAMPLES = 400
"""Draws of the judder; the heat follows some of them."""


def test_of(subject: Subject, state: State, fish: FishRun) -> RunTest:
    """The run against one state of the subject."""
    return _tested(subject.sheet, subject.taken, state.works, fish)


@lru_cache(maxsize=KEPT)
def _tested(
    sheet: ReelSheet, taken: tuple[FrozenTaken, ...], works: tuple[str, ...], fish: FishRun
) -> RunTest:
    return run_test(sheet, thawed(taken), works, fish=fish, known=_known(sheet, taken))


@lru_cache(maxsize=KEPT)
def _known(sheet: ReelSheet, taken: tuple[FrozenTaken, ...]) -> Known:
    return know(sheet, thawed(taken), samples=SAMPLES, seed=1)
