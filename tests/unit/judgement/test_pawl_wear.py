"""Pawl, worm and the worm's bushes."""

from __future__ import annotations

import numpy as np

from spoolwright.judgement.pawl_wear import level_wind_faces
from spoolwright.judgement.worn_face import Face, Use, common_draws
from spoolwright.sheets import reel_sheet

DRAWS = common_draws(300, 1)


def faces(slug: str, **use: float) -> dict[str, Face]:
    return {face.key: face for face in level_wind_faces(reel_sheet.load(slug), Use(**use), DRAWS)}


def test_a_worm_outlives_its_pawl() -> None:
    found = faces("tarvak-58r")
    assert set(found) == {"pawl", "worm", "worm-bush"}
    assert np.median(found["worm"].per_week) < 0.3 * np.median(found["pawl"].per_week)


def test_a_guide_that_stands_still_in_the_cast_slides_half_as_far() -> None:
    driven, still = faces("tarvak-52")["pawl"], faces("tarvak-54c")["pawl"]
    assert float(np.median(still.slide)) < 0.7 * float(np.median(driven.slide))


def test_more_casts_and_more_pull_wear_it_faster() -> None:
    base = faces("tarvak-58r")["pawl"].per_week
    assert np.all(faces("tarvak-58r", casts=120.0)["pawl"].per_week > base)
    assert np.all(faces("tarvak-58r", pull=15.0)["pawl"].per_week > base)


def test_a_reel_that_stays_at_home_wears_nothing() -> None:
    assert np.all(faces("tarvak-58r", casts=0.0, fish=0.0)["pawl"].per_week == 0.0)


def test_reels_without_a_worm_have_none_of_these() -> None:
    assert faces("brekkas-9-10") == {}


def test_a_fixed_spool_reel_has_a_pawl_of_its_own() -> None:
    assert faces("lumvik-4000")["pawl"].part == "pawl that moves the spool"
