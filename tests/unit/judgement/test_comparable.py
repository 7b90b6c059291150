"""Readings stand side by side only where their conditions are the same."""

from __future__ import annotations

import pytest

from spoolwright.judgement.comparable import apart

HALF = {"line": "on", "radius": 0.0235, "brakes": "none", "star_turns": 2.5, "temperature": 291.15}


def test_the_same_conditions_part_nothing() -> None:
    assert apart(HALF, dict(HALF)) == ()


@pytest.mark.parametrize(
    ("changed", "said"),
    [
        ({"line": "off"}, "the line off"),
        ({"brakes": "on"}, "the brakes on"),
        ({"radius": 0.0185}, "18.5 mm"),
        ({"star_turns": 5.0}, "5 turns"),
        ({"temperature": 271.15}, "-2.00 °C"),
    ],
)
def test_each_condition_that_differs_is_named(changed: dict[str, object], said: str) -> None:
    (words,) = apart(HALF, HALF | changed)
    assert said in words


def test_small_differences_are_the_same_reading() -> None:
    near = {"radius": 0.0238, "star_turns": 2.75, "temperature": 296.15}
    assert apart(HALF, HALF | near) == ()


def test_what_only_one_of_them_names_parts_nothing() -> None:
    assert apart(HALF, {}) == apart({}, HALF) == ()
    assert apart({"line": ""}, {"line": "on"}) == ()


def test_warm_and_cold_anti_reverse_are_two_readings() -> None:
    assert apart({"anti_reverse_cold": True}, {"anti_reverse_cold": False}) == (
        "One was tried warm, the other cold.",
    )
    assert apart({"anti_reverse_cold": True}, {"anti_reverse_cold": True}) == ()


def test_several_differences_are_several_sentences_in_the_readers_units() -> None:
    found = apart(HALF, {"line": "off", "radius": 0.0185}, "imperial")
    assert len(found) == 2
    assert "0.925 in" in found[1]
