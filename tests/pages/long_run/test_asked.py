"""What is asked of the run: everything has an answer before anybody touches it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest

from spoolwright.pages.gathered.subject import Subject
from spoolwright.pages.long_run.asked import LongRunForm


def test_it_begins_with_the_standard_run_at_half_of_the_drag(subject_of: Callable[..., Subject]) -> None:
    form = LongRunForm({}, subject_of("tarvak-58r"))
    assert not form.errors
    fish = form.fish
    assert (fish.distance, fish.speed, fish.fill, fish.line_out) == (100.0, 4.0, 1.0, 20.0)
    assert fish.turns is None
    assert fish.pull == pytest.approx(2.9 * 9.80665, rel=0.1)
    assert list(form.fields)[:2] == ["by", "line"]


def test_set_by_its_star_the_pull_follows(subject_of: Callable[..., Subject]) -> None:
    form = LongRunForm({"by": "control", "turns": "2"}, subject_of("tarvak-58r"))
    assert form.fish.pull is None
    assert form.fish.turns == 2.0


def test_a_lever_is_set_by_a_share_of_its_way(subject_of: Callable[..., Subject]) -> None:
    form = LongRunForm({"by": "control", "turns": "50 %"}, subject_of("pellmar-30-2"))
    assert ("control", "by its lever") in form.fields["by"].choices
    assert form.fish.turns == pytest.approx(form.setting.whole / 2)


def test_what_is_typed_is_read_in_its_unit(subject_of: Callable[..., Subject]) -> None:
    asked = {"pull": "5 lb", "speed": "10 km/h", "distance": "50 yd", "line": "braid 0.25 mm", "fill": "60 %"}
    fish = LongRunForm(asked, subject_of("tarvak-58r", system="imperial")).fish
    assert fish.pull == pytest.approx(22.24, abs=0.01)
    assert fish.speed == pytest.approx(2.7778, abs=1e-3)
    assert fish.distance == pytest.approx(45.72)
    assert (fish.line, fish.fill) == ("braid 0.25 mm", 0.6)


def test_a_reel_without_a_drag_is_asked_nothing(subject_of: Callable[..., Subject]) -> None:
    subject = subject_of("tarvak-58r")
    bare = replace(subject, sheet=subject.sheet.model_copy(update={"drag": None}))
    assert not LongRunForm({}, bare).fields
