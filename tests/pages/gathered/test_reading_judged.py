"""What a reading sheet says of limits: inside, outside, too close to call, or nothing where none hold."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.pages.gathered import reading_judged
from tests.shop import walk


def said(hand: Any, kind: str, value: float, spread: float, dimension: str, *tags: str) -> Any:
    reading = walk.read(
        hand, walk.arrived(hand), kind, value, spread, dimension, conditions={"place_measured": "rim"}
    ).entry.reading
    return reading_judged.stated(reading.values.get(), tags, "metric")


@pytest.mark.parametrize(
    ("float_", "call"), [(0.08e-3, "inside"), (0.121e-3, "too close to call"), (0.4e-3, "outside")]
)
def test_a_size_is_held_against_what_is_good(hand: Any, float_: float, call: str) -> None:
    told = said(hand, "end_float", float_, 0.005e-3, "length")
    assert told.call == call
    assert "0.05 mm" in told.limits
    assert "judgement prior" in told.limits
    assert bool(told.chance_wrong) == (call != "too close to call")


def test_a_share_is_said_in_per_cent(hand: Any) -> None:
    told = said(hand, "judder", 0.05, 0.003, "ratio")
    assert told.call == "inside"
    assert told.limits.startswith("up to 8 %")
    assert told.figure.startswith("5.00")


def test_a_score_has_its_word_and_no_statement(hand: Any) -> None:
    told = said(hand, "corrosion", 2.0, 0.5, "score")
    assert told.call == ""
    assert "spots" in told.figure


def test_where_no_limit_is_known_nothing_is_said(hand: Any) -> None:
    told = said(hand, "pull_full", 69.0, 0.5, "force")
    assert (told.call, told.limits, told.chance_wrong) == ("", "", "")
