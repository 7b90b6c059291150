"""The run test in words."""

from __future__ import annotations

from dataclasses import replace

import pytest

from spoolwright.judgement.fish_run import FishRun
from spoolwright.judgement.prediction import Predicted
from spoolwright.judgement.run_test import RunTest, run_test
from spoolwright.judgement.run_words import HOT_CAUTION, between, heat_words, judder_words, waiting
from spoolwright.sheets import reel_sheet


@pytest.fixture(scope="module")
def felt() -> RunTest:
    return run_test(reel_sheet.load("tarvak-52"), samples=100)


def test_what_a_hot_felt_drag_is_told_as(felt: RunTest) -> None:
    made, limit, fade, wait = heat_words(felt)
    assert made.startswith("100 m of line in 25 s against")
    assert "growing by" in made
    assert "Its felt stands 140 °C: reached" in limit
    assert "Fade takes" in fade
    assert "before it is opened" in wait
    assert "more than these discs stand" in wait


def test_every_number_of_a_band_has_its_band_and_its_unit(felt: RunTest) -> None:
    told = " ".join((*heat_words(felt), *judder_words(felt)))
    assert told.count(" °C (") >= 1
    assert told.count(" kg (") >= 3
    assert " m/s (" in told


def test_imperial_readers_get_their_own(felt: RunTest) -> None:
    told = " ".join((*heat_words(felt, "imperial"), *judder_words(felt, "imperial")))
    assert "°F" in told
    assert " lb (" in told
    assert "ft/s" in told
    assert "°C" not in told
    assert " kg" not in told


def test_a_cool_run_may_follow_at_once() -> None:
    cool = run_test(reel_sheet.load("pellmar-30-2"), samples=100, fish=FishRun(pull=10.0, distance=20.0))
    told = " ".join(heat_words(cool))
    assert "not reached" in told
    assert "hardly fades" in told
    assert "The same run may follow at once." in told
    assert "No disc is over 48 °C" in told


def test_slack_line_is_said(felt: RunTest) -> None:
    assert felt.judder is not None
    slack = replace(felt, judder=replace(felt.judder, slack=0.9))
    assert "goes slack" in judder_words(slack)[1]


def test_a_short_wait_is_seconds_and_a_long_one_has_no_end() -> None:
    assert waiting(Predicted("wait", 40.0, 20.0, 60.0, 9.0, "time")) == "about 40 s (20 to 60 s)"
    assert waiting(Predicted("wait", 14400.0, 14400.0, 14400.0, 0.0, "time")) == "more than 4 h"
    assert waiting(Predicted("wait", 900.0, 600.0, 14400.0, 900.0, "time")).endswith("or more)")


def test_a_temperature_is_told_to_the_degree() -> None:
    assert between(Predicted("", 393.15, 383.15, 413.15, 5.0, "temperature"), "metric").startswith("120 °C")


def test_the_caution_names_burns_steam_and_smoke() -> None:
    for word in ("burn", "steam", "smoke"):
        assert word in HOT_CAUTION
