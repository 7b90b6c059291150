"""The stations of a fly reel: checked by hand on brekkas-9-10, and on a sheet without a drag."""

import pytest

from spoolwright.papers.section.fly_measures import FlyMeasures
from tests.unit.papers.section import reels

SHEETS = [reels.shipped("brekkas-9-10"), reels.fly()]


def test_the_drag_is_built_up_from_the_back_plate_into_the_arbor() -> None:
    """By hand: 2.0, 1.2, 2.0, 1.2 and 2.5 mm from the plate, 8.9 mm in all."""
    m = FlyMeasures(reels.shipped("brekkas-9-10"))
    assert m.stack_places[0][1] == pytest.approx(m.back_in)
    assert m.stack_end - m.back_in == pytest.approx(8.9)
    assert m.hub_in > m.inner_end
    assert all(washer.outer_diameter * 500 < m.arbor for washer, _, _ in m.stack_places)


@pytest.mark.parametrize("sheet", SHEETS)
def test_the_spool_runs_clear_of_the_plate(sheet: object) -> None:
    m = FlyMeasures(sheet)  # type: ignore[arg-type]
    assert m.back_in < -m.spool_end
    assert m.plates is not None
    left, right = m.plates
    assert right - left == pytest.approx(m.sheet.frame.plate_spacing * 1000)  # type: ignore[union-attr]
    assert m.frame_radius > m.rim


@pytest.mark.parametrize("sheet", SHEETS)
def test_both_bearings_lie_in_the_hub_and_apart(sheet: object) -> None:
    m = FlyMeasures(sheet)  # type: ignore[arg-type]
    (_, rear), (_, front) = m.spool_bearings
    assert m.hub_in < rear < front < m.spool_end
    assert m.hub < m.arbor


def test_without_a_drag_there_is_neither_knob_nor_clutch() -> None:
    m = FlyMeasures(reels.fly())
    assert m.stack_places == ()
    assert m.clutch is None
    assert m.off_end == m.back_out


def test_a_rim_to_palm_pushes_the_bar_outwards() -> None:
    assert FlyMeasures(SHEETS[0]).bar_gap > FlyMeasures(SHEETS[1]).bar_gap
