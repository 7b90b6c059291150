"""What the page shows: the ladder of the chosen state, each way in short, every rung with its source."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from spoolwright.pages.carries.asked import CarriesForm
from spoolwright.pages.carries.drawn import Drawn
from spoolwright.pages.gathered.subject import State, Subject

TODAY, MOST = State("today", "today"), State("option-0", "Most", ("carbon-drag-set",))


def drawn(subject: Subject, **asked: str) -> Drawn:
    return Drawn(subject, CarriesForm(asked, subject))


def test_the_ladder_is_that_of_the_chosen_state(subject_of: Callable[..., Subject]) -> None:
    both = subject_of("tarvak-58r", TODAY, MOST)
    assert drawn(both).ladder.works == ()
    assert drawn(both, state="option-0").ladder.works == ("carbon-drag-set",)
    assert "ladder-narrow-carbon" in drawn(both, state="option-0").narrow


def test_every_rung_is_told_with_what_says_so(subject_of: Callable[..., Subject]) -> None:
    found = drawn(subject_of(), line="nylon 0.40 mm")
    assert len(found.steps) == len(found.ladder.rungs)
    assert all(step.source and step.mark and step.what_gives and "kg" in step.pull for step in found.steps)
    drag = next(step for step in found.steps if step.key == "drag")
    assert drag.over == ""
    assert any("times the drag’s greatest" in step.over for step in found.steps)
    assert any("times the drag as it is set" in step.over for step in found.steps)


def test_each_way_is_told_in_short_where_there_are_several(subject_of: Callable[..., Subject]) -> None:
    afters = drawn(subject_of("tarvak-58r", TODAY, MOST), state="option-0").afters
    assert [(after.words, after.is_shown) for after in afters] == [("today", False), ("Most", True)]
    assert all("the weakest part behind it" in after.says for after in afters)
    assert afters[0].says != afters[1].says
    assert drawn(subject_of()).afters == []


def test_the_star_turned_back_has_a_pull_of_its_own(subject_of: Callable[..., Subject]) -> None:
    turned = drawn(subject_of(), turns="2.5")
    assert turned.set_at is not None
    assert turned.set_words.startswith("Star 2.5 turns from free, line leaving at")
    assert 'class="setting"' in turned.desk
    assert drawn(subject_of()).set_words == ""


def test_a_reel_without_a_drag_says_why_there_is_no_ladder(subject_of: Callable[..., Subject]) -> None:
    subject = subject_of()
    without = replace(subject, sheet=subject.sheet.model_copy(update={"drag": None}))
    found = drawn(without)
    assert "no drag" in found.why_not
    assert found.steps == []
    assert found.turning is None
