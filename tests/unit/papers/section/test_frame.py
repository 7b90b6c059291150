"""Plates, covers, pillars, foot and brakes."""

import pytest

from spoolwright.papers.section import frame
from spoolwright.papers.section.measures import measure
from spoolwright.papers.section.shapes import box_of
from tests.unit.papers.section import reels


@pytest.mark.parametrize("slug", reels.MULTIPLIERS)
def test_the_plates_stand_as_far_apart_as_the_sheet_says(slug: str) -> None:
    sheet = reels.shipped(slug)
    assert sheet.frame is not None
    m = measure(sheet)
    right = box_of(it for it in frame.plates(m).shapes if it.points[0][0] > 0)  # type: ignore[union-attr]
    left = box_of(it for it in frame.plates(m).shapes if it.points[0][0] < 0)  # type: ignore[union-attr]
    assert right[0] - left[2] == pytest.approx(sheet.frame.plate_spacing * 1000)
    assert right[2] - right[0] == pytest.approx(sheet.frame.plate_thickness * 1000)


@pytest.mark.parametrize("slug", reels.MULTIPLIERS)
def test_nothing_of_the_frame_runs_through_the_spool(slug: str) -> None:
    m = measure(reels.shipped(slug))
    for part in (frame.pillars(m), frame.off_cover(m), frame.gear_cover(m), frame.foot(m)):
        assert part is not None
        for shape in part.shapes:
            left, top, right, bottom = box_of([shape])
            beside = right <= -m.spool_end or left >= m.spool_end
            assert beside or top >= m.rim or bottom <= -m.rim, part.key


@pytest.mark.parametrize("slug", reels.MULTIPLIERS)
def test_the_cover_holds_gear_and_stack(slug: str) -> None:
    m = measure(reels.shipped(slug))
    left, _, right, bottom = box_of(frame.gear_cover(m).shapes)
    assert left == pytest.approx(m.plate_out)
    assert right > m.stack_end
    assert bottom > m.drive_axis + m.main_pitch + m.module


def test_without_a_worm_there_is_a_pillar_above() -> None:
    with_worm = frame.pillars(measure(reels.shipped("tarvak-52")))
    bare = frame.pillars(measure(reels.without("tarvak-52", "level_wind")))
    assert with_worm is not None
    assert bare is not None
    assert (len(with_worm.shapes), len(bare.shapes)) == (1, 2)


def test_brake_blocks_run_at_their_radius() -> None:
    """tarvak-58r: 9.5 mm on its sheet."""
    part = frame.brakes(measure(reels.shipped("tarvak-58r")))
    assert part is not None
    blocks = [box_of([it]) for it in part.shapes if getattr(it, "cut", "") == "plastic"]
    assert [abs(top + bottom) / 2 for _, top, _, bottom in blocks] == pytest.approx([9.5, 9.5])


def test_a_reel_without_blocks_shows_none() -> None:
    assert frame.brakes(measure(reels.without("tarvak-52", "brakes"))) is None


def test_a_low_profile_reel_has_a_thumb_bar_and_magnets_beside_its_shoes() -> None:
    m = measure(reels.shipped("ostrell-s71"))
    bar, brakes = frame.thumb_bar(m), frame.brakes(m)
    assert bar is not None
    assert brakes is not None
    assert box_of(bar.shapes)[1] > m.rim
    assert "4 brake blocks and their ring, 6 magnets" in brakes.title
    assert frame.thumb_bar(measure(reels.shipped("tarvak-54c"))) is None


def test_magnets_alone_are_brakes_too() -> None:
    sheet = reels.shipped("ostrell-s71")
    assert sheet.brakes is not None
    bare = sheet.model_copy(update={"brakes": sheet.brakes.model_copy(update={"blocks": None})})
    part = frame.brakes(measure(bare))
    assert part is not None
    assert part.title == "6 brake magnets"


def test_what_the_sheet_does_not_measure_is_a_broken_line() -> None:
    m = measure(reels.shipped())
    assert {it.line for part in (frame.foot(m), frame.cast_cap(m)) for it in part.shapes} == {"phantom"}
