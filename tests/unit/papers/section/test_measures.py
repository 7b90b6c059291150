"""Where things lie, worked out from the sheet: checked by hand on tarvak-58r, and as rules on every sheet."""

from itertools import pairwise

import pytest

from spoolwright.papers.section.measures import measure
from tests.unit.papers.section import reels


def test_the_spool_of_the_pier_reel() -> None:
    """From the sheet by hand: 44 mm wide, 50 mm over the flanges, arbor 22 mm, line 1.5 mm below the lip."""
    m = measure(reels.shipped("tarvak-58r"))
    assert (m.half_width, m.rim, m.arbor, m.full) == pytest.approx((22.0, 25.0, 11.0, 23.5))


def test_the_gears_stand_at_half_the_sum_of_their_teeth() -> None:
    """By hand: module 0.65 mm, 51 and 10 teeth, straight: 0.65 x 61 / 2 = 19.825 mm."""
    assert measure(reels.shipped("tarvak-58r")).drive_axis == pytest.approx(19.825)


def test_slanted_teeth_stand_farther_apart() -> None:
    """By hand: module 0.65 mm, 53 and 10 teeth at 15 degrees: 0.65 x 63 / 2 / cos 15 = 21.197 mm."""
    assert measure(reels.shipped("tarvak-54c")).drive_axis == pytest.approx(21.197, abs=0.001)


def test_the_bearings_of_the_spool_stand_a_span_apart() -> None:
    (_, off), (_, gear) = measure(reels.shipped("tarvak-58r")).spool_bearings
    assert gear - off == pytest.approx(64.0)
    assert off < 0 < gear


@pytest.mark.parametrize("slug", reels.MULTIPLIERS)
def test_members_touch_and_do_not_overlap(slug: str) -> None:
    m = measure(reels.shipped(slug))
    for (_, _, right), (_, left, _) in pairwise(m.stack_places):
        assert left == pytest.approx(right)
    assert m.plate_in >= m.spool_end
    assert m.stack_places[0][1] > m.plate_out
    assert m.cover_in > m.stack_end
    assert m.springs_in > m.boss_out
    assert m.arm_in > m.star_out > m.springs_out


@pytest.mark.parametrize("slug", reels.MULTIPLIERS)
def test_the_pinion_lies_clear_of_the_bearing_beside_it(slug: str) -> None:
    m = measure(reels.shipped(slug))
    for bearing, middle in m.spool_bearings:
        left, right = m.pinion_faces
        half = bearing.size.width * 500
        assert right <= middle - half or left >= middle + half


@pytest.mark.parametrize("slug", reels.MULTIPLIERS)
def test_the_cogs_span_the_way_from_spool_to_worm(slug: str) -> None:
    m = measure(reels.shipped(slug))
    assert sum(a + b for a, b in m.cog_radii) == pytest.approx(-m.worm_axis)


def test_the_shaft_is_stepped_to_the_bore_of_its_lower_bearing() -> None:
    """tarvak-54c: a bore of 6 mm on a shaft of 7 mm; a handle bearing of 8 mm over a sleeve."""
    m = measure(reels.shipped("tarvak-54c"))
    assert (m.lower_radius, m.drive_radius, m.sleeve_radius) == pytest.approx((3.0, 3.5, 4.0))


@pytest.mark.parametrize(
    ("slug", "name"),
    [("pellmar-30-2", "LeverMeasures"), ("lumvik-4000", "FixedMeasures"), ("brekkas-9-10", "FlyMeasures"),
     ("ostrell-s71", "Measures")],
)  # fmt: skip
def test_each_kind_has_stations_of_its_own(slug: str, name: str) -> None:
    assert type(measure(reels.shipped(slug))).__name__ == name


def test_a_thumb_bar_makes_room_for_itself() -> None:
    low, round_ = measure(reels.shipped("ostrell-s71")), measure(reels.shipped("tarvak-54c"))
    assert low.has_thumb_bar
    assert not round_.has_thumb_bar
    assert low.bar_gap > round_.bar_gap


def test_a_bare_spool_needs_no_other_table() -> None:
    m = measure(reels.without("tarvak-52", "level_wind", "brakes"))
    assert m.cog_radii == ()
    assert m.top < -m.rim
