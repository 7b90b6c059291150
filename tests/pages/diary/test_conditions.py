"""Conditions as fields: one for each that a kind needs, filled in as at the last reading like it."""

from __future__ import annotations

from typing import Any

import pytest
from django import forms

from spoolwright.pages.diary.ask import conditions
from spoolwright.pages.diary.ask.conditions import AboveNothing, TurnsField
from spoolwright.sheets import reading_kinds, reel_sheet
from tests.pages.diary.at_the_desk import arrived, desk_of
from tests.shop import walk


def test_every_condition_of_the_registry_has_a_field() -> None:
    assert set(conditions.fields(reading_kinds.CONDITIONS, None)) == set(reading_kinds.CONDITIONS)


@pytest.mark.parametrize(("text", "turns"), [("0", 0.0), ("1.25", 1.25), ("1 1/4", 1.25), ("1,5", 1.5)])
def test_turns_are_read_as_they_are_said(text: str, turns: float) -> None:
    assert TurnsField().clean(text) == turns


@pytest.mark.parametrize("text", ["-1", "some", "50 %", "1000", "2 kg"])
def test_other_turns_are_refused(text: str) -> None:
    with pytest.raises(forms.ValidationError, match="no number of turns"):
        TurnsField().clean(text)


@pytest.mark.parametrize("text", ["0 mm", "-3 mm"])
def test_a_radius_is_more_than_nothing(text: str) -> None:
    with pytest.raises(forms.ValidationError, match="not more than nothing"):
        AboveNothing("length").clean(text)


def test_a_lever_is_asked_for_its_way() -> None:
    field = conditions.fields(["star_turns"], None)["star_turns"]
    assert field.label == "Turns of the star from free"
    sheet = reel_sheet.load("tarvak-58r")
    lever = sheet.model_copy(update={"drag": sheet.drag.model_copy(update={"control": "lever"})})
    assert conditions.fields(["star_turns"], lever)["star_turns"].label == "Way of the lever from free"


def test_places_on_this_reel_are_offered() -> None:
    sheet = reel_sheet.load("tarvak-58r")
    field = conditions.fields(["place_measured"], sheet)["place_measured"]
    assert sheet.parts[0].name in field.widget.offered


@pytest.mark.django_db
def test_the_last_reading_like_it_fills_in_what_stays(torbal: Any) -> None:
    visit = arrived(torbal)
    walk.read(torbal, visit, "pull_run", 25.0, 0.1, "force")
    walk.read(torbal, visit, "mass", 0.3, 0.001, "mass", conditions={"line": "off"})
    pull = conditions.started(desk_of(torbal, visit), reading_kinds.kind("pull_run").conditions)
    assert (pull["radius"], pull["pull_number"], pull["pulls_of"]) == (0.0235, 2, 3)
    assert conditions.started(desk_of(torbal, visit), ["line"])["line"] == "off"


@pytest.mark.django_db
def test_a_first_pull_is_the_first_of_three(torbal: Any) -> None:
    started = conditions.started(desk_of(torbal, arrived(torbal)), reading_kinds.kind("pull_run").conditions)
    assert started == {"pull_number": 1, "pulls_of": 3}


def test_what_was_given_is_handed_on_in_si() -> None:
    cleaned = {"line": "on", "radius": 0.0235, "anti_reverse_cold": "warm", "star_turns": None}
    keys = ("line", "radius", "anti_reverse_cold", "star_turns")
    assert conditions.given(cleaned, keys) == {"line": "on", "radius": 0.0235, "anti_reverse_cold": False}
    assert conditions.as_fields({"anti_reverse_cold": True}) == {"anti_reverse_cold": "cold"}
