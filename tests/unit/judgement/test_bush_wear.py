"""End disc, drive-shaft bush and line-roller bush."""

from __future__ import annotations

import numpy as np

from spoolwright.judgement.bush_wear import bush_faces
from spoolwright.judgement.worn_face import Face, Use, common_draws
from spoolwright.sheets import reel_sheet

DRAWS = common_draws(300, 1)


def faces(slug: str, **use: float) -> dict[str, Face]:
    return {face.key: face for face in bush_faces(reel_sheet.load(slug), Use(**use), DRAWS)}


def test_each_reel_has_those_that_its_parts_list_names() -> None:
    assert set(faces("tarvak-58r")) == {"end-disc", "drive-shaft-bush"}
    assert set(faces("lumvik-4000")) == {"line-roller-bush"}
    assert faces("pellmar-30-2") == {}


def test_a_plastic_bush_is_not_reckoned_as_a_metal() -> None:
    roller = faces("lumvik-4000")["line-roller-bush"]
    assert roller.made_of == "POM"
    assert any("plastic on metal" in why for why in roller.rests_on)
    assert any("metal on metal" in why for why in faces("tarvak-58r")["drive-shaft-bush"].rests_on)


def test_the_harder_it_is_wound_the_faster_the_bush_goes() -> None:
    light, hard = (faces("tarvak-58r", pull=pull)["drive-shaft-bush"].per_week for pull in (5.0, 10.0))
    assert np.allclose(hard, 2 * light)


def test_little_grit_gets_behind_the_plate() -> None:
    inside = faces("tarvak-58r", grit=0.1)["drive-shaft-bush"].per_week
    clean = faces("tarvak-58r", grit=0.0)["drive-shaft-bush"].per_week
    assert np.all(inside > clean)
    assert float(np.median(inside)) < 4e-5
