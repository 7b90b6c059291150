"""What the page shows for its answers."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace

import pytest

from spoolwright.pages.gathered.subject import State, Subject
from spoolwright.pages.wears.asked import WearsForm
from spoolwright.pages.wears.drawn import Drawn, merged, rough, together
from spoolwright.papers.charts import Curve

TODAY, CARBON = State("today", "today"), State("option-0", "Most", ("carbon-drag-set",))


def drawn(subject: Subject, asked: Mapping[str, str] | None = None) -> Drawn:
    return Drawn(subject, WearsForm(asked or {}, subject))


def test_the_part_that_goes_first_is_drawn_with_its_limit(subject_of: Callable[..., Subject]) -> None:
    picture = drawn(subject_of())
    assert picture.depth is not None
    assert "Pawl of the level wind" in picture.depth.says
    assert "rejected" in str(picture.depth.spec)
    assert picture.rows[0].is_drawn
    assert picture.rows[0].limit == "0.2 mm"


def test_states_that_wear_alike_are_one_line(subject_of: Callable[..., Subject]) -> None:
    subject = subject_of("tarvak-52", TODAY, CARBON)
    pawl = drawn(subject, {"part": "pawl"})
    assert pawl.depth is not None
    assert len(pawl.depth.head) == 2
    discs = drawn(subject, {"part": "disc-felt"})
    assert discs.depth is not None
    assert len(discs.depth.head) == 3
    assert len(next(row for row in discs.rows if row.key == "disc-felt").lasts) == 2


def test_a_cold_morning_is_told_in_words_and_drawn(subject_of: Callable[..., Subject]) -> None:
    picture = drawn(subject_of(), {"morning": "-5 °C"})
    assert picture.spin is not None
    assert "At -5 °C" in picture.spin.says
    assert "that morning" in str(picture.spin.spec)


@pytest.mark.parametrize("slug", ["brekkas-9-10", "lumvik-4000", "pellmar-30-2"])
def test_what_has_no_meaning_is_said_in_words(subject_of: Callable[..., Subject], slug: str) -> None:
    picture = drawn(subject_of(slug))
    assert picture.words
    assert picture.lay.words or picture.lay.why_not
    assert picture.spin is not None or picture.cold.why_not
    assert picture.bearings.bearings or picture.bearings.why_not


def test_a_reel_in_which_nothing_wears_is_told_so(subject_of: Callable[..., Subject]) -> None:
    subject = subject_of()
    bare = subject.sheet.model_copy(update={"level_wind": None, "drag": None, "parts": ()})
    picture = drawn(replace(subject, sheet=bare))
    assert picture.why_not
    assert picture.rows == []


def test_the_line_that_is_named_is_laid_and_backed(subject_of: Callable[..., Subject]) -> None:
    picture = drawn(subject_of(), {"line": "nylon 0.40 mm", "top": "50 m"})
    assert "0.400 mm" in picture.lay.words
    assert picture.shot.top_length == pytest.approx(50.0)
    assert picture.fish_pull.endswith("kg")


def test_the_same_told_of_several_is_told_once() -> None:
    assert together([("a", "x"), ("b", "y"), ("c", "x")]) == (("a, c", "x"), ("b", "y"))
    one, other = Curve("a", [0.0, 1.0], [0.0, 1.0]), Curve("b", [0.0, 1.0], [0.0, 2.0])
    same = Curve("c", [0.0, 1.0], [0.0, 1.0])
    assert [curve.words for curve in merged([one, other, same])] == ["a, c", "b"]


def test_a_limit_has_no_more_digits_than_it_has() -> None:
    assert rough(0.0983e-3, "metric") == "0.098 mm"
