"""Conditions in the bench's own words and the reader's units."""

import pytest

from spoolwright.pages.words import conditions
from spoolwright.sheets.drag_setting import DragSetting

HALF = {
    "line": "on",
    "radius": 0.0235,
    "star_turns": 2.5,
    "pull_number": 2,
    "pulls_of": 3,
    "temperature": 292.15,
}


def test_a_pull_with_everything_that_belongs_to_it() -> None:
    said = conditions.in_words(HALF, "metric").replace("\u00a0", " ")
    assert said == "line on, radius 23.5 mm, 2.5 turns of the star from free, second pull of three, 19.0 °C"
    assert "0.925\u00a0in" in conditions.in_words(HALF, "imperial")


@pytest.mark.parametrize(
    ("given", "said"),
    [
        ({}, ""),
        ({"line": "", "brakes": None}, ""),
        ({"pull_number": 1}, "one pull"),
        ({"pull_number": 7, "pulls_of": 9}, "number 7 pull of 9"),
        ({"star_turns": 1.0}, "1 turn of the star from free"),
        ({"star_turns": 0.0}, "0 turns of the star from free"),
        ({"brakes": "none"}, "no brakes fitted"),
        ({"anti_reverse_cold": False}, "anti-reverse warm"),
        ({"anti_reverse_cold": True}, "anti-reverse cold"),
        ({"place_measured": "the lip"}, "the lip"),
    ],
)
def test_each_condition_by_itself(given: dict[str, object], said: str) -> None:
    assert conditions.in_words(given, "metric") == said


def test_what_sets_the_drag_is_named() -> None:
    lever, knob = DragSetting("lever"), DragSetting("knob", whole=3.0)
    assert conditions.in_words({"star_turns": 0.7}, "metric", lever) == "lever at 70 % of its way"
    assert conditions.in_words({"star_turns": 1.0}, "metric", knob) == "1 turn of the knob from free"
