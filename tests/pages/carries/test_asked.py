"""What is asked of the picture: the way of this reel's own drag, and states only where there are several."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest

from spoolwright.pages.carries.asked import CarriesForm
from spoolwright.pages.gathered.subject import State, Subject

MOST = State("option-0", "Most", ("carbon-drag-set",))


def test_it_begins_with_a_full_spool_and_the_drag_hard_on(subject_of: Callable[..., Subject]) -> None:
    subject = subject_of("tarvak-58r")
    form = CarriesForm({}, subject)
    assert not form.errors
    assert (form.value("fill"), form.turns) == (1.0, subject.setting.whole)
    assert "state" not in form.fields


def test_several_states_are_offered_by_their_names(subject_of: Callable[..., Subject]) -> None:
    subject = subject_of("tarvak-58r", State("today", "today"), MOST)
    assert CarriesForm({"state": "option-0"}, subject).value("state") == "option-0"
    wrong = CarriesForm({"state": "option-9"}, subject)
    assert "Accepted" in str(wrong["state"].errors)
    assert wrong.value("state") == "today"


def test_a_lever_is_asked_by_its_way_and_a_star_by_turns(subject_of: Callable[..., Subject]) -> None:
    lever = CarriesForm({"turns": "50 %"}, subject_of("pellmar-30-2"))
    assert lever.fields["turns"].label == "Way of the lever"
    assert lever.turns == pytest.approx(lever.setting.whole / 2)
    star = CarriesForm({"turns": "2.5"}, subject_of("tarvak-58r"))
    assert star.turns == 2.5
    assert star.sliders[1].said == "2.5 turns"


def test_a_reel_without_a_drag_has_nothing_to_turn(subject_of: Callable[..., Subject]) -> None:
    subject = subject_of("tarvak-58r")
    without = replace(subject, sheet=subject.sheet.model_copy(update={"drag": None}))
    assert CarriesForm({}, without).turns is None


def test_the_fill_of_the_address_is_where_it_begins(subject_of: Callable[..., Subject]) -> None:
    assert CarriesForm({}, subject_of("tarvak-58r", fill=0.4)).value("fill") == pytest.approx(0.4)
    assert CarriesForm({}, subject_of("tarvak-58r", fill=0.0)).value("fill") == pytest.approx(0.05)
