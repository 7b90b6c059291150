"""Predictions by the book: the very same without proofs, moved and narrower with them."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.judgement.book_chapter import read
from spoolwright.judgement.book_fit import Seen
from spoolwright.judgement.book_kinds import friction_kinds
from spoolwright.judgement.book_lessons import NOTHING_LEARNED, Lesson, Lessons, lessons
from spoolwright.judgement.narrowing import know, then
from spoolwright.judgement.prediction import predict
from spoolwright.judgement.reel_state import after, as_found
from spoolwright.judgement.works import all_works
from spoolwright.sheets import reel_sheet

SHEET = reel_sheet.load("tarvak-58r")
CARBON = ("carbon-drag-set",)
STATE = after(as_found(SHEET), SHEET, [all_works()["carbon-drag-set"]])
(KIND,) = friction_kinds(STATE).values()


def taught(*logs: float) -> Lessons:
    return lessons([read((KIND,), [Seen(((KIND.key, 1.0),), log, 0.004) for log in logs])])


def test_without_proofs_the_prediction_is_the_very_same() -> None:
    plain = predict(SHEET, {}, CARBON, samples=400)
    known = know(SHEET, {}, samples=400, seed=1, learned=NOTHING_LEARNED)
    assert predict(SHEET, {}, CARBON, known=known) == plain
    assert lessons([read((KIND,), ())]) == NOTHING_LEARNED


def test_proofs_move_the_pull_and_narrow_it() -> None:
    plain = predict(SHEET, {}, CARBON, samples=2000).values["pull_full_spool"]
    known = know(SHEET, {}, samples=2000, seed=1, learned=taught(*[0.1, 0.12, 0.08] * 6))
    told = predict(SHEET, {}, CARBON, known=known)
    pull = told.values["pull_full_spool"]
    assert pull.middle / plain.middle == pytest.approx(np.exp(0.1), rel=0.03)
    assert (pull.high - pull.low) / pull.middle < 0.8 * (plain.high - plain.low) / plain.middle
    assert any("this shop's book" in why and "18 proofs" in why for why in pull.rests_on)


def test_proofs_that_scatter_widen_it() -> None:
    plain = predict(SHEET, {}, CARBON, samples=2000).values["pull_full_spool"]
    known = know(SHEET, {}, samples=2000, seed=1, learned=taught(*[0.25, -0.25, 0.2, -0.2] * 5))
    wild = predict(SHEET, {}, CARBON, known=known)
    assert wild.values["pull_full_spool"].deviation > plain.deviation


def test_a_reel_keeps_its_place_within_its_kind_over_the_work() -> None:
    dressed = after(as_found(SHEET), SHEET, [all_works()["dress-drag"]])
    (kind,) = friction_kinds(dressed).values()
    lesson = Lesson(kind.key, kind.middle, 0.1, 0.5, 9, 0.1, 0.2)
    known = know(SHEET, {"pull_full": _pull()}, samples=400, seed=1, learned=Lessons((lesson,)))
    before, later = known.draws[kind.draws], then(known, dressed)[kind.draws]
    assert np.argsort(before).tolist() == np.argsort(later).tolist()
    assert np.allclose(later, lesson.put_on(before))
    assert np.allclose(lesson.taken_off(later), before)


def _pull() -> object:
    from spoolwright.bench.uncertainty import Measured

    return Measured(40.0, 0.5, "force")


def test_minutes_follow_the_book_in_whole_minutes() -> None:
    told = Lessons(minutes=(("minutes-new-pawl-round-multiplier", 1.3),))
    assert told.minutes_of("new-pawl", "round multiplier", 10) == 13
    assert told.minutes_of("new-pawl", "fly", 10) == 10
    assert told.minutes_of("new-pawl", "round multiplier", 0) == 0


def test_lessons_can_be_a_key() -> None:
    assert hash(taught(0.1)) == hash(taught(0.1))
