"""What is asked of the picture: an ordinary week until somebody says otherwise."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spoolwright.judgement.worn_face import Use
from spoolwright.pages.gathered.subject import Subject
from spoolwright.pages.wears.asked import WearsForm


def test_it_begins_with_an_ordinary_week_and_a_morning_at_freezing(
    subject_of: Callable[..., Subject],
) -> None:
    form = WearsForm({}, subject_of())
    assert not form.errors
    assert form.use == Use()
    assert form.value("morning") == pytest.approx(273.15)
    assert form.value("part") == "pawl"
    assert form.diameter == pytest.approx(0.25e-3)


def test_the_week_is_as_it_was_set(subject_of: Callable[..., Subject]) -> None:
    typed = {"casts": "200", "grit": "5 %", "pull": "1 kg", "oil": "dry", "water": "salt", "fish": "100 m"}
    use = WearsForm(typed, subject_of()).use
    assert (use.casts, use.oiled, use.salt, use.fish) == (200.0, False, True, 100.0)
    assert use.grit == pytest.approx(0.05)
    assert use.pull == pytest.approx(9.80665)


def test_a_reel_with_one_part_has_nothing_to_choose(subject_of: Callable[..., Subject]) -> None:
    assert "part" not in WearsForm({}, subject_of("brekkas-9-10")).fields


def test_a_part_that_this_reel_has_not_is_refused_with_those_it_has(
    subject_of: Callable[..., Subject],
) -> None:
    form = WearsForm({"part": "wing"}, subject_of())
    assert "Accepted" in str(form["part"].errors)
    assert form.value("part") == "pawl"


def test_what_is_out_of_range_is_told_beside_its_field(subject_of: Callable[..., Subject]) -> None:
    form = WearsForm({"morning": "-60 °C"}, subject_of())
    assert "Accepted: -15 °C to 35 °C" in str(form["morning"].errors).replace("−", "-")
    assert form.value("morning") == pytest.approx(273.15)
