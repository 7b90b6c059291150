"""The stations of a fixed-spool reel: checked by hand on lumvik-4000, and on a sheet with little on it."""

from itertools import pairwise

import pytest

from spoolwright.papers.section.fixed_measures import FixedMeasures
from tests.unit.papers.section import reels

SHEETS = [reels.shipped("lumvik-4000"), reels.fixed_spool()]


def test_the_stack_fills_the_well_up_to_a_millimetre_below_the_lip() -> None:
    """By hand: three discs of 0.8 mm, keyed ones of 1.0 and 1.2 mm, an eared one of 0.8 mm: 5.4 mm."""
    m = FixedMeasures(reels.shipped("lumvik-4000"))
    assert m.floor_faces[0] - m.stack_end == pytest.approx(5.4)
    assert m.stack_end == pytest.approx(-m.spool_end + 1.0)
    for (_, left, _), (_, _, right) in pairwise(m.stack_places[1:]):
        assert right == pytest.approx(left)


@pytest.mark.parametrize("sheet", SHEETS)
def test_the_rotor_clears_the_spool_at_both_ends_of_the_stroke(sheet: object) -> None:
    m = FixedMeasures(sheet)  # type: ignore[arg-type]
    assert m.web_in > m.hub_end + m.stroke / 2
    assert m.rotor_end > m.skirt_end + m.stroke / 2
    assert m.cup < m.rear - m.skirt_wall
    assert m.rotor_radius > m.rear


@pytest.mark.parametrize("sheet", SHEETS)
def test_the_gear_meets_the_pinion_and_stays_in_the_body(sheet: object) -> None:
    m = FixedMeasures(sheet)  # type: ignore[arg-type]
    left, right = m.pinion_faces
    assert left <= m.gear_centre - m.main_pitch <= right
    assert m.gear_levels[0] < m.pinion_pitch + m.module
    assert m.gear_levels[1] < m.body_half
    assert m.body_out > m.gear_centre + m.main_pitch


def test_the_handle_swings_clear_of_the_rotor() -> None:
    m = FixedMeasures(reels.shipped("lumvik-4000"))
    assert m.arm_level > m.rotor_radius
    assert m.arm_level > m.body_side
    assert m.lowest == m.bottom > m.arm_level


def test_the_shaft_is_as_long_as_its_steps() -> None:
    """From its sheet: 62 mm and 30 mm."""
    left, right = FixedMeasures(reels.shipped("lumvik-4000")).shaft_ends
    assert right - left == pytest.approx(92.0)
