"""The stations of a lever drag: checked by hand on pellmar-30-2."""

from itertools import pairwise

import pytest

from spoolwright.papers.section.lever_measures import LeverMeasures
from tests.unit.papers.section import reels


@pytest.fixture
def m() -> LeverMeasures:
    return LeverMeasures(reels.shipped("pellmar-30-2"))


def test_the_disc_and_its_plate_stand_beside_the_spool(m: LeverMeasures) -> None:
    """By hand: half of 44 mm and a wall of 3 mm is 25 mm; 3.0, 1.2 and 3.0 mm follow."""
    assert m.stack_places[0][1] == pytest.approx(25.0)
    assert m.stack_end == pytest.approx(32.2)
    for (_, _, right), (_, left, _) in pairwise(m.stack_places):
        assert left == pytest.approx(right)
    assert m.plate_in > m.stack_end


def test_the_plates_stand_as_far_apart_as_the_sheet_says(m: LeverMeasures) -> None:
    assert m.plates is not None
    left, right = m.plates
    assert right - left == pytest.approx(62.0)
    assert left < -m.spool_end


def test_both_pairs_of_gears_stand_at_one_distance(m: LeverMeasures) -> None:
    """By hand: 0.9 mm x (50 + 15) / 2 = 0.9 mm x (39 + 26) / 2 = 29.25 mm."""
    assert m.drive_axis == pytest.approx(29.25)
    assert sum(m.low_pitches) == pytest.approx(29.25)
    assert m.low_faces is not None
    assert m.low_faces[0] > m.gear_faces[1]


def test_cam_springs_and_preset_follow_one_another_on_the_rod(m: LeverMeasures) -> None:
    assert m.cover_out < m.cam_out < m.springs_in < m.springs_out < m.preset_out < m.arm_in
    assert m.shaft_ends[1] > m.preset_out
    assert m.boss_out <= m.arm_in


def test_the_bearings_sit_in_the_ends_of_the_hub(m: LeverMeasures) -> None:
    (_, off), (_, gear) = m.spool_bearings
    assert gear == pytest.approx(m.spool_end - 2.5)
    assert off == pytest.approx(-gear)


def test_one_speed_has_no_low_pair() -> None:
    sheet = reels.shipped("pellmar-30-2")
    assert sheet.gears is not None
    single = sheet.gears.model_copy(update={"low_main_teeth": None, "low_pinion_teeth": None})
    m = LeverMeasures(sheet.model_copy(update={"gears": single}))
    assert m.low_faces is None
    assert m.low_pitches == (0.0, 0.0)
    assert m.cover_in > m.gear_faces[1]
