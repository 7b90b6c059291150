"""What wears first, and how long it lasts."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.narrowing import know
from spoolwright.judgement.wear_life import Lasts, WearLife, in_words, wear_life
from spoolwright.judgement.worn_face import Use
from spoolwright.sheets import reel_sheet

PIER = reel_sheet.load("tarvak-58r")
KNOWN = know(PIER, {}, samples=400, seed=1)
USED = {"mass": Measured(0.286, 0.001, "mass")}
FOUND = know(PIER, USED, samples=400, seed=1)


def part(life: WearLife, key: str) -> object:
    return next(one for one in life.parts if one.key == key)


def test_depths_grow_with_use_and_bands_hold_their_middle() -> None:
    for one in wear_life(PIER, {}, known=KNOWN).parts:
        low, middle, high = (np.array(values) for values in (one.depth_low, one.depth, one.depth_high))
        assert np.all(low <= middle)
        assert np.all(middle <= high)
        assert np.all(np.diff(middle) >= 0)
        assert middle[0] == 0.0
        assert one.lasts.low <= one.lasts.middle <= one.lasts.high
        assert one.rests_on


def test_the_soonest_is_named_first() -> None:
    life = wear_life(PIER, {}, known=KNOWN)
    assert [one.lasts.middle for one in life.parts] == sorted(one.lasts.middle for one in life.parts)
    assert life.parts[0].part in life.words


@pytest.mark.parametrize(
    "worse", [Use(casts=200.0), Use(grit=0.1), Use(oiled=False), Use(salt=True), Use(pull=20.0)]
)
def test_harder_use_never_lasts_longer(worse: Use) -> None:
    base, hard = (wear_life(PIER, {}, use=use, known=KNOWN) for use in (Use(), worse))
    for one in base.parts:
        assert part(hard, one.key).lasts.middle <= one.lasts.middle  # type: ignore[attr-defined]


def test_a_reel_in_use_is_worn_already_and_a_new_pawl_is_not() -> None:
    found = wear_life(PIER, USED, known=FOUND)
    mended = wear_life(PIER, USED, ("new-pawl",), known=FOUND)
    assert part(found, "pawl").depth[0] > 0  # type: ignore[attr-defined]
    assert part(mended, "pawl").depth[0] == 0.0  # type: ignore[attr-defined]
    assert part(mended, "pawl").renewed  # type: ignore[attr-defined]
    assert part(mended, "pawl").lasts.middle > part(found, "pawl").lasts.middle  # type: ignore[attr-defined]
    assert part(mended, "worm") == part(found, "worm")
    assert any("70 %" in note for note in found.notes)


def test_life_and_depth_say_the_same() -> None:
    life = wear_life(PIER, {}, weeks=100.0, known=KNOWN)
    pawl = part(life, "pawl")
    beyond = np.interp(pawl.lasts.middle, life.weeks, pawl.depth)  # type: ignore[attr-defined]
    if pawl.lasts.middle <= 100.0:  # type: ignore[attr-defined]
        assert beyond == pytest.approx(pawl.limit, rel=0.1)  # type: ignore[attr-defined]
    assert 0.0 <= pawl.chance <= 1.0  # type: ignore[attr-defined]


@pytest.mark.parametrize("slug", list(reel_sheet.shipped()))
def test_every_kind_of_reel_gets_an_answer(slug: str) -> None:
    sheet = reel_sheet.load(slug)
    life = wear_life(sheet, {}, samples=100)
    assert life.why_not or life.words
    assert all(one.words for one in life.parts)


def test_a_reel_of_which_nothing_is_told_says_so() -> None:
    bare = PIER.model_copy(update={"level_wind": None, "drag": None, "parts": ()})
    life = wear_life(bare, {}, samples=100)
    assert "nothing" in life.why_not
    assert not life.parts


def test_the_same_seed_gives_the_same_lives() -> None:
    again = know(PIER, {}, samples=400, seed=1)
    assert wear_life(PIER, {}, known=again) == wear_life(PIER, {}, known=KNOWN)


def test_weeks_below_nothing_are_refused() -> None:
    with pytest.raises(ValueError, match="weeks"):
        wear_life(PIER, {}, weeks=0.0, known=KNOWN)


@pytest.mark.parametrize(
    ("lasts", "words"),
    [
        (Lasts(0.2, 0.6, 0.9), "less than a week"),
        (Lasts(1.0, 15.0, 90.0), "about 15 weeks (1 week to 21 months)"),
        (Lasts(2000.0, 3000.0, float("inf")), "more than 30 years"),
    ],
)
def test_a_life_as_a_person_says_it(lasts: Lasts, words: str) -> None:
    assert in_words(lasts) == words
