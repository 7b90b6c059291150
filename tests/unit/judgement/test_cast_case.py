"""How far a reel casts, and how far its spool runs ahead."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.brake_setting import BrakeSetting
from spoolwright.judgement.cast_case import FIELDS, LOSSES, cast_case, predicted
from spoolwright.judgement.narrowing import know
from spoolwright.judgement.throw import Throw
from spoolwright.sheets import reel_sheet
from tests.unit.judgement.casting import LURE, SURF, case, known


@pytest.mark.parametrize("slug", ["tarvak-58r", "ostrell-s71", "pellmar-30-2", "lumvik-4000"])
def test_every_kind_that_casts_has_a_distance_with_its_band(slug: str) -> None:
    found = case(slug, LURE if slug == "ostrell-s71" else SURF)
    distance = found.values["distance"]
    assert 10 < distance.low < distance.middle < distance.high < 400
    assert set(found.values) == set(FIELDS)
    assert float(found.middle.summary.distance) == pytest.approx(distance.middle, rel=0.03)


def test_a_fly_reel_says_why_it_has_no_cast() -> None:
    found = cast_case(reel_sheet.load("brekkas-9-10"), throw=LURE)
    assert "cast by the weight of its own line" in found.why_not
    assert not found.values


def test_a_brake_that_nobody_set_is_set_for_half_of_the_slack_to_the_lip() -> None:
    found = case()
    assert found.share is not None
    assert 0 < found.share < 1
    assert float(found.middle.summary.peak_slack) == pytest.approx(found.lip_slack / 2, rel=0.02)


def test_a_brake_can_be_set_for_a_slack_that_is_chosen() -> None:
    asked = replace(SURF, brake=BrakeSetting(slack=2.0))
    found = cast_case(reel_sheet.load("tarvak-58r"), throw=asked, known=known("tarvak-58r"))
    assert float(found.middle.summary.peak_slack) == pytest.approx(2.0, rel=0.02)
    assert found.share < case().share


def test_a_harder_brake_means_less_slack_and_no_more_distance() -> None:
    soft, hard = case(share=0.2), case(share=1.0)
    assert hard.values["peak_slack"].middle < soft.values["peak_slack"].middle
    assert hard.values["distance"].middle < soft.values["distance"].middle
    assert hard.over_runs < soft.over_runs


def test_where_even_the_whole_brake_is_too_little_it_is_set_as_hard_as_it_goes() -> None:
    sheet = reel_sheet.load("tarvak-58r")
    feeble = sheet.model_copy(update={"brakes": sheet.brakes.model_copy(update={"block_mass": 1e-6})})
    assert cast_case(feeble, throw=SURF, samples=100).share == 1.0


def test_a_measured_brake_stands_in_place_of_the_reels_own() -> None:
    found = cast_case(
        reel_sheet.load("tarvak-58r"),
        throw=replace(SURF, brake=BrakeSetting(constant=4e-6)),
        known=known("tarvak-58r"),
    )
    assert found.share is None
    assert np.all(np.asarray(found.arguments["brake_magnetic"]) == 4e-6)


def test_the_same_seed_gives_the_same_cast_and_another_one_not() -> None:
    sheet = reel_sheet.load("tarvak-58r")
    one, again, other = (cast_case(sheet, throw=SURF, samples=100, seed=seed) for seed in (3, 3, 4))
    assert np.array_equal(one.samples["distance"], again.samples["distance"])
    assert not np.array_equal(one.samples["distance"], other.samples["distance"])


def test_a_slow_spin_of_this_reel_makes_its_cast_shorter_than_a_quick_one() -> None:
    sheet = reel_sheet.load("tarvak-58r")
    far = []
    for seconds in (5.0, 30.0):
        made = know(sheet, {"spin_time": Measured(seconds, 0.3, "time")}, samples=200, seed=1)
        found = cast_case(sheet, throw=replace(SURF, brake=BrakeSetting(share=0.3)), known=made)
        far.append(found.values["distance"].middle)
    assert far[0] < far[1] - 1.0


def test_a_line_that_runs_out_is_told() -> None:
    found = cast_case(reel_sheet.load("tarvak-58r"), throw=replace(SURF, fill=0.1), samples=100)
    assert any("line runs out" in note for note in found.notes)


def test_the_energy_of_the_middle_cast_goes_where_the_air_is() -> None:
    losses = case().losses
    assert set(losses) == set(LOSSES)
    assert losses["line_air_energy"] > losses["bearing_energy"] > losses["guide_energy"] >= 0


def test_a_cast_of_the_band_can_be_had_against_time() -> None:
    found = case()
    short, long = (found.drawn("distance", share) for share in (0.05, 0.95))
    assert float(short.summary.distance) == pytest.approx(found.values["distance"].low, rel=0.01)
    assert float(long.summary.distance) == pytest.approx(found.values["distance"].high, rel=0.01)


def test_what_it_rests_on_says_which_brake_is_a_guess() -> None:
    assert any("friction of the brake" in why for why in case().rests_on)
    assert not any("brake" in why for why in case("lumvik-4000").rests_on)


def test_more_blocks_than_there_are_are_refused() -> None:
    with pytest.raises(ValueError, match="at most 2 blocks"):
        cast_case(
            reel_sheet.load("tarvak-58r"), throw=Throw(0.1, 40.0, brake=BrakeSetting(blocks=3)), samples=100
        )


def test_a_field_keeps_its_dimension() -> None:
    assert predicted("flight_time", np.linspace(4.0, 6.0, 50)).dimension == "time"
