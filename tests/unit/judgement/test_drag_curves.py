"""What each cause does to the clamp force, against the same drag written out in the tests."""

import numpy as np
import pytest

from spoolwright.judgement import drag_curves
from spoolwright.judgement.drag_curves import Settings
from spoolwright.judgement.drag_faults import causes, setup
from spoolwright.sheets import reel_sheet
from tests.unit.judgement import drag_truth

SHEET = reel_sheet.load("tarvak-54c")
TURNS = (1.5, 2.5, 3.5)


def made(key: str, felt: bool = False) -> drag_curves.Curves:
    return drag_curves.curves(SHEET, causes()[key], Settings(TURNS, TURNS, felt), setup())


@pytest.mark.parametrize("slug", ["tarvak-54c", "lumvik-4000", "pellmar-30-2"])
def test_a_sound_drag_lies_where_the_drag_of_the_tests_does(slug: str) -> None:
    sheet = reel_sheet.load(slug)
    assert sheet.drag is not None
    turns = [share * sheet.drag.turns_to_full for share in (0.5, 0.8, 1.0)]
    radius = sheet.spool.full_radius
    clamp = drag_curves.curves(sheet, causes()["sound"], Settings(turns), setup()).now
    lever = drag_curves.leverage(sheet, radius)
    rng = np.random.default_rng(1)
    reels = [drag_truth.reel(rng, sheet) for _ in range(60)]
    true = np.array([[drag_truth.pull_at(t, sheet, one, radius) for t in turns] for one in reels])
    assert clamp.mean(axis=0) * lever.pull.mean() == pytest.approx(true.mean(axis=0), rel=0.1)


def test_each_cause_moves_what_it_says_and_nothing_else() -> None:
    sound, worn, weak, glazed = (made(key) for key in ("sound", "worn", "weak", "glazed"))
    assert np.all(worn.now.mean(axis=0) < sound.now.mean(axis=0))
    assert np.all(worn.friction == 1.0)
    assert worn.lost.mean() > 10 * abs(sound.lost.mean())
    assert weak.clamp[:, -1].mean() < 0.85 * sound.clamp[:, -1].mean()
    assert np.all(glazed.friction <= 0.85)
    assert glazed.start_ratio.mean() > sound.start_ratio.mean() + 0.1
    assert np.allclose(sound.then, worn.then)


def test_pairs_are_lost_whole() -> None:
    left = np.unique(made("misstacked").friction.round(6))
    assert left.tolist() == pytest.approx([4 / 6, 5 / 6], abs=1e-5)
    alone = drag_curves.curves(
        reel_sheet.load("pellmar-30-2"), causes()["misstacked"], Settings((0.5,)), setup()
    )
    assert np.all(alone.friction == 1.0)


def test_where_free_was_found_by_feel_a_lost_thickness_does_not_show() -> None:
    assert made("worn", felt=True).clamp.mean(axis=0) == pytest.approx(
        made("sound", felt=True).clamp.mean(axis=0), rel=0.02
    )


def test_the_leverage_stands_for_equal_parts_and_falls_with_the_radius() -> None:
    near, far = drag_curves.leverage(SHEET, 0.01), drag_curves.leverage(SHEET, 0.02)
    assert near.pull == pytest.approx(2 * far.pull)
    assert np.all(np.diff(near.pull) >= 0)
    assert near.friction.mean() == pytest.approx(0.155, rel=0.03)
    with pytest.raises(ValueError, match="radius"):
        drag_curves.leverage(SHEET, 0.0)
    assert SHEET.drag is not None
    assert drag_curves.friction_thickness(SHEET.drag) == pytest.approx(4.8e-3)
