"""A cast in plain words."""

from __future__ import annotations

from dataclasses import replace

import pytest

from spoolwright.judgement import cast_words
from spoolwright.judgement.brake_setting import BrakeSetting
from spoolwright.judgement.cast_case import cast_case
from spoolwright.judgement.cast_compare import compared
from spoolwright.judgement.prediction import Predicted
from spoolwright.sheets import reel_sheet
from tests.unit.judgement.casting import LURE, SURF, case, known, matters


def told(slug: str = "tarvak-58r", **more: object) -> str:
    return " ".join(cast_words.told(case(slug, **more)))  # type: ignore[arg-type]


def test_no_distance_is_told_without_its_spread() -> None:
    said = told()
    assert said.startswith("150 g thrown at 55.0 m/s goes 2")
    assert "nine casts in ten go" in said


def test_how_the_brake_stands_is_told_as_a_hand_sets_it() -> None:
    assert "With the brake set for it, at " in told()
    assert " of its 2 blocks)" in told()
    assert "With the brake at 30 % of its hardest (0.6 of its 2 blocks) the spool runs" in told(share=0.3)


def test_a_reel_without_a_brake_is_held_by_a_thumb() -> None:
    assert "a thumb has to hold the spool" in told("pellmar-30-2")


def test_a_spool_that_stands_still_cannot_over_run() -> None:
    assert "nothing can over-run" in told("lumvik-4000")


def test_a_brake_that_is_not_needed_and_one_that_is_not_enough() -> None:
    sheet = reel_sheet.load("tarvak-58r")
    gummed = {
        **known("tarvak-58r").draws,
        "bearing_condition": known("tarvak-58r").draws["bearing_condition"] * 40,
    }
    slow = cast_case(sheet, throw=SURF, known=replace(known("tarvak-58r"), draws=gummed))
    assert "No brake is needed" in " ".join(cast_words.told(slow))
    weak = sheet.model_copy(update={"brakes": sheet.brakes.model_copy(update={"block_mass": 1e-6})})
    said = cast_words.told(cast_case(weak, throw=SURF, samples=100))
    assert "Even with all of its brake" in " ".join(said)


def test_a_measured_brake_is_told_with_its_unit() -> None:
    measured = replace(SURF, brake=BrakeSetting(constant=4e-6))
    found = cast_case(reel_sheet.load("tarvak-58r"), throw=measured, known=known("tarvak-58r"))
    assert "measured brake of 4.00 μN m s" in " ".join(cast_words.told(found))


@pytest.mark.parametrize(
    ("slug", "throw"), [("tarvak-58r", SURF), ("ostrell-s71", LURE), ("pellmar-70", SURF)]
)
def test_freer_bearings_are_told_honestly(slug: str, throw: object) -> None:
    said = cast_words.matters_told(case(slug, throw), matters(slug, throw))  # type: ignore[arg-type]
    assert said[0].startswith("Halving the drag of bearings that are already clean adds next to nothing: ")
    assert "over-runs get worse" in said[0]
    assert "with the brake up from" in said[0]
    assert said[1].startswith("Bearings gummed, ten times the drag: −")


def test_numbers_in_these_words_are_this_reels_own() -> None:
    assert cast_words.matters_told(case(), matters()) != cast_words.matters_told(
        case("pellmar-70"), matters("pellmar-70")
    )


def test_bearings_that_drag_are_not_called_clean() -> None:
    inputs = case().inputs
    assert inputs is not None
    worn = replace(case(), inputs=replace(inputs, gum=4.0))
    said = cast_words.matters_told(worn, matters())
    assert "which drag more than sound ones" in said[0]
    assert said[1].startswith("Bearings ten times as stiff as these")


def test_without_a_brake_more_slack_is_for_the_thumb() -> None:
    said = cast_words.matters_told(case("pellmar-30-2"), matters("pellmar-30-2"))
    assert not any("brake set again" in words for words in said)


def test_what_works_change_is_told_with_the_brake_set_again_first() -> None:
    found = compared(case(), ["remove-level-wind"], known("tarvak-58r"))
    assert found is not None
    said = cast_words.compared_told(found, "Without it")
    assert said[0].startswith("Without it: next to no change in distance, ")
    assert "with the brake set again for the slack of before" in said[0]
    assert said[1].startswith("With the brake untouched: +")


@pytest.mark.parametrize(
    ("gain", "words"),
    [
        (Predicted("more", 8.0, 6.0, 11.0, 1.5, "line_length"), "clearly farther, +8.0 m (+6.0 to +11.0 m)"),
        (
            Predicted("more", -3.0, -4.0, -2.0, 0.5, "line_length"),
            "a little shorter, −3.0 m (−4.0 to −2.0 m)",
        ),
    ],
)
def test_a_verdict_goes_with_its_size(gain: Predicted, words: str) -> None:
    found = compared(case(), (), known("tarvak-58r"))
    assert found is not None
    plain = replace(found, gain=gain, again=None, gain_again=None)
    assert words in cast_words.compared_told(plain, "Work")[0]


def test_lengths_are_no_finer_than_anybody_could_tell() -> None:
    assert cast_words.length_words(0.044) == "less than 0.1 m"
    assert cast_words.length_words(0.0) == "0 m"
    assert cast_words.length_words(12.34, "imperial") == "13.5 yd"
    assert cast_words.gain_words(Predicted("", 0.4, 0.0, 0.9, 0.2, "line_length")) == "+0.4 m (0.0 to +0.9 m)"
