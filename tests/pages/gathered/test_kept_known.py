"""What is known of a reel is worked out once; works change what is predicted of it."""

from __future__ import annotations

from spoolwright.judgement.book_lessons import NOTHING_LEARNED, Lesson, Lessons
from spoolwright.pages.gathered import kept_known
from spoolwright.sheets import reel_sheet

SHEET = reel_sheet.load("tarvak-58r")


def test_the_draws_are_made_once_for_all_works() -> None:
    assert kept_known.known(SHEET, (), NOTHING_LEARNED) is kept_known.known(SHEET, (), NOTHING_LEARNED)


def test_works_change_the_prediction() -> None:
    before, after = (started(works, NOTHING_LEARNED) for works in ((), ("carbon-drag-set",)))
    assert after < before


def test_what_the_book_has_learned_changes_it_too() -> None:
    key = "start-up-woven-carbon-greased-new-discs"
    told = Lessons((Lesson(key, 1.09, 0.1, 0.5, 9, 1.1, 1.3),))
    assert started(("carbon-drag-set",), told) > 1.05 * started(("carbon-drag-set",), NOTHING_LEARNED)


def started(works: tuple[str, ...], learned: Lessons) -> float:
    return kept_known.prediction(SHEET, (), works, "metric", learned).values["start_up_ratio"].middle
