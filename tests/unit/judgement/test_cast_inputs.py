"""From a reel and a throw to the arguments of a cast."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from math import inf, pi

import numpy as np
import pytest

from spoolwright.judgement import free_spin
from spoolwright.judgement.cast_inputs import CAST_DRAWS, CastInputs, cast_inputs, diameter_of, lip_slack
from spoolwright.judgement.monte_carlo import draw
from spoolwright.judgement.narrowing import know
from spoolwright.judgement.throw import EXAMPLE_LINE, Throw
from spoolwright.sheets import reel_sheet

THROW = Throw(0.150, 55.0)


@cache
def made(slug: str, fill: float = 1.0) -> CastInputs:
    known = know(reel_sheet.load(slug), {}, samples=200, seed=1)
    draws = {**known.draws, **draw(CAST_DRAWS, samples=200, seed=3)}
    return cast_inputs(known.sheet, known.state, draws, replace(THROW, fill=fill), 0.30e-3)


def test_spool_and_line_are_those_of_the_sheet() -> None:
    sheet, plain = reel_sheet.load("tarvak-58r"), made("tarvak-58r").plain
    assert plain["arbor_radius"] == sheet.spool.arbor_radius
    assert np.allclose(plain["full_radius"], sheet.spool.full_radius)
    assert np.median(plain["spool_inertia"]) == pytest.approx(free_spin.bare_inertia(sheet), rel=0.01)


def test_half_of_the_line_is_half_as_long_and_starts_lower() -> None:
    whole, half = made("tarvak-58r").plain, made("tarvak-58r", 0.5).plain
    assert np.allclose(np.asarray(half["line_length"]) * 2, whole["line_length"])
    sheet = reel_sheet.load("tarvak-58r").spool
    square = (sheet.full_radius**2 + sheet.arbor_radius**2) / 2
    assert np.allclose(half["full_radius"], square**0.5)


def test_a_brake_is_set_by_its_share_or_replaced_by_a_measured_one() -> None:
    inputs = made("tarvak-58r")
    half, measured = inputs.arguments(0.5), inputs.arguments(1.0, 3e-6)
    assert np.allclose(half["brake_centrifugal"], inputs.brakes.centrifugal / 2)
    assert measured["brake_magnetic"] == 3e-6
    assert measured["brake_centrifugal"] == 0.0


def test_only_a_reel_without_brakes_is_held_by_a_thumb() -> None:
    braked, bare = made("tarvak-58r").arguments(1.0), made("pellmar-30-2").arguments(1.0)
    assert braked["slack_limit"] == inf
    assert braked["thumb_force"] == 0.0
    assert bare["slack_limit"] == pytest.approx(made("pellmar-30-2").lip_slack / 2)
    assert np.all(np.asarray(bare["thumb_force"]) > 0)


def test_a_fixed_spool_is_cast_as_one() -> None:
    assert made("lumvik-4000").variant == "fixed spool"
    assert made("ostrell-s71").variant == "multiplier"


def test_the_middle_is_the_median_of_every_argument() -> None:
    inputs = made("tarvak-58r")
    middle = inputs.middle
    assert middle.plain["release_speed"] == pytest.approx(np.median(inputs.plain["release_speed"]))
    assert middle.drag.windage.shape == (1,)
    assert middle.brakes.centrifugal == pytest.approx(np.median(inputs.brakes.centrifugal))


def test_slack_to_the_lip_grows_with_room_and_with_the_turns_of_a_layer() -> None:
    sheet = reel_sheet.load("tarvak-58r")
    full = sheet.spool.full_radius
    assert lip_slack(sheet, 0.3e-3, full) == pytest.approx(2 * pi * 44 / 0.30 * 1.5e-3)
    assert lip_slack(sheet, 0.15e-3, full) == pytest.approx(2 * lip_slack(sheet, 0.3e-3, full))
    assert lip_slack(sheet, 0.3e-3, full - 1.5e-3) == pytest.approx(2 * lip_slack(sheet, 0.3e-3, full))
    assert lip_slack(sheet, 0.3e-3, sheet.spool.flange_diameter / 2) > 0


def test_the_line_is_the_asked_the_measured_or_an_example() -> None:
    assert diameter_of(replace(THROW, diameter=0.25e-3), 0.31e-3) == 0.25e-3
    assert diameter_of(THROW, 0.31e-3) == 0.31e-3
    assert diameter_of(THROW, None) == EXAMPLE_LINE
