"""A study is kept try by try, and refused unless every hand measured every part as often."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import Any

import pytest

from spoolwright.shop.acts import clock
from spoolwright.shop.acts.refused import FieldWasRefused, WordsWereMissing
from spoolwright.shop.acts.write_gauge_study import StudyWasNotCrossed, Try, write_gauge_study
from spoolwright.shop.records.instrument import GaugeStudy
from tests.shop import walk

pytestmark = pytest.mark.django_db
STUDIED = walk.studied()
TRIES = tuple(STUDIED.tries)


def test_every_try_is_kept(hand: Any) -> None:
    study = write_gauge_study(hand=hand, instrument=walk.caliper(hand), studied=STUDIED)
    kept = [Try(t.part, t.person, t.trial, t.value_si) for t in study.trials.all()]
    assert kept == list(TRIES)
    assert study.day == clock.today()


@pytest.mark.parametrize(
    ("tries", "why"),
    [
        (TRIES[:-1], "missing"),
        (TRIES[:-2], "missing"),
        ((*TRIES, TRIES[0]), "twice"),
        (TRIES[:2], "too little"),
        ((), "too little"),
        (tuple(t for t in TRIES if t.trial == 1), "too little"),
    ],
)
def test_a_study_with_holes_is_refused(hand: Any, tries: tuple[Try, ...], why: str) -> None:
    with pytest.raises(StudyWasNotCrossed, match=why):
        write_gauge_study(hand=hand, instrument=walk.caliper(hand), studied=replace(STUDIED, tries=tries))
    assert not GaugeStudy.objects.exists()


def test_one_person_alone_may_study_her_own_hand(hand: Any) -> None:
    tries = [t for t in TRIES if t.person == "Ada"]
    study = write_gauge_study(hand=hand, instrument=walk.caliper(hand), studied=replace(STUDIED, tries=tries))
    assert study.trials.count() == 4


@pytest.mark.parametrize(
    "changed",
    [
        {"dimension": "mass"},
        {"tolerance": 0.0},
        {"tolerance": float("nan")},
        {"day": clock.today() + timedelta(days=2)},
        {"tries": (replace(TRIES[0], value=float("nan")), *TRIES[1:])},
        {"tries": [Try(str(i), "Ada", 1, 1.0) for i in range(1001)]},
        {"what": " "},
    ],
)
def test_what_is_no_study_is_refused(hand: Any, changed: dict[str, Any]) -> None:
    with pytest.raises((FieldWasRefused, WordsWereMissing)):
        write_gauge_study(hand=hand, instrument=walk.caliper(hand), studied=replace(STUDIED, **changed))
    assert not GaugeStudy.objects.exists()
