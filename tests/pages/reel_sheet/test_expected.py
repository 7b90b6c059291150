"""What a reel is expected to do: with its interval, its conditions, and what is a guess said to be one."""

from __future__ import annotations

import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.taken import Taken
from spoolwright.pages.gathered.kept_readings import frozen
from spoolwright.pages.reel_sheet import expected
from spoolwright.quantities import read
from tests.unit.papers.section import reels

SHEET = reels.shipped("tarvak-54c")


def test_a_pull_is_told_with_its_span_and_its_conditions() -> None:
    """The newer mid-size reel gives 18 to 20 lb (common practice, no source)."""
    value = expected.prediction(SHEET, (), "imperial").values["pull_full_spool"]
    told = expected.told(value, "At a full spool", "imperial")
    middle = read(told.middle.replace("\u00a0", " "), "force")
    assert read("18 lb", "force") <= middle <= read("20 lb", "force")
    assert " to " in told.span
    assert told.span.endswith("lb")
    assert "line leaving at 0.906\u00a0in" in told.conditions
    assert "star 4 turns from free" in told.conditions


def test_guesses_are_told_apart_from_what_is_known() -> None:
    reasons = expected.told(
        expected.prediction(SHEET, (), "metric").values["line_capacity"], "x", "metric"
    ).reasons
    assert {reason.is_guess for reason in reasons} == {True, False}
    assert next(r for r in reasons if "reel sheet" in r.words).is_guess is False


def test_a_smaller_radius_pulls_more_by_the_same_torque() -> None:
    torque = expected.prediction(SHEET, (), "metric").values["drag_torque"]
    told = expected.at_radius(torque, 0.0115, "metric")
    by_hand = torque.middle / 0.0115
    assert read(told.middle.replace("\u00a0", " "), "force") == pytest.approx(by_hand, rel=0.01)
    assert "11.5\u00a0mm" in told.conditions


def test_a_reels_own_readings_change_what_is_expected_of_it() -> None:
    sheet = reels.shipped("tarvak-58r")
    taken = Taken("pull_full", Measured(40.0, 0.4, "force"), {"radius": 0.0235, "star_turns": 5.0})
    sound = expected.prediction(sheet, (), "metric").values["pull_full_spool"]
    own = expected.prediction(sheet, frozen({"pull_full": (taken,)}), "metric").values["pull_full_spool"]
    assert own.middle == pytest.approx(40.0, rel=0.05)
    assert own.high - own.low < sound.high - sound.low


def test_a_pull_within_reach_is_a_turn_and_one_beyond_it_is_works() -> None:
    advice, ways = expected.reaching(SHEET, (), read("10 lb", "force"), "imperial")
    assert advice.turns is not None
    assert ways == ()
    beyond, found = expected.reaching(reels.shipped("tarvak-52"), (), read("12 lb", "force"), "imperial")
    assert beyond.turns is None
    assert found


@pytest.mark.parametrize("slug", reels.SLUGS)
def test_a_prediction_that_was_made_is_not_made_again(slug: str) -> None:
    sheet = reels.changed(slug, mass="299 g")
    first = expected.prediction(sheet, (), "metric")
    assert expected.prediction(sheet, (), "metric") is first


def test_the_gear_ratio_is_told_with_its_teeth() -> None:
    assert expected.ratio_in_words(SHEET) == "5.30 to 1 (53 teeth on 10)"
    assert "no gears" in expected.ratio_in_words(reels.fly())
