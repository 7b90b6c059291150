"""Gears, drive shaft, springs, star and handle."""

import pytest

from spoolwright.papers.section import drive
from spoolwright.papers.section.measures import MM, measure
from spoolwright.papers.section.shapes import box_of
from tests.unit.papers.section import reels


@pytest.mark.parametrize("slug", reels.MULTIPLIERS)
def test_the_pitch_circles_touch(slug: str) -> None:
    m = measure(reels.shipped(slug))
    assert m.main_pitch + m.pinion_pitch == pytest.approx(m.drive_axis)
    gear, pinion = box_of(drive.main_gear(m).shapes), box_of(drive.pinion(m).shapes)
    assert gear[1] < pinion[3], "the teeth must overlap"
    assert gear[1] == pytest.approx(pinion[3] - 2 * m.module, abs=0.01)


@pytest.mark.parametrize("slug", reels.MULTIPLIERS)
def test_the_gear_is_as_wide_as_its_face_wherever_it_is_drawn(slug: str) -> None:
    sheet = reels.shipped(slug)
    assert sheet.gears is not None
    m = measure(sheet)
    for part in (drive.main_gear(m), drive.main_gear(m, left=100.0, axis=7.0)):
        teeth = [it for it in part.shapes if getattr(it, "wash", "")]
        left, _, right, _ = box_of(teeth)
        assert right - left == pytest.approx(sheet.gears.face_width * MM)


def test_the_handle_has_its_length() -> None:
    """tarvak-58r: 42 mm from the drive shaft to the knob."""
    m = measure(reels.shipped("tarvak-58r"))
    part = drive.handle(m)
    assert part is not None
    spindle = next(it for it in part.shapes if it.line == "chain")
    assert m.drive_axis - spindle.points[0][1] == pytest.approx(42.0)  # type: ignore[union-attr]


def test_a_second_arm_is_broken_off_and_said_to_be() -> None:
    double = drive.handle(measure(reels.shipped("tarvak-58r")))
    single = drive.handle(measure(reels.shipped("pellmar-70")))
    assert double is not None
    assert single is not None
    assert "broken off" in double.title
    assert "broken off" not in single.title


@pytest.mark.parametrize(("slug", "halves"), [("tarvak-52", 4), ("tarvak-58r", 8), ("pellmar-70", 8)])
def test_every_spring_is_drawn(slug: str, halves: int) -> None:
    """Two halves for each sign of the arrangement: "()" and "()()" and "(())"."""
    part = drive.springs(measure(reels.shipped(slug)))
    assert part is not None
    assert len(part.shapes) == halves


def test_nested_springs_are_shorter_than_those_back_to_back() -> None:
    lengths = {}
    for slug, arrangement in (("tarvak-58r", "()()"), ("tarvak-58r", "(())")):
        part = drive.springs(measure(reels.changed(slug, arrangement=arrangement)))
        assert part is not None
        left, _, right, _ = box_of(part.shapes)
        lengths[arrangement] = right - left
    assert lengths["(())"] < lengths["()()"]


def test_a_roller_clutch_only_where_the_sheet_has_one() -> None:
    assert drive.roller_clutch(measure(reels.shipped("tarvak-52"))) is None
    assert drive.roller_clutch(measure(reels.shipped("tarvak-54c"))) is not None


@pytest.mark.parametrize("slug", reels.MULTIPLIERS)
def test_the_drive_shaft_runs_from_the_plate_through_the_nut(slug: str) -> None:
    m = measure(reels.shipped(slug))
    left, _, right, _ = box_of(drive.drive_shaft(m).shapes)
    assert left == pytest.approx(m.plate_in)
    assert right > m.arm_out


def test_a_fly_reels_knob_sits_on_the_spool() -> None:
    part = drive.handle(measure(reels.fly()))
    assert part is not None
    assert part.mark[1] == pytest.approx(-38.0)
